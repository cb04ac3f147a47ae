// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/tables_part.h"

#include "ui/common/answer_phrases.h"
#include "ui/common/figure.h"
#include "ui/common/scene_view.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"

#include <QBoxLayout>
#include <QButtonGroup>
#include <QRadioButton>
#include <QScrollArea>
#include <QStyleOptionButton>

namespace withy::ui {

namespace {

/// A kind of table to choose: a long name gives way, what fits on it is always read.
class TableChoice : public QRadioButton {
public:
    explicit TableChoice(QWidget* parent) : QRadioButton(parent) {
        setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    }

    void setWords(const QString& name, const QString& fits) {
        name_ = name;
        fits_ = fits;
        setText(asTyped(name + fits));
        setAccessibleName(name + fits);
        setToolTip(name + fits);
        updateGeometry();
    }

    [[nodiscard]] QSize minimumSizeHint() const override {
        return {std::min(grid(60), QRadioButton::minimumSizeHint().width()), sizeHint().height()};
    }

protected:
    void initStyleOption(QStyleOptionButton* option) const override {
        QRadioButton::initStyleOption(option);
        const auto room = style()->subElementRect(QStyle::SE_RadioButtonContents, option, this).width();
        const auto& metrics = option->fontMetrics;
        if (metrics.horizontalAdvance(name_ + fits_) <= room) return;
        const int forName = std::max(room - metrics.horizontalAdvance(fits_), room / 3);
        const QString words = metrics.elidedText(name_, Qt::ElideRight, forName) + fits_;
        option->text = asTyped(metrics.elidedText(words, Qt::ElideRight, room));
    }

private:
    QString name_;
    QString fits_;
};

} // namespace

TablesPart::TablesPart(Workbench& bench, QWidget* parent)
    : BookingTab(bench, parent)
    , answer_(new AnswerLabel)
    , both_(new QBoxLayout(QBoxLayout::LeftToRight))
    , hallView_(new SceneView(QStringLiteral("tables.hall"), tr("The venue's tables from above, in rows")))
    , side_(new QWidget)
    , hallNote_(new TextLabel(TypeRole::caption, {}, Ink::second))
    , kinds_(new QVBoxLayout)
    , group_(new QButtonGroup(this)) {
    setObjectName(QStringLiteral("tables"));
    answer_->setObjectName(QStringLiteral("tables.answer"));
    answer_->setWordWrap(true);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(pageMargin(), grid(3), pageMargin(), pageMargin());
    column->setSpacing(grid(3));
    column->addWidget(answer_);
    both_->setSpacing(grid(6));
    auto* left = new QVBoxLayout;
    left->setSpacing(grid(2));
    left->addWidget(hallView_);
    hallNote_->setObjectName(QStringLiteral("tables.note"));
    hallNote_->setWordWrap(true);
    left->addWidget(hallNote_);
    left->addWidget(new TextLabel(TypeRole::head, tr("What fits where")));
    left->addWidget(new Rule(Rule::Kind::head));
    left->addLayout(kinds_);
    left->addStretch(1);
    both_->addLayout(left, 3);
    auto* near = new QVBoxLayout(side_);
    makeNear(*near);
    both_->addWidget(side_, 2);
    column->addLayout(both_, 1);
    auto* scroll = scrolledPage(page);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(scroll);
    connect(hallView_, &SceneView::pressed, this, [this](QPointF at) {
        for (const auto& table : hall_.tables)
            if (table.box.contains(at)) return choose(table.kind);
    });
    connect(group_, &QButtonGroup::idClicked, this, [this](int id) { choose(static_cast<std::size_t>(id)); });
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench_, &Workbench::planned, seen, &WhenSeen::ask);
    connect(&bench_, &Workbench::changed, seen, &WhenSeen::ask);
}

void TablesPart::makeNear(QVBoxLayout& column) {
    nearHead_ = new TextLabel(TypeRole::head);
    nearHead_->setWordWrap(true); // a long name does not widen the page
    near_ = new SceneView(QStringLiteral("tables.near"), tr("One table near to, from above"));
    end_ = new SceneView(QStringLiteral("tables.end"), tr("The tallest piece from the end of the table"));
    fit_ = new FigureButton;
    fit_->setObjectName(QStringLiteral("tables.fit"));
    facts_ = new TextLabel(TypeRole::text, {}, Ink::second);
    facts_->setWordWrap(true);
    working_ = new WorkingPanel;
    working_->hide();
    column.setContentsMargins(0, 0, 0, 0);
    column.setSpacing(grid(2));
    column.addWidget(nearHead_);
    column.addWidget(new Rule(Rule::Kind::head));
    column.addWidget(near_);
    column.addWidget(fit_, 0, Qt::AlignLeft);
    column.addWidget(working_);
    column.addWidget(facts_);
    column.addWidget(end_);
    column.addStretch(1);
    connect(fit_, &FigureButton::opened, working_, &QWidget::setVisible);
    connect(working_, &WorkingPanel::leadTo, this, &TablesPart::leadTo);
}

