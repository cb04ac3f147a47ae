// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/column_fit.h"

#include <algorithm>
#include <numeric>

namespace withy::ui {

namespace {

int leastOf(const ColumnWant& want) {
    const int full = std::max(want.head, want.content);
    return want.isWords ? std::min(full, std::max(want.head, want.leastOfWords)) : full;
}

/// Makes the widest columns of words narrower together, until `missing` is saved or none can give more.
void shrink(const std::vector<ColumnWant>& wants, std::vector<int>& widths, int missing) {
    while (missing > 0) {
        int widest = 0;
        for (std::size_t i = 0; i < wants.size(); ++i)
            if (widths[i] > leastOf(wants[i])) widest = std::max(widest, widths[i]);
        if (widest == 0) return;
        for (std::size_t i = 0; i < wants.size() && missing > 0; ++i) {
            if (widths[i] != widest || widths[i] <= leastOf(wants[i])) continue;
            --widths[i];
            --missing;
        }
    }
}

} // namespace

std::vector<int> fittedWidths(const std::vector<ColumnWant>& wants, int room, int mostMore) {
    std::vector<int> widths;
    int words = 0;
    for (const auto& want : wants) {
        widths.push_back(std::max(want.head, want.content));
        words += want.isWords ? 1 : 0;
    }
    const int spare = room - std::accumulate(widths.begin(), widths.end(), 0);
    if (spare < 0) {
        shrink(wants, widths, -spare);
        return widths;
    }
    if (words == 0) return widths;
    int given = 0;
    for (std::size_t i = 0; i < wants.size(); ++i) {
        if (!wants[i].isWords) continue;
        const int share = std::min(mostMore, (spare - given) / words--);
        widths[i] += share;
        given += share;
    }
    return widths;
}

} // namespace withy::ui
