// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/shots/overfull.h"

#include "core/model/edit.h"
#include "ui/logic/starting_seasons.h"

#include <algorithm>

namespace withy::ui {

model::Season overfullSeason(int bookings) {
    auto season = demoSeason();
    const auto first = season;
    model::Edit more("test.overfull");
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

} // namespace withy::ui
