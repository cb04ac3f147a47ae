// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/cover_plan.h"
#include "tests/cover/ninety_season.h"

#include <gtest/gtest.h>

namespace withy::plan::tests {

namespace {

CoverPlan coverOf(const model::Season& season, std::int64_t cautiousPercent = 100,
                  const CoverOptions& options = {}) {
    return coverPlan(season, plan::plan(season), simpleSupply(season, cautiousPercent), options);
}

const Mend* mendOf(const SlotCover& slot, MendKind kind) {
    for (const auto& m : slot.mends)
        if (m.kind == kind) return &m;
    return nullptr;
}

} // namespace

/// Issue 4, "must show" 4: who is covered, who is short, by how many, by whom, and how to mend it.
TEST(CoverPlan, TwoSuppersWantTheSameNinety) {
    const auto season = ninetySeason();
    CoverOptions options;
    options.today = model::sample::day(2027, 8, 1);
    const auto cover = coverOf(season, 100, options);
    const auto& booked = cover.bookings.at(bookedSupper);
    EXPECT_EQ(booked.standing, CoverStanding::covered);
    EXPECT_EQ(booked.covered[0].value, 90);
    EXPECT_TRUE(booked.slots.at(0).mends.empty());
    const auto& asked = cover.bookings.at(askedSupper);
    EXPECT_EQ(asked.standing, CoverStanding::shortOf);
    EXPECT_EQ(asked.shortBy(Level::cautious).value, 90);
    ASSERT_EQ(asked.slots.size(), 1u);
    const auto& slot = asked.slots[0];
    ASSERT_EQ(slot.at[0].competitors.size(), 1u);
    EXPECT_EQ(slot.at[0].competitors[0].booking, bookedSupper);
    EXPECT_EQ(slot.at[0].competitors[0].stems.value, 90);
    ASSERT_TRUE(slot.at[0].oneMore.at(0));
    // The salmon zinnia is near (CIEDE2000 below the limit), the white one is not.
    const auto* swap = mendOf(slot, MendKind::swap);
    ASSERT_TRUE(swap);
    EXPECT_EQ(swap->plant, salmon);
    EXPECT_EQ(swap->stems.value, 60);
    EXPECT_EQ(std::count_if(slot.mends.begin(), slot.mends.end(),
                            [](const Mend& m) { return m.kind == MendKind::swap; }),
              1);
    const auto* buy = mendOf(slot, MendKind::buy);
    ASSERT_TRUE(buy);
    EXPECT_EQ(buy->bunches, 9);
    EXPECT_EQ(buy->price->minor, 90 * 30);
    EXPECT_EQ(buy->orderBy, slot.choices[0].to - 7);
    EXPECT_FALSE(buy->orderLate);
    EXPECT_FALSE(mendOf(slot, MendKind::fewerPieces)); // all thirty would have to go
}

/// Every mend does what it says when it is made: the swap agreed, the bunches in store, the pieces fewer.
TEST(CoverPlan, MendsMend) {
    const auto season = ninetySeason(150); // 60 left for the enquiry: 30 short
    const auto before = coverOf(season);
    const auto& slot = before.bookings.at(askedSupper).slots.at(0);
    EXPECT_EQ(slot.at[0].shortBy.value, 30);
    const auto* swap = mendOf(slot, MendKind::swap);
    const auto* buy = mendOf(slot, MendKind::buy);
    const auto* fewer = mendOf(slot, MendKind::fewerPieces);
    ASSERT_TRUE(swap && buy && fewer);
    EXPECT_EQ(fewer->pieces.value, 10);

    model::AgreedSwap agreed;
    agreed.id = Id<model::AgreedSwap>(1);
    agreed.booking = askedSupper;
    agreed.plant = coral;
    agreed.standIn = swap->plant;
    const auto swapped = coverOf(applied(season, model::Edit("t").put(agreed))).bookings.at(askedSupper);
    EXPECT_EQ(swapped.standing, CoverStanding::covered);
    ASSERT_EQ(swapped.slots[0].choices.size(), 2u);
    EXPECT_TRUE(swapped.slots[0].choices[1].agreedSwap);

    model::StockLot lot;
    lot.id = Id<model::StockLot>(1);
    lot.plant = buy->plant;
    lot.stems = buy->bunch * buy->bunches;
    lot.origin = model::StockOrigin::boughtIn;
    lot.readyFrom = buy->orderBy + CoverOptions{}.leadDays;
    const auto bought = coverOf(applied(season, model::Edit("t").put(lot))).bookings;
    EXPECT_EQ(bought.at(askedSupper).standing, CoverStanding::covered);
    EXPECT_EQ(bought.at(bookedSupper).standing, CoverStanding::covered);

    auto line = *season.lines.find(Id<model::Line>(askedSupper.value));
    line.pieces -= fewer->pieces;
    EXPECT_EQ(coverOf(applied(season, model::Edit("t").put(line))).bookings.at(askedSupper).standing,
              CoverStanding::covered);
    line.pieces += Pieces(1);
    EXPECT_EQ(coverOf(applied(season, model::Edit("t").put(line))).bookings.at(askedSupper).standing,
              CoverStanding::shortOf);
}

TEST(CoverPlan, StandingFollowsTheLevels) {
    const struct {
        const char* what;
        std::int64_t stems, cautiousPercent;
        CoverStanding asked;
    } rows[] = {
        {"enough at the cautious level", 400, 50, CoverStanding::covered},
        {"enough at the likely level alone", 200, 50, CoverStanding::tight},
        {"not enough at either", 150, 50, CoverStanding::shortOf},
    };

    for (const auto& row : rows) {
        SCOPED_TRACE(row.what);
        EXPECT_EQ(coverOf(ninetySeason(row.stems), row.cautiousPercent).bookings.at(askedSupper).standing,
                  row.asked);
    }
    // With no forecast at all nothing is known, which is not the same as nothing there.
    const auto season = ninetySeason();
    const auto cover = coverPlan(season, plan::plan(season), GardenSupply{});
    EXPECT_EQ(cover.bookings.at(bookedSupper).standing, CoverStanding::notKnown);
}

TEST(CoverPlan, ClaimsFollowTheStandings) {
    const auto today = model::sample::day(2027, 8, 1);

    const struct {
        model::Standing standing;
        std::optional<Day> heldUntil;
        std::optional<cover::Claim> claim;
    } rows[] = {
        {model::Standing::booked, {}, cover::Claim::firm},
        {model::Standing::settled, {}, cover::Claim::firm},
        {model::Standing::held, today, cover::Claim::held},
        {model::Standing::held, today - 1, cover::Claim::enquiry},
        {model::Standing::quoted, {}, cover::Claim::quoted},
        {model::Standing::enquiry, {}, cover::Claim::enquiry},
        {model::Standing::lost, {}, std::nullopt},
    };

    for (const auto& row : rows) {
        SCOPED_TRACE(std::string(model::wordOf(row.standing)));
        auto booking = model::sample::booking(1, "x");
        booking.standing = row.standing;
        booking.heldUntil = row.heldUntil;
        EXPECT_EQ(claimOf(booking, today), row.claim);
    }
}

/// A stem that is too short takes no part, and the slot says by how much.
TEST(CoverPlan, ShortStemsAreLeftOut) {
    const auto season = ninetySeason();
    auto plant = *season.plants.find(coral);
    plant.stemLengthMin = plant.stemLengthMax = Millimetres(150);
    const auto cut = plan::plan(season).designs.at(jar)->slots.at(0).cutLength->length;
    const auto cover = coverOf(applied(season, model::Edit("t").put(plant)));
    const auto& slot = cover.bookings.at(bookedSupper).slots.at(0);
    ASSERT_EQ(slot.leftOut.size(), 1u);
    EXPECT_EQ(slot.leftOut[0].reason, LeftOutReason::tooShort);
    EXPECT_EQ(slot.leftOut[0].missing, cut - Millimetres(150));
    EXPECT_EQ(slot.at[0].shortBy.value, 90);
}

/// Free to promise at each level is the supply less what the two suppers have.
TEST(CoverPlan, FreeToPromiseAddsUpWithTheAllocation) {
    const auto cover = coverOf(ninetySeason(150));
    for (const auto& weeks : cover.freeToPromise) {
        Stems expected, promised, asked, free;
        for (const auto& w : weeks) {
            if (w.plant != coral) continue;
            expected += w.expected;
            promised += w.promised;
            asked += w.asked;
            free += w.free;
        }
        EXPECT_EQ(expected.value, 150);
        EXPECT_EQ(promised.value, 90);
        EXPECT_EQ(asked.value, 60);
        EXPECT_EQ(free.value, 0);
    }
}

} // namespace withy::plan::tests
