// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/bloom_record.h"

#include "core/garden/bloom_grid.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

namespace withy::garden {

namespace {

constexpr double yearDays = 365.2425;
constexpr int usefulLead = 90; ///< days more, which most years should have
constexpr int leastLead = 30;  ///< days of temperatures wanted before the mean first cut

double angleOf(Day day) {
    return 2 * std::numbers::pi * (day.dayOfYear() - 1) / yearDays;
}

/// How many days from the front are sound and at or before the end of the list.
std::size_t soundDays(const std::vector<DayRange>& days) {
    const auto bad = std::find_if(days.begin(), days.end(), [](const DayRange& d) {
        return heatUnitsTrouble(d.minimum, d.maximum).has_value();
    });
    return static_cast<std::size_t>(bad - days.begin());
}

} // namespace

BloomAnchor anchorOf(const std::vector<BloomYear>& years) {
    double x = 0;
    double y = 0;
    for (const auto& year : years) {
        x += std::cos(angleOf(year.firstCut));
        y += std::sin(angleOf(year.firstCut));
    }
    const double middle = x == 0 && y == 0 ? 0 : std::atan2(y, x) / (2 * std::numbers::pi) * yearDays;
    const Day day = *Day::fromYmd(2001, 1, 1) + (static_cast<int>(std::lround(middle)) - 183);
    return {day.month(), day.dayOfMonth()}; // of common years: never 29 February
}

Day anchorUpTo(BloomAnchor anchor, Day day) {
    const Day same = *Day::fromYmd(day.year(), anchor.month, anchor.day);
    return same <= day ? same : *Day::fromYmd(day.year() - 1, anchor.month, anchor.day);
}

BloomRecord bloomRecord(const std::vector<BloomYear>& years) {
    BloomRecord record;
    record.anchor = anchorOf(years);
    std::set<Day> seen;
    for (const auto& y : years) {
        const Day anchor = anchorUpTo(record.anchor, y.firstCut);
        if (!seen.insert(anchor).second) {
            record.leftOut = true;
            continue;
        }
        record.cuts.push_back(y.firstCut - anchor);
        const std::size_t sound = soundDays(y.days);
        if (y.from + static_cast<int>(sound) > y.firstCut)
            record.years.push_back({y.firstCut - anchor,
                                    y.from - anchor,
                                    {y.days.begin(), y.days.begin() + static_cast<std::ptrdiff_t>(sound)}});
    }
    const double latestFrom = meanOf(record.cuts) - leastLead;
    std::erase_if(record.years, [&](const auto& y) { return y.from > std::min<double>(latestFrom, y.cut); });
    // One year whose weather begins late must not cost the others their winter.
    const auto reachesBack = [&](const auto& y) { return y.from <= latestFrom - usefulLead; };
    if (std::count_if(record.years.begin(), record.years.end(), reachesBack) >= fewestBloomYears)
        std::erase_if(record.years, [&](const auto& y) { return !reachesBack(y); });
    record.from = -100000;
    for (const auto& y : record.years)
        record.from = std::max(record.from, y.from);
    std::erase_if(record.years, [&](const auto& y) { return y.cut < record.from; });
    record.leftOut = record.leftOut || record.years.size() < record.cuts.size();
    return record;
}

YearSums::YearSums(const BloomRecord::Year& year, int from, double base) : from_(from) {
    const auto skip = static_cast<std::size_t>(from - year.from);
    sums_.reserve(year.days.size() + 1 - skip);
    sums_.push_back(0);
    const HeatThresholds thresholds{base, std::nullopt};
    for (std::size_t i = skip; i < year.days.size(); ++i)
        sums_.push_back(sums_.back() +
                        soundHeatUnits(year.days[i].minimum, year.days[i].maximum, thresholds));
}

YearSums::YearSums(const std::vector<double>& heat, int from) : from_(from), sums_{0} {
    for (const double h : heat)
        sums_.push_back(sums_.back() + h);
}

double YearSums::before(int day) const {
    const int last = static_cast<int>(sums_.size()) - 1;
    return sums_[static_cast<std::size_t>(std::clamp(day - from_, 0, last))];
}

double YearSums::between(int start, int day) const {
    return (before(day) + before(day + 1)) / 2 - before(start);
}

double YearSums::reaches(int start, double heat, double rate) const {
    const double wanted = heat + before(start);
    const auto at = std::lower_bound(sums_.begin(), sums_.end(), wanted);
    const auto i = at - sums_.begin();
    if (at == sums_.end()) {
        const double missing = (wanted - sums_.back()) / std::max(rate, 0.1);
        return from_ + static_cast<double>(i - 1) + missing - 0.5;
    }
    if (i == 0) return start - 0.5;
    const double below = *(at - 1);
    const double part = *at > below ? (wanted - below) / (*at - below) : 1;
    return from_ + static_cast<double>(i - 1) + part - 0.5;
}

} // namespace withy::garden
