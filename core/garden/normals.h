// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <array>
#include <vector>

namespace withy::garden {

enum class NormalsTrouble {
    notFinite,    ///< not a number, or without bounds
    badCelsius,   ///< a month's mean outside -90 to 60
    minAboveMax,  ///< a month's minimum is over its maximum
    rangeTooRough ///< no smooth year: some month's range is so small beside its neighbours' that a
                  ///< day's minimum would come over its maximum
};

using MonthlyMeans = std::array<double, 12>; ///< January first

/// Values for the 365 or 366 days of a year, 1 January first, whose mean over each month is that
/// month's exactly and which run on without a step, also from 31 December to 1 January.
///
/// How: the running sum of the means at the month ends is joined by the periodic cubic spline
/// (twice continuously differentiable); a day's value is what the sum grows by over the day. The
/// month means are kept because the spline passes through the sums. Worked out here; the spline
/// conditions are the textbook ones.
Result<std::vector<double>, NormalsTrouble> dailyFromMonthly(const MonthlyMeans& means, bool leapYear);

struct DayNormal {
    double minimum = 0; ///< C
    double maximum = 0; ///< C
};

/// dailyFromMonthly() for both, checked against each other.
Result<std::vector<DayNormal>, NormalsTrouble> dailyNormals(const MonthlyMeans& minimum,
                                                            const MonthlyMeans& maximum, bool leapYear);

} // namespace withy::garden
