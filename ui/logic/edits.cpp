// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits.h"

#include "core/model/schema.h"
#include "ui/logic/format.h"

namespace withy::ui::edits {

namespace {

using model::nameOf;

/// Erases every record of one table that refers to `parent` by `field`.
template <class Child, class Parent>
void eraseChildren(Edit& edit, const model::Table<Child>& rows, Id<Parent> Child::*field, Id<Parent> parent) {
    for (const auto& row : rows) {
        if (row.*field == parent) edit.erase(row.id);
    }
}

void eraseLineParts(Edit& edit, const Season& season, Id<model::Line> line) {
    eraseChildren(edit, season.placements, &model::Placement::line, line);
    eraseChildren(edit, season.made, &model::Made::line, line);
    edit.erase(line);
}

} // namespace

Edit newBooking(const Season& season, const std::string& title, Day day, Id<model::Booking>& made) {
    model::Booking b;
    b.id = made = season.bookings.nextId();
    b.title = title;
    b.eventStart = LocalTime{day, 12 * 60};
    b.eventEnd = LocalTime{day, 16 * 60};
    return put("booking.add", b, {title});
}

Edit eraseBooking(const Season& season, Id<model::Booking> id) {
    const auto* b = season.bookings.find(id);
    Edit edit("booking.erase", {b ? b->title : std::string()});
    for (const auto& line : season.lines) {
        if (line.booking == id) eraseLineParts(edit, season, line.id);
    }
    eraseChildren(edit, season.drops, &model::Drop::booking, id);
    eraseChildren(edit, season.payments, &model::Payment::booking, id);
    eraseChildren(edit, season.bookingColours, &model::BookingColour::booking, id);
    eraseChildren(edit, season.agreedSwaps, &model::AgreedSwap::booking, id);
    eraseChildren(edit, season.questions, &model::Question::booking, id);
    eraseChildren(edit, season.sentVersions, &model::SentVersion::booking, id);
    eraseChildren(edit, season.returns, &model::Return::booking, id);
    eraseChildren(edit, season.roundBookings, &model::RoundBooking::booking, id);
    for (const auto& note : season.jobNotes) {
        if (note.booking != id) continue;
        eraseChildren(edit, season.jobNotePlants, &model::JobNotePlant::note, note.id);
        edit.erase(note.id);
    }
    return edit.erase(id);
}

Edit addLine(const Season& season, Id<model::Booking> booking, Id<model::Design> design,
             std::int64_t pieces) {
    model::Line line;
    line.id = season.lines.nextId();
    line.booking = booking;
    line.design = design;
    line.pieces = Pieces(pieces);
    return put("line.add", line,
               {std::to_string(pieces), nameOf(season, model::TableKind::designs, design.value),
                nameOf(season, model::TableKind::bookings, booking.value)});
}

Edit setPieces(const Season& season, Id<model::Line> id, std::int64_t pieces) {
    const auto* old = season.lines.find(id);
    if (!old) return Edit("line.pieces");
    model::Line line = *old;
    line.pieces = Pieces(pieces);
    return put("line.pieces", line,
               {std::to_string(pieces), nameOf(season, model::TableKind::designs, line.design.value)});
}

Edit eraseLine(const Season& season, Id<model::Line> id) {
    const auto* line = season.lines.find(id);
    Edit edit("line.erase",
              {line ? nameOf(season, model::TableKind::designs, line->design.value) : std::string()});
    eraseLineParts(edit, season, id);
    return edit;
}

Edit newDesign(const Season& season, const std::string& name, std::optional<Id<model::Container>> container,
               Id<model::Design>& made) {
    model::Design d;
    d.id = made = season.designs.nextId();
    d.name = name;
    d.container = container;
    d.kind = container ? model::PieceKind::table : model::PieceKind::handTied;
    return put("design.add", d, {name});
}

Edit newContainer(const Season& season, const std::string& name, Millimetres innerRim, Millimetres innerDepth,
                  Id<model::Container>& made) {
    model::Container c;
    c.id = made = season.containers.nextId();
    c.name = name;
    c.innerRim = innerRim;
    c.innerDepth = innerDepth;
    return put("container.add", c, {name});
}

std::optional<Edit> setPrice(const Season& season, Id<model::Design> id, const std::string& typed) {
    const auto* old = season.designs.find(id);
    if (!old) return Edit("design.price");
    model::Design d = *old;
    d.price.reset();
    if (!typed.empty()) {
        d.price = parseAmount(typed, minorDigits(season.theSettings().currency).value_or(2));
        if (!d.price) return std::nullopt;
    }
    return put("design.price", d, {d.name});
}

Edit addSlot(const Season& season, Id<model::Design> design, const std::string& label, Id<model::Plant> plant,
             std::int64_t count) {
    model::Slot slot;
    slot.id = season.slots.nextId();
    slot.design = design;
    slot.label = label;
    slot.count = Stems(count);
    for (const auto& other : season.slots) {
        if (other.design == design) slot.position = std::max(slot.position, other.position + 1);
    }
    model::SlotPlant choice;
    choice.id = season.slotPlants.nextId();
    choice.slot = slot.id;
    choice.plant = plant;
    return Edit("slot.add", {label, nameOf(season, model::TableKind::designs, design.value)})
        .put(slot)
        .put(choice);
}

Edit setCount(const Season& season, Id<model::Slot> id, std::int64_t count) {
    const auto* old = season.slots.find(id);
    if (!old) return Edit("slot.count");
    model::Slot slot = *old;
    slot.count = Stems(count);
    return put("slot.count", slot, {std::to_string(count), slot.label});
}

Edit eraseSlot(const Season& season, Id<model::Slot> id) {
    Edit edit("slot.erase", {nameOf(season, model::TableKind::slots, id.value)});
    eraseChildren(edit, season.slotPlants, &model::SlotPlant::slot, id);
    return edit.erase(id);
}

Edit addPayment(const Season& season, Id<model::Booking> booking, Day day, Money money) {
    model::Payment p;
    p.id = season.payments.nextId();
    p.booking = booking;
    p.date = day;
    p.kind = model::PaymentKind::balance;
    p.amount = money;
    return put("payment.add", p, {nameOf(season, model::TableKind::bookings, booking.value)});
}

} // namespace withy::ui::edits
