// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/share_plan.h"

#include <gtest/gtest.h>

namespace withy::plan::tests {

namespace {

using namespace model;

const Id<Plant> zinnia(1), ammi(2);
const Id<Booking> wedding(1), supper(2);
const Id<Round> both(1), alone(2);

/// A jar of 3 zinnias and 2 ammi; 10 for the wedding, 8 for the supper a day later; one round cuts for both.
Season twoBookings() {
    Season s;
    for (const auto id : {zinnia, ammi}) {
        Plant p;
        p.id = id;
        p.name = id == zinnia ? "Zinnia" : "Ammi";
        s.plants.put(p);
        Patch patch;
        patch.id = Id<Patch>(id.value);
        patch.plant = id;
        s.patches.put(patch);
    }
    Design jar;
    jar.id = Id<Design>(1);
    jar.name = "Jar";
    s.designs.put(jar);
    for (const auto id : {zinnia, ammi}) {
        Slot slot;
        slot.id = Id<Slot>(id.value);
        slot.design = jar.id;
        slot.count = Stems(id == zinnia ? 3 : 2);
        s.slots.put(slot);
        SlotPlant p;
        p.id = Id<SlotPlant>(id.value);
        p.slot = slot.id;
        p.plant = id;
        s.slotPlants.put(p);
    }
    const Day friday = *Day::parse("2027-07-16");
    for (const auto id : {wedding, supper}) {
        Booking b;
        b.id = id;
        b.title = id == wedding ? "Wedding" : "Supper";
        b.standing = Standing::booked;
        b.eventStart = {friday + (id == wedding ? 0 : 1), 15 * 60};
        b.eventEnd = {friday + (id == wedding ? 0 : 1), 20 * 60};
        s.bookings.put(b);
        Line line;
        line.id = Id<Line>(id.value);
        line.booking = id;
        line.design = jar.id;
        line.pieces = Pieces(id == wedding ? 10 : 8);
        s.lines.put(line);
        RoundBooking r;
        r.id = Id<RoundBooking>(id.value);
        r.round = both;
        r.booking = id;
        s.roundBookings.put(r);
    }
    for (const auto id : {both, alone}) {
        Round r;
        r.id = id;
        r.from = {friday - 1, 7 * 60};
        r.to = {friday - 1, 9 * 60};
        s.rounds.put(r);
    }
    return s;
}

void tally(Season& s, Id<Round> round, Id<Plant> plant, std::int64_t cut) {
    Tally t;
    t.id = s.tallies.nextId();
    t.round = round;
    t.patch = Id<Patch>(plant.value);
    t.cut = Stems(cut);
    s.tallies.put(t);
}

std::int64_t countedOf(const SharePlan& plan, Id<Plant> plant) {
    for (const auto& c : plan.problem.counted) {
        if (c.plant == plant && c.stems) return c.stems->value;
    }
    return -1;
}

} // namespace

/// Counted by hand: 40 zinnias for 10 x 3 = 30 and 8 x 3 = 24; 30 ammi for 20 and 16.
TEST(SharedRounds, TheFirstEventHasItsOwnAndTheNextTheRest) {
    auto s = twoBookings();
    tally(s, both, zinnia, 40);
    tally(s, both, ammi, 30);
    const auto first = planShare(s, wedding);
    ASSERT_TRUE(first.ok());
    EXPECT_EQ(countedOf(*first, zinnia), 30);
    EXPECT_EQ(countedOf(*first, ammi), 20);
    EXPECT_EQ(first->setAside,
              (std::vector<SetAside>{{supper, zinnia, Stems(10)}, {supper, ammi, Stems(10)}}));
    const auto second = planShare(s, supper);
    ASSERT_TRUE(second.ok());
    EXPECT_EQ(countedOf(*second, zinnia), 10);
    EXPECT_EQ(countedOf(*second, ammi), 10);
    EXPECT_EQ(second->setAside,
              (std::vector<SetAside>{{wedding, zinnia, Stems(30)}, {wedding, ammi, Stems(20)}}));
}

/// 70 zinnias are 16 more than both want: whoever asks may use them, and nobody's own is touched.
TEST(SharedRounds, WhatIsOverAfterAllIsAnyones) {
    auto s = twoBookings();
    tally(s, both, zinnia, 70);
    tally(s, both, ammi, 36);
    EXPECT_EQ(countedOf(*planShare(s, wedding), zinnia), 46);
    EXPECT_EQ(countedOf(*planShare(s, supper), zinnia), 40);
}

/// A wedding quoted only comes after a supper booked, though its day is earlier.
TEST(SharedRounds, TheFirmerClaimComesFirst) {
    auto s = twoBookings();
    auto quoted = *s.bookings.find(wedding);
    quoted.standing = Standing::quoted;
    s.bookings.put(quoted);
    tally(s, both, zinnia, 40);
    tally(s, both, ammi, 36);
    EXPECT_EQ(countedOf(*planShare(s, supper), zinnia), 24);
    EXPECT_EQ(countedOf(*planShare(s, wedding), zinnia), 16);
    quoted.standing = Standing::lost;
    s.bookings.put(quoted);
    EXPECT_EQ(countedOf(*planShare(s, supper), zinnia), 40);
}

/// 12 zinnias of a round of its own leave the wedding wanting 18 of the shared 40.
TEST(SharedRounds, OwnRoundsComeOffTheWant) {
    auto s = twoBookings();
    RoundBooking r;
    r.id = Id<RoundBooking>(3);
    r.round = alone;
    r.booking = wedding;
    s.roundBookings.put(r);
    tally(s, both, zinnia, 40);
    tally(s, both, ammi, 36);
    tally(s, alone, zinnia, 12);
    EXPECT_EQ(countedOf(*planShare(s, supper), zinnia), 22);
    EXPECT_EQ(countedOf(*planShare(s, wedding), zinnia), 30);
}

/// A plant nobody counted is not nought, and sets nothing aside.
TEST(SharedRounds, BlankStaysBlank) {
    auto s = twoBookings();
    tally(s, both, zinnia, 40);
    const auto plan = planShare(s, supper);
    ASSERT_TRUE(plan.ok());
    EXPECT_EQ(plan->setAside, (std::vector<SetAside>{{wedding, zinnia, Stems(30)}}));
}

} // namespace withy::plan::tests
