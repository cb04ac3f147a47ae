// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/booking_edits.h"

#include "core/model/schema.h"
#include "ui/logic/edits/share_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_tables.h"
#include "ui/logic/models/booking_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace withy::ui::edits {

namespace {

using model::nameOf;
using model::TableKind;

class BookingEditsSay {
    Q_DECLARE_TR_FUNCTIONS(Booking)

public:
    static QString copied(Day day) { return tr("Copied to %1, as an enquiry.").arg(longDay(day)); }

    static QString erased(const QString& title) {
        return tr("%1 is taken out. Undo puts it back.").arg(title);
    }

    static QString beyondSeason(Day day, Day wanted, Day last) {
        return tr("Copied to %1, as an enquiry: %2 lies outside the season, which ends on %3. Give it its "
                  "day once the season reaches that far.")
            .arg(longDay(day), longDay(wanted), longDay(last));
    }
};

constexpr int fiftyTwoWeeks = 364;

/// The latest day of the season, not after `wanted`, on the same weekday; else the first such one.
Day withinSeason(const model::Settings& s, Day wanted) {
    if (wanted > s.lastDay) wanted = wanted - (wanted - s.lastDay + 6) / 7 * 7;
    if (wanted < s.firstDay) wanted = wanted + (s.firstDay - wanted + 6) / 7 * 7;
    return std::min(wanted, s.lastDay);
}

std::optional<LocalTime> shifted(std::optional<LocalTime> t, int days) {
    if (t) t->day = t->day + days;
    return t;
}

/// Copies the children of one parent, giving each to its new parent; old ids to new.
template <class Child, class Parent, class Change>
std::map<Id<Child>, Id<Child>> copyChildren(Edit& edit, const model::Table<Child>& rows,
                                            Id<Parent> Child::*field, Id<Parent> from, Id<Parent> to,
                                            std::int64_t& next, Change change) {
    std::map<Id<Child>, Id<Child>> ids;
    for (const auto& row : rows) {
        if (row.*field != from) continue;
        Child copy = row;
        copy.id = Id<Child>(next++);
        copy.*field = to;
        change(copy);
        ids[row.id] = copy.id;
        edit.put(std::move(copy));
    }
    return ids;
}

template <class Child, class Parent, class Change>
std::map<Id<Child>, Id<Child>> copyAll(Edit& edit, const model::Table<Child>& rows, Id<Parent> Child::*field,
                                       Id<Parent> from, Id<Parent> to, Change change) {
    std::int64_t next = rows.nextId().value;
    return copyChildren(edit, rows, field, from, to, next, change);
}

void copyPieces(Edit& edit, const Season& season, Id<model::Booking> from, Id<model::Booking> to, int days) {
    const auto drops = copyAll(edit, season.drops, &model::Drop::booking, from, to, [&](model::Drop& d) {
        d.time.day = d.time.day + days;
        d.clearedAt = shifted(d.clearedAt, days);
    });
    const auto lines = copyAll(edit, season.lines, &model::Line::booking, from, to, [&](model::Line& l) {
        if (l.drop) l.drop = drops.contains(*l.drop) ? std::optional(drops.at(*l.drop)) : std::nullopt;
    });
    std::int64_t next = season.placements.nextId().value;
    for (const auto& [old, copy] : lines)
        copyChildren(edit, season.placements, &model::Placement::line, old, copy, next,
                     [](model::Placement&) {});
}

/// Open again: what was answered last time may not hold this time.
void copyQuestions(Edit& edit, const Season& season, Id<model::Booking> from, Id<model::Booking> to,
                   int days) {
    std::int64_t next = season.questions.nextId().value;
    for (const auto& old : season.questions) {
        if (old.booking != from || isOfOneCutting(old)) continue;
        model::Question q = old;
        q.id = Id<model::Question>(next++);
        q.booking = to;
        q.answer.clear();
        if (q.neededBy) q.neededBy = *q.neededBy + days;
        edit.put(std::move(q));
    }
}

/// One changed line, with the design's name for undo.
template <class Change>
Edit changeLine(const Season& season, Id<model::Line> id, const char* key, std::vector<std::string> args,
                Change change) {
    const auto* old = season.lines.find(id);
    if (!old) return Edit(key);
    model::Line line = *old;
    change(line);
    args.push_back(nameOf(season, TableKind::designs, line.design.value));
    return put(key, line, std::move(args));
}

std::string titleOf(const Season& season, Id<model::Booking> id) {
    return nameOf(season, TableKind::bookings, id.value);
}

} // namespace

