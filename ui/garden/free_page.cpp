// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/free_page.h"

#include "ui/common/segments.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/models/free_weeks.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPainter>
#include <QPushButton>
#include <QShortcut>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>

#include <cmath>

namespace withy::ui {

namespace {

using Figure = FreeWeeksModel::Figure;

constexpr Figure figures[] = {Figure::free, Figure::promised, Figure::asked, Figure::expected};

QStringList figureNames() {
    QStringList names;
    for (const auto f : figures)
        names << figureWords(f);
    return names;
}

/// The more there is, the greener; this week between two lines.
class FreeDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    qlonglong most = 1;
    int thisWeek = -1;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        QStyledItemDelegate::paint(painter, option, index);
        if (index.column() != thisWeek) return;
        const auto& r = option.rect;
        for (const int x : {r.left(), r.right() - 1})
            painter->fillRect(x, r.top(), 2, r.height(), currentPalette().of(Role::osier));
    }

protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
        QStyledItemDelegate::initStyleOption(option, index);
        const auto amount = index.data(FreeWeeksModel::AmountRole).toLongLong();
        if (amount <= 0) return;
        const double share = std::sqrt(std::min(1.0, double(amount) / double(std::max<qlonglong>(1, most))));
        const auto& palette = currentPalette();
        option->backgroundBrush = mixed(palette.of(Role::paper), palette.of(Role::green), 0.3 * share);
    }
};

void dress(QTableView& view) {
    view.setObjectName(QStringLiteral("garden.free.table"));
    view.setAccessibleName(FreePage::tr("Free to promise by plant and week, cautious to likely"));
    view.setEditTriggers(QAbstractItemView::NoEditTriggers);
    view.setShowGrid(false);
    view.setTabKeyNavigation(false);
    view.verticalHeader()->setDefaultSectionSize(tableRow());
    view.verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    view.verticalHeader()->setHighlightSections(false);
    view.horizontalHeader()->setHighlightSections(false);
    view.horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    view.setCornerButtonEnabled(false);
}

} // namespace

FreePage::FreePage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , model_(new FreeWeeksModel(this))
    , tools_(new QWidget(this))
    , figures_(new Segments(tr("Which figure the table shows"), figureNames()))
    , view_(new QTableView)
    , told_(new TextLabel(TypeRole::text, {}, Ink::second))
    , empty_(new TextLabel(TypeRole::text, nothingFreeWords(), Ink::second)) {
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    figures_->setObjectName(QStringLiteral("garden.free.figure"));
    dress(*view_);
    view_->setModel(model_);
    view_->setItemDelegate(new FreeDelegate(view_));
    fold_ = linkButton({}, "garden.free.fold");
    connect(fold_, &QPushButton::clicked, this, [this] {
        folded_ = !folded_;
        foldRows();
    });
    told_->setObjectName(QStringLiteral("garden.free.told"));
    told_->setWordWrap(true);
    told_->setMinimumHeight(2 * QFontMetrics(typeFont(TypeRole::text)).lineSpacing());
    empty_->setWordWrap(true);
    auto* top = new QHBoxLayout;
    top->addWidget(figures_);
    top->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, grid(2));
    column->setSpacing(grid(2));
    column->addLayout(top);
    column->addWidget(view_, 1);
    column->addWidget(fold_, 0, Qt::AlignLeft);
    column->addWidget(told_);
    column->addWidget(empty_);
    column->addStretch(0);
    connect(figures_, &Segments::chosen, this, [this] { refresh(); });
    connect(view_, &QTableView::activated, this, &FreePage::follow);
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &FreePage::tell);
    auto* copyKey = new QShortcut(QKeySequence::Copy, view_);
    copyKey->setContext(Qt::WidgetShortcut);
    connect(copyKey, &QShortcut::activated, this, &FreePage::copy);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench, &Workbench::planned, seen, &WhenSeen::ask);
    seen->ask();
}

Answer FreePage::answer() const {
    return model_->answer(bench_.today());
}

