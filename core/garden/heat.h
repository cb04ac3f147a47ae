// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <optional>

namespace withy::garden {

/// Hour-by-hour temperature of a day from its minimum and maximum.
///
/// Form: a sine by day and an exponential decay by night, as Parton and Logan (Agricultural
/// Meteorology 23, 1981, 205-216) proposed; here in the version of Goudriaan and van Laar (Modelling
/// Potential Crop Growth Processes, 1994), whose night ends exactly on the next minimum. Minimum at
/// sunrise, maximum `maximumLag` after the middle of the day. The papers themselves were not read;
/// form and both figures are those quoted in published crop-model code and its manual.
///   day    T = low + (max - low) sin(pi (h - sunrise) / (daylight + 2 lag)), low = the minimum before
///          the maximum, the next minimum after it
///   night  T = (next - Ts q + (Ts - next) exp(-n / tau)) / (1 - q), q = exp(-night / tau), n hours
///          after sunset, Ts the temperature at sunset
/// With less than 4 or more than 20 hours of daylight, polar day and night included, that form says
/// little (own choice of limits): half cosine waves then join the maximum, `maximumLag` after the
/// sun's noon, to the minima twelve hours before and after.
inline constexpr double maximumLag = 1.5;    ///< hours after the middle of the day
inline constexpr double nightConstant = 4.0; ///< tau, hours

enum class HeatTrouble {
    notFinite,   ///< not a number, or without bounds
    badCelsius,  ///< outside -90 to 60
    minAboveMax, ///< the day's minimum is over its maximum
    badSun,      ///< sunrise not from -12 to 24, or sunset not within the 24 h after it, or noon not
                 ///< from 0 to 24
    badHour,     ///< an hour outside 0 to 24
};

/// One day. Hours are those of the clock, 0 at midnight; sunset may lie beyond 24.
struct DayHeat {
    double minimum = 0;
    double maximum = 0;
    std::optional<double> previousMaximum; ///< yesterday's; taken as today's when not known
    std::optional<double> nextMinimum;     ///< tomorrow's; taken as today's when not known
    std::optional<double> sunrise;         ///< nothing in polar day and night
    std::optional<double> sunset;
    double solarNoon = 12; ///< used only where there is no sunrise or sunset
};

/// Checks the whole day; nothing when it is sound.
std::optional<HeatTrouble> heatTrouble(const DayHeat& day);

/// Temperature at an hour from 0 to 24. Continuous over the day; from one day to the next it joins
/// up when each is told the other's figures, but for the minutes by which sunrise and sunset move.
Result<double, HeatTrouble> temperatureAt(const DayHeat& day, double hour);

/// When the temperature is first over `limit`, from `fromHour` on, to within a minute; nothing
/// when it stays at or under the limit until 24.
Result<std::optional<double>, HeatTrouble> firstHourAbove(const DayHeat& day, double limit,
                                                          double fromHour = 0);

} // namespace withy::garden
