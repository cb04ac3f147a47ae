// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_table.h"

#include "core/papers/text_width.h"

#include <algorithm>
#include <numeric>

namespace withy::papers {
namespace {

constexpr int kGap = 2;

Align alignOf(const Column& column) {
    return column.numeric ? Align::Right : column.align;
}

std::string padded(const std::string& words, const Column& column, int width) {
    switch (alignOf(column)) {
    case Align::Right:
        return padLeft(words, width);
    case Align::Centre:
        return padRight(padLeft(words, (width + displayWidth(words)) / 2), width);
    case Align::Left:
        break;
    }
    return padRight(words, width);
}

bool hasHeads(const Table& table) {
    return std::any_of(table.columns.begin(), table.columns.end(),
                       [](const Column& c) { return !c.title.empty(); });
}

/// A box is written as brackets with room between, a line as underscores.
std::string cellWords(const Column& column, const std::string& words) {
    if (column.cells == CellKind::Line) return "________";
    if (column.cells == CellKind::Box) return "[     ]" + (words.empty() ? words : ' ' + words);
    return words;
}

std::vector<int> naturalWidths(const Table& table) {
    std::vector<int> widths;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        int widest = displayWidth(oneLine(table.columns[c].title));
        if (c == 0 && table.columns[c].title.empty()) widest = displayWidth(oneLine(table.title));
        for (const TableRow& row : table.rows)
            if (row.kind != RowKind::Group && c < row.cells.size())
                widest =
                    std::max(widest, displayWidth(oneLine(cellWords(table.columns[c], words(row.cells[c])))));
        widths.push_back(std::max(1, widest));
    }
    return widths;
}

/// Takes from the widest column until all fit; words give way before figures.
void shrink(std::vector<int>& widths, const Table& table, int room) {
    int over = std::accumulate(widths.begin(), widths.end(), 0) - room;
    while (over > 0) {
        std::size_t widest = 0;
        auto rank = [&](std::size_t c) { return widths[c] - (table.columns[c].numeric ? 20 : 0); };
        for (std::size_t c = 1; c < widths.size(); ++c)
            if (rank(c) > rank(widest)) widest = c;
        if (widths[widest] <= 1)
            widest =
                static_cast<std::size_t>(std::max_element(widths.begin(), widths.end()) - widths.begin());
        if (widths[widest] <= 1) return;
        const int step = std::max(1, std::min(over, widths[widest] - room));
        widths[widest] -= step;
        over -= step;
    }
}

void addRow(const std::vector<std::string>& cells, const Table& table, const std::vector<int>& widths,
            std::vector<std::string>& out) {
    std::vector<std::vector<std::string>> broken;
    std::size_t height = 1;
    for (std::size_t c = 0; c < widths.size(); ++c) {
        broken.push_back(wrap(c < cells.size() ? cells[c] : std::string(), widths[c]));
        height = std::max(height, broken.back().size());
    }
    for (std::size_t line = 0; line < height; ++line) {
        std::string text;
        for (std::size_t c = 0; c < widths.size(); ++c) {
            if (c) text += std::string(kGap, ' ');
            text += padded(line < broken[c].size() ? broken[c][line] : "", table.columns[c], widths[c]);
        }
        out.push_back(text);
    }
}

std::vector<std::string> headCells(const Table& table) {
    std::vector<std::string> heads;
    for (const Column& column : table.columns)
        heads.push_back(column.title);
    if (!heads.empty() && heads.front().empty()) heads.front() = table.title;
    return heads;
}

std::vector<std::string> cellWords(const TableRow& row, const Table& table) {
    std::vector<std::string> cells;
    for (std::size_t c = 0; c < table.columns.size(); ++c)
        cells.push_back(
            cellWords(table.columns[c], c < row.cells.size() ? words(row.cells[c]) : std::string()));
    return cells;
}

} // namespace

std::vector<std::string> tableLines(const Table& table, int width) {
    std::vector<std::string> out;
    if (table.columns.empty()) return out;
    std::vector<int> widths = naturalWidths(table);
    const int gaps = kGap * (static_cast<int>(widths.size()) - 1);
    shrink(widths, table, std::max(static_cast<int>(widths.size()), width - gaps));
    const int total = std::min(width, std::accumulate(widths.begin(), widths.end(), gaps));
    const bool headed = hasHeads(table);
    if (!table.title.empty() && (!headed || !table.columns.front().title.empty())) {
        for (std::string& line : wrap(table.title, width))
            out.push_back(std::move(line));
        if (!headed) out.push_back(std::string(total, '-'));
    }
    if (headed) {
        addRow(headCells(table), table, widths, out);
        out.push_back(std::string(total, '-'));
    }
    for (const TableRow& row : table.rows) {
        if (row.kind == RowKind::Total) out.push_back(std::string(total, '-'));
        if (row.kind == RowKind::Group) {
            for (std::string& line : wrap(row.cells.empty() ? "" : words(row.cells[0]), width))
                out.push_back(std::move(line));
            continue;
        }
        addRow(cellWords(row, table), table, widths, out);
    }
    return out;
}

} // namespace withy::papers
