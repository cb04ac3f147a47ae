// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/slot_list.h"

#include "ui/common/stepper.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/designs/bloom_dot.h"
#include "ui/designs/plant_entry.h"
#include "ui/designs/slot_detail.h"
#include "ui/designs/slot_head.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/design_words.h"
#include "ui/paint/jar_mark.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QPainter>
#include <QPushButton>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr model::Purpose purposes[]{model::Purpose::foliage, model::Purpose::focal, model::Purpose::filler,
                                    model::Purpose::spike,   model::Purpose::airy,  model::Purpose::trailing};

} // namespace

SlotList::SlotList(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , column_(new QVBoxLayout)
    , detail_(new SlotDetail(bench, this))
    , add_(new PlantEntry(bench, QStringLiteral("designs.addPlantSlot"),
                          tr("Add a plant as a slot of its own")))
    , empty_(new TextLabel(TypeRole::text,
                           tr("Nothing in it yet. Type a plant below, or add a slot and decide later."),
                           Ink::second)) {
    add_->setPlaceholderText(tr("Add a plant"));
    column_->setSpacing(0);
    empty_->setWordWrap(true);
    auto* slot = new QPushButton(tr("&Add a slot"));
    slot->setObjectName(QStringLiteral("designs.addSlot"));
    auto* menu = new QMenu(slot);
    for (const auto purpose : purposes) {
        auto* action = menu->addAction(purposeWords(purpose), this, [this, purpose] {
            if (!design_) return;
            Id<model::Slot> made;
            if (bench_.take(edits::addSlotFor(bench_.season(), *design_, purpose, made))) open(made);
            detail_->enter();
        });
        action->setObjectName(QStringLiteral("designs.addSlot.%1").arg(static_cast<int>(purpose)));
    }
    slot->setMenu(menu);
    auto* adding = new QHBoxLayout;
    adding->setSpacing(grid(2));
    adding->addWidget(add_, 1);
    adding->addWidget(slot);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(grid(2));
    all->addWidget(empty_);
    all->addLayout(column_);
    all->addLayout(adding);
    detail_->hide();
    connect(add_, &PlantEntry::refused, this, &SlotList::refused);
    connect(add_, &PlantEntry::took, this, [this](qint64 plant) {
        if (!design_) return;
        Id<model::Slot> made;
        bench_.take(edits::addSlotWith(bench_.season(), *design_, Id<model::Plant>(plant), made));
    });
    connect(detail_, &SlotDetail::refused, this, &SlotList::refused);
    connect(detail_, &SlotDetail::eraseAsked, this, &SlotList::eraseOpened);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench_, &Workbench::changed, seen, &WhenSeen::ask);
}

void SlotList::showDesign(std::optional<Id<model::Design>> design) {
    if (design_ != design) open(std::nullopt);
    design_ = design;
    refresh();
}

void SlotList::addSlot() {
    if (auto* button = findChild<QPushButton*>(QStringLiteral("designs.addSlot"))) button->showMenu();
}

SlotList::Row* SlotList::rowOf(Id<model::Slot> slot) {
    const auto at = std::find_if(rows_.begin(), rows_.end(), [&](const Row& r) { return r.slot == slot; });
    return at == rows_.end() ? nullptr : &*at;
}

SlotList::Row SlotList::makeRow(Id<model::Slot> slot) {
    auto* line = new QWidget;
    Row row{slot, line, new SlotHead, new Stepper(QString())};
    row.head->setObjectName(QStringLiteral("designs.slot.%1").arg(slot.value));
    row.count->setObjectName(QStringLiteral("designs.slot.%1.count").arg(slot.value));
    row.count->setRange(0, 1000);
    auto* box = new QHBoxLayout(line);
    box->setContentsMargins(grid(3), grid(0.5), grid(1), grid(0.5));
    box->setSpacing(grid(1));
    box->addWidget(row.head, 1);
    box->addWidget(row.count);
    connect(row.head, &SlotHead::clicked, this,
            [this, slot](bool on) { open(on ? std::optional(slot) : std::nullopt); });
    connect(row.head, &SlotHead::moveAsked, this, [this, slot](int by) { move(slot, by); });
    connect(row.head, &SlotHead::eraseAsked, this, [this, slot] { erase(slot); });
    connect(row.head, &SlotHead::stepAsked, this, [this, slot](int by) {
        const auto* at = rowOf(slot);
        if (at) step(static_cast<std::size_t>(at - rows_.data()), by);
    });
    connect(
        row.count, &Stepper::changed, this,
        [this, slot](qint64 n) { bench_.take(edits::setSlotCount(bench_.season(), slot, n)); },
        Qt::QueuedConnection);
    return row;
}

