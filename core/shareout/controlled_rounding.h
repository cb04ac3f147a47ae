// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

/// Rounding a table so that it still adds up.
namespace withy::shareout {

/// One cell of a table of rows and columns; cells that are not listed are empty and stay empty.
struct Cell {
    std::size_t row = 0;
    std::size_t column = 0;
    std::int64_t value = 0; ///< not below nought
};

struct Table {
    std::size_t rows = 0;
    std::size_t columns = 0;
    std::vector<Cell> cells;
};

struct RoundedTable {
    std::vector<std::int64_t> cells; ///< in whole bases, by cell of the table
    std::int64_t deviation = 0;      ///< the sum of |rounded x base - value|: the least there is
};

/// Every cell to one of its two neighbouring multiples of `base`, so that each row's sum, each column's sum
/// and the grand total come out at one of their own neighbouring multiples too; a figure that is a multiple
/// already stays. It always exists (M. Bacharach, "Matrix rounding problems", Management Science 12, 1966);
/// found as a minimum-cost flow, as in L. H. Cox, "A constructive procedure for unbiased controlled
/// rounding", JASA 82 (1987). Precondition: base > 0, values not negative, rows and columns within bounds.
RoundedTable controlledRounding(const Table& table, std::int64_t base);

} // namespace withy::shareout