void FreePage::addActions(Actions& actions) {
    auto* action = actions.add({"garden.free.copy",
                                tr("&Copy what is free to promise"),
                                {},
                                tr("All plants, weeks and both levels, for a spreadsheet")},
                               [this] {
                                   Q_EMIT wanted();
                                   copy();
                               });
    auto* button = new QPushButton(tr("Copy the table"));
    button->setObjectName(QStringLiteral("garden.free.copy_button"));
    button->setToolTip(action->toolTip());
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    tools_->layout()->addWidget(button);
}

void FreePage::enter() {
    if (model_->rowCount() == 0) return figures_->setFocus();
    view_->setFocus();
    const int row = firstSeen();
    if (!view_->currentIndex().isValid())
        view_->setCurrentIndex(
            model_->index(row, std::max(0, model_->columnOf(bench_.today().value_or(Day())))));
}

QWidget* FreePage::tools() const {
    return tools_;
}

void FreePage::refresh() {
    const auto at = view_->currentIndex();
    const auto plant = at.data(FreeWeeksModel::PlantRole);
    const int row = at.row();
    const int column = at.column();
    const auto figure = figures[static_cast<std::size_t>(std::clamp(figures_->current(), 0, 3))];
    model_->show(bench_.season(), bench_.plan().cover.get(), figure);
    const bool any = model_->rowCount() > 0;
    view_->setVisible(any);
    told_->setVisible(any);
    empty_->hide(); // the answer above says it already
    showAmounts();
    foldRows();
    if (any && plant.isValid() && row < model_->rowCount() && column < model_->columnCount())
        view_->setCurrentIndex(model_->index(row, column));
    if (any && bench_.today() && !std::exchange(placed_, true)) startThisWeek();
    tell();
    Q_EMIT answerChanged();
}

/// This week is the first column in sight; those gone by lie to its left.
void FreePage::startThisWeek() {
    const int row = firstSeen();
    view_->scrollTo(model_->index(row, model_->columnCount() - 1));
    view_->scrollTo(model_->index(row, model_->columnOf(*bench_.today())));
}

void FreePage::showAmounts() {
    auto* delegate = static_cast<FreeDelegate*>(view_->itemDelegate());
    const auto today = bench_.today();
    delegate->thisWeek = today ? model_->columnOf(*today) : -1;
    delegate->most = 1;
    for (int r = 0; r < model_->rowCount(); ++r)
        for (int c = 0; c < model_->columnCount(); ++c)
            delegate->most =
                std::max(delegate->most, model_->index(r, c).data(FreeWeeksModel::AmountRole).toLongLong());
}

int FreePage::firstSeen() const {
    int row = 0;
    while (row + 1 < model_->rowCount() && view_->isRowHidden(row))
        ++row;
    return row;
}

/// What has nothing from this week on is folded away.
void FreePage::foldRows() {
    const int from = bench_.today() ? model_->columnOf(*bench_.today()) : 0;
    int away = 0;
    for (int r = 0; r < model_->rowCount(); ++r)
        away += model_->hasAnyFrom(r, from) ? 0 : 1;
    const bool folds = away > 0 && away < model_->rowCount();
    for (int r = 0; r < model_->rowCount(); ++r)
        view_->setRowHidden(r, folds && folded_ && !model_->hasAnyFrom(r, from));
    fold_->setVisible(folds);
    fold_->setText(folded_ ? tr("%n plant(s) with nothing from this week on: show", nullptr, away)
                           : tr("Fold the %n plant(s) with nothing from this week on", nullptr, away));
}

void FreePage::tell() {
    const auto at = view_->currentIndex();
    told_->setText(at.isValid()
                       ? model_->sentence(at)
                       : tr("Each cell: cautious to likely. Choose a week, and it is told here in full."));
}

void FreePage::follow() {
    const auto plant = view_->currentIndex().data(FreeWeeksModel::PlantRole);
    if (plant.isValid()) Q_EMIT leadTo({model::TableKind::plants, plant.toLongLong()});
}

void FreePage::copy() {
    bench_.waitForPlan();
    refresh();
    QApplication::clipboard()->setText(model_->tsv());
    Q_EMIT said(tr("What is free to promise is copied; paste it into a spreadsheet."));
}

} // namespace withy::ui
