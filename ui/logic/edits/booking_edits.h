// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/edits.h"

/// What the bookings' pages do beyond one field of one record.
namespace withy::ui::edits {

/// Where a copy of a booking went.
struct BookingCopy {
    Id<model::Booking> made;
    Day wanted; ///< the same weekday, 52 weeks on
    Day day;    ///< where it stands: within the season, still the same weekday

    bool moved() const { return wanted != day; }
};

/// Next year's supper: its brief, pieces, tables, drops, colours, swaps and questions, as an enquiry 52 weeks
/// on. Not its payments, rounds, tallies, what was made and came back, notes of the job, nor what was sent.
Edit duplicateBooking(const Season& season, Id<model::Booking> id, BookingCopy& copy);
/// What to say of it: where it stands, and why not where one would look for it.
QString copyWords(const Season& season, const BookingCopy& copy);

/// What to say of a booking that was erased.
QString erasedWords(const QString& title);

Edit renameBooking(const Season& season, Id<model::Booking> id, const std::string& title);
/// Held needs a day until when: a week from `today` (or from now to the event) where none is there.
Edit setStanding(const Season& season, Id<model::Booking> id, model::Standing standing,
                 std::optional<Day> today);

/// So many on each table of this row.
struct OnTables {
    Id<model::VenueTable> table;
    std::int64_t perTable = 1;
};

/// So many pieces of a design, with the booking's only drop where it has just one.
Edit addPieces(const Season& season, Id<model::Booking> booking, Id<model::Design> design,
               std::int64_t pieces, Id<model::Line>& made, std::optional<OnTables> on = std::nullopt);
Edit setSparePieces(const Season& season, Id<model::Line> line, std::int64_t pieces);
Edit setLineDrop(const Season& season, Id<model::Line> line, std::optional<Id<model::Drop>> drop);
/// So many of the line's pieces on each table of this row; nought takes them off.
Edit setPlacement(const Season& season, Id<model::Line> line, Id<model::VenueTable> table,
                  std::int64_t perTable);

/// Rows of tables, as read by readTables, in a venue.
Edit addTables(const Season& season, Id<model::Venue> venue, std::vector<model::VenueTable> tables);

/// Wished colours with their shares, beside those that are there.
Edit addColours(const Season& season, Id<model::Booking> booking, std::vector<model::BookingColour> colours);

} // namespace withy::ui::edits
