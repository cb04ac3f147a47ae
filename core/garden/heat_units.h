// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <optional>

namespace withy::garden {

/// A day's heat units (degree days): by how much, on the day's mean, it is warmer than a base.
///
/// singleSine: the day's temperature is taken as one sine through minimum and maximum; what of it lies
/// above the base counts, less what lies above the ceiling (horizontal cut-off: above the ceiling a
/// plant grows as at the ceiling). G. L. Baskerville and P. Emin, Rapid estimation of heat accumulation
/// from maximum and minimum temperatures, Ecology 50 (1969); J. C. Allen, A modified sine wave method for
/// calculating degree days, Environmental Entomology 5 (1976). The forecast uses this one.
/// average: (minimum + maximum) / 2 less the base, not below nought; the ceiling is not looked at.
/// modified: minimum and maximum first held between base and ceiling, then as average.
/// The last two are McMaster and Wilhelm's two readings (Agricultural and Forest Meteorology 87, 1997);
/// growers' handbooks quote them, so they are here to be compared with.
enum class HeatMethod { singleSine, average, modified };

enum class HeatUnitsTrouble {
    notFinite,          ///< not a number, or without bounds
    badCelsius,         ///< outside -90 to 60 C
    minAboveMax,        ///< the day's minimum is over its maximum
    ceilingNotAboveBase ///< nothing would ever count
};

/// Between which temperatures a plant moves on, C.
struct HeatThresholds {
    double base = 0;
    std::optional<double> ceiling;
};

std::optional<HeatUnitsTrouble> heatUnitsTrouble(const HeatThresholds& thresholds);
std::optional<HeatUnitsTrouble> heatUnitsTrouble(double minimum, double maximum);

/// C days of one day. Never negative. What is checked against published tables, by every method; plans use
/// soundHeatUnits().
Result<double, HeatUnitsTrouble> heatUnits(double minimum, double maximum, const HeatThresholds& thresholds,
                                           HeatMethod method = HeatMethod::singleSine);

/// heatUnits() by single sine for values that were checked before; for long sums.
double soundHeatUnits(double minimum, double maximum, const HeatThresholds& thresholds);

/// What a day brings on average when its minimum and maximum both lie about these with a standard
/// deviation of `spread` C (normal; three-point Gauss-Hermite). A mean temperature understates the heat
/// of the days it is the mean of, because a cold day cannot take back what a mild one gave; without
/// this, every real winter would look early beside its normals.
double expectedHeatUnits(double minimum, double maximum, double spread, const HeatThresholds& thresholds);

} // namespace withy::garden
