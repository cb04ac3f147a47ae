// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/slot_detail.h"

#include "ui/common/field_edit.h"
#include "ui/common/segments.h"
#include "ui/common/stepper.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/designs/plant_entry.h"
#include "ui/designs/plant_order.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/design_words.h"
#include "ui/paint/spacing.h"

#include <QGridLayout>
#include <QPushButton>

namespace withy::ui {

using model::TableKind;

SlotDetail::SlotDetail(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , plants_(new PlantOrder(bench))
    , add_(new PlantEntry(bench, QStringLiteral("designs.slot.addPlant"),
                          tr("Add a plant by typing its name")))
    , label_(new FieldEdit(bench, TableKind::slots, "label"))
    , purpose_(new FieldEdit(bench, TableKind::slots, "purpose"))
    , tier_(new Segments(tr("Tier"), {tierWords(model::Tier::low), tierWords(model::Tier::middle),
                                      tierWords(model::Tier::tall)}))
    , clump_(new FieldEdit(bench, TableKind::slots, "clump"))
    , vary_(new Stepper(tr("May vary by, in stems"))) {
    setProperty("look", QStringLiteral("mist"));
    tier_->setObjectName(QStringLiteral("designs.slot.tier"));
    vary_->setObjectName(QStringLiteral("designs.slot.vary"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(grid(6), grid(2), grid(3), grid(3));
    column->setSpacing(grid(1));
    auto* head = new TextLabel(TypeRole::caption, tr("May be filled by, best first"), Ink::caption);
    column->addWidget(head);
    column->addWidget(plants_);
    column->addWidget(add_);
    auto* rows = new QGridLayout;
    rows->setHorizontalSpacing(grid(2));
    rows->setVerticalSpacing(grid(1));
    rows->setColumnStretch(1, 1);
    addRow(*rows, tr("Called"), label_);
    addRow(*rows, tr("Purpose"), purpose_);
    addRow(*rows, tr("Tier"), tier_);
    addRow(*rows, tr("May vary by"), vary_);
    addRow(*rows, tr("Kept together"), clump_);
    column->addSpacing(grid(1));
    column->addLayout(rows);
    auto* erase = new QPushButton(tr("Take this slot out"));
    erase->setObjectName(QStringLiteral("designs.slot.erase"));
    erase->setProperty("look", QStringLiteral("link"));
    column->addWidget(erase, 0, Qt::AlignLeft);
    connect(erase, &QPushButton::clicked, this, &SlotDetail::eraseAsked);
    connect(add_, &PlantEntry::refused, this, &SlotDetail::refused);
    connect(add_, &PlantEntry::took, this, [this](qint64 plant) {
        if (!slot_) return;
        const auto edit = edits::addSlotPlant(bench_.season(), *slot_, Id<model::Plant>(plant));
        if (edit.empty())
            Q_EMIT refused(tr("That plant is in this slot already."));
        else
            bench_.take(edit);
    });
    connect(tier_, &Segments::chosen, this, [this](int i) {
        if (slot_)
            bench_.take(
                edits::setField(bench_.season(), {TableKind::slots, slot_->value}, "tier",
                                model::Value(std::string(model::wordOf(static_cast<model::Tier>(i))))));
    });
    connect(vary_, &Stepper::changed, this, [this](qint64 n) {
        if (slot_)
            bench_.take(edits::setField(bench_.season(), {TableKind::slots, slot_->value}, "may_vary_by",
                                        model::Value(std::int64_t{n})));
    });
    for (auto* field : {label_, purpose_, clump_})
        connect(field, &FieldEdit::refused, this, &SlotDetail::refused);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench_, &Workbench::changed, seen, &WhenSeen::ask);
}

void SlotDetail::addRow(QGridLayout& rows, const QString& label, QWidget* control) {
    const int row = rows.rowCount();
    auto* words = new TextLabel(TypeRole::text, label, Ink::second);
    words->setBuddy(control);
    rows.addWidget(words, row, 0, Qt::AlignVCenter);
    rows.addWidget(control, row, 1);
}

void SlotDetail::showSlot(std::optional<Id<model::Slot>> slot) {
    slot_ = slot;
    const auto id = slot ? std::optional(slot->value) : std::nullopt;
    for (auto* field : {label_, purpose_, clump_})
        field->show(id);
    if (slot) plants_->showSlot(*slot);
    refresh();
}

void SlotDetail::refresh() {
    const auto* s = slot_ ? bench_.season().slots.find(*slot_) : nullptr;
    if (!s) return;
    tier_->setCurrent(static_cast<int>(s->tier));
    vary_->setRange(0, std::max<qint64>(s->count.value, s->mayVaryBy.value));
    vary_->follow(s->mayVaryBy.value);
    plants_->setVisible(plants_->count() > 0);
}

void SlotDetail::enter() {
    if (plants_->count() > 0)
        plants_->setFocus();
    else
        add_->setFocus();
}

} // namespace withy::ui
