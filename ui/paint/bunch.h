// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_layout.h"
#include "ui/paint/vessel_sketch.h"

#include <QPointF>

/// How the stems of a bunch run: shared by what draws them and what measures them.
namespace withy::ui {

/// A sheaf lies on its side: turned by so many degrees.
inline constexpr double laidFlat = -78;

/// Where a bunch of stems comes together, in pixels.
struct Neck {
    double y = 0;
    double rimY = 0;      ///< what the tiers' heights are measured from: the rim, or the tie
    double half = 10;     ///< room at the neck
    double footY = 0;     ///< where the stems end
    double footHalf = 20; ///< room there
    double footShare = 0.3;
};

/// Straight from its foot through its place in the neck, then one curve that arrives along the tilt.
struct Stem {
    QPointF foot, neck, head;
    QPointF leaving, arriving; ///< the curve's control points
    [[nodiscard]] QPainterPath path() const;
};

Neck standingNeck(const PieceDrawing& piece, const VesselSketch& vessel, double scale);
/// The tie at the origin.
Neck tiedNeck(const PieceDrawing& piece, double scale);
/// Of a bound piece, in millimetres: over the lowest of stem ends, heads and ribbon.
double tieAboveGround(const PieceDrawing& piece);
Stem stemOf(const PieceDrawing& piece, const PlacedStem& placed, const Neck& neck, double scale);

} // namespace withy::ui
