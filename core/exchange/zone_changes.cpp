// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/zone_changes.h"

#include <algorithm>
#include <array>

namespace withy::exchange {

namespace {

constexpr std::int64_t dayOfSeconds = 86'400;

/// The first moment with the later offset, found by halving; `low` has the earlier one.
Instant firstAfter(const Zone& zone, std::int64_t low, std::int64_t high) {
    const int before = offsetAt(zone, {low});
    while (high - low > 60) {
        const std::int64_t middle = low + (high - low) / 120 * 60;
        (offsetAt(zone, {middle}) == before ? low : high) = middle;
    }
    return {high};
}

int weekOfMonth(Day day) {
    return (day.dayOfMonth() - 1) / 7 + 1;
}

bool isLastOfMonth(Day day) {
    return (day + 7).month() != day.month();
}

} // namespace

int offsetAt(const Zone& zone, Instant at) {
    const std::int64_t minute = at.seconds / 60 - (at.seconds % 60 < 0 ? 1 : 0);
    return static_cast<int>(zone.local(at).minutesSinceEpoch() - minute);
}

std::vector<ZoneChange> zoneChanges(const Zone& zone, int firstYear, int lastYear) {
    std::vector<ZoneChange> changes;
    const auto first = Day::fromYmd(firstYear, 1, 1);
    const auto last = Day::fromYmd(lastYear, 12, 31);
    if (!first || !last) return changes;
    for (std::int64_t day = first->number; day <= last->number; ++day) {
        const std::int64_t from = day * dayOfSeconds;
        const int before = offsetAt(zone, {from});
        if (offsetAt(zone, {from + dayOfSeconds}) == before) continue;
        const Instant at = firstAfter(zone, from, from + dayOfSeconds);
        changes.push_back({at, LocalTime::fromMinutes(at.seconds / 60 + before), before, offsetAt(zone, at)});
    }
    return changes;
}

std::string yearlyRule(const std::vector<LocalTime>& changes) {
    static constexpr std::array<const char*, 7> names{"MO", "TU", "WE", "TH", "FR", "SA", "SU"};
    if (changes.empty()) return {};
    const LocalTime first = changes.front();
    const auto all = [&](auto holds) { return std::all_of(changes.begin(), changes.end(), holds); };
    int year = first.day.year();
    if (!all([&](LocalTime t) {
            return t.day.year() == year++ && t.day.month() == first.day.month() && t.minute == first.minute;
        }))
        return {};
    const std::string rule = "FREQ=YEARLY;BYMONTH=" + std::to_string(first.day.month());
    if (all([&](LocalTime t) { return t.day.dayOfMonth() == first.day.dayOfMonth(); }) && changes.size() > 1)
        return rule + ";BYMONTHDAY=" + std::to_string(first.day.dayOfMonth());
    if (!all([&](LocalTime t) { return t.day.weekday() == first.day.weekday(); })) return {};
    const std::string name = names[static_cast<std::size_t>(first.day.weekday() - 1)];
    if (all([](LocalTime t) { return isLastOfMonth(t.day); })) return rule + ";BYDAY=-1" + name;
    const int week = weekOfMonth(first.day);
    if (!all([&](LocalTime t) { return weekOfMonth(t.day) == week; })) return {};
    return rule + ";BYDAY=" + std::to_string(week) + name;
}

} // namespace withy::exchange
