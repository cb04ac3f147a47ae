// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/volume.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"
#include "core/designs/filling.h"
#include "core/designs/solids.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::designs {

namespace {

using std::numbers::pi;

/// Volume below the level z: every profile's cross-section is at most quadratic in z, so its
/// integral is z (first + z (second + z third)).
struct Filling {
    double first = 0;
    double second = 0;
    double third = 0;

    [[nodiscard]] double upTo(double z) const { return z * (first + z * (second + z * third)); }
};

double baseOf(const ProfileShape& s) {
    return s.base.value_or(s.rim);
}

double bodyOf(const ProfileShape& s) {
    if (s.kind == Profile::cylinder) return s.body.value_or(s.rim);
    return s.body.value_or(std::max(s.rim, baseOf(s)));
}

Filling taperedFilling(double baseRadius, double rimRadius, double depth) {
    const double slope = (rimRadius - baseRadius) / depth;
    return {pi * baseRadius * baseRadius, pi * baseRadius * slope, pi * slope * slope / 3};
}

Filling roundedFilling(const ProfileShape& s) {
    const double widest = bodyOf(s) / 2;
    const auto rise = [&](double diameter) {
        const double part = diameter / 2 / widest;
        return std::sqrt(std::max(0.0, (1 - part) * (1 + part)));
    };
    const double below = rise(baseOf(s));
    const double both = below + rise(s.rim);
    const double area = pi * widest * widest;
    return {area * (1 - below * below), area * below * both / s.depth,
            -area * both * both / (3 * s.depth * s.depth)};
}

Filling troughFilling(const ProfileShape& s) {
    const double width = baseOf(s);
    const double length = s.baseLength.value_or(*s.length);
    const double widthSlope = (s.rim - width) / s.depth;
    const double lengthSlope = (*s.length - length) / s.depth;
    return {roundedRectangleArea(length, width, s.corner), (length * widthSlope + width * lengthSlope) / 2,
            lengthSlope * widthSlope / 3};
}

/// Precondition: the shape is sound.
Filling fillingOf(const ProfileShape& s) {
    switch (s.kind) {
    case Profile::cylinder:
        return {circleArea(bodyOf(s)), 0, 0};
    case Profile::tapered:
        return taperedFilling(baseOf(s) / 2, s.rim / 2, s.depth);
    case Profile::rounded:
        return roundedFilling(s);
    case Profile::trough:
        return troughFilling(s);
    }
    return {};
}

std::optional<Problem> notASize(std::string_view field, double value) {
    return outsideReal(field, value, leastSize, mostSize);
}

std::optional<Problem> checkBody(const ProfileShape& s) {
    if (s.kind == Profile::trough || s.kind == Profile::tapered || !s.body) return std::nullopt;
    if (auto p = notASize("inner_body", *s.body)) return p;
    if (*s.body < s.rim)
        return problemAt(ProblemCode::lessThan, "inner_body", numberText(*s.body),
                         {"inner_rim", numberText(s.rim)});
    if (s.kind == Profile::rounded && *s.body < baseOf(s))
        return problemAt(ProblemCode::lessThan, "inner_body", numberText(*s.body),
                         {"inner_base", numberText(baseOf(s))});
    return std::nullopt;
}

std::optional<Problem> checkTrough(const ProfileShape& s) {
    if (s.kind != Profile::trough) return std::nullopt;
    if (!s.length) return problemAt(ProblemCode::required, "inner_length", "");
    if (auto p = notASize("inner_length", *s.length)) return p;
    const double baseLength = s.baseLength.value_or(*s.length);
    if (auto p = notASize("inner_base_length", baseLength)) return p;
    if (auto p = notASize("inner_base", baseOf(s))) return p;
    const double shortest = std::min({s.rim, baseOf(s), *s.length, baseLength});
    return outsideReal("corner", s.corner, 0, shortest / 2);
}

std::optional<Problem> checkDepth(const ProfileShape& s) {
    if (auto p = notASize("inner_depth", s.depth)) return p;
    if (!s.outerHeight) return std::nullopt;
    if (auto p = notASize("outer_height", *s.outerHeight)) return p;
    if (s.depth > *s.outerHeight)
        return problemAt(ProblemCode::moreThan, "inner_depth", numberText(s.depth),
                         {"outer_height", numberText(*s.outerHeight)});
    return std::nullopt;
}

Working sizesOf(const ProfileShape& s) {
    const auto size = [](std::string what, double value) {
        return lineOf(Step::given, std::move(what), value, Unit::millimetres, Basis::mine);
    };
    Working w{size(s.kind == Profile::trough ? "inner width" : "inner rim", s.rim)};
    if (s.kind == Profile::cylinder || s.kind == Profile::rounded) w.push_back(size("inner body", bodyOf(s)));
    if (s.kind != Profile::cylinder) w.push_back(size("inner base", baseOf(s)));
    if (s.kind == Profile::trough) w.push_back(size("inner length", *s.length));
    w.push_back(size("inner depth", s.depth));
    return w;
}

} // namespace

