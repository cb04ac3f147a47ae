// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/water_fill.h"

#include <optional>
#include <string>
#include <vector>

/// How the water in a piece goes down, and when the stem ends come out of it. Problem fields: hours, celsius,
/// uptake, q10, evaporation, margin, pieces, points, and those of waterFill().
namespace withy::designs {

/// A stretch of time at one temperature: store, bench, van, venue.
struct WaterPhase {
    double hours = 0;
    double celsius = 20;
};

/// Stems of one plant that drink.
struct Drinker {
    Stems stems;
    std::optional<double> millilitresPerDay; ///< one stem at 20 C; blank: not known
    Basis basis = Basis::notKnown;
    std::string subject;
};

struct WaterCourseAsked {
    WaterWanted filling; ///< container, share, lift and stems at the start
    std::vector<Drinker> drinkers;
    std::vector<WaterPhase> phases; ///< from filling to the end of the event
    double uptakeQ10 = 2;           ///< from memory: uptake follows the life of the flower
    double evaporation = 4;         ///< mm a day from open water at 20 C in a room: from memory
    double margin = 20;             ///< mm of water over the stem ends at which to top up
    std::int64_t pieces = 1;
    std::size_t points = 25; ///< of the curve
};

struct WaterPoint {
    double hours = 0;
    double level = 0; ///< mm above the inside of the bottom
    double millilitres = 0;
};

struct WaterCourse {
    std::vector<WaterPoint> curve;    ///< evenly spaced, first and last included
    std::optional<double> dryAfter;   ///< hours until the stem ends come out; blank: not before the end
    std::optional<double> topUpAfter; ///< hours until only the margin is left
    bool endIsDry = false;            ///< the event's last hour, or part of it, is dry
    double wantedByEnd = 0;           ///< ml a piece drinks and loses when it is kept topped up
    Millilitres toCarry;              ///< for all pieces: to end with the margin still there; rounded up
    int unknownDrinkers = 0;          ///< uptake blank: the water falls faster in truth
    Working working;                  ///< of toCarry
};

/// The water falls by what the stems drink, uptake x q10^((T - 20) / 10), while their ends are in it, and by
/// evaporation from the neck less the stems, in proportion to the saturation pressure over water (O. A.
/// Alduchov, R. E. Eskridge, J. Appl. Meteor. 35 (1996) 601-609). Both are steady within a phase, so the
/// volume falls in straight lines; the level follows from the container's shape.
Result<WaterCourse, Problem> waterCourse(const WaterCourseAsked& asked);

/// Saturation vapour pressure over water in hectopascal, -40 to 50 C: 6.1094 exp(17.625 T / (T + 243.04)).
double saturationPressure(double celsius);

} // namespace withy::designs
