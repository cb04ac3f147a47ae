// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/even_pieces.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace withy::shareout::tests {

namespace {

/// Between any two groups the sums of these cells differ by one at most.
bool evenOver(const std::vector<EvenGroup>& groups, const Table& table, auto counts) {
    std::int64_t least = INT64_MAX, most = INT64_MIN;
    for (const auto& group : groups) {
        std::int64_t sum = 0;
        for (std::size_t i = 0; i < table.cells.size(); ++i)
            sum += counts(table.cells[i]) ? group.counts[i] : 0;
        least = std::min(least, sum);
        most = std::max(most, sum);
    }
    return most - least <= 1;
}

} // namespace

/// 2,000 tables out of a hat, many cells of each no whole number of stems a piece.
TEST(EvenPieces, RowsColumnsAndTotalsAreEvenAtOnce) {
    std::mt19937 random(7);
    const auto draw = [&](std::uint32_t n) { return static_cast<std::int64_t>(random() % n); };
    std::size_t mostGroups = 0;
    for (int n = 0; n < 2000; ++n) {
        SCOPED_TRACE(n);
        Table table{.rows = 1 + random() % 5, .columns = 1 + random() % 6, .cells = {}};
        for (std::size_t r = 0; r < table.rows; ++r) {
            for (std::size_t c = 0; c < table.columns; ++c) {
                if (draw(3) > 0) table.cells.push_back({r, c, draw(300)});
            }
        }
        const auto pieces = 1 + draw(200);
        const auto groups = evenPieces(table, pieces);
        std::int64_t made = 0;
        std::vector<std::int64_t> dealt(table.cells.size(), 0);
        for (const auto& group : groups) {
            made += group.pieces;
            for (std::size_t i = 0; i < dealt.size(); ++i)
                dealt[i] += group.pieces * group.counts[i];
        }
        ASSERT_EQ(made, pieces);
        for (std::size_t i = 0; i < dealt.size(); ++i) {
            ASSERT_EQ(dealt[i], table.cells[i].value);
            ASSERT_TRUE(evenOver(groups, table, [&](const Cell& c) { return &c == &table.cells[i]; }));
        }
        for (std::size_t r = 0; r < table.rows; ++r)
            ASSERT_TRUE(evenOver(groups, table, [&](const Cell& c) { return c.row == r; }));
        for (std::size_t k = 0; k < table.columns; ++k)
            ASSERT_TRUE(evenOver(groups, table, [&](const Cell& c) { return c.column == k; }));
        ASSERT_TRUE(evenOver(groups, table, [](const Cell&) { return true; }));
        // one figure more comes out whole with each group
        ASSERT_LE(groups.size(), table.cells.size() + table.rows + table.columns + 1 + 1);
        mostGroups = std::max(mostGroups, groups.size());
    }
    EXPECT_GT(mostGroups, 5U);
}

} // namespace withy::shareout::tests
