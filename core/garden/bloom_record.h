// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/bloom_fit.h"

#include <cstddef>
#include <utility>
#include <vector>

namespace withy::garden {

/// A day of the year that lies half a year from the middle of the dates, so that none wraps round it.
struct BloomAnchor {
    int month = 1;
    int day = 1;
};

BloomAnchor anchorOf(const std::vector<BloomYear>& years);
/// The last anchor day on or before `day`.
Day anchorUpTo(BloomAnchor anchor, Day day);

/// The years as days after their anchors, sound and one per anchor year.
struct BloomRecord {
    struct Year {
        int cut = 0;  ///< first cut, days after the anchor
        int from = 0; ///< of days.front(), days after the anchor
        std::vector<DayRange> days;
    };

    BloomAnchor anchor;
    std::vector<double> cuts; ///< every year's first cut, with temperatures or without
    std::vector<Year> years;  ///< with temperatures from `from` to the first cut at least
    int from = 0;             ///< the day from which all `years` have temperatures
    bool leftOut = false;     ///< a year was
};

BloomRecord bloomRecord(const std::vector<BloomYear>& years);

/// Running heat sums of one year above one base.
class YearSums {
public:
    YearSums(const BloomRecord::Year& year, int from, double base);
    YearSums(const std::vector<double>& heat, int from);

    [[nodiscard]] bool knows(int day) const {
        return day >= from_ && day - from_ + 1 < static_cast<int>(sums_.size());
    }

    /// Heat from `start` to the noon of `day`, both in days after the anchor.
    [[nodiscard]] double between(int start, int day) const;
    /// The (fractional) day whose noon has `heat` since `start`; beyond the figures it goes on at `rate`.
    [[nodiscard]] double reaches(int start, double heat, double rate) const;

    /// Heat of the days from `first` to before `end`, held within the figures.
    [[nodiscard]] double total(int first, int end) const { return before(end) - before(first); }

private:
    [[nodiscard]] double before(int day) const;

    int from_;
    std::vector<double> sums_; ///< [i]: before day from_ + i
};

} // namespace withy::garden
