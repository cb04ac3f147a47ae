// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/warmth.h"
#include "core/model/season.h"
#include "core/plan/finding.h"

#include <map>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace withy::plan {

/// The season's temperatures beside its normals, with what is wrong with either.
class GardenWeather {
public:
    explicit GardenWeather(const model::Season& season);

    [[nodiscard]] const std::optional<garden::YearNormals>& normals() const { return normals_; }

    /// Blank without normals.
    [[nodiscard]] const std::optional<garden::Warmth>& warmth() const { return warmth_; }

    /// There are figures to move a date by.
    [[nodiscard]] bool moves() const { return warmth_ && warmth_->measured + warmth_->forecast > 0; }

    /// Of these thresholds; worked out once. Warmth must be there, the thresholds sound.
    const garden::HeatSums& sums(const garden::HeatThresholds& thresholds);

    /// A sound measured day; nothing where there is none.
    [[nodiscard]] std::optional<garden::DayRange> measured(Day day) const;

    /// The first so many days of warmth() are known.
    [[nodiscard]] int knownDays() const;

    int filledDays = 0; ///< of the season, between days that are known
    std::vector<Finding> findings;

private:
    void readNormals(const model::Season& season);
    void readWeather(const model::Season& season);
    void findGaps(const model::Season& season);

    std::optional<garden::YearNormals> normals_;
    std::optional<garden::Warmth> warmth_;
    std::map<Day, garden::DayRange> measured_;
    std::map<std::pair<double, double>, std::unique_ptr<garden::HeatSums>> sums_;
};

} // namespace withy::plan
