// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/heat.h"
#include "core/garden/sun.h"

#include <optional>

namespace withy::garden {

/// One day in the garden: its warmth and its light. Hours are those of the place's clock.
struct GardenDay {
    Day day;
    DayHeat heat; ///< holds sunrise and sunset too
    SunStatus sun = SunStatus::normal;
    TwilightStatus twilight = TwilightStatus::normal;
    std::optional<double> civilDawn; ///< nothing unless the twilight is normal
    std::optional<double> civilDusk; ///< may lie beyond 24
};

/// Fills in the sun's part of `warmth` (its own sunrise, sunset and noon are replaced) and the light.
/// Where the zone's clock is more than twelve hours off the sun, hours are moved by whole days so
/// that noon falls from 0 to 24.
Result<GardenDay, SunTrouble> gardenDay(Day day, GeoPoint at, const Zone& zone, const DayHeat& warmth);

} // namespace withy::garden
