// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/design_edits.h"

#include "ui/logic/edits/garden_edits.h"
#include "ui/logic/format.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui::edits {

namespace {

using model::Design;
using model::PieceKind;
using model::Purpose;
using model::Tier;

struct Heights {
    int low, middle, tall, belowTie;
};

Heights usualHeights(PieceKind kind) {
    switch (kind) {
    case PieceKind::buttonhole:
        return {15, 30, 45, 45};
    case PieceKind::corsage:
        return {20, 30, 40, 35};
    case PieceKind::crown:
    case PieceKind::wreath:
        return {20, 35, 50, 40};
    case PieceKind::pedestal:
        return {120, 280, 450, 100};
    case PieceKind::sheaf:
    case PieceKind::spray:
        return {80, 220, 360, 200};
    case PieceKind::garland:
        return {60, 100, 140, 70};
    case PieceKind::budVase:
        return {45, 80, 120, 60};
    case PieceKind::handTied:
    case PieceKind::pewEnd:
        return {60, 100, 150, 120};
    case PieceKind::table:
    case PieceKind::basket:
        return {60, 110, 170, 100};
    }
    return {60, 110, 170, 100};
}

std::string nameOfDesign(const Season& season, Id<Design> id) {
    const auto* d = season.designs.find(id);
    return d ? d->name : std::string();
}

bool nameTaken(const Season& season, const std::string& name) {
    return std::any_of(season.designs.begin(), season.designs.end(),
                       [&](const auto& d) { return d.name == name; });
}

std::string freeDesignName(const Season& season, const std::string& name) {
    return freeName(name, [&](const std::string& n) { return nameTaken(season, n); });
}

Design plainDesign(const Season& season, const std::string& name, PieceKind kind) {
    const auto h = usualHeights(kind);
    Design d;
    d.id = season.designs.nextId();
    d.name = freeDesignName(season, name);
    d.kind = kind;
    d.heightLow = Millimetres(h.low);
    d.heightMiddle = Millimetres(h.middle);
    d.heightTall = Millimetres(h.tall);
    return d;
}

model::Slot nextSlot(const Season& season, Id<Design> design, Purpose purpose) {
    model::Slot slot;
    slot.id = season.slots.nextId();
    slot.design = design;
    slot.purpose = purpose;
    slot.tier = slotTier(purpose);
    const auto others = slotsOf(season, design);
    slot.label = freeName(slotLabel(purpose), [&](const std::string& name) {
        return std::any_of(others.begin(), others.end(), [&](const auto* s) { return s->label == name; });
    });
    for (const auto* other : others)
        slot.position = std::max(slot.position, other->position + 1);
    return slot;
}

model::SlotPlant choiceOf(const Season& season, Id<model::Slot> slot, Id<model::Plant> plant) {
    model::SlotPlant choice;
    choice.id = season.slotPlants.nextId();
    choice.slot = slot;
    choice.plant = plant;
    for (const auto* other : plantsOf(season, slot))
        choice.position = std::max(choice.position, other->position + 1);
    return choice;
}

template <class R>
void eraseOf(Edit& edit, const model::Table<R>& rows, Id<Design> design) {
    for (const auto& row : rows) {
        if (row.design == design) edit.erase(row.id);
    }
}

void eraseParts(Edit& edit, const Season& season, Id<Design> design) {
    for (const auto* slot : slotsOf(season, design)) {
        for (const auto* choice : plantsOf(season, slot->id))
            edit.erase(choice->id);
    }
    eraseOf(edit, season.slots, design);
    eraseOf(edit, season.designSundries, design);
    edit.erase(design);
}

} // namespace

Edit newDesignOf(const Season& season, const std::string& name, PieceKind kind,
                 std::optional<Id<model::Container>> container, Id<Design>& made) {
    Design d = plainDesign(season, name, kind);
    d.container = container;
    if (!container) {
        d.stemsBelowTie = Millimetres(usualHeights(kind).belowTie);
        d.loose = false;
    }
    made = d.id;
    return put("design.add", d, {d.name});
}

