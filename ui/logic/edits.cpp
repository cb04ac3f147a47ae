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
    for (const auto& mark : season.stepMarks) {
        if (mark.line == line) edit.erase(mark.id);
    }
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
    for (const auto& mark : season.stepMarks) {
        if (mark.booking == id && !mark.line) edit.erase(mark.id);
    }
    for (const auto& note : season.jobNotes) {
        if (note.booking != id) continue;
        eraseChildren(edit, season.jobNotePlants, &model::JobNotePlant::note, note.id);
        edit.erase(note.id);
    }
    return edit.erase(id);
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

Edit eraseSlot(const Season& season, Id<model::Slot> id) {
    Edit edit("slot.erase", {nameOf(season, model::TableKind::slots, id.value)});
    eraseChildren(edit, season.slotPlants, &model::SlotPlant::slot, id);
    return edit.erase(id);
}

} // namespace withy::ui::edits
