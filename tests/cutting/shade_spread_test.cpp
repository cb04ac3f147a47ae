// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/shade_spread.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace withy::cutting {
namespace {

std::int64_t alikeIn(const std::vector<std::size_t>& row) {
    std::int64_t alike = 0;
    for (std::size_t i = 1; i < row.size(); ++i)
        alike += row[i] == row[i - 1];
    return alike;
}

/// Greatest distance of any shade from its even share, over all places.
double unevenness(const std::vector<std::size_t>& row, const std::vector<std::int64_t>& counts) {
    double worst = 0;
    std::vector<std::int64_t> given(counts.size(), 0);
    for (std::size_t place = 0; place < row.size(); ++place) {
        ++given[row[place]];
        for (std::size_t s = 0; s < counts.size(); ++s) {
            const double even = static_cast<double>(counts[s]) * static_cast<double>(place + 1) /
                                static_cast<double>(row.size());
            worst = std::max(worst, std::abs(even - static_cast<double>(given[s])));
        }
    }
    return worst;
}

std::vector<double> sharesOf(const std::vector<std::int64_t>& counts) {
    return {counts.begin(), counts.end()};
}

} // namespace

/// All mixes of up to three shades over up to eight pieces, against every order there is.
TEST(ShadeSpread, HasTheFewestAlikeOfAllOrders) {
    int forced = 0;
    for (std::int64_t a = 1; a <= 6; ++a) {
        for (std::int64_t b = 0; b <= 4; ++b) {
            for (std::int64_t c = 0; c <= 3; ++c) {
                const std::vector<std::int64_t> counts = {a, b, c};
                const auto pieces = a + b + c;
                if (pieces > 9) continue;
                SCOPED_TRACE(testing::PrintToString(counts));
                std::vector<std::size_t> row;
                for (std::size_t s = 0; s < counts.size(); ++s)
                    row.insert(row.end(), static_cast<std::size_t>(counts[s]), s);
                std::int64_t fewest = pieces;
                do {
                    fewest = std::min(fewest, alikeIn(row));
                } while (std::next_permutation(row.begin(), row.end()));
                const auto spread = spreadShades(pieces, sharesOf(counts), true);
                ASSERT_TRUE(spread.ok());
                EXPECT_EQ(spread->counts, counts);
                EXPECT_EQ(spread->alike, fewest);
                EXPECT_EQ(alikeIn(spread->shadeOf), fewest);
                for (std::size_t s = 0; s < counts.size(); ++s)
                    EXPECT_EQ(std::count(spread->shadeOf.begin(), spread->shadeOf.end(), s), counts[s]);
                forced += fewest > 0;
            }
        }
    }
    EXPECT_GT(forced, 10);
}

/// Tijdeman's theorem: with m shades nobody is further from the even share than 1 - 1 / (2 m - 2).
TEST(ShadeSpread, StaysWithinTijdemansBound) {
    for (std::int64_t a = 1; a <= 9; ++a) {
        for (std::int64_t b = 1; b <= 9; ++b) {
            for (std::int64_t c = 0; c <= 9; ++c) {
                const std::vector<std::int64_t> counts = {a, b, c};
                SCOPED_TRACE(testing::PrintToString(counts));
                const auto spread = spreadShades(a + b + c, sharesOf(counts), false);
                ASSERT_TRUE(spread.ok());
                const double shades = c > 0 ? 3 : 2;
                EXPECT_LE(unevenness(spread->shadeOf, counts), 1 - 1 / (2 * shades - 2) + 1e-9);
                EXPECT_EQ(spread->alike, alikeIn(spread->shadeOf));
            }
        }
    }
}

TEST(ShadeSpread, SharesOutByLargestRemainder) {
    // 12 pieces at 40, 35 and 25 %: 4.8, 4.2, 3.0.
    EXPECT_EQ(spreadShades(12, {40, 35, 25}, true)->counts, (std::vector<std::int64_t>{5, 4, 3}));
    // 10 pieces in thirds: the earlier shade has the odd one.
    EXPECT_EQ(spreadShades(10, {1, 1, 1}, true)->counts, (std::vector<std::int64_t>{4, 3, 3}));
    EXPECT_EQ(spreadShades(0, {1, 1}, true)->shadeOf.size(), 0U);
}

TEST(ShadeSpread, NamesBadInput) {
    EXPECT_EQ(spreadShades(-1, {1}, true).error().field, "pieces");
    EXPECT_EQ(spreadShades(1, {}, true).error().field, "shades");
    EXPECT_EQ(spreadShades(1, {-1, 2}, true).error().field, "share");
    EXPECT_EQ(spreadShades(1, {0, 0}, true).error().field, "share");
    EXPECT_EQ(spreadShades(1, {std::nan("")}, true).error().code, ProblemCode::notANumber);
}

} // namespace withy::cutting
