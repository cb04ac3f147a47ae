// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <optional>

/// What a container holds, from its inner sizes in millimetres.
namespace withy::designs {

enum class Profile {
    cylinder, ///< straight walls of the body's diameter; the rim may be narrower (a shoulder is not drawn)
    tapered,  ///< truncated cone from base to rim
    rounded,  ///< belly: part of an ellipsoid of revolution cut level at base and rim, see below
    trough,   ///< rectangular, rim is its inner width; may narrow to the base; corners may be rounded
};

/// Inner sizes in millimetres; blank is not zero.
///
/// The rounded body: the ellipsoid's greatest radius R is half the body; it is cut by two level planes a
/// depth h apart where its radius is that of the base (below the middle) and of the rim (above it). With
/// s = sqrt(1 - (r / R)^2) for each, the upright half axis is h / (s_base + s_rim). A globe is the special
/// case of a sphere; base, body and rim all alike give a cylinder.
struct ProfileShape {
    Profile kind = Profile::cylinder;
    double rim = 0;               ///< diameter of the neck; a trough's width at the rim
    std::optional<double> body;   ///< widest diameter; blank: the wider of rim and base
    std::optional<double> base;   ///< diameter (trough: width) at the bottom, 0 is a point; blank: as the rim
    double depth = 0;             ///< from the rim down to the inside of the bottom
    std::optional<double> length; ///< trough only, at the rim
    std::optional<double> baseLength;  ///< trough only; blank: as the length
    double corner = 0;                 ///< trough only: radius of its upright corners
    std::optional<double> outerHeight; ///< where known, the depth must not exceed it
};

/// Smallest and largest inner size taken, in millimetres.
inline constexpr double leastSize = 0.1;
inline constexpr double mostSize = 10'000;

/// Problem fields are those of the container: inner_rim, inner_body, inner_base, inner_depth, inner_length,
/// inner_base_length, corner, outer_height.
std::optional<Problem> checkShape(const ProfileShape& shape);

struct Volume {
    double cubicMillimetres = 0;
    Millilitres millilitres; ///< to the nearest
    Working working;
};

/// Filled to `level` millimetres above the inside of the bottom, 0 to the depth (field "level").
Result<Volume, Problem> volumeTo(const ProfileShape& shape, double level);
Result<Volume, Problem> fullVolume(const ProfileShape& shape);

struct Level {
    double millimetres = 0; ///< above the inside of the bottom
    Working working;
};

/// The level that holds so much; more than the container holds is a problem (field "volume", moreThan).
Result<Level, Problem> levelFor(const ProfileShape& shape, double cubicMillimetres);

struct Neck {
    double area = 0;       ///< square millimetres, inside the rim
    double innerGirth = 0; ///< millimetres
    Working working;       ///< of the area
};

Result<Neck, Problem> neck(const ProfileShape& shape);

/// Outer girth of the neck in millimetres: the inner outline moved out by the wall everywhere, which adds
/// 2 pi x wall to any outline without hollows (Steiner). Wall 0 to 100 mm (field "wall").
Result<Figure, Problem> outerGirth(const ProfileShape& shape, double wall);

} // namespace withy::designs
