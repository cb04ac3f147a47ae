// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/shareout/random_harvests.h"
#include "tests/shareout/share_checks.h"

#include <gtest/gtest.h>

namespace withy::shareout::tests {

namespace {

bool sameShare(const ShareOut& a, const ShareOut& b) {
    if (a.lines.size() != b.lines.size()) return false;
    for (std::size_t l = 0; l < a.lines.size(); ++l) {
        if (a.lines[l].line != b.lines[l].line || a.lines[l].groups != b.lines[l].groups) return false;
    }
    return a.objectives == b.objectives;
}

} // namespace

/// 5,000 bookings: every property of wrongWith() on each, and the same share-out however it is listed.
TEST(Harvests, FiveThousandAreSharedOutEvenlyAndUsedUp) {
    int equal = 0, uneven = 0, stoodIn = 0, leftOver = 0, clumps = 0, turns = 0;
    for (std::uint32_t seed = 1; seed <= 5000; ++seed) {
        SCOPED_TRACE("harvest " + std::to_string(seed));
        const auto problem = randomHarvest(seed, {});
        const auto share = shareOut(problem);
        ASSERT_TRUE(share.ok());
        ASSERT_EQ(wrongWith(problem, *share), std::vector<std::string>{});
        if (seed % 10 == 0) {
            const auto again = shareOut(shuffledHarvest(problem, seed));
            ASSERT_TRUE(again.ok());
            ASSERT_TRUE(sameShare(*share, *again));
        }
        (share->missing().value == 0 ? equal : uneven) += 1;
        stoodIn += share->missing().value == 0 && belowDesign(*share).value > 0;
        leftOver += share->left().value > 0;
        turns += share->objectives.size() > 1;
        for (const auto& l : share->lines) {
            for (const auto& s : l.slots)
                clumps += s.wholeClumps > 0;
        }
    }
    // The harvests try every case, each many times.
    EXPECT_GT(equal, 500);
    EXPECT_GT(uneven, 500);
    EXPECT_GT(stoodIn, 50);
    EXPECT_GT(leftOver, 500);
    EXPECT_GT(clumps, 500);
    EXPECT_GT(turns, 500);
}

} // namespace withy::shareout::tests
