// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/controlled_rounding.h"

#include "core/cover/min_cost_flow.h"

#include <cassert>
#include <cstdlib>

namespace withy::shareout {

namespace {

cover::FlowArc neighbours(std::size_t from, std::size_t to, std::int64_t value, std::int64_t base) {
    const auto down = value / base;
    return {.from = static_cast<std::int32_t>(from),
            .to = static_cast<std::int32_t>(to),
            .least = down,
            .most = value % base == 0 ? down : down + 1,
            .cost = 0};
}

/// From the start through a row, a cell and a column to the end, and back: the cells' arcs come first.
cover::FlowNetwork roundingNetwork(const Table& table, std::int64_t base) {
    const std::size_t end = table.rows + table.columns, start = end + 1;
    cover::FlowNetwork network;
    network.supply.assign(start + 1, 0);
    std::vector<std::int64_t> rows(table.rows, 0), columns(table.columns, 0);
    std::int64_t total = 0;
    for (const auto& cell : table.cells) {
        auto arc = neighbours(cell.row, table.rows + cell.column, cell.value, base);
        arc.cost = base - 2 * (cell.value % base); // what rounding up adds to the deviation
        network.arcs.push_back(arc);
        rows[cell.row] += cell.value;
        columns[cell.column] += cell.value;
        total += cell.value;
    }
    for (std::size_t r = 0; r < table.rows; ++r)
        network.arcs.push_back(neighbours(start, r, rows[r], base));
    for (std::size_t c = 0; c < table.columns; ++c)
        network.arcs.push_back(neighbours(table.rows + c, end, columns[c], base));
    network.arcs.push_back(neighbours(end, start, total, base));
    return network;
}

} // namespace

RoundedTable controlledRounding(const Table& table, std::int64_t base) {
    const auto found = cover::minCostFlow(roundingNetwork(table, base));
    assert(found.ok()); // the table itself, divided by the base, is a flow
    RoundedTable rounded;
    for (std::size_t i = 0; i < table.cells.size(); ++i) {
        rounded.cells.push_back(found->carried[i]);
        rounded.deviation += std::abs(found->carried[i] * base - table.cells[i].value);
    }
    return rounded;
}

} // namespace withy::shareout
