// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cover/demo_files.h"
#include "tests/shedplan/shed_sample.h"

#include <gtest/gtest.h>

#include <sstream>

namespace withy::plan::tests {

namespace {

/// Everything of it that is a figure, in words.
std::string told(const ShedPlan& shed) {
    std::ostringstream out;
    for (const auto& day : shed.ribbon)
        for (const auto& plan : day->ribbons) {
            out << day->day.iso() << ' ' << plan->ribbon.value << ' ' << plan->missingLength.value << ' '
                << plan->waste.value << plan->proved << plan->counted;
            for (const auto& bar : plan->bars)
                for (const auto& cut : bar.cuts)
                    out << ' ' << bar.from.id.value << ':' << cut.line.value << 'x' << cut.count;
            out << '\n';
        }
    for (const auto& item : shed.kit) {
        out << static_cast<int>(item.item.table) << '.' << item.item.id << ' ' << item.out << ' '
            << item.promised << ' ' << item.here.value_or(-1)
            << (item.firstShort ? item.firstShort->day.iso() : "");
        for (const auto& level : item.levels)
            out << ' ' << level.from.number << '=' << level.away << '/' << level.awayFirm;
        out << '\n';
    }
    for (const auto& line : shed.buying)
        out << line.item.id << ' ' << line.amount << ' ' << line.neededBy.iso() << '\n';
    for (const auto& r : shed.returns)
        out << r.booking.value << ' ' << r.missing << ' ' << r.late << '\n';
    for (const auto& [id, packed] : shed.packing) {
        out << id.value << ' ' << packed->mass.value << ' ' << packed->carryLitres << ' '
            << packed->entries.size();
        for (const auto& drop : packed->drops)
            for (const auto& tray : drop.trays)
                for (const auto& piece : tray.pieces)
                    out << ' ' << piece.line.value << '@' << piece.centre.x << '#' << piece.tableNumber;
        out << '\n';
    }
    for (const auto& [id, tables] : shed.tables)
        for (const auto& table : tables->tables)
            out << id.value << ' ' << table.onEach << ' ' << (table.fit ? table.fit->eachSide : -1) << '\n';
    for (const auto& f : shed.findings)
        out << findingWord(f.finding.code) << (f.booking ? f.booking->value : 0) << '\n';
    return out.str();
}

struct Change {
    const char* name;
    model::Edit edit;
};

std::vector<Change> changes(const model::Season& season) {
    auto line = *season.lines.begin();
    line.pieces = line.pieces + Pieces(3);
    auto length = *season.ribbonLengths.begin();
    length.length = Millimetres(4000);
    auto jar = *season.containers.begin();
    jar.owned = 20;
    auto tray = *season.holders.begin();
    tray.innerLength = Millimetres(700);
    auto table = *season.venueTables.begin();
    table.width = Millimetres(700);
    auto drop = *season.drops.begin();
    drop.clearedAt = drop.time + Minutes(60 * 24 * 9);
    auto booking = *season.bookings.begin();
    booking.standing = model::Standing::settled;
    auto placement = *season.placements.begin();
    placement.perTable = 1;
    auto van = *season.vehicles.begin();
    van.plateLoadKg = 10;
    auto back = *season.returns.begin();
    back.broken = 1;
    back.back = 1;
    return {{"pieces", model::Edit("t").put(line)},      {"reel", model::Edit("t").put(length)},
            {"jars", model::Edit("t").put(jar)},         {"tray", model::Edit("t").put(tray)},
            {"table", model::Edit("t").put(table)},      {"clearing", model::Edit("t").put(drop)},
            {"standing", model::Edit("t").put(booking)}, {"placement", model::Edit("t").put(placement)},
            {"vehicle", model::Edit("t").put(van)},      {"return", model::Edit("t").put(back)}};
}

} // namespace

/// Keeping what did not change gives the plan made anew, after each of these edits, and each moves something.
TEST(ShedKeep, ReplanIsThePlanMadeAnew) {
    const auto season = withy::tests::demoFromFiles();
    const auto options = on(6, 1);
    const auto first = plan::plan(season, options);
    for (const auto& change : changes(season)) {
        SCOPED_TRACE(change.name);
        const auto after = applied(season, change.edit);
        const auto kept = replan(after, options, season, first, options);
        ASSERT_TRUE(kept);
        EXPECT_EQ(told(*kept->shed), told(*plan::plan(after, options).shed));
        EXPECT_NE(told(*kept->shed), told(*first.shed));
    }
    const auto same = replan(season, options, season, first, options);
    EXPECT_EQ(same->shed, first.shed); // the very same one
}

TEST(ShedKeep, PartsOfOtherBookingsStay) {
    const auto season = withy::tests::demoFromFiles();
    const auto first = plan::plan(season, on(6, 1));
    auto line = *season.lines.begin();
    line.pieces = line.pieces + Pieces(3);
    const auto after = applied(season, model::Edit("t").put(line));
    const auto kept = replan(after, on(6, 1), season, first, on(6, 1));
    std::size_t same = 0;
    for (const auto& [id, packed] : kept->shed->packing)
        same += packed == first.shed->packing.at(id) ? 1 : 0;
    EXPECT_EQ(same, first.shed->packing.size() - 1);
}

} // namespace withy::plan::tests
