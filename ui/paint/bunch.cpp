// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/bunch.h"

#include "core/shed/ribbon_length.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

/// Half the thickness of the tied stems, millimetres: their sections, loosely packed loosely packed.
double bundleHalf(const PieceDrawing& piece) {
    double sections = 0;
    for (const auto& s : piece.slots)
        sections += s.count * s.stem * s.stem / 4;
    return std::max(std::sqrt(sections / shed::usualPacking), 3.0);
}

} // namespace

QPainterPath Stem::path() const {
    QPainterPath p(foot);
    p.lineTo(neck);
    p.cubicTo(leaving, arriving, head);
    return p;
}

Neck standingNeck(const PieceDrawing& piece, const VesselSketch& vessel, double k) {
    Neck neck;
    neck.rimY = vessel.rimY;
    neck.y = vessel.rimY + 3 * k;
    neck.half = std::min(vessel.insideHalf, piece.spread * k * 0.2);
    neck.footY = vessel.footY - piece.lift * k;
    neck.footHalf = std::min(vessel.footHalf, vessel.insideHalf * 1.4);
    // More stems than the neck takes stand out of it, as they would.
    const double tightest = std::sqrt(shed::usualPacking / 0.9069); // hexagonal, as close as round stems go
    const double bundle = bundleHalf(piece) * tightest * k;
    if (bundle > vessel.insideHalf) neck.half = neck.footHalf = bundle;
    return neck;
}

Neck tiedNeck(const PieceDrawing& piece, double k) {
    Neck neck;
    neck.half = bundleHalf(piece) * k;
    neck.footY = piece.belowTie * k;
    neck.footHalf = std::max(neck.half * 2.4, piece.spread * 0.16 * k);
    neck.footShare = 0.42;
    return neck;
}

Stem stemOf(const PieceDrawing& piece, const PlacedStem& placed, const Neck& neck, double k) {
    const double at = std::clamp(placed.x / std::max(piece.spread / 2, 1.0), -1.0, 1.0);
    const double tilt = placed.tilt * std::numbers::pi / 180;
    const double rise = placed.height * k;
    Stem s;
    s.foot = {std::clamp(-placed.x * k * neck.footShare, -neck.footHalf * 0.9, neck.footHalf * 0.9),
              neck.footY};
    s.neck = {at * neck.half * 0.8, neck.y};
    s.head = {placed.x * k, neck.rimY - rise};
    // A head below the rim, or feet above it: straight from one to the other.
    if (s.head.y() >= neck.y || neck.footY <= neck.y) {
        s.neck = s.leaving = s.arriving = s.head;
        return s;
    }
    s.leaving = {s.neck.x() + (s.neck.x() - s.foot.x()) * 0.4, s.neck.y() - rise * 0.35};
    s.arriving = s.head + QPointF(-std::sin(tilt), std::cos(tilt)) * rise * 0.3;
    return s;
}

} // namespace withy::ui
