// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/wall_layout.h"

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

double scaleFor(const std::vector<WallItem>& items, std::size_t from, std::size_t to, const WallMeasures& m) {
    double tall = 1, wide = 1;
    for (std::size_t i = from; i < to; ++i) {
        tall = std::max(tall, items[i].boundsMm.height());
        wide = std::max(wide, items[i].boundsMm.width());
    }
    const double room = std::max(m.width - m.head - 2 * m.gap, m.least);
    return std::min(m.drawing / tall, room / wide);
}

int widthOf(const WallItem& item, double scale, const WallMeasures& m) {
    const int drawn = static_cast<int>(std::ceil(item.boundsMm.width() * scale));
    const int most = std::max(m.width - m.head, m.least);
    return std::min(std::max({drawn, item.wordsWidth, m.least}) + 2 * m.gap, most);
}

/// How many items from `from` go on one board, and what width is left.
std::size_t fill(const std::vector<int>& widths, std::size_t from, std::size_t to, int room, int& left) {
    std::size_t at = from;
    left = room;
    while (at < to && (at == from || widths[at] <= left))
        left -= widths[at++];
    left = std::max(left, 0);
    return at;
}

} // namespace

WallLayout layOut(const std::vector<WallItem>& items, const WallMeasures& m) {
    WallLayout out;
    out.cells.resize(items.size());
    int y = 0;
    std::size_t from = 0;
    while (from < items.size()) {
        std::size_t to = from;
        while (to < items.size() && items[to].group == items[from].group)
            ++to;
        const double scale = scaleFor(items, from, to, m);
        double tall = 1;
        std::vector<int> widths(items.size());
        for (std::size_t i = from; i < to; ++i) {
            widths[i] = widthOf(items[i], scale, m);
            tall = std::max(tall, items[i].boundsMm.height() * scale);
        }
        const int drawing = static_cast<int>(std::ceil(tall));
        const int spread = m.width - m.head;
        for (std::size_t at = from; at < to;) {
            int left = 0;
            const auto end = fill(widths, at, to, spread, left);
            // What is left over goes between the pieces, but never tears them apart.
            const int extra = std::min(left / static_cast<int>(end - at), 3 * m.gap);
            const int top = y + m.gap;
            const int line = top + m.gap + drawing;
            out.boards.push_back({items[at].group, at == from, line, top, scale});
            int x = m.head;
            for (; at < end; ++at) {
                const int w = widths[at] + extra;
                const double middle = x + w / 2.0 - items[at].boundsMm.center().x() * scale;
                out.cells[at] = {QRect(x, top, w, line + m.words - top), QPointF(middle, line), scale};
                x += w;
            }
            y = line + m.words;
        }
        y += m.gap;
        from = to;
    }
    out.height = y;
    return out;
}

} // namespace withy::ui
