// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/normals.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace withy::garden {

namespace {

constexpr std::size_t months = 12;

using Months = std::array<double, months>;

Months lengths(bool leapYear) {
    return {31, leapYear ? 29.0 : 28.0, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
}

std::optional<NormalsTrouble> trouble(const MonthlyMeans& means) {
    for (const double mean : means) {
        if (!std::isfinite(mean)) return NormalsTrouble::notFinite;
        if (mean < -90 || mean > 60) return NormalsTrouble::badCelsius;
    }
    return std::nullopt;
}

std::size_t before(std::size_t m) {
    return (m + months - 1) % months;
}

/// The value (slope of the running sum) at the first moment of each month. Continuous curvature
/// there asks: v[m-1] / h[m-1] + 2 v[m] (1 / h[m-1] + 1 / h[m]) + v[m+1] / h[m]
///         = 3 (mean[m-1] / h[m-1] + mean[m] / h[m]).
/// Gauss-Seidel on these twelve: the diagonal is twice the rest, so each sweep at least halves the
/// error and 80 reach the last bit.
Months edgeValues(const Months& means, const Months& h) {
    Months v = means;
    for (int sweep = 0; sweep < 80; ++sweep) {
        for (std::size_t m = 0; m < months; ++m) {
            const std::size_t p = before(m);
            const std::size_t n = (m + 1) % months;
            const double right = 3 * (means[p] / h[p] + means[m] / h[m]);
            v[m] = (right - v[p] / h[p] - v[n] / h[m]) / (2 * (1 / h[p] + 1 / h[m]));
        }
    }
    return v;
}

/// The running sum from the month's start to the share `s` of it, less its straight-line part
/// mean x days, so that nothing is lost to cancellation.
double bend(double first, double last, double mean, double h, double s) {
    return h * s * (1 - s) * ((first - mean) * (1 - s) - (last - mean) * s);
}

} // namespace

Result<std::vector<double>, NormalsTrouble> dailyFromMonthly(const MonthlyMeans& means, bool leapYear) {
    if (const auto bad = trouble(means)) return *bad;
    const Months h = lengths(leapYear);
    const Months edge = edgeValues(means, h);
    std::vector<double> days;
    for (std::size_t m = 0; m < months; ++m) {
        const double next = edge[(m + 1) % months];
        for (int day = 0; day < static_cast<int>(h[m]); ++day) {
            const double a = bend(edge[m], next, means[m], h[m], day / h[m]);
            const double b = bend(edge[m], next, means[m], h[m], (day + 1) / h[m]);
            days.push_back(means[m] + b - a);
        }
    }
    return days;
}

Result<std::vector<DayNormal>, NormalsTrouble> dailyNormals(const MonthlyMeans& minimum,
                                                            const MonthlyMeans& maximum, bool leapYear) {
    const auto low = dailyFromMonthly(minimum, leapYear);
    if (!low) return low.error();
    const auto high = dailyFromMonthly(maximum, leapYear);
    if (!high) return high.error();
    for (std::size_t m = 0; m < months; ++m)
        if (minimum[m] > maximum[m]) return NormalsTrouble::minAboveMax;
    std::vector<DayNormal> days;
    for (std::size_t i = 0; i < low->size(); ++i) {
        if ((*low)[i] > (*high)[i] + 1e-9) return NormalsTrouble::rangeTooRough;
        days.push_back({(*low)[i], std::max((*low)[i], (*high)[i])});
    }
    return days;
}

} // namespace withy::garden
