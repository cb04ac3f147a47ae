// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/shelves_page.h"

#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"
#include "ui/shed/free_graph.h"
#include "ui/shed/ribbon_day_view.h"
#include "ui/shed/shelf_row_view.h"
#include "ui/shell/actions.h"

#include <QAction>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

constexpr ShelfGroup shownGroups[] = {ShelfGroup::containers, ShelfGroup::holders, ShelfGroup::sundries};

} // namespace

ShelvesPage::ShelvesPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , tools_(new QWidget(this))
    , groups_(new Segments(tr("Which shelves"),
                           {tr("Containers and ribbon"), tr("Buckets, boxes, trays"), tr("Sundries")}))
    , heads_(makeHeads())
    , rows_(new QVBoxLayout)
    , note_(new TextLabel(TypeRole::caption, {}, Ink::caption))
    , empty_(new TextLabel(TypeRole::text, {}, Ink::second))
    , ribbon_(new RibbonDayView(bench)) {
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->setSpacing(grid(2));
    groups_->setObjectName(QStringLiteral("shed.shelves.group"));
    groups_->setProperty("pages", true);
    note_->setWordWrap(true);
    empty_->setWordWrap(true);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, grid(2), grid(4));
    column->setSpacing(grid(1));
    rows_->setSpacing(0);
    column->addWidget(heads_);
    column->addWidget(new Rule(Rule::Kind::head));
    column->addLayout(rows_);
    column->addWidget(empty_);
    column->addWidget(note_);
    column->addSpacing(grid(3));
    column->addWidget(ribbon_);
    column->addStretch(1);
    scroll_ = scrolledPage(page);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, grid(2), 0, 0);
    all->setSpacing(grid(1));
    all->addWidget(groups_, 0, Qt::AlignLeft);
    all->addWidget(scroll_, 1);
    connect(groups_, &Segments::chosen, this, &ShelvesPage::refresh);
    connect(ribbon_, &RibbonDayView::leadTo, this, &ShelvesPage::leadTo);
    connect(ribbon_, &RibbonDayView::refused, this, &ShelvesPage::refused);
    connect(ribbon_, &RibbonDayView::said, this, &ShelvesPage::said);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench, &Workbench::planned, seen, &WhenSeen::ask);
    seen->ask();
}

QWidget* ShelvesPage::makeHeads() {
    auto* heads = new QWidget;
    auto* row = new QHBoxLayout(heads);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(grid(2));
    auto* first = new QWidget;
    columns_.emplace_back(first, &ShelfRowView::nameWidth);
    row->addWidget(first);
    for (const auto& words : {tr("On hand"), tr("Promised"), tr("Out"), tr("Due back")}) {
        auto* head = new TextLabel(TypeRole::caption, words, Ink::second);
        head->setAlignment(Qt::AlignRight | Qt::AlignBottom);
        columns_.emplace_back(head, &ShelfRowView::figureWidth);
        row->addWidget(head);
    }
    axis_ = new FreeAxis;
    row->addWidget(axis_, 1);
    auto* last = new TextLabel(TypeRole::caption, tr("Lowest, and whose it is"), Ink::second);
    columns_.emplace_back(last, &ShelfRowView::lowestWidth);
    last->setAlignment(Qt::AlignLeft | Qt::AlignBottom);
    row->addWidget(last);
    dressHeads();
    return heads;
}

void ShelvesPage::dressHeads() {
    for (const auto& [column, width] : columns_)
        column->setFixedWidth(width());
}

void ShelvesPage::changeEvent(QEvent* event) {
    SubPage::changeEvent(event);
    if (event->type() == QEvent::StyleChange) dressHeads();
}

Answer ShelvesPage::answer() const {
    const auto& shed = bench_.plan().shed;
    if (!shed) return {{tr("The shelves are being counted.")}};
    return shelfAnswer(bench_.season(), *shed);
}

void ShelvesPage::addActions(Actions& actions) {
    for (const auto& [id, words] : {std::pair("page.shed.containers", tr("Count the shelves")),
                                    std::pair("page.shed.buying", tr("Buying list"))}) {
        auto* button = new QPushButton(words);
        button->setObjectName(QStringLiteral("shed.shelves.") +
                              QString::fromLatin1(id).section(QLatin1Char('.'), 2));
        const QString name = QString::fromLatin1(id);
        connect(button, &QPushButton::clicked, this, [&actions, name] {
            if (auto* action = actions.find(name)) action->trigger();
        });
        tools_->layout()->addWidget(button);
    }
}

void ShelvesPage::enter() {
    groups_->setFocus();
}

QWidget* ShelvesPage::tools() const {
    return tools_;
}

void ShelvesPage::refresh() {
    const auto& shed = bench_.plan().shed;
    const auto group = shownGroups[std::clamp(groups_->current(), 0, 2)];
    std::vector<ShelfRow> rows;
    std::optional<Day> today;
    if (shed) {
        rows = shelfRows(bench_.season(), *shed, group);
        const auto span = shelfSpan(bench_.season(), *shed);
        today = span.today;
        axis_->setSpan(span);
    }
    showRows(rows, today);
    heads_->setVisible(!rows.empty());
    empty_->setVisible(shed && rows.empty());
    empty_->setText(group == ShelfGroup::containers ? tr("Nothing on the shelf yet. Count what is there.")
                    : group == ShelfGroup::holders
                        ? tr("No buckets or trays yet. Clean buckets run out first.")
                        : tr("No sundries yet: pins, tape, wire, cable ties, tissue."));
    note_->setVisible(!rows.empty());
    note_->setText(
        group == ShelfGroup::sundries
            ? tr("What is left after all that is promised, enquiries and holds too.")
            : tr("Free each day, after what is promised, enquiries and holds too. Dashed: short."));
    ribbon_->setVisible(group == ShelfGroup::containers);
    ribbon_->refresh();
    Q_EMIT answerChanged();
}

void ShelvesPage::showRows(const std::vector<ShelfRow>& rows, std::optional<Day> today) {
    bool same = rows.size() == views_.size();
    for (std::size_t i = 0; same && i < rows.size(); ++i)
        same = views_[i]->row().item == rows[i].item;
    if (!same) {
        clearLayout(*rows_);
        views_.clear();
        for (const auto& row : rows) {
            auto* view = new ShelfRowView(
                QStringLiteral("shed.shelves.%1_%2").arg(static_cast<int>(row.item.table)).arg(row.item.id));
            connect(view, &ShelfRowView::leadTo, this, &ShelvesPage::leadTo);
            rows_->addWidget(view);
            rows_->addWidget(new Rule(Rule::Kind::hair));
            views_.push_back(view);
        }
    }
    for (std::size_t i = 0; i < rows.size(); ++i)
        views_[i]->setRow(rows[i], today);
    showNarrow();
}

void ShelvesPage::showNarrow() {
    const int wide =
        ShelfRowView::nameWidth() + 4 * ShelfRowView::figureWidth() + ShelfRowView::lowestWidth() + grid(80);
    const bool narrow = width() < wide;
    for (auto* view : views_)
        view->setNarrow(narrow);
    axis_->setVisible(!narrow);
}

void ShelvesPage::resizeEvent(QResizeEvent* event) {
    SubPage::resizeEvent(event);
    showNarrow();
}

} // namespace withy::ui
