// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/busy_spans.h"

#include <algorithm>

namespace withy::runup {

namespace {

bool fallsOn(const model::BusyHours& b, Day day) {
    if (day < b.from.day || (b.repeatsUntil && *b.repeatsUntil < day)) return false;
    switch (b.repeats) {
    case model::Repeat::never:
        return day == b.from.day;
    case model::Repeat::daily:
        return true;
    case model::Repeat::weekdays:
        return day.weekday() <= 5;
    case model::Repeat::weekly:
        return (day - b.from.day) % 7 == 0;
    }
    return false;
}

} // namespace

std::vector<BusySpan> growersBusySpans(const model::Season& season, Day from, Day to) {
    return busySpansOf(season, std::nullopt, from, to);
}

std::vector<BusySpan> busySpansOf(const model::Season& season, std::optional<Id<model::Helper>> who, Day from,
                                  Day to) {
    std::vector<BusySpan> spans;
    for (const auto& b : season.busyHours) {
        if (b.helper != who) continue;
        const Minutes length = b.to - b.from;
        const int longest = static_cast<int>(length.value / 1440) + 1; // may have begun days before
        for (Day day = std::max(from - longest, b.from.day); day <= to; day = day + 1) {
            if (!fallsOn(b, day)) {
                if (b.repeats == model::Repeat::never && b.from.day < day) break;
                continue;
            }
            const LocalTime start{day, b.from.minute};
            if (LocalTime{from, 0} < start + length) spans.push_back({{start, start + length}, b.label});
        }
    }
    std::sort(spans.begin(), spans.end(),
              [](const BusySpan& a, const BusySpan& b) { return a.span.from < b.span.from; });
    return spans;
}

} // namespace withy::runup
