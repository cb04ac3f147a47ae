// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/working.h"
#include "core/garden/warmth.h"

#include <optional>
#include <string>
#include <vector>

namespace withy::garden {

/// Learns from the years in which a plant's first cut was noted what brings it into flower: base
/// temperature, the day from which warmth counts, and the heat sum (thermal time: a plant flowers when the
/// heat above its base, summed from some day on, comes to its own figure). Base and start come from a
/// coarse grid with a prior (bloom_grid.h), the sum is the years' mean.
///
/// Whether to believe it is decided on years left out: each year in turn is foretold from the others, by
/// the calendar (mean date) and by warmth; the share given to warmth is the one with the least squared
/// error of these. A share that does not reach a half is taken as none: warmth must earn its place.
struct BloomYear {
    Day firstCut;
    Day from;                   ///< of days.front()
    std::vector<DayRange> days; ///< every day; at least to the first cut for the year to count
};

inline constexpr int bloomLeads[] = {0, 7, 14, 28, 56}; ///< days
inline constexpr int fewestBloomYears = 4;              ///< below this the calendar stands

enum class BloomModelKind { calendar, thermal, mix };

enum class BloomFitNote {
    tooFewYears,    ///< fewer than fewestBloomYears with their temperatures: calendar
    yearLeftOut,    ///< a year had gaps or impossible temperatures, or a second date
    warmthNoBetter, ///< left-out years are no better foretold by warmth: calendar
    shortRecord     ///< fewer than ten years: ranges are wide, shares shrunken
};

/// Error over the years left out in turn, days.
struct BloomErrors {
    double meanAbsolute = 0;
    double rootMeanSquare = 0;
    double worst = 0;
};

/// One way of counting warmth. Several are nearly as likely as the best, the more so the fewer years there
/// are; the forecast is their weighted mean, which errs less than the best of them alone.
struct BloomMember {
    double base = 0;    ///< C
    int startDay = 0;   ///< days after the anchor
    double heatSum = 0; ///< C days from start to first cut
    double rate = 0;    ///< C days per day before the first cut, the years' mean
    double weight = 0;  ///< all sum to 1
};

struct BloomModel {
    BloomModelKind kind = BloomModelKind::calendar;
    int years = 0;       ///< used
    int anchorMonth = 1; ///< dates are counted in days from this day, half a year before the flowering
    int anchorDay = 1;
    double meanDay = 0;               ///< mean first cut, days after the anchor
    double meanSpread = 0;            ///< standard deviation of the dates
    std::vector<BloomMember> members; ///< the likeliest first; empty: calendar
    double warmthShare = 0;           ///< 0 calendar, 1 thermal
    BloomErrors calendar;
    BloomErrors thermal;
    BloomErrors chosen;
    double halfRange = 0; ///< days either way that hold 60 % of the years left out
    /// The same when foretold bloomLeads[i] days before the mean date, normals standing in for the rest.
    std::vector<double> halfRangeAhead;
    std::vector<BloomFitNote> notes;
    Working working;
};

BloomModel fitBloom(const std::vector<BloomYear>& years);

/// What is known when a date is foretold: temperatures up to some day, normals afterwards.
struct BloomOutlook {
    Day from; ///< of days.front(); at or before the model's start
    std::vector<DayRange> days;
    int known = 0;     ///< the first so many are measured, the others normals
    double spread = 0; ///< of real days about the normals, C (Warmth::spread)
};

struct BloomForecast {
    Day day;
    Day hopeful;           ///< early end of the range that holds 60 % of years
    Day cautious;          ///< late end
    double exactDay = 0;   ///< days after the anchor
    bool byWarmth = false; ///< false: the calendar stands, because the model or the days say so
};

/// First cut in the year whose flowering is nearest `near` (any day within half a year of it).
BloomForecast predictBloom(const BloomModel& model, const BloomOutlook& outlook, Day near);

/// The anchor day before the flowering that is nearest `near`.
Day anchorFor(const BloomModel& model, Day near);

} // namespace withy::garden
