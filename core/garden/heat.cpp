// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/heat.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace withy::garden {

namespace {

using std::numbers::pi;
constexpr double leastDaylight = 4;
constexpr double mostDaylight = 20;

/// What bounds the hours from one sunrise to the next.
struct Cycle {
    double low = 0;  ///< minimum at sunrise
    double high = 0; ///< maximum
    double next = 0; ///< minimum at the next sunrise
    double sunrise = 0;
    double sunset = 0;
};

double afternoon(const Cycle& c, double hour) {
    const double daylight = c.sunset - c.sunrise;
    return c.next + (c.high - c.next) * std::sin(pi * (hour - c.sunrise) / (daylight + 2 * maximumLag));
}

double inCycle(const Cycle& c, double hour) {
    const double daylight = c.sunset - c.sunrise;
    if (hour < c.sunrise + daylight / 2 + maximumLag)
        return c.low + (c.high - c.low) * std::sin(pi * (hour - c.sunrise) / (daylight + 2 * maximumLag));
    if (hour <= c.sunset) return afternoon(c, hour);
    const double atSunset = afternoon(c, c.sunset);
    const double q = std::exp(-(24 - daylight) / nightConstant);
    const double decay = std::exp(-(hour - c.sunset) / nightConstant);
    return (c.next - atSunset * q + (atSunset - c.next) * decay) / (1 - q);
}

double halfWave(double from, double to, double share) {
    return from + (to - from) * (1 - std::cos(pi * share)) / 2;
}

struct Known {
    double previousMaximum = 0;
    double nextMinimum = 0;
};

Known known(const DayHeat& day) {
    return {day.previousMaximum.value_or(day.maximum), day.nextMinimum.value_or(day.minimum)};
}

double plainSine(const DayHeat& day, double hour) {
    const auto [previousMaximum, nextMinimum] = known(day);
    const double top = day.solarNoon + maximumLag;
    const double bottom = top - 12;
    if (hour < bottom) return halfWave(previousMaximum, day.minimum, (hour - bottom + 12) / 12);
    if (hour < top) return halfWave(day.minimum, day.maximum, (hour - bottom) / 12);
    if (hour < top + 12) return halfWave(day.maximum, nextMinimum, (hour - top) / 12);
    return halfWave(nextMinimum, day.maximum, (hour - top - 12) / 12);
}

bool usesPlainSine(const DayHeat& day) {
    if (!day.sunrise || !day.sunset) return true;
    const double daylight = *day.sunset - *day.sunrise;
    return daylight < leastDaylight || daylight > mostDaylight;
}

double middleOfDay(const DayHeat& day) {
    return day.sunrise && day.sunset ? (*day.sunrise + *day.sunset) / 2 : day.solarNoon;
}

double sineByDay(const DayHeat& day, double hour) {
    const auto [previousMaximum, nextMinimum] = known(day);
    const double rise = *day.sunrise;
    const double set = *day.sunset;
    if (hour < rise) return inCycle({day.minimum, previousMaximum, day.minimum, rise - 24, set - 24}, hour);
    if (hour < rise + 24) return inCycle({day.minimum, day.maximum, nextMinimum, rise, set}, hour);
    return inCycle({nextMinimum, day.maximum, nextMinimum, rise + 24, set + 24}, hour);
}

/// The day must be sound.
double temperature(const DayHeat& day, double hour) {
    if (!usesPlainSine(day)) return sineByDay(day, hour);
    DayHeat plain = day;
    plain.solarNoon = middleOfDay(day);
    return plainSine(plain, hour);
}

bool finite(const DayHeat& d) {
    const auto good = [](const std::optional<double>& v) { return !v || std::isfinite(*v); };
    return std::isfinite(d.minimum) && std::isfinite(d.maximum) && std::isfinite(d.solarNoon) &&
           good(d.previousMaximum) && good(d.nextMinimum) && good(d.sunrise) && good(d.sunset);
}

bool plausible(const DayHeat& d) {
    const auto good = [](double t) { return t >= -90 && t <= 60; };
    return good(d.minimum) && good(d.maximum) && good(d.previousMaximum.value_or(0)) &&
           good(d.nextMinimum.value_or(0));
}

bool soundSun(const DayHeat& d) {
    if (d.solarNoon < 0 || d.solarNoon > 24) return false;
    if (d.sunrise && (*d.sunrise < -12 || *d.sunrise > 24)) return false;
    if (!d.sunrise || !d.sunset) return true;
    return *d.sunset > *d.sunrise && *d.sunset < *d.sunrise + 24;
}

} // namespace

std::optional<HeatTrouble> heatTrouble(const DayHeat& day) {
    if (!finite(day)) return HeatTrouble::notFinite;
    if (!plausible(day)) return HeatTrouble::badCelsius;
    if (day.minimum > day.maximum) return HeatTrouble::minAboveMax;
    if (!soundSun(day)) return HeatTrouble::badSun;
    return std::nullopt;
}

Result<double, HeatTrouble> temperatureAt(const DayHeat& day, double hour) {
    if (const auto bad = heatTrouble(day)) return *bad;
    if (!(hour >= 0 && hour <= 24)) return HeatTrouble::badHour;
    return temperature(day, hour);
}

Result<std::optional<double>, HeatTrouble> firstHourAbove(const DayHeat& day, double limit, double fromHour) {
    if (const auto bad = heatTrouble(day)) return *bad;
    if (!std::isfinite(limit)) return HeatTrouble::notFinite;
    if (!(fromHour >= 0 && fromHour <= 24)) return HeatTrouble::badHour;
    const auto over = [&](double hour) { return temperature(day, hour) > limit; };
    if (over(fromHour)) return std::optional(fromHour);
    // Minute by minute, and at the hour of the maximum, where a short peak could hide between two.
    std::vector<double> hours;
    for (int minute = static_cast<int>(fromHour * 60) + 1; minute <= 1440; ++minute)
        hours.push_back(minute / 60.0);
    const double top = middleOfDay(day) + maximumLag;
    if (top > fromHour && top < 24) hours.push_back(top);
    std::sort(hours.begin(), hours.end());
    const auto found = std::find_if(hours.begin(), hours.end(), over);
    return found == hours.end() ? std::optional<double>() : std::optional(*found);
}

} // namespace withy::garden
