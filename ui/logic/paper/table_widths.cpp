// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/table_widths.h"

#include "ui/logic/paper/row.h"

#include <algorithm>
#include <numeric>

namespace withy::paper {
namespace {

constexpr double kGap = 3.2;

bool isFigure(const papers::Column& column) {
    return column.numeric;
}

double weightOf(const papers::Column& column) {
    return between(0, column.weight, 1000);
}

/// Widest entry of a column. Few letters cannot be wider than many by more than half, so short ones need
/// not be measured; that keeps a table of a thousand rows quick.
double natural(const papers::Table& table, std::size_t c, const Type& normal, const Type& strong) {
    const papers::Column& column = table.columns[c];
    double widest = widthOf(spansOf(column.title, types::kDetail));
    if (c == 0 && column.title.empty())
        widest = std::max(widest, widthOf(spansOf(table.title, types::kHead)));
    if (column.cells == papers::CellKind::Box) return 19; // three figures in pencil; its head takes two lines
    if (column.cells == papers::CellKind::Line) widest = std::max(widest, 24.0);
    if (column.cells == papers::CellKind::Disc) widest = std::max(widest, 2 * kDiscRadius);
    std::size_t longest = 0;
    auto wordsOf = [&](const papers::TableRow& row) {
        return row.kind == papers::RowKind::Group || c >= row.cells.size() ? std::string()
                                                                           : papers::words(row.cells[c]);
    };
    for (const papers::TableRow& row : table.rows)
        longest = std::max(longest, wordsOf(row).size());
    for (const papers::TableRow& row : table.rows) {
        const std::size_t size = wordsOf(row).size();
        if (size == 0 || size * 2 < longest) continue;
        const bool total = row.kind == papers::RowKind::Total;
        widest = std::max(widest, widthOf(spansOf(row.cells[c], total ? strong : normal, strong)));
    }
    return widest + 2 * kBreakSlack;
}

/// Makes the columns that `mayGive` narrower in proportion, none under `floor`; returns what is still over.
template <class MayGive>
double takeFrom(std::vector<double>& widths, double over, double floor, MayGive mayGive) {
    for (int round = 0; round < 8 && over > 0.01; ++round) {
        double givers = 0;
        for (std::size_t c = 0; c < widths.size(); ++c)
            if (mayGive(c) && widths[c] > floor) givers += widths[c] - floor;
        if (givers <= 0) return over;
        const double share = std::min(1.0, over / givers);
        for (std::size_t c = 0; c < widths.size(); ++c)
            if (mayGive(c) && widths[c] > floor) {
                const double step = (widths[c] - floor) * share;
                widths[c] -= step;
                over -= step;
            }
    }
    return over;
}

std::vector<TableSlot> placed(const std::vector<double>& widths, double gap) {
    std::vector<TableSlot> places;
    double x = 0;
    for (double width : widths) {
        places.push_back({x, width});
        x += width + gap;
    }
    return places;
}

} // namespace

std::vector<TableSlot> tableSlots(const papers::Table& table, double widthMm, const Type& normal,
                                  const Type& strong) {
    const std::size_t count = table.columns.size();
    const double gap = std::min(kGap, widthMm * 0.3 / static_cast<double>(count));
    const double room = widthMm - gap * static_cast<double>(count - 1);
    std::vector<double> widths(count);
    double weights = 0;
    for (std::size_t c = 0; c < count; ++c) {
        const papers::Column& column = table.columns[c];
        const double weight = weightOf(column);
        widths[c] = natural(table, c, normal, strong);
        if (!isFigure(column) && weight <= 0) widths[c] = std::min(widths[c], room / 3);
        if (weight > 0) {
            weights += weight;
            widths[c] = std::min(widths[c], 24.0); // the least it gets when the others leave room
        }
    }
    auto words = [&](std::size_t c) { return !isFigure(table.columns[c]); };
    auto any = [](std::size_t) { return true; };
    double over = std::accumulate(widths.begin(), widths.end(), 0.0) - room;
    over = takeFrom(widths, over, 14, words);
    over = takeFrom(widths, over, 6, any);
    takeFrom(widths, over, 0.5, any);
    const double left = room - std::accumulate(widths.begin(), widths.end(), 0.0);
    if (left > 0 && weights > 0)
        for (std::size_t c = 0; c < count; ++c)
            widths[c] += left * weightOf(table.columns[c]) / weights;
    return placed(widths, gap);
}

} // namespace withy::paper
