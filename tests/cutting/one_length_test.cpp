// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/one_length.h"
#include "tests/cutting/cutting_reference.h"

#include <gtest/gtest.h>

#include <map>
#include <random>

namespace withy::cutting::tests {
namespace {

/// Every piece once, no roll over-full, and what is left is stated.
void expectSound(const RollPlan& plan, Millimetres roll, const std::vector<PieceWish>& pieces) {
    std::map<std::int64_t, std::int64_t> wanted, cut;
    for (const auto& piece : pieces)
        if (piece.count > 0) wanted[piece.length.value] += piece.count;
    std::int64_t rolls = 0;
    for (const auto& pattern : plan.patterns) {
        std::int64_t used = 0;
        for (const auto& piece : pattern.cuts) {
            used += piece.length.value * piece.count;
            cut[piece.length.value] += piece.count * pattern.times;
        }
        EXPECT_LE(used, roll.value);
        EXPECT_EQ(pattern.left.value, roll.value - used);
        rolls += pattern.times;
    }
    EXPECT_EQ(cut, wanted);
    EXPECT_EQ(rolls, plan.rolls);
    EXPECT_LE(plan.bound, plan.rolls);
    EXPECT_EQ(plan.proved, plan.bound == plan.rolls);
}

/// Fewest rolls by trying every piece in every roll begun and in a new one.
void tryAll(std::int64_t roll, const std::vector<std::int64_t>& pieces, std::size_t i,
            std::vector<std::int64_t>& left, std::size_t& best) {
    if (left.size() >= best) return;
    if (i == pieces.size()) {
        best = left.size();
        return;
    }
    for (std::size_t r = 0; r < left.size(); ++r) {
        if (left[r] < pieces[i]) continue;
        left[r] -= pieces[i];
        tryAll(roll, pieces, i + 1, left, best);
        left[r] += pieces[i];
    }
    left.push_back(roll - pieces[i]);
    tryAll(roll, pieces, i + 1, left, best);
    left.pop_back();
}

} // namespace

/// The optimum of every published instance, reached; proved on 95 of 100 of those that are not triplets.
TEST(OneLength, ReachesThePublishedOptimum) {
    const auto instances = cuttingInstances();
    if (!instances) GTEST_SKIP() << "reference data not checked: WITHY_REFERENCE is not set";
    ASSERT_GE(instances->size(), 90U);
    std::map<std::string, std::pair<std::int64_t, std::int64_t>> provedOf; // of how many
    for (const auto& instance : *instances) {
        SCOPED_TRACE(instance.name);
        const auto plan = cutFromRolls(instance.roll, instance.pieces);
        ASSERT_TRUE(plan.ok());
        expectSound(*plan, instance.roll, instance.pieces);
        EXPECT_LE(plan->bound, instance.optimum);
        EXPECT_GE(plan->rolls, instance.optimum);
        EXPECT_LE(plan->rolls, instance.optimum + 1);
        auto& [proved, all] = provedOf[instance.family];
        proved += plan->proved && plan->rolls == instance.optimum ? 1 : 0;
        ++all;
    }
    for (const char* family : {"u120", "u250", "scholl1", "scholl2", "generated"}) {
        SCOPED_TRACE(family);
        const auto [proved, all] = provedOf[family];
        ASSERT_GT(all, 0);
        EXPECT_GE(100 * proved, 95 * all);
    }
}

TEST(OneLength, AgreesWithTryingEverything) {
    std::mt19937 random(7);
    int unlikeTheVolume = 0;
    for (int row = 0; row < 300; ++row) {
        SCOPED_TRACE("row " + std::to_string(row));
        const auto roll = static_cast<std::int64_t>(20 + random() % 60);
        std::vector<std::int64_t> lengths;
        std::vector<PieceWish> pieces;
        std::int64_t all = 0;
        for (std::size_t n = 3 + random() % 7; n > 0; --n) {
            lengths.push_back(static_cast<std::int64_t>(1 + random() % static_cast<std::uint32_t>(roll)));
            pieces.push_back({Millimetres(lengths.back()), 1});
            all += lengths.back();
        }
        std::size_t best = lengths.size() + 1;
        std::vector<std::int64_t> left;
        tryAll(roll, lengths, 0, left, best);
        const auto plan = cutFromRolls(Millimetres(roll), pieces);
        ASSERT_TRUE(plan.ok());
        expectSound(*plan, Millimetres(roll), pieces);
        EXPECT_EQ(plan->rolls, static_cast<std::int64_t>(best));
        unlikeTheVolume += static_cast<std::int64_t>(best) > (all + roll - 1) / roll;
    }
    EXPECT_GT(unlikeTheVolume, 50);
}

/// The worked example of Wikipedia, "Cutting stock problem": 13 widths from master rolls of 5600 mm; 73 rolls
/// are the least.
TEST(OneLength, CutsTheWorkedExample) {
    const std::vector<PieceWish> pieces = {
        {Millimetres(1380), 22}, {Millimetres(1520), 25}, {Millimetres(1560), 12}, {Millimetres(1710), 14},
        {Millimetres(1820), 18}, {Millimetres(1880), 18}, {Millimetres(1930), 20}, {Millimetres(2000), 10},
        {Millimetres(2050), 12}, {Millimetres(2100), 14}, {Millimetres(2140), 16}, {Millimetres(2150), 18},
        {Millimetres(2200), 20}};
    const auto plan = cutFromRolls(Millimetres(5600), pieces);
    ASSERT_TRUE(plan.ok());
    expectSound(*plan, Millimetres(5600), pieces);
    EXPECT_EQ(plan->rolls, 73);
    EXPECT_TRUE(plan->proved);
    EXPECT_EQ(plan->working.back().what, "rolls");
    EXPECT_EQ(plan->working.back().value, 73);
}

TEST(OneLength, IsTheSameEveryTimeAndStopsWhenTold) {
    std::vector<PieceWish> pieces;
    for (std::int64_t n = 0; n < 60; ++n)
        pieces.push_back({Millimetres(250 + n * 97 % 251), 1});
    const auto once = cutFromRolls(Millimetres(1000), pieces),
               again = cutFromRolls(Millimetres(1000), pieces);
    EXPECT_EQ(once->steps, again->steps);
    ASSERT_EQ(once->patterns.size(), again->patterns.size());
    for (std::size_t i = 0; i < once->patterns.size(); ++i)
        EXPECT_EQ(once->patterns[i].left, again->patterns[i].left);

    std::stop_source stop;
    stop.request_stop();
    const auto stopped = cutFromRolls(Millimetres(1000), pieces, {}, stop.get_token());
    ASSERT_TRUE(stopped.ok());
    EXPECT_TRUE(stopped->stopped);
    expectSound(*stopped, Millimetres(1000), pieces);
    const auto hurried = cutFromRolls(Millimetres(1000), pieces, {0});
    ASSERT_TRUE(hurried.ok());
    expectSound(*hurried, Millimetres(1000), pieces);
}

TEST(OneLength, NamesBadInput) {
    struct Bad {
        std::int64_t roll;
        std::vector<PieceWish> pieces;
        const char* field;
        ProblemCode code;
    };

    const Bad rows[] = {
        {0, {}, "roll_length", ProblemCode::belowLeast},
        {longestRoll + 1, {}, "roll_length", ProblemCode::aboveMost},
        {100, {{Millimetres(0), 1}}, "piece_length", ProblemCode::belowLeast},
        {100, {{Millimetres(101), 1}}, "piece_length", ProblemCode::moreThan},
        {100, {{Millimetres(10), -1}}, "pieces", ProblemCode::belowLeast},
        {100, {{Millimetres(10), mostPieces}, {Millimetres(11), 1}}, "pieces", ProblemCode::aboveMost},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(std::string(row.field) + " roll " + std::to_string(row.roll));
        const auto plan = cutFromRolls(Millimetres(row.roll), row.pieces);
        ASSERT_FALSE(plan.ok());
        EXPECT_EQ(plan.error().field, row.field);
        EXPECT_EQ(plan.error().code, row.code);
    }
    EXPECT_EQ(cutFromRolls(Millimetres(100), {})->rolls, 0);
}

} // namespace withy::cutting::tests
