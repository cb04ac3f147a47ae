// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/flow.h"

#include <algorithm>

namespace withy::paper {
namespace {

constexpr double kRounding = 1e-6;

/// Height that must fit before row `index` may be begun: itself and what its heads must keep with them.
double chainHeight(const std::vector<Row>& rows, std::size_t index) {
    double height = rows[index].height;
    while (rows[index].keepWithNext && index + 1 < rows.size()) {
        ++index;
        height += rows[index].before + rows[index].height;
    }
    return height;
}

/// Heads of row `index` that lie before it and are not the row above it anyway.
double repeatedHeight(const std::vector<Row>& rows, std::size_t index) {
    double height = 0;
    for (int head : rows[index].repeats)
        height += rows[static_cast<std::size_t>(head)].height + rows[static_cast<std::size_t>(head)].before;
    return height;
}

} // namespace

double stackHeight(const std::vector<Row>& rows) {
    double height = 0;
    for (std::size_t i = 0; i < rows.size(); ++i)
        height += rows[i].height + (i > 0 ? rows[i].before : 0);
    return height;
}

Flow::Flow(double firstTop, double laterTop, double bottom)
    : m_firstTop(firstTop), m_laterTop(laterTop), m_bottom(bottom), m_pages(1) {}

void Flow::putWalk(const Row& row, double x, const Cursor& at) {
    if (row.walk == Row::Walk::None) {
        m_walkEnd = -1;
        return;
    }
    const bool begins = row.walk == Row::Walk::Start && m_walkEnd < 0;
    const double from = m_walkEnd >= 0 ? m_walkEnd : begins ? at.y + kWalkTop : at.y;
    const double to = at.y + row.height;
    auto& ops = m_pages[static_cast<std::size_t>(at.page)].ops;
    ops.emplace_back(LineOp{{x + kWalkX, from}, {x + kWalkX, to}, kThick, Dash::Dots});
    m_walkEnd = to;
}

void Flow::putRow(const Row& row, double x, double width, Cursor& at, int source, bool repeated) {
    while (static_cast<int>(m_pages.size()) <= at.page)
        m_pages.emplace_back();
    putWalk(row, x, at); // below the row's own ops, so that a patch's circle covers the dots
    Page& page = m_pages[static_cast<std::size_t>(at.page)];
    for (const Op& op : row.ops)
        page.ops.push_back(moved(op, {x, at.y}));
    page.rows.push_back({QRectF(x, at.y, width, row.height), source, repeated});
    at.y += row.height;
}

void Flow::putHeads(const std::vector<Row>& rows, std::size_t index, double x, double width, Cursor& at,
                    int source) {
    const Row& row = rows[index];
    if (repeatedHeight(rows, index) + chainHeight(rows, index) > m_bottom - topOf(at.page)) return;
    for (int head : row.repeats) {
        const Row& again = rows[static_cast<std::size_t>(head)];
        if (head != row.repeats.front()) at.y += again.before;
        putRow(again, x, width, at, source + head, true);
    }
}

Cursor Flow::place(const std::vector<Row>& rows, double x, double width, Cursor from, int source) {
    Cursor at = from;
    m_walkEnd = -1;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const bool onTop = at.y <= topOf(at.page) + kRounding;
        const double before = onTop ? 0 : rows[i].before;
        const double room = m_bottom - at.y + kRounding;
        const bool chainCanFit = chainHeight(rows, i) <= m_bottom - m_laterTop;
        const double need = before + (chainCanFit ? chainHeight(rows, i) : rows[i].height);
        if (!onTop && need > room) {
            at = {at.page + 1, topOf(at.page + 1)};
            m_walkEnd = -1;
            putHeads(rows, i, x, width, at, source);
        } else {
            at.y += before;
        }
        putRow(rows[i], x, width, at, source + static_cast<int>(i), false);
    }
    return at;
}

Cursor Flow::placeAtBottom(const std::vector<Row>& rows, double x, double width, Cursor from, int source) {
    if (rows.empty()) return from;
    constexpr double kAir = 2.5;
    const double height = stackHeight(rows);
    const bool onTop = from.y <= topOf(from.page) + kRounding;
    const double least = from.y + (onTop ? 0 : kAir);
    if (least + height <= m_bottom + kRounding)
        return place(rows, x, width,
                     {from.page, std::max(topOf(from.page), m_bottom - height - rows[0].before)}, source);
    return place(rows, x, width, {from.page + 1, topOf(from.page + 1)}, source);
}

} // namespace withy::paper
