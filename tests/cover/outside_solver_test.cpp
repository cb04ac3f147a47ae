// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/allocation.h"
#include "tests/cover/cover_rows.h"
#include "tests/cover/outside_solver.h"
#include "tests/cover/random_covers.h"

#include <gtest/gtest.h>

namespace withy::cover::tests {

/// 300 seasons against GLPK's simplex method: each demand's unmet stems in the order served, then price,
/// places and keeping, every one equal.
TEST(OutsideSolver, AgreesOnThreeHundredRandomSeasons) {
    ASSERT_TRUE(outsideSolverIsThere()) << "glpsol is missing: install glpk-utils, as tests/run does";
    constexpr std::uint32_t seasons = 300, atOnce = 25;
    std::int64_t shortSeasons = 0, bought = 0, swapped = 0, kept = 0;
    for (std::uint32_t first = 0; first < seasons; first += atOnce) {
        std::vector<CoverProblem> problems;
        for (std::uint32_t i = 0; i < atOnce; ++i)
            problems.push_back(randomCover(first + i + 1));
        std::string error;
        const auto best = solveOutside(problems, error);
        ASSERT_EQ(error, "");
        ASSERT_EQ(best.size(), problems.size());
        for (std::size_t i = 0; i < problems.size(); ++i) {
            SCOPED_TRACE("season " + std::to_string(first + i + 1));
            const auto ours = allocate(problems[i]);
            ASSERT_TRUE(ours.ok());
            std::vector<std::int64_t> unmet;
            for (const auto stems : ours->unmet)
                unmet.push_back(stems.value);
            EXPECT_EQ(unmet, best[i].unmet);
            EXPECT_EQ(ours->objectives.price, best[i].price);
            EXPECT_EQ(ours->objectives.places, best[i].places);
            EXPECT_EQ(ours->objectives.keeping, best[i].keeping);
            EXPECT_EQ(wrongWith(problems[i], *ours), std::vector<std::string>{});
            for (const auto n : ours->objectives.unmet)
                shortSeasons += n > 0;
            bought += ours->objectives.price > 0;
            swapped += ours->objectives.places > 0;
            kept += ours->objectives.keeping > 0;
        }
    }
    // The seasons try every objective, each many times.
    EXPECT_GT(shortSeasons, 100);
    EXPECT_GT(bought, 30);
    EXPECT_GT(swapped, 100);
    EXPECT_GT(kept, 100);
}

} // namespace withy::cover::tests
