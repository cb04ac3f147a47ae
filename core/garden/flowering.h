// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/base/working.h"
#include "core/garden/sourced.h"
#include "core/garden/warmth.h"

#include <optional>
#include <string>

namespace withy::garden {

inline constexpr int farthestMove = 28; ///< days by which warmth moves a date at most; see below

/// First, peak and last cut of a patch this year, from the dates usual in a normal year.
///
/// The usual dates become heat sums on the normal year, counted from an origin; this year reaches the
/// same sums earlier or later: the thermal dates. A warm spell moves and shortens the flowering, a cold
/// one delays and stretches it. The heat share blends: date = usual + share x (thermal - usual), rounded
/// to the nearest day. A year that is the normal one, day for day, gives back the usual dates. Warmth moves
/// a date by 28 days at most; beyond that a heat sum says nothing (own choice; the longest series this was
/// tried on, 84 years of cherry blossom at Washington, stays within 19 of its mean).
///
/// Origin (own choice): the coldest day of the normal year before the first cut, not nearer than 45 days
/// and not farther than 270, so that it works in any month, over the year's end and south of the equator.
/// Under cover the year's departures reach the plants only in part: the usual dates already hold the
/// cover's own warmth, so half the heat share is taken (own choice; common practice, no source).
struct Dates {
    Day first;
    Day peak;
    Day last;

    friend constexpr bool operator==(const Dates&, const Dates&) = default;
};

struct FloweringInput {
    std::string patch; ///< name, for the working
    Dates usual;
    Sourced base;                   ///< C
    std::optional<Sourced> ceiling; ///< C
    Sourced heatShare;              ///< 0 by the calendar, 1 by warmth alone
    bool underCover = false;
    std::optional<Day> origin; ///< originFor(); blank: 45 days before the first cut
};

enum class FloweringTrouble {
    notFinite,
    badThresholds, ///< see HeatUnitsTrouble
    badHeatShare,  ///< not from 0 to 1
    outOfOrder,    ///< not first, peak, last
    outsideWarmth  ///< the temperatures do not cover origin to last cut
};

struct Flowering {
    Dates usual;
    Dates thermal;      ///< by warmth alone
    Dates dates;        ///< this year's
    int daysEarly = 0;  ///< of the first cut; negative: late
    double heatSum = 0; ///< C days from the origin to the usual first cut
    Day origin;
    Working working; ///< of the first cut
};

/// `sums` must be of the input's thresholds.
Result<Flowering, FloweringTrouble> flowering(const FloweringInput& in, const HeatSums& sums);

/// The middle of the coldest thirty days of the normal year not after `day`.
Day coldestBefore(const YearNormals& normals, Day day);
/// See above.
Day originFor(const YearNormals& normals, Day firstCut);

/// How far this year's warmth runs ahead of the normal year on `today`.
struct SeasonLead {
    double daysEarly = 0; ///< negative: late
    Day origin;           ///< heat counted from here
    double heatSum = 0;   ///< C days up to today
    double normalSum = 0;
    Working working;
};

/// Nothing when the sums do not cover the days from `origin` to `today`, when the normal year never has this
/// heat (in autumn), or when the two are over 28 days apart: beyond that a heat sum says nothing.
std::optional<SeasonLead> seasonLead(const HeatSums& sums, Day origin, Day today, const Sourced& base);

/// The second flush after a hard cut: first stems when the plant has had again the heat that
/// `regrowthDays` bring in a normal year after that day (blended by the heat share as above). It runs to
/// the patch's last cut; the peak comes a third of the way on. Nothing when there is no time left.
std::optional<Dates> regrowth(const Dates& dates, Day hardCut, int regrowthDays, double heatShare,
                              const HeatSums& sums);

} // namespace withy::garden
