// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/shelves_page.h"

#include "ui/common/figure.h"
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

ShelvesPage::ShelvesPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , tools_(new QWidget(this))
    , heads_(makeHeads())
    , empty_(new TextLabel(TypeRole::text, tr("Nothing on the shelf yet. Count what is there."), Ink::second))
    , ribbon_(new RibbonDayView(bench)) {
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->setSpacing(grid(2));
    empty_->setWordWrap(true);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, grid(2), grid(4));
    column->setSpacing(grid(1));
    column->addWidget(empty_);
    addShelf(*column, ShelfGroup::containers, tr("Containers"),
             tr("Free each day, after what is promised, enquiries and holds too. Dashed: short. "
                "Hatched: only if what nobody wrote back is home."));
    column->addWidget(ribbon_);
    addShelf(*column, ShelfGroup::holders, tr("Buckets, boxes and trays"), {});
    addShelf(*column, ShelfGroup::sundries, tr("Sundries"),
             tr("What is left after all that is promised, enquiries and holds too."));
    column->addStretch(1);
    scroll_ = scrolledPage(page);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->viewport()->installEventFilter(this);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, grid(2), 0, 0);
    all->setSpacing(grid(1));
    all->addWidget(heads_);
    all->addWidget(scroll_, 1);
    connect(ribbon_, &RibbonDayView::leadTo, this, &ShelvesPage::leadTo);
    connect(ribbon_, &RibbonDayView::refused, this, &ShelvesPage::refused);
    connect(ribbon_, &RibbonDayView::said, this, &ShelvesPage::said);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench, &Workbench::planned, seen, &WhenSeen::ask);
    seen->ask();
}

void ShelvesPage::addShelf(QVBoxLayout& column, ShelfGroup group, const QString& head,
                           const QString& remark) {
    auto* whole = new QWidget;
    auto* all = new QVBoxLayout(whole);
    all->setContentsMargins(0, 0, 0, grid(3));
    all->setSpacing(grid(1));
    auto* top = new QHBoxLayout;
    auto* words = new TextLabel(TypeRole::caption, remark, Ink::caption);
    words->setAlignment(Qt::AlignRight | Qt::AlignBottom);
    words->setWordWrap(true);
    top->addWidget(new TextLabel(TypeRole::head, head));
    top->addWidget(words, 1);
    auto* rows = new QVBoxLayout;
    rows->setSpacing(0);
    all->addLayout(top);
    all->addWidget(new Rule(Rule::Kind::head));
    all->addLayout(rows);
    column.addWidget(whole);
    shelves_.push_back({group, whole, rows, {}});
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
    heads->setMinimumWidth(1); // the rows say how wide the page must be
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
    for (const auto& shelf : shelves_)
        if (!shelf.views.empty()) return shelf.views.front()->figure()->setFocus();
    scroll_->setFocus();
}

QWidget* ShelvesPage::tools() const {
    return tools_;
}

void ShelvesPage::refresh() {
    const auto& shed = bench_.plan().shed;
    std::optional<ShelfSpan> span;
    if (shed) span = shelfSpan(bench_.season(), *shed);
    if (span) axis_->setSpan(*span);
    bool any = false;
    for (auto& shelf : shelves_) {
        const auto rows = shed ? shelfRows(bench_.season(), *shed, shelf.group) : std::vector<ShelfRow>();
        showRows(shelf, rows, span ? span->today : std::nullopt);
        shelf.whole->setVisible(!rows.empty());
        any = any || !rows.empty();
    }
    showNarrow();
    heads_->setVisible(any);
    const bool counted = shed && std::any_of(shed->kit.begin(), shed->kit.end(),
                                             [](const auto& item) { return item.owned.has_value(); });
    empty_->setVisible(counted && !any); // else the answer above says it already
    ribbon_->refresh();
    Q_EMIT answerChanged();
}

void ShelvesPage::showRows(Shelf& shelf, const std::vector<ShelfRow>& rows, std::optional<Day> today) {
    bool same = rows.size() == shelf.views.size();
    for (std::size_t i = 0; same && i < rows.size(); ++i)
        same = shelf.views[i]->row().item == rows[i].item;
    if (!same) {
        clearLayout(*shelf.rows);
        shelf.views.clear();
        for (const auto& row : rows) {
            auto* view = new ShelfRowView(
                QStringLiteral("shed.shelves.%1_%2").arg(static_cast<int>(row.item.table)).arg(row.item.id));
            connect(view, &ShelfRowView::leadTo, this, &ShelvesPage::leadTo);
            shelf.rows->addWidget(view);
            shelf.rows->addWidget(new Rule(Rule::Kind::hair));
            shelf.views.push_back(view);
        }
    }
    const auto& containers = bench_.season().containers;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        shelf.views[i]->setRow(rows[i], today);
        const auto* vessel = rows[i].item.table == model::TableKind::containers
                                 ? containers.find(Id<model::Container>(rows[i].item.id))
                                 : nullptr;
        shelf.views[i]->setVessel(vessel ? std::optional(vesselDrawing(*vessel, 0)) : std::nullopt);
    }
}

void ShelvesPage::showNarrow() {
    const int wide =
        ShelfRowView::nameWidth() + 4 * ShelfRowView::figureWidth() + ShelfRowView::lowestWidth() + grid(68);
    const bool narrow = width() < wide;
    for (auto& shelf : shelves_)
        for (auto* view : shelf.views)
            view->setNarrow(narrow);
    axis_->setVisible(!narrow);
    lineUpHeads();
}

void ShelvesPage::lineUpHeads() {
    if (!scroll_) return;
    const int beside = scroll_->width() - scroll_->viewport()->width();
    heads_->layout()->setContentsMargins(0, 0, beside + grid(2), 0);
}

bool ShelvesPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize) lineUpHeads();
    return SubPage::eventFilter(watched, event);
}

void ShelvesPage::resizeEvent(QResizeEvent* event) {
    SubPage::resizeEvent(event);
    showNarrow();
}

} // namespace withy::ui
