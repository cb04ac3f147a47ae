// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <span>

namespace withy::garden {

/// Temperature laws of cut flowers. Life is counted in days at 20 C: a day at T uses
/// Q10^((T - 20) / 10) of them. That the rate rises exponentially between 0 and 20 C is measured
/// (Celikel, Cevallos and Reid, Scientia Hort. 125, 2010, snapdragon, Q10 2.6).
enum class AgeingTrouble {
    notFinite,     ///< not a number, or without bounds
    badQ10,        ///< not over 0 and at most 20
    badCelsius,    ///< outside -40 to 60
    negativeHours, ///< a stretch shorter than nothing
    badRate,       ///< a rate not over 0
    sameCelsius,   ///< two rates at one temperature say nothing about Q10
    flatQ10,       ///< at a Q10 of 1 the rate says nothing about the temperature
};

/// A stretch of time at one temperature.
struct Phase {
    double hours = 0;
    double celsius = 20;
};

inline constexpr double lifeCelsius = 20; ///< the temperature at which life is counted

/// Days of life used per day at `celsius`: 1 at 20 C.
Result<double, AgeingTrouble> ageingRate(double q10, double celsius);

// So far only the checks against published experiments and worked examples ask for what follows: plans add
// up ageingRate() hour by hour (cut_window.h).

/// Days of life, at 20 C, that the phases use together. None use none.
Result<double, AgeingTrouble> lifeUsed(std::span<const Phase> phases, double q10);

/// Q10 = (r2 / r1)^(10 / (t2 - t1)).
Result<double, AgeingTrouble> q10FromRates(double rate1, double celsius1, double rate2, double celsius2);

/// The rate at another temperature: rate x Q10^((to - from) / 10).
Result<double, AgeingTrouble> rateAt(double rate, double fromCelsius, double q10, double toCelsius);

/// The temperature at which the rate is `otherRate`, when it is `rate` at `celsius`.
Result<double, AgeingTrouble> celsiusAtRate(double rate, double celsius, double q10, double otherRate);

constexpr double celsiusFromFahrenheit(double f) {
    return (f - 32) * 5 / 9;
}

constexpr double fahrenheitFromCelsius(double c) {
    return c * 9 / 5 + 32;
}

constexpr double kelvinFromFahrenheit(double f) {
    return (f + 459.67) * 5 / 9;
}

/// A difference of temperatures, not a temperature: 9 F are 5 C.
constexpr double celsiusIntervalFromFahrenheit(double f) {
    return f * 5 / 9;
}

constexpr double fahrenheitIntervalFromCelsius(double c) {
    return c * 9 / 5;
}

} // namespace withy::garden