std::shared_ptr<const plan::BookingTables> TablesPart::tables() const {
    const auto& shed = bench_.plan().shed;
    if (!shed || !booking_) return nullptr;
    const auto found = shed->tables.find(*booking_);
    return found == shed->tables.end() ? nullptr : found->second;
}

void TablesPart::show(std::optional<Id<model::Booking>> id) {
    if (booking_ != id) chosen_ = 0;
    booking_ = id;
    refresh();
}

void TablesPart::enter() {
    if (auto* button = group_->checkedButton()) button->setFocus(Qt::TabFocusReason);
}

void TablesPart::refresh() {
    shown_ = tables();
    const bool any = shown_ && !shown_->tables.empty();
    hallView_->setVisible(any);
    hallNote_->setVisible(any);
    if (any) hallNote_->setText(breakable(hallNote(bench_.season(), *shown_)));
    side_->setVisible(any);
    answer_->setPhrases(phrasesOf(shown_ ? tablesAnswer(bench_.season(), *shown_) : Answer()));
    if (chosen_ >= (any ? shown_->tables.size() : 1)) chosen_ = 0;
    fillKinds();
    hallView_->setMaker([this](double width, const SceneLook& look) {
        hall_ = shown_ ? hallScene(bench_.season(), *shown_, width, chosen_, look) : Hall();
        return hall_.scene;
    });
    if (any) showChosen();
}

void TablesPart::fillKinds() {
    std::vector<Id<model::VenueTable>> ids;
    for (std::size_t t = 0; shown_ && t < shown_->tables.size(); ++t)
        ids.push_back(shown_->tables[t].table);
    if (ids != kindIds_) makeKinds(ids); // else they stay, and the focus with them
    for (std::size_t t = 0; t < ids.size(); ++t) {
        const auto& table = shown_->tables[t];
        const auto* record = bench_.season().venueTables.find(table.table);
        auto* button = static_cast<TableChoice*>(group_->button(static_cast<int>(t)));
        button->setVisible(record != nullptr);
        button->setChecked(t == chosen_);
        if (!record) continue;
        const QString fits = fitWords(table, bench_.season());
        button->setWords(
            tr("%1 × %2").arg(record->howMany).arg(text(record->label)),
            tr(", %1: %2")
                .arg(tableSize(table, bench_.season()), fits.isEmpty() ? tr("nothing stands there") : fits));
    }
}

void TablesPart::makeKinds(const std::vector<Id<model::VenueTable>>& ids) {
    kindIds_ = ids;
    for (auto* button : group_->buttons())
        group_->removeButton(button);
    clearLayout(*kinds_);
    for (std::size_t t = 0; t < ids.size(); ++t) {
        auto* button = new TableChoice(this); // shown before it has its place, never as a window
        button->setObjectName(QStringLiteral("tables.kind.%1").arg(ids[t].value));
        group_->addButton(button, static_cast<int>(t));
        kinds_->addWidget(button);
    }
}

void TablesPart::choose(std::size_t kind) {
    chosen_ = kind;
    if (auto* button = group_->button(static_cast<int>(kind))) button->setChecked(true);
    hallView_->remake();
    showChosen();
}

void TablesPart::showChosen() {
    if (!shown_ || chosen_ >= shown_->tables.size()) return;
    const auto& season = bench_.season();
    const auto& table = shown_->tables[chosen_];
    const auto* record = season.venueTables.find(table.table);
    if (!record) return;
    nearHead_->setText(breakable(text(record->label)));
    near_->setMaker([this](double width, const SceneLook& look) {
        return shown_ && chosen_ < shown_->tables.size() &&
                       bench_.season().venueTables.find(shown_->tables[chosen_].table)
                   ? nearScene(bench_.season(), *shown_, chosen_, width, look)
                   : Scene();
    });
    end_->setMaker([this](double width, const SceneLook& look) {
        return shown_ && chosen_ < shown_->tables.size()
                   ? endScene(bench_.season(), shown_->tables[chosen_], width, grid(52), look)
                   : Scene();
    });
    end_->setVisible(table.onEach > 0);
    fit_->setVisible(table.fit.has_value());
    if (table.fit) {
        const FigureFacts facts{fitWords(table, season),
                                tr("at %1").arg(text(record->label)),
                                table.fit->working,
                                std::nullopt,
                                {},
                                {},
                                season.theSettings().units};
        fit_->setFacts(facts);
        working_->setFacts(facts);
    }
    QStringList words;
    for (const auto& one :
         {standingWords(season, table), sightWords(table, season), largestWords(season, table)})
        if (!one.isEmpty()) words << one;
    facts_->setText(breakable(words.join(QLatin1Char('\n'))));
    facts_->setVisible(!words.isEmpty());
}

void TablesPart::resizeEvent(QResizeEvent* event) {
    BookingTab::resizeEvent(event);
    both_->setDirection(width() < grid(180) ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

} // namespace withy::ui
