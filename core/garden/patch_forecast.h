// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/quantity.h"
#include "core/base/result.h"
#include "core/base/working.h"
#include "core/garden/flowering.h"
#include "core/garden/negative_binomial.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace withy::garden {

/// Stems a patch has ready, day by day.
///
/// Curve: new stems follow a smooth hump from the first cut over the peak to the last (a beta-shaped
/// curve with its top on the peak day, nought just before the first and after the last), summing to the
/// expected stems. A ready stem holds on the plant for `holdDays`; standing = what became ready on that
/// day and the hold days before it, as if nothing were cut.
///
/// Amount: the patch bears theta times what is expected, theta ~ Gamma(a, a); what is found, given theta, is
/// Poisson. Counts of one walk hang together, so a walk is thinned to the worth of one observation
/// (count / phi ~ Poisson(theta x expected / phi)) and the prior is worth `priorWalks` of them; the update is
/// the conjugate one: Gamma(a + sum of counts, a + sum of expectations) (A. Gelman et al., Bayesian Data
/// Analysis, section 2.6). A count over four times the expectation weighs as one of four times, but is
/// still taken as it is.
/// Dates: the same likelihood, with theta integrated out, weighs a shift of the curve by whole days (two
/// where the spread is four or more), prior normal with standard deviation `dateSpread`; amount and shift are
/// averaged over it. A day's stems are then negative binomial (Gamma-mixed Poisson, its two moments those of
/// the average over shifts): cautious, likely, hopeful are its 20, 50, 80 % quantiles.
struct WalkCount {
    Day day;
    std::optional<std::int64_t> readyNow;        ///< blank: not counted; never the same as nought
    std::optional<std::int64_t> withinThreeDays; ///< more, by the third day after; ready now not among them
    std::optional<std::int64_t>
        withinWeek;             ///< more, by the seventh day after, those of three days among them
    std::int64_t cutLately = 0; ///< cut within the hold days before; they stood there too
};

enum class WalkTrouble {
    blank,             ///< nothing was counted: passed over
    negative,          ///< passed over
    outsideFlowering,  ///< nothing is expected within a fortnight of it: passed over
    farAboveExpected,  ///< ten times the expectation or more, and 20 stems: used with bounded weight
    weekUnderThreeDays ///< within the week fewer than within three days: the larger is taken for the week
};

struct WalkNote {
    std::size_t walk = 0; ///< index into the input
    WalkTrouble trouble{};
    double counted = 0;
    double expected = 0;
};

struct PatchForecastInput {
    std::string patch; ///< name, for the working
    Dates dates;       ///< this year's
    Sourced expectedStems;
    Sourced holdDays;
    double dateSpread = 4; ///< standard deviation of the dates, days; 0: the dates are certain
    double priorWalks = 3; ///< how many walks the expectation is worth (common practice, no source)
    double priorShape = 6; ///< a: spread of patches about their expectation, 1 / sqrt(a) (as before)
    std::vector<WalkCount> walks;
    std::optional<Day> hardCut;       ///< nothing more comes after it but the second flush,
    std::optional<Dates> secondFlush; ///< which bears what the curve had from its first day on
};

struct StemLevels {
    Stems cautious;
    Stems likely;
    Stems hopeful;

    friend constexpr bool operator==(const StemLevels&, const StemLevels&) = default;
};

struct DayForecast {
    double mean = 0;         ///< new stems expected
    double standingMean = 0; ///< stems standing ready, if nothing is cut
    StemLevels fresh;        ///< becoming ready: quantiles of this day alone
    StemLevels standing;     ///< quantiles of this day alone
    /// The season's total at each level shared out over the days: adds up over days, which quantiles of
    /// single days do not. Take this one where days are summed (cover, free to promise). Rounding may
    /// put a stem of one level a day before that of the next; running sums keep their order.
    StemLevels supply;
};

enum class PatchForecastTrouble {
    notFinite,
    outOfOrder, ///< not first, peak, last
    tooLong,    ///< over 400 days from first to last
    badAmount,  ///< expected stems negative or over 1e6
    badHold,    ///< hold days negative or over 90
    badPrior    ///< weights not above nought, spread negative or over 60
};

struct PatchForecast {
    Day from; ///< of days.front(): as far before the first cut as the dates may shift
    std::vector<DayForecast> days;
    StemLevels total;
    double expected = 0;     ///< stems, after the walks
    double amountFactor = 1; ///< mean of theta after the walks
    double shiftDays = 0;    ///< mean; positive: later
    int walksUsed = 0;
    std::vector<WalkNote> notes;
    Working working; ///< from the expected stems over each walk's part to `expected`

    [[nodiscard]] const DayForecast* on(Day day) const;
};

Result<PatchForecast, PatchForecastTrouble> patchForecast(const PatchForecastInput& in);

/// New stems per day from first to last (both counted), summing to `stems`.
std::vector<double> bloomCurve(const Dates& dates, double stems);

} // namespace withy::garden
