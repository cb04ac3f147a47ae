// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cover/demo_files.h"

#include "core/exchange/table_csv.h"
#include "core/model/edit.h"
#include "core/model/schema.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace withy::tests {

model::Season demoFromFiles() {
    model::Edit all("season.load");
    model::Season names; // only to look up names and ids while reading
    for (const auto& table : model::allTables()) {
        std::ifstream file(std::string(WITHY_RESOURCES) + "/demo/" + std::string(table.name) + ".csv");
        std::stringstream csv;
        csv << file.rdbuf();
        if (csv.str().empty()) continue;
        const auto edit = exchange::importTable(names, table.kind, csv.str());
        if (!edit.ok()) throw std::runtime_error("the demo season does not read: " + std::string(table.name));
        for (const auto& record : edit->puts()) {
            all.put(record);
            model::putRecord(names, record);
        }
    }
    auto applied = model::apply(model::Season{}, all);
    if (!applied.ok()) throw std::runtime_error("the demo season is not sound");
    return std::move(applied).value().season;
}

model::Season demoManyTimes(int bookings) {
    auto season = demoFromFiles();
    const auto first = season;
    auto booking = season.bookings.nextId();
    auto line = season.lines.nextId();
    int made = static_cast<int>(first.bookings.size());
    while (made < bookings) {
        for (const auto& from : first.bookings) {
            if (made++ >= bookings) break;
            auto b = from;
            b.id = booking;
            b.lookGoodUntil.reset();
            b.makeFrom.reset();
            season.bookings.put(b);
            for (const auto& l : first.lines) {
                if (l.booking != from.id) continue;
                auto copy = l;
                copy.id = line;
                copy.booking = booking;
                copy.drop.reset();
                season.lines.put(copy);
                line = Id<model::Line>(line.value + 1);
            }
            booking = Id<model::Booking>(booking.value + 1);
        }
    }
    return season;
}

} // namespace withy::tests
