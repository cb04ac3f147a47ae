// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/time_spans.h"

#include <algorithm>

namespace withy::runup {

std::vector<TimeSpan> joined(std::vector<TimeSpan> spans) {
    std::erase_if(spans, [](const TimeSpan& s) { return s.to <= s.from; });
    std::sort(spans.begin(), spans.end(),
              [](const TimeSpan& a, const TimeSpan& b) { return a.from < b.from; });
    std::vector<TimeSpan> out;
    for (const auto& s : spans) {
        if (!out.empty() && s.from <= out.back().to)
            out.back().to = std::max(out.back().to, s.to);
        else
            out.push_back(s);
    }
    return out;
}

std::vector<TimeSpan> without(std::vector<TimeSpan> spans, std::vector<TimeSpan> holes) {
    const auto gaps = joined(std::move(holes));
    std::vector<TimeSpan> out;
    for (const auto& s : joined(std::move(spans))) {
        LocalTime from = s.from;
        for (const auto& gap : gaps) {
            if (gap.to <= from) continue;
            if (s.to <= gap.from) break;
            if (from < gap.from) out.push_back({from, gap.from});
            from = gap.to;
        }
        if (from < s.to) out.push_back({from, s.to});
    }
    return out;
}

std::vector<TimeSpan> inBoth(std::vector<TimeSpan> a, std::vector<TimeSpan> b) {
    const auto first = joined(std::move(a));
    const auto second = joined(std::move(b));
    std::vector<TimeSpan> out;
    for (std::size_t i = 0, k = 0; i < first.size() && k < second.size();) {
        const TimeSpan both{std::max(first[i].from, second[k].from), std::min(first[i].to, second[k].to)};
        if (both.from < both.to) out.push_back(both);
        first[i].to < second[k].to ? ++i : ++k;
    }
    return out;
}

} // namespace withy::runup
