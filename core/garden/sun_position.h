// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace withy::garden {

/// Where the sun stands, with the steps that lead there. Angles in degrees.
/// Low-accuracy solar equations of J. Meeus, Astronomical Algorithms (1991), chapters 24 and 27,
/// as the NOAA solar calculator uses them; good to about 0.01 degree between 1900 and 2200.
struct SolarPosition {
    double meanLongitude = 0;     ///< 0 to 360
    double meanAnomaly = 0;       ///< 0 to 360
    double eccentricity = 0;      ///< of the earth's orbit
    double equationOfCentre = 0;  ///< true minus mean anomaly
    double apparentLongitude = 0; ///< with nutation and aberration, 0 to 360
    double rightAscension = 0;    ///< apparent, 0 to 360
    double declination = 0;       ///< apparent
    double equationOfTime = 0;    ///< minutes, sundial minus clock
};

/// Centuries of 36525 days since 2000-01-01T12:00, from seconds since 1970-01-01T00:00. Universal
/// time stands in for dynamical time: the minute between them moves an event by under a second.
double julianCentury(double secondsSince1970);

/// `century`: see julianCentury(); must be finite.
SolarPosition solarPosition(double century);

/// Height of the sun's centre over the level horizon, in degrees, without refraction.
/// `latitude` north, `longitude` east, both in degrees.
double solarAltitude(double secondsSince1970, double latitude, double longitude);

} // namespace withy::garden
