// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/clumps.h"
#include "tests/shareout/share_checks.h"

#include <gtest/gtest.h>

namespace withy::shareout::tests {

namespace {

/// Three small heads in each of 24 jars: 67 of plant 1, 5 of plant 2.
ShareProblem smallHeads(std::int64_t clump) {
    auto slot = slotOf(10, 3, {1, 2});
    slot.clump = Stems(clump);
    return {{counted(1, 67), counted(2, 5)}, {lineOf(1, 24, {slot})}};
}

} // namespace

/// By hand: one each in five jars; or in clumps of three: 67 = 22 x 3 + 1 and 5 = 1 x 3 + 2, so 22 jars of
/// the first, one of the second, and the odd one and two together in the last.
TEST(Clumps, OddStemsStandTogether) {
    const auto scattered = shareOut(smallHeads(0));
    ASSERT_TRUE(scattered.ok());
    EXPECT_EQ(groupsAsText(scattered->lines.front(), {1, 2}),
              (std::vector<std::string>{"19 x 3 0", "5 x 2 1"}));
    const auto together = shareOut(smallHeads(3));
    ASSERT_TRUE(together.ok());
    EXPECT_EQ(groupsAsText(together->lines.front(), {1, 2}),
              (std::vector<std::string>{"22 x 3 0", "1 x 1 2", "1 x 0 3"}));
    EXPECT_EQ(together->lines.front().slots.front().wholeClumps, 23);
}

struct ClumpRow {
    const char* name;
    ClumpSlot slot;
    std::int64_t wholeClumps;
    std::vector<std::vector<std::int64_t>> counts;
};

/// By hand.
const ClumpRow clumpRows[] = {
    {"two clumps in a piece", {.size = 2, .room = {4, 4}, .stems = {4, 4}}, 4, {{2, 2}, {2, 2}}},
    {"odd ones beside their own", {.size = 3, .room = {4, 4}, .stems = {4, 4}}, 2, {{4, 0}, {0, 4}}},
    {"a short piece", {.size = 3, .room = {3, 3, 2}, .stems = {5, 3}}, 2, {{3, 0}, {0, 3}, {2, 0}}},
    {"no room for one", {.size = 3, .room = {2, 2}, .stems = {2, 2}}, 0, {{2, 0}, {0, 2}}},
    {"nothing there", {.size = 3, .room = {0, 0}, .stems = {0}}, 0, {{0}, {0}}},
};

TEST(Clumps, ByHand) {
    for (const auto& row : clumpRows) {
        SCOPED_TRACE(row.name);
        const auto dealt = clumped(row.slot);
        EXPECT_EQ(dealt.wholeClumps, row.wholeClumps);
        EXPECT_EQ(dealt.counts, row.counts);
    }
}

} // namespace withy::shareout::tests
