// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/heat_units.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace withy::garden {

namespace {

using std::numbers::pi;
constexpr double noCeiling = std::numeric_limits<double>::infinity();

/// Mean over the day of what a sine through minimum and maximum has above `threshold`.
double sineAbove(double minimum, double maximum, double threshold) {
    if (maximum <= threshold) return 0;
    const double mean = (minimum + maximum) / 2;
    if (minimum >= threshold) return mean - threshold;
    const double half = (maximum - minimum) / 2;
    const double angle = std::asin(std::clamp((threshold - mean) / half, -1.0, 1.0));
    return std::max(0.0, ((mean - threshold) * (pi / 2 - angle) + half * std::cos(angle)) / pi);
}

double held(double value, const HeatThresholds& t) {
    return std::clamp(value, t.base, t.ceiling.value_or(noCeiling));
}

bool badCelsius(double value) {
    return value < -90 || value > 60;
}

} // namespace

std::optional<HeatUnitsTrouble> heatUnitsTrouble(const HeatThresholds& t) {
    const double ceiling = t.ceiling.value_or(t.base + 1);
    if (!std::isfinite(t.base) || !std::isfinite(ceiling)) return HeatUnitsTrouble::notFinite;
    if (badCelsius(t.base) || (t.ceiling && badCelsius(ceiling))) return HeatUnitsTrouble::badCelsius;
    if (ceiling <= t.base) return HeatUnitsTrouble::ceilingNotAboveBase;
    return std::nullopt;
}

std::optional<HeatUnitsTrouble> heatUnitsTrouble(double minimum, double maximum) {
    if (!std::isfinite(minimum) || !std::isfinite(maximum)) return HeatUnitsTrouble::notFinite;
    if (badCelsius(minimum) || badCelsius(maximum)) return HeatUnitsTrouble::badCelsius;
    if (minimum > maximum) return HeatUnitsTrouble::minAboveMax;
    return std::nullopt;
}

double soundHeatUnits(double minimum, double maximum, const HeatThresholds& t) {
    const double above = sineAbove(minimum, maximum, t.base);
    return t.ceiling ? std::max(0.0, above - sineAbove(minimum, maximum, *t.ceiling)) : above;
}

Result<double, HeatUnitsTrouble> heatUnits(double minimum, double maximum, const HeatThresholds& t,
                                           HeatMethod method) {
    if (const auto bad = heatUnitsTrouble(t)) return *bad;
    if (const auto bad = heatUnitsTrouble(minimum, maximum)) return *bad;
    switch (method) {
    case HeatMethod::average:
        return std::max(0.0, (minimum + maximum) / 2 - t.base);
    case HeatMethod::modified:
        return (held(minimum, t) + held(maximum, t)) / 2 - t.base;
    case HeatMethod::singleSine:
        break;
    }
    return soundHeatUnits(minimum, maximum, t);
}

double expectedHeatUnits(double minimum, double maximum, double spread, const HeatThresholds& t) {
    const double middle = soundHeatUnits(minimum, maximum, t);
    if (spread <= 0) return middle;
    const double off = std::numbers::sqrt3 * spread;
    return (4 * middle + soundHeatUnits(minimum - off, maximum - off, t) +
            soundHeatUnits(minimum + off, maximum + off, t)) /
           6;
}

} // namespace withy::garden
