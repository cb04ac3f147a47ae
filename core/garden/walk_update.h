// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/patch_forecast.h"

#include <cstddef>
#include <vector>

namespace withy::garden {

/// A patch's expected new stems by day, with running sums.
class StemCurve {
public:
    /// With the second flush of a hard cut worked in.
    explicit StemCurve(const PatchForecastInput& in);

    [[nodiscard]] Day from() const { return from_; }

    [[nodiscard]] Day to() const { return from_ + (static_cast<int>(sums_.size()) - 2); }

    /// Stems from `first` to `last`, both counted.
    [[nodiscard]] double between(Day first, Day last) const {
        return last < first ? 0 : upTo(last) - upTo(first - 1);
    }

    /// Ready and still holding on `day`, if nothing was cut but hard.
    [[nodiscard]] double standing(Day day) const;

    [[nodiscard]] double total() const { return sums_.back(); }

private:
    [[nodiscard]] double upTo(Day day) const;

    Day from_;
    std::vector<double> sums_; ///< [i]: before day i
    int hold_ = 0;
    std::optional<Day> hardCut_;
};

/// One shift of the curve with what is believed of it: theta ~ Gamma(shape, rate).
struct Shifted {
    int days = 0; ///< later
    double weight = 0;
    double shape = 0;
    double rate = 0;
    double thetaPart = 0;  ///< weight x E[theta]
    double squarePart = 0; ///< weight x E[theta^2]
};

/// What one walk said.
struct WalkPart {
    Day day;
    double counted = 0;
    double expected = 0; ///< before the walks, over all shifts
    double worth = 0;    ///< in walks: one, less where little was expected
};

struct WalkUpdate {
    std::vector<Shifted> shifts; ///< weights sum to 1
    std::vector<WalkPart> parts;
    std::vector<WalkNote> notes;
};

WalkUpdate walkUpdate(const PatchForecastInput& in, const StemCurve& curve);

} // namespace withy::garden
