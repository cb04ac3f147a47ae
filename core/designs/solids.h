// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Plain solid geometry, any one unit of length in, its square or cube out. The formulas are the usual
/// handbook ones; the tests compare them with published worked examples. So far only those ask for the
/// volumes and the helix.
/// Precondition of all: sizes not negative.
namespace withy::designs {

double circleArea(double diameter);
double circleGirth(double diameter);

/// Rectangle whose four corners are rounded with `corner` (0: sharp; at most half the shorter side).
double roundedRectangleArea(double a, double b, double corner);
double roundedRectangleGirth(double a, double b, double corner);

double cylinderVolume(double diameter, double height);
double boxVolume(double a, double b, double height);

/// Truncated cone with end radii r1 and r2: pi h (r1^2 + r1 r2 + r2^2) / 3.
double frustumVolume(double r1, double r2, double height);

/// Sphere of radius R filled to `depth` (0 to 2 R): pi d^2 (3 R - d) / 3.
double sphereFilledVolume(double radius, double depth);

/// Length of a band wound `turns` times round a cylinder, climbing `pitch` a turn.
double helixLength(double turns, double diameter, double pitch);

} // namespace withy::designs
