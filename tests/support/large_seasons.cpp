// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/large_seasons.h"

#include "core/model/edit.h"
#include "ui/logic/starting_seasons.h"

#include <string>

namespace withy::ui {

model::Season seasonWithBookings(int bookings) {
    auto season = demoSeason();
    const auto first = season;
    model::Edit more("test.many");
    auto booking = season.bookings.nextId();
    auto line = season.lines.nextId();
    int made = static_cast<int>(first.bookings.size());
    for (int turn = 1; made < bookings; ++turn) {
        for (const auto& from : first.bookings) {
            if (made++ >= bookings) break;
            auto b = from;
            b.id = booking;
            b.title += ", the " + std::to_string(turn + 1) + "th of a long run of the same";
            b.lookGoodUntil.reset();
            b.makeFrom.reset();
            more.put(b);
            for (const auto& l : first.lines) {
                if (l.booking != from.id) continue;
                auto copy = l;
                copy.id = line;
                copy.booking = booking;
                copy.drop.reset();
                more.put(copy);
                line = Id<model::Line>(line.value + 1);
            }
            booking = Id<model::Booking>(booking.value + 1);
        }
    }
    return model::apply(season, more).value().season;
}

model::Season seasonOfPlants(int plants) {
    const auto season = emptySeason(2027);
    model::Edit edit("test.many");
    for (int i = 1; i <= plants; ++i) {
        model::Plant p;
        p.id = Id<model::Plant>(i);
        p.name = (i % 7 == 0 ? "Zinnia, shade " : "Foliage, shade ") + std::to_string(i);
        edit.put(p);
    }
    return model::apply(season, edit).value().season;
}

} // namespace withy::ui
