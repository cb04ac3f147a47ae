// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/garden_day.h"

#include <cmath>

namespace withy::garden {

Result<GardenDay, SunTrouble> gardenDay(Day day, GeoPoint at, const Zone& zone, const DayHeat& warmth) {
    const auto both = sunAndTwilightOn(day, at);
    if (!both) return both.error();
    const SunDay& sun = both->sun;
    const TwilightDay& twilight = both->twilight;

    const double noon = clockHours(zone, day, *sun.transit);
    const double shift = 24 * std::floor(noon / 24);
    const auto hours = [&](const std::optional<Instant>& event) -> std::optional<double> {
        if (!event) return std::nullopt;
        return clockHours(zone, day, *event) - shift;
    };
    GardenDay result{day, warmth, sun.status, twilight.status, hours(twilight.dawn), hours(twilight.dusk)};
    result.heat.sunrise = hours(sun.rise);
    result.heat.sunset = hours(sun.set);
    result.heat.solarNoon = noon - shift;
    return result;
}

} // namespace withy::garden
