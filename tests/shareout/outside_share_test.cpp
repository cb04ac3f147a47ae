// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cover/outside_solver.h"
#include "tests/shareout/random_harvests.h"
#include "tests/shareout/share_checks.h"
#include "tests/shareout/share_programme.h"

#include <gtest/gtest.h>

namespace withy::shareout::tests {

namespace {

std::vector<std::int64_t> ours(const ShareOut& share, std::int64_t TurnObjectives::*goal) {
    std::vector<std::int64_t> values;
    for (const auto& o : share.objectives)
        values.push_back(o.*goal);
    return values;
}

} // namespace

/// 200 bookings against GLPK's integer solver, every objective of every turn equal.
TEST(OutsideShare, AgreesOnTwoHundredHarvests) {
    ASSERT_TRUE(cover::tests::outsideSolverIsThere())
        << "glpsol is missing: install glpk-utils, as tests/run does";
    constexpr HarvestSize size{.lines = 3,
                               .pieces = 16,
                               .slots = 4,
                               .count = 4,
                               .vary = 2,
                               .plants = 8,
                               .choices = 3,
                               .clumps = true};
    constexpr std::uint32_t harvests = 200, atOnce = 10;
    int uneven = 0, offDesign = 0, secondBest = 0, turns = 0;
    for (std::uint32_t first = 0; first < harvests; first += atOnce) {
        std::vector<ShareProblem> problems;
        for (std::uint32_t i = 0; i < atOnce; ++i)
            problems.push_back(randomHarvest(10'000 + first + i, size));
        std::string error;
        const auto best = solveShares(problems, error);
        ASSERT_EQ(error, "");
        for (std::size_t i = 0; i < problems.size(); ++i) {
            SCOPED_TRACE("harvest " + std::to_string(10'000 + first + i));
            const auto share = shareOut(problems[i]);
            ASSERT_TRUE(share.ok());
            EXPECT_EQ(ours(*share, &TurnObjectives::missing), best[i].missing);
            EXPECT_EQ(ours(*share, &TurnObjectives::pieceSquares), best[i].pieceSquares);
            EXPECT_EQ(ours(*share, &TurnObjectives::slotSquares), best[i].slotSquares);
            EXPECT_EQ(ours(*share, &TurnObjectives::places), best[i].places);
            EXPECT_EQ(wrongWith(problems[i], *share), std::vector<std::string>{});
            turns += share->objectives.size() > 1;
            for (const auto& o : share->objectives) {
                uneven += o.pieceSquares > 0;
                offDesign += o.slotSquares > 0;
                secondBest += o.places > 0;
            }
        }
    }
    // The harvests try every objective, each many times.
    EXPECT_GT(uneven, 50);
    EXPECT_GT(offDesign, 50);
    EXPECT_GT(secondBest, 50);
    EXPECT_GT(turns, 30);
}

} // namespace withy::shareout::tests