std::optional<Problem> checkShape(const ProfileShape& s) {
    if (auto p = notASize("inner_rim", s.rim)) return p;
    if (auto p = outsideReal("inner_base", baseOf(s), 0, mostSize)) return p;
    if (auto p = checkBody(s)) return p;
    if (auto p = checkDepth(s)) return p;
    return checkTrough(s);
}

double cubicMillimetresTo(const ProfileShape& shape, double level) {
    return fillingOf(shape).upTo(level);
}

Result<Volume, Problem> volumeTo(const ProfileShape& shape, double level) {
    if (const auto p = checkShape(shape)) return *p;
    if (const auto p = outsideReal("level", level, 0, shape.depth)) return *p;
    Volume v;
    v.cubicMillimetres = cubicMillimetresTo(shape, level);
    v.millilitres = Millilitres(std::llround(v.cubicMillimetres / 1000));
    v.working = sizesOf(shape);
    v.working.push_back(lineOf(Step::given, "level", level, Unit::millimetres));
    v.working.push_back(lineOf(Step::result, "volume", v.cubicMillimetres / 1000, Unit::millilitres));
    return v;
}

Result<Volume, Problem> fullVolume(const ProfileShape& shape) {
    if (const auto p = checkShape(shape)) return *p;
    return volumeTo(shape, shape.depth);
}

Result<Level, Problem> levelFor(const ProfileShape& shape, double cubicMillimetres) {
    if (const auto p = checkShape(shape)) return *p;
    const Filling filling = fillingOf(shape);
    const double full = filling.upTo(shape.depth);
    if (const auto p = outsideReal("volume", cubicMillimetres, 0, HUGE_VAL)) return *p;
    if (cubicMillimetres > full)
        return problemAt(ProblemCode::moreThan, "volume", numberText(cubicMillimetres),
                         {"full_volume", numberText(full)});
    double low = 0;
    double high = shape.depth;
    // Volume grows with the level, so halving always closes in; it ends at neighbouring doubles.
    for (double half = high / 2; half > low && half < high; half = low + (high - low) / 2)
        (filling.upTo(half) < cubicMillimetres ? low : high) = half;
    if (cubicMillimetres == 0) high = 0;
    Level level{high, sizesOf(shape)};
    level.working.push_back(lineOf(Step::given, "volume", cubicMillimetres / 1000, Unit::millilitres));
    level.working.push_back(lineOf(Step::result, "level", high, Unit::millimetres));
    return level;
}

Result<Neck, Problem> neck(const ProfileShape& shape) {
    if (const auto p = checkShape(shape)) return *p;
    const bool trough = shape.kind == Profile::trough;
    Neck n;
    n.area = trough ? roundedRectangleArea(*shape.length, shape.rim, shape.corner) : circleArea(shape.rim);
    n.innerGirth =
        trough ? roundedRectangleGirth(*shape.length, shape.rim, shape.corner) : circleGirth(shape.rim);
    n.working.push_back(
        lineOf(Step::given, trough ? "inner width" : "inner rim", shape.rim, Unit::millimetres, Basis::mine));
    if (trough)
        n.working.push_back(
            lineOf(Step::given, "inner length", *shape.length, Unit::millimetres, Basis::mine));
    n.working.push_back(lineOf(Step::result, "neck area in square millimetres", n.area, Unit::none));
    return n;
}

Result<Figure, Problem> outerGirth(const ProfileShape& shape, double wall) {
    const auto inner = neck(shape);
    if (!inner.ok()) return inner.error();
    if (const auto p = outsideReal("wall", wall, 0, 100)) return *p;
    Figure girth{inner->innerGirth + 2 * pi * wall, Unit::millimetres, {}};
    girth.working = {lineOf(Step::given, "inner girth", inner->innerGirth, Unit::millimetres),
                     lineOf(Step::plus, "wall all round", 2 * pi * wall, Unit::millimetres),
                     lineOf(Step::result, "girth", girth.value, Unit::millimetres)};
    return girth;
}

} // namespace withy::designs
