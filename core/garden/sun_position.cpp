// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/sun_position.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::garden {

namespace {

constexpr double degree = std::numbers::pi / 180.0;

double sinDeg(double angle) {
    return std::sin(angle * degree);
}

double cosDeg(double angle) {
    return std::cos(angle * degree);
}

double turned(double angle) {
    const double rest = std::fmod(angle, 360.0);
    return rest < 0 ? rest + 360.0 : rest;
}

double centre(double t, double anomaly) {
    return (1.914600 - t * (0.004817 + 0.000014 * t)) * sinDeg(anomaly) +
           (0.019993 - 0.000101 * t) * sinDeg(2 * anomaly) + 0.000290 * sinDeg(3 * anomaly);
}

/// Obliquity of the ecliptic, corrected for nutation (Meeus 21.2 and page 152).
double obliquity(double t, double node) {
    const double arcSeconds = 21.448 - t * (46.8150 + t * (0.00059 - t * 0.001813));
    return 23.0 + (26.0 + arcSeconds / 60.0) / 60.0 + 0.00256 * cosDeg(node);
}

/// Smart's formula (Meeus 27.3), in minutes.
double equationOfTime(const SolarPosition& p, double tilt) {
    const double halfTan = std::tan(tilt / 2 * degree);
    const double y = halfTan * halfTan;
    const double e = p.eccentricity;
    const double radians = y * sinDeg(2 * p.meanLongitude) - 2 * e * sinDeg(p.meanAnomaly) +
                           4 * e * y * sinDeg(p.meanAnomaly) * cosDeg(2 * p.meanLongitude) -
                           0.5 * y * y * sinDeg(4 * p.meanLongitude) -
                           1.25 * e * e * sinDeg(2 * p.meanAnomaly);
    return radians / degree * 4.0;
}

} // namespace

double julianCentury(double secondsSince1970) {
    return (secondsSince1970 / 86400.0 + 2440587.5 - 2451545.0) / 36525.0;
}

SolarPosition solarPosition(double t) {
    SolarPosition p;
    p.meanLongitude = turned(280.46645 + t * (36000.76983 + t * 0.0003032));
    p.meanAnomaly = turned(357.52910 + t * (35999.05030 - t * (0.0001559 + t * 0.00000048)));
    p.eccentricity = 0.016708617 - t * (0.000042037 + t * 0.0000001236);
    p.equationOfCentre = centre(t, p.meanAnomaly);
    const double node = 125.04 - 1934.136 * t;
    p.apparentLongitude = turned(p.meanLongitude + p.equationOfCentre - 0.00569 - 0.00478 * sinDeg(node));
    const double tilt = obliquity(t, node);
    p.rightAscension =
        turned(std::atan2(cosDeg(tilt) * sinDeg(p.apparentLongitude), cosDeg(p.apparentLongitude)) / degree);
    p.declination = std::asin(sinDeg(tilt) * sinDeg(p.apparentLongitude)) / degree;
    p.equationOfTime = equationOfTime(p, tilt);
    return p;
}

double solarAltitude(double secondsSince1970, double latitude, double longitude) {
    const SolarPosition p = solarPosition(julianCentury(secondsSince1970));
    // Seconds after midnight UT make 1/240 degree each; a minute of the equation of time 1/4.
    const double hourAngle =
        std::fmod(secondsSince1970, 86400.0) / 240.0 - 180.0 + longitude + p.equationOfTime / 4.0;
    const double sine = sinDeg(latitude) * sinDeg(p.declination) +
                        cosDeg(latitude) * cosDeg(p.declination) * cosDeg(hourAngle);
    return std::asin(std::clamp(sine, -1.0, 1.0)) / degree;
}

} // namespace withy::garden