Edit newDesignInNewJar(const Season& season, const std::string& name, const std::string& jar,
                       Id<Design>& made) {
    model::Container c;
    c.id = season.containers.nextId();
    c.name = freeName(jar, [&](const std::string& n) {
        return std::any_of(season.containers.begin(), season.containers.end(),
                           [&](const auto& other) { return other.name == n; });
    });
    c.innerRim = Millimetres(60);
    c.innerDepth = Millimetres(115);
    Design d = plainDesign(season, name, PieceKind::table);
    d.container = c.id;
    made = d.id;
    return Edit("design.add", {d.name}).put(c).put(d);
}

Edit duplicateDesign(const Season& season, Id<Design> id, Id<Design>& made) {
    const auto* old = season.designs.find(id);
    if (!old) return Edit("design.copy");
    Design d = *old;
    d.id = made = season.designs.nextId();
    d.name = freeDesignName(season, old->name);
    d.picture.clear();
    d.trialCount.reset();
    d.trialDate.reset();
    d.trialNote.clear();
    Edit edit("design.copy", {old->name});
    edit.put(d);
    auto nextSlot = season.slots.nextId();
    auto nextChoice = season.slotPlants.nextId();
    auto nextSundry = season.designSundries.nextId();
    for (const auto* oldSlot : slotsOf(season, id)) {
        model::Slot slot = *oldSlot;
        slot.id = nextSlot;
        slot.design = d.id;
        edit.put(slot);
        for (const auto* oldChoice : plantsOf(season, oldSlot->id)) {
            model::SlotPlant choice = *oldChoice;
            choice.id = nextChoice;
            choice.slot = slot.id;
            edit.put(choice);
            ++nextChoice.value;
        }
        ++nextSlot.value;
    }
    for (const auto& sundry : season.designSundries) {
        if (sundry.design != id) continue;
        model::DesignSundry copy = sundry;
        copy.id = nextSundry;
        copy.design = d.id;
        edit.put(copy);
        ++nextSundry.value;
    }
    return edit;
}

std::vector<DesignUse> usesOf(const Season& season, Id<Design> design) {
    std::vector<DesignUse> uses;
    for (const auto& line : season.lines) {
        if (line.design != design) continue;
        const auto* booking = season.bookings.find(line.booking);
        uses.push_back({line.id, line.booking, booking ? booking->title : std::string(),
                        line.pieces.value + line.sparePieces.value});
    }
    return uses;
}

Edit eraseDesign(const Season& season, Id<Design> design) {
    Edit edit("design.erase", {nameOfDesign(season, design)});
    eraseParts(edit, season, design);
    return edit;
}

Edit eraseDesignAndLines(const Season& season, Id<Design> design) {
    Edit edit("design.erase", {nameOfDesign(season, design)});
    for (const auto& use : usesOf(season, design))
        join(edit, eraseLine(season, use.line));
    eraseParts(edit, season, design);
    return edit;
}

std::string slotLabel(Purpose purpose) {
    const auto word = [purpose] {
        switch (purpose) {
        case Purpose::focal:
            return QT_TRANSLATE_NOOP("Slot", "Face");
        case Purpose::spike:
            return QT_TRANSLATE_NOOP("Slot", "Spike");
        case Purpose::filler:
            return QT_TRANSLATE_NOOP("Slot", "Filler");
        case Purpose::foliage:
            return QT_TRANSLATE_NOOP("Slot", "Leaf");
        case Purpose::airy:
            return QT_TRANSLATE_NOOP("Slot", "Airy");
        case Purpose::trailing:
            return QT_TRANSLATE_NOOP("Slot", "Trail");
        }
        return "Slot";
    };
    return utf8(QCoreApplication::translate("Slot", word()));
}

Tier slotTier(Purpose purpose) {
    if (purpose == Purpose::spike || purpose == Purpose::airy) return Tier::tall;
    return purpose == Purpose::foliage || purpose == Purpose::trailing ? Tier::low : Tier::middle;
}

Purpose purposeOf(const model::Plant& p) {
    if (p.foliage) return Purpose::foliage;
    if (p.focal) return Purpose::focal;
    if (p.spike) return Purpose::spike;
    if (p.trailing) return Purpose::trailing;
    return p.airy ? Purpose::airy : Purpose::filler;
}

