// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/even_pieces.h"

#include <algorithm>

namespace withy::shareout {

namespace {

/// How often a piece may be made in which `x` stands for y/n and the rest still be dealt within one.
std::int64_t timesFor(std::int64_t y, std::int64_t x, std::int64_t n) {
    const auto odd = y % n;
    if (odd == 0) return n;
    return x == y / n ? n - odd : odd;
}

struct Sums {
    std::vector<std::int64_t> rows, columns;
    std::int64_t total = 0;

    Sums(const Table& table, const std::vector<std::int64_t>& values)
        : rows(table.rows, 0), columns(table.columns, 0) {
        for (std::size_t i = 0; i < values.size(); ++i) {
            rows[table.cells[i].row] += values[i];
            columns[table.cells[i].column] += values[i];
            total += values[i];
        }
    }
};

std::int64_t timesFor(const Table& left, const std::vector<std::int64_t>& piece, std::int64_t n) {
    std::vector<std::int64_t> values;
    for (const auto& cell : left.cells)
        values.push_back(cell.value);
    const Sums all(left, values), one(left, piece);
    auto times = timesFor(all.total, one.total, n);
    for (std::size_t i = 0; i < values.size(); ++i)
        times = std::min(times, timesFor(values[i], piece[i], n));
    for (std::size_t r = 0; r < left.rows; ++r)
        times = std::min(times, timesFor(all.rows[r], one.rows[r], n));
    for (std::size_t c = 0; c < left.columns; ++c)
        times = std::min(times, timesFor(all.columns[c], one.columns[c], n));
    return times;
}

} // namespace

std::vector<EvenGroup> evenPieces(Table stems, std::int64_t pieces) {
    std::vector<EvenGroup> groups;
    while (pieces > 0) {
        auto piece = controlledRounding(stems, pieces).cells;
        const auto times = timesFor(stems, piece, pieces);
        for (std::size_t i = 0; i < piece.size(); ++i)
            stems.cells[i].value -= times * piece[i];
        pieces -= times;
        groups.push_back({times, std::move(piece)});
    }
    return groups;
}

} // namespace withy::shareout
