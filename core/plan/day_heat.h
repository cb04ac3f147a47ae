// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/garden_day.h"
#include "core/garden/normals.h"
#include "core/model/season.h"

#include <map>
#include <mutex>
#include <optional>

namespace withy::plan {

/// Where a day's minimum and maximum come from.
enum class HeatBasis { measured, forecast, normals };

struct PlaceDay {
    garden::GardenDay garden;
    std::optional<HeatBasis> basis; ///< blank: nothing known, the heat in `garden` is not to be shown
};

/// The light and warmth of the season's place, day by day: measured weather before forecast before the
/// monthly normals. Days are worked out once and kept; several threads may ask.
class PlaceDays {
public:
    explicit PlaceDays(const model::Season& season);

    const PlaceDay& on(Day day);

    [[nodiscard]] const Zone& zone() const { return zone_; }

private:
    struct Range {
        double min;
        double max;
        HeatBasis basis;
    };

    [[nodiscard]] std::optional<Range> rangeOn(Day day) const;

    garden::GeoPoint place_;
    Zone zone_;
    std::map<Day, Range> weather_;
    std::vector<garden::DayNormal> normals_;     ///< of a common year; empty when not all months are known
    std::vector<garden::DayNormal> leapNormals_; ///< of a leap year
    std::mutex mutex_;
    std::map<Day, PlaceDay> days_; ///< grows only, so that a day once given stays where it is
};

} // namespace withy::plan
