// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

namespace withy::ui {

/// The colours a piece is drawn in besides its flowers'.
struct PieceColours {
    QColor outline; ///< ink: dark on light, light on dark
    QColor glass;
    QColor water;
    QColor waterEdge;
    QColor clay;  ///< a bowl's or basket's own
    QColor plain; ///< a stand, an urn, a trough
    [[nodiscard]] static PieceColours of(const Palette& palette);
};

/// In pixels: the middle of the foot at the origin, y down, `scale` pixels a millimetre.
struct VesselSketch {
    Sketch behind;         ///< glass and water, or what stands behind the stems
    Sketch front;          ///< water line, outline, lip
    double rimY = 0;       ///< negative: above the foot
    double neckY = 0;      ///< where a ribbon goes round
    double neckHalf = 0;   ///< half the width there, outside
    double insideHalf = 0; ///< half the opening
    double footY = 0;      ///< the inside of the bottom
    double footHalf = 0;
};

/// `water` false leaves the water out, which takes most of the time: for measuring.
VesselSketch vesselSketch(const VesselDrawing& vessel, double scale, const PieceColours& colours,
                          bool water = true);

} // namespace withy::ui