void SlotList::rebuild(const std::vector<const model::Slot*>& slots) {
    column_->removeWidget(detail_);
    std::vector<Row> rows;
    for (const auto* slot : slots) {
        auto* old = rowOf(slot->id);
        rows.push_back(old ? *old : makeRow(slot->id));
        column_->removeWidget(rows.back().line);
    }
    for (auto& row : rows_) {
        const bool kept =
            std::any_of(rows.begin(), rows.end(), [&](const Row& r) { return r.line == row.line; });
        if (kept) continue;
        row.line->hide();
        row.line->deleteLater();
    }
    rows_ = std::move(rows);
    clearLayout(*column_); // the rules between rows
    QWidget* before = nullptr;
    for (auto& row : rows_) {
        if (before) column_->addWidget(new Rule(Rule::Kind::hair));
        column_->addWidget(row.line);
        if (before) setTabOrder(before, row.head);
        setTabOrder(row.head, row.count);
        before = row.count;
        if (open_ != row.slot) continue;
        column_->addWidget(detail_);
        setTabOrder(row.count, detail_);
    }
}

void SlotList::fill(Row& row, const model::Slot& slot, int number) {
    row.head->setWords(number, text(slot.label), slotPlantsWords(bench_.season(), slot.id),
                       slotWords(bench_.season(), slot, number));
    row.head->setColour(slotColour(bench_.season(), slot.id));
    row.head->setChecked(open_ == slot.id);
    row.count->setAccessibleLabel(tr("Stems of %1").arg(text(slot.label)));
    row.count->follow(slot.count.value);
}

void SlotList::refresh() {
    const auto slots =
        design_ ? edits::slotsOf(bench_.season(), *design_) : std::vector<const model::Slot*>();
    if (open_ && !bench_.season().slots.find(*open_)) open(std::nullopt);
    const bool same = slots.size() == rows_.size() &&
                      std::equal(slots.begin(), slots.end(), rows_.begin(),
                                 [](const auto* s, const Row& r) { return s->id == r.slot; });
    if (!same) rebuild(slots);
    for (std::size_t i = 0; i < rows_.size(); ++i)
        fill(rows_[i], *slots[i], static_cast<int>(i) + 1);
    empty_->setVisible(rows_.empty());
    update();
}

void SlotList::open(std::optional<Id<model::Slot>> slot) {
    open_ = slot;
    column_->removeWidget(detail_);
    detail_->setVisible(slot.has_value());
    detail_->showSlot(slot);
    for (auto& row : rows_) {
        row.head->setChecked(slot == row.slot);
        if (slot != row.slot) continue;
        column_->insertWidget(column_->indexOf(row.line) + 1, detail_);
        setTabOrder(row.count, detail_);
    }
    update();
}

void SlotList::move(Id<model::Slot> slot, int by) {
    const auto edit = edits::moveSlot(bench_.season(), slot, by);
    if (!edit.empty() && bench_.take(edit)) focus(slot);
}

void SlotList::erase(Id<model::Slot> slot) {
    auto* at = rowOf(slot);
    const auto i = at ? at - rows_.data() : 0;
    if (!bench_.take(edits::eraseSlot(bench_.season(), slot)) || rows_.empty()) return;
    const auto next = std::min<std::ptrdiff_t>(i, static_cast<std::ptrdiff_t>(rows_.size()) - 1);
    rows_[static_cast<std::size_t>(next)].head->setFocus();
}

void SlotList::eraseOpened() {
    if (open_) erase(*open_);
}

void SlotList::step(std::size_t from, int by) {
    const auto to = static_cast<std::ptrdiff_t>(from) + by;
    if (to >= 0 && to < static_cast<std::ptrdiff_t>(rows_.size()))
        rows_[static_cast<std::size_t>(to)].head->setFocus();
}

void SlotList::focus(Id<model::Slot> slot) {
    if (auto* row = rowOf(slot)) row->head->setFocus();
}

void SlotList::paintEvent(QPaintEvent*) {
    const auto* row = open_ ? rowOf(*open_) : nullptr;
    if (!row) return;
    QPainter painter(this);
    const QRect line = row->line->geometry();
    painter.fillRect(line, currentPalette().of(Role::wash));
    paintTie(painter, QRectF(line.left(), line.center().y() - grid(3), grid(2.25), grid(6)),
             currentPalette().of(Role::green));
}

} // namespace withy::ui
