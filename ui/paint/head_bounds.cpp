// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/head_look.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <mutex>
#include <numbers>
#include <vector>

namespace withy::ui {

namespace {

constexpr int directions = 180; ///< one each two degrees
/// A head may be turned within its rings, and lies between two directions.
constexpr double generous = 1.03;

/// How far an outline reaches in each direction from its origin.
using Reach = std::array<double, directions>;

const std::vector<QPointF>& aims() {
    static const auto known = [] {
        std::vector<QPointF> out;
        for (int i = 0; i < directions; ++i) {
            const double a = 2 * std::numbers::pi * i / directions;
            out.emplace_back(std::cos(a), std::sin(a));
        }
        return out;
    }();
    return known;
}

/// Upright and at diameter 1.
Reach measured(HeadForm form) {
    constexpr double fine = 25; // flattened at this size, curves are straight to within a hundredth
    Reach out{};
    const auto toSize = QTransform::fromScale(fine, fine);
    for (const auto& mark : headSketch({form, 1, Qt::white, {}, 0, 1})) {
        for (const auto& polygon : mark.path.toSubpathPolygons(toSize)) {
            for (const QPointF& p : polygon) {
                for (std::size_t i = 0; i < out.size(); ++i)
                    out[i] = std::max(out[i], QPointF::dotProduct(p, aims()[i]) / fine);
            }
        }
    }
    return out;
}

/// Measured once for each form, when it is first asked for, from whichever thread.
const Reach& reachOf(HeadForm form) {
    static std::array<Reach, allHeadForms.size()> known;
    static std::array<std::once_flag, allHeadForms.size()> done;
    const auto i = static_cast<std::size_t>(form);
    std::call_once(done[i], [&] { known[i] = measured(form); });
    return known[i];
}

/// The reach towards `degrees` once the head is tilted.
double towards(const Reach& reach, double degrees) {
    const double at = std::fmod(std::fmod(degrees, 360) + 360, 360) * directions / 360;
    const auto low = static_cast<std::size_t>(at) % directions;
    return std::max(reach[low], reach[(low + 1) % directions]);
}

double crossed(QPointF o, QPointF a, QPointF b) {
    return (a.x() - o.x()) * (b.y() - o.y()) - (a.y() - o.y()) * (b.x() - o.x());
}

/// Andrew's monotone chain: the corners of what holds all points.
std::vector<QPointF> hullOf(std::vector<QPointF> points) {
    std::sort(points.begin(), points.end(),
              [](QPointF a, QPointF b) { return a.x() < b.x() || (a.x() == b.x() && a.y() < b.y()); });
    std::vector<QPointF> hull;
    for (int half = 0; half < 2; ++half) {
        const auto from = hull.size();
        for (const QPointF& p : points) {
            while (hull.size() >= from + 2 && crossed(hull[hull.size() - 2], hull.back(), p) <= 0)
                hull.pop_back();
            hull.push_back(p);
        }
        if (!hull.empty()) hull.pop_back();
        std::reverse(points.begin(), points.end());
    }
    return hull;
}

/// Of an upright head at diameter 1, a trail to the right.
std::vector<QPointF> measuredCorners(HeadForm form, int turn) {
    constexpr double fine = 120;
    const auto toSize = QTransform::fromScale(fine, fine);
    std::vector<QPointF> points;
    for (const auto& mark : uprightHead({form, Qt::white, {}, {}, turn, false}, 1)) {
        for (const auto& polygon : mark.path.toSubpathPolygons(toSize)) {
            for (const QPointF& p : polygon)
                points.push_back(p / fine);
        }
    }
    return hullOf(std::move(points));
}

constexpr std::size_t turns = 2 * headTurns + 1;

/// Measured once each, from whichever thread.
const std::vector<QPointF>& cornersOf(HeadForm form, int turn) {
    static std::array<std::array<std::vector<QPointF>, turns>, allHeadForms.size()> known;
    static std::array<std::array<std::once_flag, turns>, allHeadForms.size()> done;
    const auto i = static_cast<std::size_t>(form), j = static_cast<std::size_t>(turn + headTurns);
    std::call_once(done[i][j], [&] { known[i][j] = measuredCorners(form, turn); });
    return known[i][j];
}

} // namespace

QRectF headExtent(const Head& head, double turned) {
    if (!(head.diameter > 0)) return {};
    const auto look = lookOf(head, Theme::light);
    QTransform place;
    place.rotate(turnedBy(head) + turned);
    place.scale(look.left ? -head.diameter : head.diameter, head.diameter);
    constexpr double far = std::numeric_limits<double>::infinity();
    double left = far, right = -far, top = far, bottom = -far;
    for (const QPointF& corner : cornersOf(look.form, look.turn)) {
        const QPointF p = place.map(corner);
        left = std::min(left, p.x());
        right = std::max(right, p.x());
        top = std::min(top, p.y());
        bottom = std::max(bottom, p.y());
    }
    return {QPointF(left, top), QPointF(right, bottom)};
}

QRectF headOutline(HeadForm form, double diameter, double tilt) {
    if (!(diameter > 0)) return {};
    const auto& reach = reachOf(form);
    double right = towards(reach, -tilt) * diameter, left = towards(reach, 180 - tilt) * diameter;
    double below = towards(reach, 90 - tilt) * diameter, above = towards(reach, 270 - tilt) * diameter;
    if (form == HeadForm::trail) { // hangs to the side it leans to, whatever the tilt
        right = towards(reach, 0) * diameter;
        left = towards(reach, 180) * diameter;
        below = towards(reach, 90) * diameter;
        above = towards(reach, 270) * diameter;
        if (tilt < 0) std::swap(left, right);
    }
    return {-left, -above, left + right, above + below};
}

QRectF headBounds(HeadForm form, double diameter, double tilt) {
    const QRectF outline = headOutline(form, diameter, tilt);
    return {outline.topLeft() * generous, outline.size() * generous};
}

} // namespace withy::ui
