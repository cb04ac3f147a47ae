// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/bloom_record.h"

#include <cstddef>
#include <vector>

namespace withy::garden {

double meanOf(const std::vector<double>& values);
double meanWithout(const std::vector<double>& values, std::size_t leftOut);
inline constexpr auto noYear = static_cast<std::size_t>(-1); ///< nothing is left out

/// One way of counting warmth, with what each year gives by it.
struct BloomCell {
    std::size_t base = 0;       ///< index into BloomGrid::bases
    int start = 0;              ///< days after the anchor
    double unlikely = 0;        ///< -2 log of the prior
    std::vector<double> sums;   ///< C days from start to first cut
    std::vector<double> errors; ///< days, when foretold with the mean of all sums
    std::vector<double> paces;  ///< C days per day about the day foretold
    double rate = 0;            ///< C days per day before the first cut, the years' mean
};

/// Bases by starts. The prior says what is thought of garden plants before any year is noted: a base about
/// 5 C (give or take 1), warmth that counts from about a month after the coldest of the winter (give or
/// take 20 days), when the winter's rest is over (common practice, no source). A dozen years outweigh it,
/// four do not.
struct BloomGrid {
    std::vector<double> bases;
    std::vector<std::vector<YearSums>> years; ///< [base][year]
    std::vector<BloomCell> cells;             ///< empty when no warmth is to be had

    explicit BloomGrid(const BloomRecord& record);

    /// The likely cells with their weights, summing to 1, the likeliest first; by the errors of all years
    /// but the one left out, and the prior. Cells must be there.
    [[nodiscard]] std::vector<std::pair<const BloomCell*, double>> likely(std::size_t leftOut) const;
};

} // namespace withy::garden
