// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/controlled_rounding.h"

#include "core/shareout/even_pieces.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <nlohmann/json.hpp>
#include <numeric>
#include <string>

namespace withy::shareout::tests {

namespace {

using Figures = std::vector<std::vector<std::int64_t>>;

Table tableOf(const Figures& figures) {
    Table table{.rows = figures.size(), .columns = figures.front().size(), .cells = {}};
    for (std::size_t r = 0; r < table.rows; ++r) {
        for (std::size_t c = 0; c < table.columns; ++c)
            table.cells.push_back({r, c, figures[r][c]});
    }
    return table;
}

bool adjacent(std::int64_t rounded, std::int64_t value, std::int64_t base) {
    return rounded == value / base || (value % base != 0 && rounded == value / base + 1);
}

/// Every cell and every sum at a neighbouring multiple: what makes an answer admissible, printed or ours.
bool admissible(const Table& table, const std::vector<std::int64_t>& rounded, std::int64_t base) {
    std::vector<std::int64_t> rows(table.rows), columns(table.columns), roundedRows(table.rows),
        roundedColumns(table.columns);
    for (std::size_t i = 0; i < table.cells.size(); ++i) {
        const auto& cell = table.cells[i];
        if (!adjacent(rounded[i], cell.value, base)) return false;
        rows[cell.row] += cell.value;
        columns[cell.column] += cell.value;
        roundedRows[cell.row] += rounded[i];
        roundedColumns[cell.column] += rounded[i];
    }
    for (std::size_t r = 0; r < table.rows; ++r) {
        if (!adjacent(roundedRows[r], rows[r], base)) return false;
    }
    for (std::size_t c = 0; c < table.columns; ++c) {
        if (!adjacent(roundedColumns[c], columns[c], base)) return false;
    }
    return adjacent(std::accumulate(roundedRows.begin(), roundedRows.end(), std::int64_t{0}),
                    std::accumulate(rows.begin(), rows.end(), std::int64_t{0}), base);
}

std::int64_t deviationOf(const Table& table, const std::vector<std::int64_t>& rounded, std::int64_t base) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < rounded.size(); ++i)
        sum += std::abs(rounded[i] * base - table.cells[i].value);
    return sum;
}

/// The least deviation of all admissible answers, by trying every one.
std::int64_t leastByTrying(const Table& table, std::int64_t base) {
    std::int64_t least = INT64_MAX;
    for (std::size_t mask = 0; mask < std::size_t{1} << table.cells.size(); ++mask) {
        std::vector<std::int64_t> rounded;
        for (std::size_t i = 0; i < table.cells.size(); ++i)
            rounded.push_back(table.cells[i].value / base + static_cast<std::int64_t>(mask >> i & 1));
        if (admissible(table, rounded, base)) least = std::min(least, deviationOf(table, rounded, base));
    }
    return least;
}

struct Published {
    const char* name;
    Figures figures;
    std::int64_t base;
    std::vector<std::int64_t> printed; ///< one admissible answer, in whole bases, row by row
};

/// In tenths and thousandths, so that they are whole.
const Published published[] = {
    // Statistics Canada, Real Time Remote Access, "Controlled rounding": to base 100.
    {"Statistics Canada", {{3615, 1205, 1205}, {3615, 0, 2410}}, 1000, {4, 1, 1, 3, 0, 3}},
    // Mathematics Stack Exchange, a table rounded as a flow; the printed answer is far from the nearest.
    {"Stack Exchange",
     {{11998, 9083, 2919}, {12983, 10872, 3145}, {1019, 2045, 936}},
     1000,
     {11, 10, 3, 13, 10, 4, 2, 2, 0}},
};

struct Seats {
    const char* name;
    std::vector<std::int64_t> weights;
    std::int64_t seats;
    std::vector<std::int64_t> result;
};