Edit addSlotFor(const Season& season, Id<Design> design, Purpose purpose, Id<model::Slot>& made) {
    const auto slot = nextSlot(season, design, purpose);
    made = slot.id;
    return put("slot.add", slot, {slot.label, nameOfDesign(season, design)});
}

Edit addSlotWith(const Season& season, Id<Design> design, Id<model::Plant> plant, Id<model::Slot>& made) {
    const auto* p = season.plants.find(plant);
    if (!p) return Edit("slot.add");
    auto slot = nextSlot(season, design, purposeOf(*p));
    made = slot.id;
    return Edit("slot.add", {p->name, nameOfDesign(season, design)})
        .put(slot)
        .put(choiceOf(season, slot.id, plant));
}

Edit setSlotCount(const Season& season, Id<model::Slot> id, std::int64_t count) {
    const auto* old = season.slots.find(id);
    if (!old) return Edit("slot.more");
    model::Slot slot = *old;
    slot.count = Stems(count);
    const auto more = count - old->count.value;
    return put(more < 0 ? "slot.fewer" : "slot.more", slot,
               {std::to_string(more < 0 ? -more : more), slot.label, nameOfDesign(season, slot.design)});
}

Edit moveSlot(const Season& season, Id<model::Slot> id, int by) {
    const auto* slot = season.slots.find(id);
    if (!slot) return Edit("record.move");
    const auto all = slotsOf(season, slot->design);
    const auto at = std::find(all.begin(), all.end(), slot) - all.begin();
    const auto to = std::clamp<std::ptrdiff_t>(at + by, 0, static_cast<std::ptrdiff_t>(all.size()) - 1);
    return moveRecord(season, {TableKind::slots, id.value}, "position", static_cast<int>(to), "design");
}

Edit addSlotPlant(const Season& season, Id<model::Slot> slot, Id<model::Plant> plant) {
    const auto* s = season.slots.find(slot);
    const auto* p = season.plants.find(plant);
    Edit edit("slot.plant", {p ? p->name : std::string(), s ? s->label : std::string()});
    if (!s || !p) return edit;
    for (const auto* choice : plantsOf(season, slot)) {
        if (choice->plant == plant) return edit;
    }
    return edit.put(choiceOf(season, slot, plant));
}

Edit eraseSlotPlant(const Season& season, Id<model::SlotPlant> id) {
    const auto* choice = season.slotPlants.find(id);
    const auto* p = choice ? season.plants.find(choice->plant) : nullptr;
    const auto* s = choice ? season.slots.find(choice->slot) : nullptr;
    return Edit("slot.plant.erase", {p ? p->name : std::string(), s ? s->label : std::string()}).erase(id);
}

Edit orderSlotPlants(const Season& season, Id<model::Slot> slot,
                     const std::vector<Id<model::SlotPlant>>& order) {
    const auto* s = season.slots.find(slot);
    Edit edit("slot.plant.order", {s ? s->label : std::string()});
    auto all = plantsOf(season, slot);
    std::stable_sort(all.begin(), all.end(), [&](const auto* a, const auto* b) {
        return std::find(order.begin(), order.end(), a->id) < std::find(order.begin(), order.end(), b->id);
    });
    std::int64_t position = 0;
    for (const auto* choice : all) {
        model::SlotPlant now = *choice;
        now.position = position++;
        if (now.position != choice->position) edit.put(now);
    }
    return edit;
}

std::vector<const model::Slot*> slotsOf(const Season& season, Id<Design> design) {
    std::vector<const model::Slot*> all;
    for (const auto& slot : season.slots) {
        if (slot.design == design) all.push_back(&slot);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const auto* a, const auto* b) { return a->position < b->position; });
    return all;
}

std::vector<const model::SlotPlant*> plantsOf(const Season& season, Id<model::Slot> slot) {
    std::vector<const model::SlotPlant*> all;
    for (const auto& choice : season.slotPlants) {
        if (choice.slot == slot) all.push_back(&choice);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const auto* a, const auto* b) { return a->position < b->position; });
    return all;
}

} // namespace withy::ui::edits
