// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/ribbon_box.h"
#include "tests/cutting/box_outside.h"

#include <gtest/gtest.h>

#include <map>
#include <random>

namespace withy::cutting::tests {
namespace {

RibbonOnHand end(std::int64_t length, std::int64_t count = 1) {
    return {RibbonKind::end, Millimetres(length), count, {}};
}

RibbonOnHand reel(std::int64_t length, std::int64_t count = 1) {
    return {RibbonKind::reel, Millimetres(length), count, {}};
}

PieceWish piece(std::int64_t length, std::int64_t count) {
    return {Millimetres(length), count};
}

/// Every piece is cut or missing, nothing is cut from more than is there, and the cost is what the cuts say.
void expectSound(const RibbonBox& box, const RibbonCuts& plan) {
    std::map<std::int64_t, std::int64_t> wanted, got;
    for (const auto& p : box.pieces)
        if (p.count > 0) wanted[p.length.value] += p.count;
    BoxCost cost;
    std::vector<std::int64_t> opened(box.onHand.size(), 0);
    for (const auto& cut : plan.cuts) {
        const auto& on = box.onHand.at(cut.onHand);
        std::int64_t used = 0;
        for (const auto& p : cut.cuts) {
            used += p.length.value * p.count;
            got[p.length.value] += p.count * cut.times;
        }
        opened[cut.onHand] += cut.times;
        EXPECT_EQ(cut.left.value, on.length.value - used);
        EXPECT_GE(cut.left.value, 0);
        EXPECT_EQ(cut.keep, cut.left.value > 0 && cut.left >= plan.keepFrom);
        cost.waste += cut.keep ? 0 : cut.left.value * cut.times;
        cost.fromReels += on.kind == RibbonKind::reel ? used * cut.times : 0;
        cost.opened += cut.times;
    }
    for (const auto& p : plan.missing) {
        got[p.length.value] += p.count;
        cost.missing += p.length.value * p.count;
    }
    for (std::size_t i = 0; i < opened.size(); ++i)
        EXPECT_LE(opened[i], box.onHand[i].count);
    EXPECT_EQ(got, wanted);
    EXPECT_EQ(cost, plan.cost);
}

/// A box such as a shed has: a few ends, up to two reels, two to four lengths to cut; tight and ample ones.
RibbonBox randomBox(std::uint32_t seed) {
    std::mt19937 random(seed);
    const auto upTo = [&](std::uint32_t from, std::uint32_t to) {
        return static_cast<std::int64_t>(from + random() % (to - from + 1));
    };
    RibbonBox box;
    std::int64_t wanted = 0;
    for (auto kinds = upTo(2, 4); kinds > 0; --kinds) {
        box.pieces.push_back(piece(upTo(25, 110) * 10 + (seed % 3 == 0 ? upTo(0, 9) : 0), upTo(1, 6)));
        wanted += box.pieces.back().length.value * box.pieces.back().count;
    }
    std::int64_t there = 0;
    for (auto ends = upTo(1, 5); ends > 0; --ends) {
        box.onHand.push_back(end(upTo(30, 280) * 10 + (seed % 2 == 0 ? upTo(0, 9) : 0)));
        there += box.onHand.back().length.value;
    }
    if (seed % 4 != 0)
        for (auto reels = upTo(1, 2); reels > 0; --reels)
            box.onHand.push_back(reel(std::max<std::int64_t>((wanted - there) * upTo(40, 130) / 100, 1500)));
    if (seed % 5 == 0) box.keepFrom = Millimetres(upTo(20, 60) * 10);
    if (seed % 10 == 7) box.keepFrom = Millimetres(longestRoll); // whatever is left of a length is waste
    return box;
}

} // namespace

/// 100 random boxes against GLPK's branch and cut: as little missing, as little waste, as little from reels.
TEST(RibbonBox, IsAsGoodAsAnOutsideSolverOnAHundredBoxes) {
    ASSERT_TRUE(glpsolIsThere()) << "glpsol is missing: install glpk-utils, as tests/run does";
    int tight = 0, wasteful = 0, fromReels = 0;
    for (std::uint32_t seed = 1; seed <= 100; ++seed) {
        SCOPED_TRACE("box " + std::to_string(seed));
        const auto box = randomBox(seed);
        const auto plan = cutFromBox(box);
        ASSERT_TRUE(plan.ok());
        expectSound(box, *plan);
        EXPECT_TRUE(plan->proved);
        std::string error;
        const auto best = bestByGlpsol(box, error);
        ASSERT_EQ(error, "");
        EXPECT_EQ(plan->cost.missing, best.missing);
        EXPECT_EQ(plan->cost.waste, best.waste);
        EXPECT_EQ(plan->cost.fromReels, best.fromReels);
        tight += best.missing > 0;
        wasteful += best.waste > 0;
        fromReels += best.fromReels > 0;
    }
    // The boxes try every part of the order.
    EXPECT_GT(tight, 15);
    EXPECT_GT(wasteful, 20);
    EXPECT_GT(fromReels, 30);
}

/// By hand: 3 x 700 and 2 x 400. The end of 1100 takes one of each and nothing is left; the end of 800 would
/// leave 100 to throw away; the reel gives the rest and keeps 7900.
TEST(RibbonBox, TakesEndsFirstAndLeavesNoScrap) {
    const RibbonBox box{{reel(10'000), end(800), end(1100)}, {piece(700, 3), piece(400, 2)}, {}};
    const auto plan = cutFromBox(box);
    ASSERT_TRUE(plan.ok());
    expectSound(box, *plan);
    EXPECT_EQ(plan->cost.missing, 0);
    EXPECT_EQ(plan->cost.waste, 0);
    EXPECT_EQ(plan->fromEnds.value, 1500); // the end of 800 gives one 400 and keeps 400
    EXPECT_EQ(plan->cost.fromReels, 1400);
    EXPECT_TRUE(plan->proved);
    EXPECT_EQ(plan->keepFrom.value, 400);
    EXPECT_EQ(plan->working.back().what, "waste");
}

TEST(RibbonBox, SaysWhatIsMissing) {
    const RibbonBox box{{end(900), end(500)}, {piece(1200, 1), piece(450, 2), piece(400, 2)}, {}};
    const auto plan = cutFromBox(box);
    ASSERT_TRUE(plan.ok());
    expectSound(box, *plan);
    // 1200 is longer than anything; of 1700 the ends give 900 and 400, or 850 and 450: 1300 at most.
    EXPECT_EQ(plan->cost.missing, 1200 + 400);
    EXPECT_TRUE(plan->proved);
    EXPECT_EQ(plan->working.back().what, "ribbon missing");
    EXPECT_EQ(plan->working.back().value, 1600);

    const auto empty = cutFromBox({{}, {piece(300, 4)}, {}});
    ASSERT_TRUE(empty.ok());
    EXPECT_EQ(empty->cost.missing, 1200);
    EXPECT_TRUE(empty->proved);
    const auto nothing = cutFromBox({{end(300)}, {}, {}});
    ASSERT_TRUE(nothing.ok());
    EXPECT_TRUE(nothing->cuts.empty());
}

/// When the exact search is out of reach the plan is still sound, misses nothing it need not, and says
/// whether it is proved.
TEST(RibbonBox, PlansLargeBoxesByColumnGeneration) {
    RibbonBox box;
    for (std::int64_t k = 0; k < 9; ++k)
        box.pieces.push_back(piece(310 + 97 * k, 12 + k));
    for (std::int64_t s = 0; s < 20; ++s)
        box.onHand.push_back(end(900 + 137 * s));
    box.onHand.push_back(reel(10'000, 30));
    const auto plan = cutFromBox(box, {300'000'000});
    ASSERT_TRUE(plan.ok());
    expectSound(box, *plan);
    EXPECT_EQ(plan->cost.missing, 0);
    EXPECT_LE(plan->cost.waste, 310 * 20); // less than one shortest piece an end
    const auto again = cutFromBox(box, {300'000'000});
    EXPECT_EQ(again->cost, plan->cost);
    EXPECT_EQ(again->steps, plan->steps);
}

TEST(RibbonBox, NamesBadInput) {
    struct Bad {
        RibbonBox box;
        const char* field;
        ProblemCode code;
    };

    const Bad rows[] = {
        {{{reel(0)}, {piece(100, 1)}, {}}, "ribbon_length", ProblemCode::belowLeast},
        {{{end(100, -1)}, {piece(100, 1)}, {}}, "ribbon_count", ProblemCode::belowLeast},
        {{{end(100, mostOnHand), end(200)}, {}, {}}, "lengths_on_hand", ProblemCode::aboveMost},
        {{{end(100)}, {piece(0, 1)}, {}}, "piece_length", ProblemCode::belowLeast},
        {{{end(100)}, {piece(10, 1)}, Millimetres(-1)}, "keep_from", ProblemCode::belowLeast},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.field);
        const auto plan = cutFromBox(row.box);
        ASSERT_FALSE(plan.ok());
        EXPECT_EQ(plan.error().field, row.field);
        EXPECT_EQ(plan.error().code, row.code);
    }
}

} // namespace withy::cutting::tests