/// Largest remainders, which is the nearest rounding of a single row.
const Seats seats[] = {
    // A college's solutions to its chapter on apportionment, problem 1: six states, populations in millions.
    {"New England", {63, 34, 14, 12, 10, 6}, 25, {11, 6, 3, 2, 2, 1}},
    // J. Robbin, University of Wisconsin, the population paradox of Hamilton's method: quotas as printed.
    {"paradox, old", {5525381, 3470152, 3864226, 201203}, 100, {42, 27, 30, 1}},
    {"paradox, new", {5657564, 3507464, 3885693, 201049}, 100, {43, 26, 29, 2}},
    // A solved exercise: five counties.
    {"five counties", {247000, 185000, 459000, 400000, 413000}, 42, {6, 5, 11, 10, 10}},
};

} // namespace

TEST(ControlledRounding, PublishedTablesAreRoundedAndTheNearestOfAll) {
    for (const auto& row : published) {
        SCOPED_TRACE(row.name);
        const auto table = tableOf(row.figures);
        ASSERT_TRUE(admissible(table, row.printed, row.base)); // ours is judged by what theirs meets
        const auto rounded = controlledRounding(table, row.base);
        EXPECT_TRUE(admissible(table, rounded.cells, row.base));
        EXPECT_EQ(rounded.deviation, deviationOf(table, rounded.cells, row.base));
        EXPECT_EQ(rounded.deviation, leastByTrying(table, row.base));
        EXPECT_LE(rounded.deviation, deviationOf(table, row.printed, row.base));
    }
}

TEST(ControlledRounding, PublishedSeatsByLargestRemainder) {
    for (const auto& row : seats) {
        SCOPED_TRACE(row.name);
        const auto base = std::accumulate(row.weights.begin(), row.weights.end(), std::int64_t{0});
        Figures quotas(1);
        for (const auto weight : row.weights)
            quotas.front().push_back(weight * row.seats);
        EXPECT_EQ(controlledRounding(tableOf(quotas), base).cells, row.result);
    }
}

/// The 36 spreads of the reference: admissible, each kind's total kept, and the least deviation to the
/// fraction. Those with equal containers are also dealt out as pieces.
TEST(ControlledRounding, ReferenceSpreadsHaveTheLeastDeviation) {
    const char* folder = std::getenv("WITHY_REFERENCE");
    if (!folder) GTEST_SKIP() << "skipped: WITHY_REFERENCE, the folder of reference data, is not set";
    std::ifstream file(std::string(folder) + "/rounding/spread.json");
    const auto all = nlohmann::json::parse(file);
    ASSERT_EQ(all.size(), 36U);
    for (const auto& spread : all) {
        SCOPED_TRACE(spread.at("id").get<std::string>());
        const auto weights = spread.at("container_weights").get<std::vector<std::int64_t>>();
        const auto base = std::accumulate(weights.begin(), weights.end(), std::int64_t{0});
        Figures figures;
        for (const auto& total : spread.at("kind_totals")) {
            auto& row = figures.emplace_back();
            for (const auto weight : weights)
                row.push_back(total.get<std::int64_t>() * weight);
        }
        const auto table = tableOf(figures);
        const auto rounded = controlledRounding(table, base);
        EXPECT_TRUE(admissible(table, rounded.cells, base)); // a kind's total is a multiple, and so kept
        const auto fraction = spread.at("min_total_deviation").get<std::string>();
        const auto slash = fraction.find('/');
        const auto above = std::stoll(fraction);
        const auto below = slash == std::string::npos ? 1 : std::stoll(fraction.substr(slash + 1));
        EXPECT_EQ(rounded.deviation * below, above * base);
        if (!spread.at("equal").get<bool>()) continue;
        Table kinds{.rows = 1, .columns = figures.size(), .cells = {}};
        for (std::size_t k = 0; k < figures.size(); ++k)
            kinds.cells.push_back({0, k, figures[k].front()}); // weight 1: the kind's total
        std::int64_t pieces = 0, deviation = 0;
        for (const auto& group : evenPieces(kinds, base)) {
            pieces += group.pieces;
            for (std::size_t k = 0; k < kinds.cells.size(); ++k)
                deviation += group.pieces * std::abs(group.counts[k] * base - kinds.cells[k].value);
        }
        EXPECT_EQ(pieces, base);
        EXPECT_EQ(deviation * below, above * base);
    }
}

} // namespace withy::shareout::tests