Edit duplicateBooking(const Season& season, Id<model::Booking> id, BookingCopy& copy) {
    const auto* old = season.bookings.find(id);
    if (!old) return Edit("booking.duplicate");
    copy.wanted = old->eventStart.day + fiftyTwoWeeks;
    copy.day = withinSeason(season.theSettings(), copy.wanted);
    const int days = copy.day - old->eventStart.day;
    model::Booking b = *old;
    b.id = copy.made = season.bookings.nextId();
    b.eventStart.day = b.eventStart.day + days;
    b.eventEnd.day = b.eventEnd.day + days;
    b.lookGoodUntil = shifted(b.lookGoodUntil, days);
    b.makeFrom = shifted(b.makeFrom, days);
    b.standing = model::Standing::enquiry;
    b.heldUntil.reset();
    Edit edit("booking.duplicate", {old->title});
    edit.put(b);
    copyPieces(edit, season, id, b.id, days);
    copyAll(edit, season.bookingColours, &model::BookingColour::booking, id, b.id, [](auto&) {});
    copyAll(edit, season.agreedSwaps, &model::AgreedSwap::booking, id, b.id, [](auto&) {});
    copyQuestions(edit, season, id, b.id, days);
    return edit;
}

QString copyWords(const Season& season, const BookingCopy& copy) {
    return copy.moved() ? BookingEditsSay::beyondSeason(copy.day, copy.wanted, season.theSettings().lastDay)
                        : BookingEditsSay::copied(copy.day);
}

QString erasedWords(const QString& title) {
    return BookingEditsSay::erased(title);
}

Edit renameBooking(const Season& season, Id<model::Booking> id, const std::string& title) {
    const auto* old = season.bookings.find(id);
    if (!old) return Edit("booking.change");
    model::Booking b = *old;
    b.title = title;
    return put("booking.change", b, {title});
}

Edit setStanding(const Season& season, Id<model::Booking> id, model::Standing standing,
                 std::optional<Day> today) {
    const auto* old = season.bookings.find(id);
    if (!old) return Edit("booking.standing");
    model::Booking b = *old;
    b.standing = standing;
    // The day of an earlier hold that is over holds nothing.
    const bool over = b.heldUntil && today && *b.heldUntil < *today;
    if (standing == model::Standing::held && (!b.heldUntil || over))
        b.heldUntil = today ? std::min(*today + 7, b.eventStart.day) : b.eventStart.day - 7;
    return put("booking.standing", b, {b.title, utf8(standingWords(b))});
}

Edit addPieces(const Season& season, Id<model::Booking> booking, Id<model::Design> design,
               std::int64_t pieces, Id<model::Line>& made, std::optional<OnTables> on) {
    model::Line line;
    line.id = made = season.lines.nextId();
    line.booking = booking;
    line.design = design;
    line.pieces = Pieces(pieces);
    int drops = 0;
    for (const auto& d : season.drops) {
        if (d.booking == booking) line.drop = ++drops == 1 ? std::optional(d.id) : std::nullopt;
    }
    auto edit = put(
        "line.add", line,
        {std::to_string(pieces), nameOf(season, TableKind::designs, design.value), titleOf(season, booking)});
    if (on) edit.put(model::Placement{season.placements.nextId(), line.id, on->table, on->perTable});
    return edit;
}

Edit setSparePieces(const Season& season, Id<model::Line> id, std::int64_t pieces) {
    return changeLine(season, id, "line.spare", {std::to_string(pieces)},
                      [&](model::Line& l) { l.sparePieces = Pieces(pieces); });
}

Edit setLineDrop(const Season& season, Id<model::Line> id, std::optional<Id<model::Drop>> drop) {
    return changeLine(season, id, "line.drop", {}, [&](model::Line& l) { l.drop = drop; });
}

Edit setPlacement(const Season& season, Id<model::Line> line, Id<model::VenueTable> table,
                  std::int64_t perTable) {
    const auto* l = season.lines.find(line);
    model::Placement p;
    p.id = season.placements.nextId();
    p.line = line;
    p.table = table;
    bool there = false;
    for (const auto& old : season.placements) {
        if (old.line != line || old.table != table) continue;
        p = old;
        there = true;
    }
    p.perTable = perTable;
    Edit edit("line.tables", {l ? nameOf(season, TableKind::designs, l->design.value) : std::string()});
    if (perTable > 0) return edit.put(p);
    return there ? edit.erase(p.id) : edit;
}

Edit addTables(const Season& season, Id<model::Venue> venue, std::vector<model::VenueTable> tables) {
    Edit edit("venue.tables", {utf8(tablesWords(tables)), nameOf(season, TableKind::venues, venue.value)});
    std::int64_t next = season.venueTables.nextId().value;
    for (auto& t : tables) {
        t.id = Id<model::VenueTable>(next++);
        t.venue = venue;
        edit.put(t);
    }
    return edit;
}

Edit addColours(const Season& season, Id<model::Booking> booking, std::vector<model::BookingColour> colours) {
    Edit edit("booking.colours", {titleOf(season, booking)});
    std::int64_t next = season.bookingColours.nextId().value;
    for (auto& c : colours) {
        c.id = Id<model::BookingColour>(next++);
        c.booking = booking;
        edit.put(c);
    }
    return edit;
}

} // namespace withy::ui::edits
