// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/table_plan.h"
#include "tests/shedplan/shed_sample.h"

#include <gtest/gtest.h>

#include <cmath>

namespace withy::plan::tests {

namespace {

struct TableAsked {
    model::TableShape shape = model::TableShape::rectangular;
    std::int64_t length = 1830;
    std::int64_t width = 760;
    std::int64_t covers = 8;
    std::int64_t howMany = 12;
};

model::Season hall(const TableAsked& asked, std::int64_t spread, std::int64_t perTable = 2,
                   std::int64_t tall = 170) {
    model::Edit e("t");
    model::Venue v;
    v.id = Id<model::Venue>(1);
    v.name = "Hall";
    e.put(v);
    model::VenueTable t;
    t.id = Id<model::VenueTable>(1);
    t.venue = v.id;
    t.label = "Trestle";
    t.shape = asked.shape;
    t.length = Millimetres(asked.length);
    if (t.shape == model::TableShape::rectangular) t.width = Millimetres(asked.width);
    t.covers = asked.covers;
    t.howMany = asked.howMany;
    e.put(t);
    auto season = shedSeason({{1, 11, 24}});
    auto b = *season.bookings.begin();
    b.venue = v.id;
    e.put(b);
    model::Placement p;
    p.id = Id<model::Placement>(1);
    p.line = Id<model::Line>(1);
    p.table = t.id;
    p.perTable = perTable;
    e.put(p);
    auto d = jarDesign();
    d.spread = Millimetres(spread);
    d.heightTall = Millimetres(tall);
    e.put(d);
    return applied(season, e);
}

const PlacedTable& tableOf(const Plan& plan) {
    return plan.shed->tables.at(Id<model::Booking>(1))->tables.at(0);
}

} // namespace

/// Settings of 260 on both sides of a trestle of 760 leave 240; a spread of 210 has (240 - 210) / 2 = 15 each
/// side, 230 has 5, 252 is 6 over. Six sit along 1830 mm, three a side of 600, two at the ends.
TEST(TablePlan, FitsByHand) {
    struct Row {
        std::int64_t spread;
        double eachSide;
        packing::TableFit fit;
    };

    for (const auto& row : {Row{210, 15, packing::TableFit::fits}, Row{230, 5, packing::TableFit::tight},
                            Row{252, -6, packing::TableFit::tooBig}}) {
        SCOPED_TRACE(row.spread);
        const auto plan = plan::plan(hall({}, row.spread), on(9, 1));
        const auto& table = tableOf(plan);
        EXPECT_EQ(table.top.coversAtEnds, 2);
        EXPECT_EQ(table.middle.width.value, 240);
        ASSERT_TRUE(table.fit);
        EXPECT_DOUBLE_EQ(table.fit->eachSide, row.eachSide);
        EXPECT_EQ(table.fit->fit, row.fit);
        EXPECT_EQ(table.largest, honeyJar); // 76 mm wide, the only one there is
        EXPECT_EQ(finds(*plan.shed, ShedCode::pieceTooBigForTable), row.eachSide < 0);
        EXPECT_EQ(finds(*plan.shed, ShedCode::pieceTightOnTable), row.eachSide == 5);
        EXPECT_FALSE(finds(*plan.shed, ShedCode::tooManyCovers));
    }
}

TEST(TablePlan, CoversBeyondTheEdgeAreNamed) {
    const auto plan = plan::plan(hall({.covers = 9}, 210), on(9, 1)); // three a side and one at each end
    EXPECT_TRUE(finds(*plan.shed, ShedCode::tooManyCovers));
    EXPECT_TRUE(tableOf(plan).fit); // drawn as it is
    // Chords of 600 on a table of 1520: pi / asin(600 / 1520) = 7.7, so seven sit there and eight do not.
    for (const std::int64_t covers : {7, 8}) {
        const auto round = plan::plan(
            hall({.shape = model::TableShape::round, .length = 1520, .covers = covers, .howMany = 4}, 210, 1),
            on(9, 1));
        EXPECT_EQ(finds(*round.shed, ShedCode::tooManyCovers), covers == 8);
    }
}

/// A jar of 120 mm with heads 170 over its rim stands 290 high: 110 under eyes at 400.
TEST(TablePlan, SightlineByHand) {
    const auto low = plan::plan(hall({}, 210), on(9, 1));
    ASSERT_TRUE(tableOf(low).sight);
    EXPECT_EQ(tableOf(low).sight->spare.value, 110);
    const auto tall = plan::plan(hall({}, 210, 2, 300), on(9, 1));
    EXPECT_EQ(tableOf(tall).sight->sight, packing::Sightline::inTheWay);
    EXPECT_TRUE(finds(*tall.shed, ShedCode::sightInTheWay));
}

TEST(TablePlan, TablesLeftBareAreCounted) {
    const auto plan = plan::plan(hall({.howMany = 15}, 210), on(9, 1)); // 24 jars, two a table: twelve tables
    EXPECT_EQ(tableOf(plan).without, 3);
    EXPECT_TRUE(finds(*plan.shed, ShedCode::tablesWithoutPieces));
}

/// 24 jars, two a table, on ten tables of one kind and ten of another: 20 on the first ten, 4 on two of the
/// next.
TEST(TablePlan, NoPieceStandsOnTwoTables) {
    auto season = hall({.howMany = 10}, 210);
    auto second = *season.venueTables.begin();
    second.id = Id<model::VenueTable>(2);
    second.label = "Long table";
    auto placed = *season.placements.begin();
    placed.id = Id<model::Placement>(2);
    placed.table = second.id;
    season = applied(season, model::Edit("t").put(second).put(placed));
    const auto plan = plan::plan(season, on(9, 1));
    const auto& tables = plan.shed->tables.at(Id<model::Booking>(1))->tables;
    ASSERT_EQ(tables.size(), 2U);
    EXPECT_EQ(tables[0].without, 0);
    EXPECT_EQ(tables[1].without, 8);
}

TEST(TablePlan, StemsThatGrowOnStandHigher) {
    auto season = hall({}, 210);
    auto plant = model::sample::plant(1, "Tulip");
    plant.growsOnMmPerDay = 24;
    plant.q10 = 2;
    model::Slot slot;
    slot.id = Id<model::Slot>(1);
    slot.design = supperJar;
    slot.label = "Tulip";
    slot.count = Stems(3);
    model::SlotPlant fill;
    fill.id = Id<model::SlotPlant>(1);
    fill.slot = slot.id;
    fill.plant = plant.id;
    auto settings = model::sample::settings();
    // All at 20 C: each hour adds one millimetre, whatever the run-up's times are.
    settings.storeCelsius = settings.benchCelsius = settings.vanCelsius = settings.venueCelsius = 20;
    season = applied(season, model::Edit("t").put(plant).put(slot).put(fill).put(settings));
    const auto plan = plan::plan(season, on(9, 1));
    const auto& booked = *plan.bookings.at(Id<model::Booking>(1));
    const double hours =
        static_cast<double>((model::sample::at(2027, 9, 11, 22, 30) - booked.makeUpStart).value) / 60;
    EXPECT_NEAR(static_cast<double>(tableOf(plan).pieces[0].grown.value), hours, 1.0);
    EXPECT_EQ(tableOf(plan).pieces[0].top.value, 290 + tableOf(plan).pieces[0].grown.value);
}

} // namespace withy::plan::tests
