// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/garden_day.h"

#include <algorithm>
#include <optional>

/// Which hours of a day count as dawn and as evening for cutting: the one rule for a booking's own rounds
/// (good_hours.h) and for the rounds of all bookings' run-up.
namespace withy::garden {

inline constexpr double coolStretch = 3; ///< hours after sunrise and before sunset (own choice)

/// In hours of the clock; dawn and evening never pass the middle of the day.
struct CoolHours {
    double dawnFrom = 0;    ///< civil dawn; sunrise where it is not known
    double dawnUntil = 0;   ///< three hours after sunrise
    double middle = 0;      ///< between sunrise and sunset
    double eveningFrom = 0; ///< three hours before sunset
    double sunset = 0;      ///< the evening ends
    double dusk = 0;        ///< it may last until here when it is too warm before; civil dusk, else sunset
};

/// Blank in polar day and night, which have neither.
inline std::optional<CoolHours> coolHours(const GardenDay& day) {
    if (!day.heat.sunrise || !day.heat.sunset) return std::nullopt;
    const double sunrise = *day.heat.sunrise;
    const double sunset = *day.heat.sunset;
    const double middle = (sunrise + sunset) / 2;
    return CoolHours{day.civilDawn.value_or(sunrise),
                     std::min(sunrise + coolStretch, middle),
                     middle,
                     std::max(sunset - coolStretch, middle),
                     sunset,
                     day.civilDusk.value_or(sunset)};
}

} // namespace withy::garden
