// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/zone.h"

#include <optional>

namespace withy::garden {

/// Degrees; north and east are positive.
struct GeoPoint {
    double latitude = 0;  ///< -90 to 90
    double longitude = 0; ///< -180 to 180
};

enum class SunTrouble {
    badLatitude,  ///< not a number from -90 to 90
    badLongitude, ///< not a number from -180 to 180
    badDay,       ///< outside 1900 to 2200
};

enum class SunStatus {
    normal,   ///< the sun crosses the horizon at least once
    allDay,   ///< polar day: it does not set
    allNight, ///< polar night: it does not rise
};

enum class TwilightStatus {
    normal,         ///< the sun crosses 6 degrees below the horizon at least once
    brightAllNight, ///< it never gets as low as that
    darkAllDay,     ///< it never gets as high as that
};

/// Rounded to the second. On the first and last day of a polar day or night the status can be
/// normal with only one of rise and set.
struct SunDay {
    SunStatus status = SunStatus::normal;
    std::optional<Instant> rise;
    std::optional<Instant> transit; ///< missing only in sunOnUtDate(), about once a year
    std::optional<Instant> set;
};

struct TwilightDay {
    TwilightStatus status = TwilightStatus::normal;
    std::optional<Instant> dawn;
    std::optional<Instant> dusk;
};

/// Rise and set: centre of the sun 50 arc minutes below the level horizon, the almanac's rule for
/// mean refraction and the sun's half width.
inline constexpr double riseSetAltitude = -50.0 / 60.0;
/// Civil twilight: centre 6 degrees below.
inline constexpr double civilAltitude = -6.0;

struct SunAndTwilight {
    SunDay sun;
    TwilightDay twilight;
};

/// The events around the transit that belongs to the local mean solar day `day`: rise before it,
/// set after it, each within half a turn. This is what a grower calls the day, whatever the zone.
/// The altitude itself is solved for its crossings, so declination and equation of time are
/// those of the event. Equations: sun_position.h.
Result<SunAndTwilight, SunTrouble> sunAndTwilightOn(Day day, GeoPoint at);
Result<SunDay, SunTrouble> sunOn(Day day, GeoPoint at);
Result<TwilightDay, SunTrouble> civilTwilightOn(Day day, GeoPoint at);

/// The almanac's way: the first rise, transit and set that fall between 0 h and 24 h UT of `day`.
/// Away from Greenwich the set may come before the rise. For the checks against published almanacs, as is
/// civilTwilightOn(): plans ask for sun and twilight together.
Result<SunDay, SunTrouble> sunOnUtDate(Day day, GeoPoint at);
Result<TwilightDay, SunTrouble> civilTwilightOnUtDate(Day day, GeoPoint at);

/// Hours on the place's clock after midnight of `day`, seconds kept; below 0 or above 24 when the
/// instant falls on another date there.
double clockHours(const Zone& zone, Day day, Instant at);

} // namespace withy::garden
