// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/day_heat.h"

namespace withy::plan {

namespace {

bool isLeap(int year) {
    return Day::fromYmd(year, 2, 29).has_value();
}

std::vector<garden::DayNormal> normalsOf(const model::Season& season, bool leap) {
    garden::MonthlyMeans minimum{};
    garden::MonthlyMeans maximum{};
    if (season.monthNormals.size() != 12) return {};
    for (const auto& n : season.monthNormals) {
        minimum[static_cast<std::size_t>(n.month - 1)] = n.minCelsius;
        maximum[static_cast<std::size_t>(n.month - 1)] = n.maxCelsius;
    }
    auto daily = garden::dailyNormals(minimum, maximum, leap);
    return daily.ok() ? std::move(daily).value() : std::vector<garden::DayNormal>{};
}

} // namespace

PlaceDays::PlaceDays(const model::Season& season)
    : place_{season.theSettings().latitude, season.theSettings().longitude}
    , zone_(Zone::fromPosix(season.theSettings().zoneRule).value_or(Zone::utc()))
    , normals_(normalsOf(season, false))
    , leapNormals_(normalsOf(season, true)) {
    for (const auto& w : season.weather) {
        const bool measured = w.kind == model::WeatherKind::measured;
        const Range range{w.minCelsius, w.maxCelsius, measured ? HeatBasis::measured : HeatBasis::forecast};
        const auto [at, fresh] = weather_.emplace(w.date, range);
        if (!fresh && measured) at->second = range;
    }
}

std::optional<PlaceDays::Range> PlaceDays::rangeOn(Day day) const {
    if (const auto found = weather_.find(day); found != weather_.end()) return found->second;
    const auto& normals = isLeap(day.year()) ? leapNormals_ : normals_;
    if (normals.empty()) return std::nullopt;
    const auto& n = normals[static_cast<std::size_t>(day.dayOfYear() - 1)];
    return Range{n.minimum, n.maximum, HeatBasis::normals};
}

const PlaceDay& PlaceDays::on(Day day) {
    const std::lock_guard lock(mutex_);
    if (const auto found = days_.find(day); found != days_.end()) return found->second;
    const auto range = rangeOn(day);
    garden::DayHeat heat;
    PlaceDay place;
    if (range) {
        heat.minimum = range->min;
        heat.maximum = range->max;
        if (const auto before = rangeOn(day - 1)) heat.previousMaximum = before->max;
        if (const auto after = rangeOn(day + 1)) heat.nextMinimum = after->min;
        place.basis = range->basis;
    }
    auto made = garden::gardenDay(day, place_, zone_, heat);
    if (made.ok()) {
        place.garden = made.value();
    } else {
        place.garden.day = day;
        place.garden.heat = heat;
    }
    return days_.emplace(day, place).first->second;
}

} // namespace withy::plan
