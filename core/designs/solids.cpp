// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/solids.h"

#include <cmath>
#include <numbers>

namespace withy::designs {

using std::numbers::pi;

double circleArea(double diameter) {
    return pi * diameter * diameter / 4;
}

double circleGirth(double diameter) {
    return pi * diameter;
}

double roundedRectangleArea(double a, double b, double corner) {
    return a * b - (4 - pi) * corner * corner;
}

double roundedRectangleGirth(double a, double b, double corner) {
    return 2 * (a + b) - 8 * corner + 2 * pi * corner;
}

double cylinderVolume(double diameter, double height) {
    return circleArea(diameter) * height;
}

double boxVolume(double a, double b, double height) {
    return a * b * height;
}

double frustumVolume(double r1, double r2, double height) {
    return pi * height * (r1 * r1 + r1 * r2 + r2 * r2) / 3;
}

double sphereFilledVolume(double radius, double depth) {
    return pi * depth * depth * (3 * radius - depth) / 3;
}

double helixLength(double turns, double diameter, double pitch) {
    return turns * std::hypot(pi * diameter, pitch);
}

} // namespace withy::designs
