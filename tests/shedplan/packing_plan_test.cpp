// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/piece_water.h"
#include "tests/cover/demo_files.h"
#include "tests/shedplan/shed_sample.h"

#include <gtest/gtest.h>

#include <cmath>

namespace withy::plan::tests {

namespace {

model::Holder trayRecord(std::int64_t length, std::int64_t width, std::int64_t owned = 8) {
    model::Holder h;
    h.id = slatted;
    h.name = "Slatted tray";
    h.kind = model::HolderKind::tray;
    h.innerLength = Millimetres(length);
    h.innerWidth = Millimetres(width);
    h.tare = Grams(1400);
    h.owned = owned;
    return h;
}

model::Vehicle vanRecord(double plateKg, std::int64_t length = 2300) {
    model::Vehicle v;
    v.id = Id<model::Vehicle>(1);
    v.name = "Van";
    v.floorLength = Millimetres(length);
    v.floorWidth = Millimetres(1400);
    v.plateLoadKg = plateKg;
    return v;
}

model::Season packedSeason(const model::Holder& tray, const model::Vehicle& van, std::int64_t jars = 24) {
    return applied(shedSeason({{1, 11, jars}}), model::Edit("t").put(tray).put(van));
}

const BookingPacking& packingOf(const Plan& plan, std::int64_t booking = 1) {
    return *plan.shed->packing.at(Id<model::Booking>(booking));
}

double apart(const packing::Place& a, const packing::Place& b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

/// Nothing in a tray nearer than the padding to a neighbour, nor over its side; every piece once.
void expectPacked(const BookingPacking& packed, const BookingPlan& plan) {
    std::map<Id<model::Line>, std::int64_t> pieces;
    for (const auto& line : plan.lines)
        pieces[line.line] = line.pieces.value;
    for (const auto& drop : packed.drops)
        for (const auto& tray : drop.trays)
            for (std::size_t i = 0; i < tray.pieces.size(); ++i) {
                const auto& p = tray.pieces[i];
                const auto half = static_cast<double>(p.diameter.value) / 2;
                --pieces[p.line];
                EXPECT_GE(p.centre.x, half - 1e-3);
                EXPECT_GE(p.centre.y, half - 1e-3);
                EXPECT_LE(p.centre.x, static_cast<double>(tray.length.value) - half + 1e-3);
                EXPECT_LE(p.centre.y, static_cast<double>(tray.width.value) - half + 1e-3);
                for (std::size_t j = 0; j < i; ++j) {
                    const auto& q = tray.pieces[j];
                    EXPECT_GE(apart(p.centre, q.centre), half + static_cast<double>(q.diameter.value) / 2 +
                                                             static_cast<double>(usualPadding.value) - 1e-3);
                }
            }
    for (const auto& entry : packed.entries)
        if (entry.line && entry.kind != LoadKind::bucket) pieces[*entry.line] -= entry.count;
    for (const auto& [line, open] : pieces)
        EXPECT_EQ(open, 0) << "line " << line.value;
}

/// The jar's four stems, shared by three plants that drink; a booking in a hall from the afternoon on.
model::Edit drinkingJars(std::int64_t stems, double uptake) {
    model::Edit e("t");
    model::Slot slot;
    slot.id = Id<model::Slot>(1);
    slot.design = supperJar;
    slot.label = "faces";
    slot.count = Stems(stems);
    e.put(slot);
    for (std::int64_t i = 1; i <= 3; ++i) {
        auto plant = model::sample::plant(i, "Plant " + std::to_string(i));
        plant.uptakeMlPerDay = uptake;
        e.put(plant);
        model::SlotPlant choice;
        choice.id = Id<model::SlotPlant>(i);
        choice.slot = slot.id;
        choice.plant = plant.id;
        choice.position = i;
        choice.share = 1;
        e.put(choice);
    }
    return e;
}

std::int64_t stemsIn(const designs::WaterCourse& course) {
    double stems = 0;
    for (const auto& line : course.working)
        if (line.what == "stems") stems += line.value;
    return std::llround(stems);
}

const Finding* findingOf(const ShedPlan& shed, FindingCode code) {
    for (const auto& f : shed.findings)
        if (f.finding.code == code) return &f.finding;
    return nullptr;
}

bool overlap(const packing::LoadedItem& a, const packing::LoadedItem& b) {
    return a.x < b.x + b.length && b.x < a.x + a.length && a.y < b.y + b.width && b.y < a.y + a.width;
}

} // namespace

// By hand: jars of 210 and 5 between them stand 4 x 2 in 860 x 430 exactly. 400 ml, three quarters: 300 ml
// less no stems; 60 % of it, 180 ml, goes along, 120 ml are poured in there: 24 x 120 = 2.88 l. A jar on the
// road weighs 200 + 180 = 380 g, a tray 1400 + 8 x 380 = 4440 g, three of them 13.32 kg.
TEST(PackingPlan, TwentyFourJarsAsCountedByHand) {
    const auto plan = plan::plan(packedSeason(trayRecord(860, 430), vanRecord(620)), on(9, 1));
    const auto& packed = packingOf(plan);
    ASSERT_EQ(packed.drops.size(), 1u);
    ASSERT_EQ(packed.drops[0].trays.size(), 3u);
    for (const auto& tray : packed.drops[0].trays) {
        EXPECT_EQ(tray.pieces.size(), 8u);
        EXPECT_EQ(tray.weight.value, 4440);
        EXPECT_FALSE(tray.partlyKnown);
    }
    ASSERT_EQ(packed.waters.size(), 1u);
    EXPECT_EQ(packed.waters[0].full.value, 300);
    EXPECT_EQ(packed.waters[0].travel.value, 180);
    EXPECT_EQ(packed.waters[0].topUp.value, 120);
    EXPECT_NEAR(packed.drops[0].topUpLitres, 2.88, 1e-9);
    ASSERT_TRUE(packed.load);
    EXPECT_TRUE(packed.load->notLoaded.empty());
    EXPECT_EQ(packed.heaviest.value, 4440);
    expectPacked(packed, *plan.bookings.at(Id<model::Booking>(1)));
}

/// Bad input, one row a case: each is named, drawn as it is, and nothing is clamped.
TEST(PackingPlan, BadInputIsNamed) {
    auto limit = model::sample::settings();
    limit.liftingLimitKg = 0.3;

    struct Row {
        const char* name;
        model::Season season;
        FindingCode code;
    };

    const Row rows[] = {
        {"a tray smaller than one jar", packedSeason(trayRecord(200, 180), vanRecord(620)),
         ShedCode::trayTooSmall},
        {"a load over the plate", packedSeason(trayRecord(860, 430), vanRecord(5)), ShedCode::loadOverPlate},
        {"no room on the floor", packedSeason(trayRecord(860, 430), vanRecord(620, 300)),
         ShedCode::loadNoRoom},
        {"no tray measured", shedSeason({{1, 11, 4}}), ShedCode::traysNotMeasured},
        {"no vehicle measured", shedSeason({{1, 11, 4}}), ShedCode::vehicleNotMeasured},
        {"too heavy to lift",
         applied(packedSeason(trayRecord(860, 430), vanRecord(620)), model::Edit("t").put(limit)),
         ShedCode::liftTooHeavy},
    };
    const auto sound = plan::plan(packedSeason(trayRecord(860, 430), vanRecord(620)), on(9, 1));
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        const auto plan = plan::plan(row.season, on(9, 1));
        EXPECT_TRUE(finds(*plan.shed, row.code));
        EXPECT_FALSE(finds(*sound.shed, row.code));
        expectPacked(packingOf(plan), *plan.bookings.at(Id<model::Booking>(1)));
    }
}

/// Fewer jars in a tray sooner than one too heavy to lift.
TEST(PackingPlan, TraysKeepToTheLiftingLimit) {
    auto settings = model::sample::settings();
    settings.liftingLimitKg = 3; // 1.4 and four jars of 0.38
    const auto season =
        applied(packedSeason(trayRecord(860, 430), vanRecord(620)), model::Edit("t").put(settings));
    const auto plan = plan::plan(season, on(9, 1));
    EXPECT_EQ(packingOf(plan).drops[0].trays.size(), 6u);
    for (const auto& tray : packingOf(plan).drops[0].trays)
        EXPECT_EQ(tray.pieces.size(), 4u);
}

TEST(PackingPlan, DemoIsSoundAndLastDropGoesInFirst) {
    const auto season = withy::tests::demoFromFiles();
    const auto plan = plan::plan(season, on(6, 1));
    int several = 0;
    for (const auto& [id, packed] : plan.shed->packing) {
        SCOPED_TRACE(season.bookings.find(id)->title);
        expectPacked(*packed, *plan.bookings.at(id));
        if (!packed->load) continue;
        const auto& loaded = packed->load->loaded;
        for (std::size_t i = 0; i < loaded.size(); ++i)
            for (std::size_t j = 0; j < i; ++j) {
                EXPECT_FALSE(overlap(loaded[i], loaded[j]));
                EXPECT_GE(packed->entries[loaded[j].item].drop, packed->entries[loaded[i].item].drop);
            }
        several += packed->drops.size() > 1 ? 1 : 0;
    }
    EXPECT_GE(several, 2);
}

/// Four stems in three equal shares are four stems, on the packing sheet as on the bench: a third of four
/// rounded by itself, three times, would leave one out.
TEST(PackingWater, SharesAddUpToTheStemsAsOnTheBench) {
    const auto season = applied(packedSeason(trayRecord(860, 430), vanRecord(620)), drinkingJars(4, 20));
    const auto plan = plan::plan(season, on(9, 1));
    const auto& water = packingOf(plan).waters.at(0);
    EXPECT_EQ(stemsIn(water.course), 4);
    const auto bench = pieceWater(season, supperJar, nullptr, nullptr);
    ASSERT_TRUE(bench);
    EXPECT_EQ(stemsIn(bench->course), stemsIn(water.course));
    EXPECT_NEAR(bench->course.curve.front().millilitres, water.course.curve.front().millilitres, 1e-9);
}

/// The clocks go back in the night to Sunday, 31 October 2027 (last Sunday of October: directive 2000/84/EC):
/// from 13:00 on Saturday to 13:00 on Sunday are 25 hours, and what is drunk is drunk in 25 hours.
TEST(PackingWater, ANightOfTheClocksIsAsLongAsItIs) {
    auto season = applied(packedSeason(trayRecord(860, 430), vanRecord(620)), drinkingJars(4, 80));
    const auto moved = [&](int month, int day) {
        auto booking = *season.bookings.find(Id<model::Booking>(1));
        booking.eventStart = model::sample::at(2027, month, day, 14);
        booking.eventEnd = model::sample::at(2027, month, day, 23);
        booking.lookGoodUntil = model::sample::at(2027, month, day, 13) + Minutes(24 * 60);
        booking.makeFrom = model::sample::at(2027, month, day, 6);
        auto drop = *season.drops.find(Id<model::Drop>(1));
        drop.time = model::sample::at(2027, month, day, 13);
        drop.clearedAt = *booking.lookGoodUntil + Minutes(60);
        const auto plan = plan::plan(applied(season, model::Edit("t").put(booking).put(drop)), on(9, 1));
        return packingOf(plan).waters.at(0);
    };
    const auto plain = moved(9, 11), longer = moved(10, 30);
    EXPECT_NEAR(plain.course.curve.back().hours, 24, 1e-9);
    EXPECT_NEAR(longer.course.curve.back().hours, 25, 1e-9);
    EXPECT_NEAR(longer.course.wantedByEnd / plain.course.wantedByEnd, 25.0 / 24, 1e-9);
    // Straight lines: dry after the same real hours, and so an hour earlier by the clock of that night.
    ASSERT_TRUE(plain.dryAt && longer.dryAt);
    const auto wall = [](const LineWater& w) { return (*w.dryAt - w.placed).value; };
    EXPECT_EQ(wall(plain) - wall(longer), 60);
}

/// Flowers stand as long as the guests do, whatever earlier hour was written down.
TEST(PackingWater, LooksGoodToTheEndOfTheEventAtLeast) {
    const auto season = applied(packedSeason(trayRecord(860, 430), vanRecord(620)), drinkingJars(4, 20));
    auto booking = *season.bookings.find(Id<model::Booking>(1));
    booking.lookGoodUntil = booking.eventStart + Minutes(30);
    const auto plan = plan::plan(applied(season, model::Edit("t").put(booking)), on(9, 1));
    // 13:00 to 22:30.
    EXPECT_NEAR(packingOf(plan).waters.at(0).course.curve.back().hours, 9.5, 1e-9);
}

/// Kept until the next noon, they would be low in the night, when nobody is there to look: the check is for
/// the end of the event.
TEST(PackingWater, TheCheckIsWhileSomebodyIsThere) {
    const auto season = applied(packedSeason(trayRecord(860, 430), vanRecord(620)), drinkingJars(4, 40));
    auto booking = *season.bookings.find(Id<model::Booking>(1));
    booking.lookGoodUntil = booking.eventEnd + Minutes(24 * 60);
    auto drop = *season.drops.find(Id<model::Drop>(1));
    drop.clearedAt = *booking.lookGoodUntil + Minutes(60);
    const auto plan = plan::plan(applied(season, model::Edit("t").put(booking).put(drop)), on(9, 1));
    const auto& water = packingOf(plan).waters.at(0);
    ASSERT_TRUE(water.course.topUpAfter);
    ASSERT_GT(*water.course.topUpAfter, 9.5) << "13:00 to 22:30";
    ASSERT_LT(*water.course.topUpAfter, 9.5 + 24);
    EXPECT_EQ(water.checkAt, booking.eventEnd);
    EXPECT_EQ(packingOf(plan).checkAt, booking.eventEnd);
}

/// 600 jars that no tray takes: 600 x 0.21 x 0.21 m are 26.46 m2, the floor has 2.3 x 1.4 = 3.22 m2, so nine
/// trips are the least; and nobody says that they find no room.
TEST(PackingPlan, TooManyThingsAreSaidToBeTooMany) {
    const auto plan = plan::plan(packedSeason(trayRecord(200, 180), vanRecord(6200), 600), on(9, 1));
    EXPECT_FALSE(finds(*plan.shed, ShedCode::loadNoRoom));
    const auto* found = findingOf(*plan.shed, ShedCode::loadTooMany);
    ASSERT_NE(found, nullptr);
    ASSERT_EQ(found->numbers.size(), 3u);
    EXPECT_EQ(found->numbers[0], static_cast<double>(packingOf(plan).entries.size()));
    EXPECT_EQ(found->numbers[1], static_cast<double>(packing::mostLoadItems));
    EXPECT_GE(found->numbers[2], 9);
    EXPECT_LE(found->numbers[2], 10) << "cans of water take little more";
}

/// What stands alone and cannot be got through the doors goes in no trip.
TEST(PackingPlan, WhatIsLargerThanTheFloorIsCountedApart) {
    const auto plan = plan::plan(packedSeason(trayRecord(2400, 1500), vanRecord(620), 24), on(9, 1));
    const auto* found = findingOf(*plan.shed, ShedCode::loadNoRoom);
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->numbers.at(2), static_cast<double>(packingOf(plan).drops[0].trays.size()))
        << "trays of 2.4 x 1.5 m for a floor of 2.3 x 1.4 m";
}

/// More jars than are put into trays at all: that they are too many is said, not that a tray is too small.
TEST(PackingPlan, MoreJarsThanAreFilledAreNotCalledTooWide) {
    const auto plan = plan::plan(packedSeason(trayRecord(860, 430), vanRecord(620), 25'000), on(9, 1));
    EXPECT_FALSE(finds(*plan.shed, ShedCode::trayTooSmall));
    EXPECT_FALSE(finds(*plan.shed, ShedCode::loadNoRoom));
    EXPECT_TRUE(finds(*plan.shed, ShedCode::loadTooMany));
    expectPacked(packingOf(plan), *plan.bookings.at(Id<model::Booking>(1)));
}

} // namespace withy::plan::tests
