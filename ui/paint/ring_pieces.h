// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

namespace withy::ui {

/// A crown seen a little from above, or a wreath from the front, standing on its lowest point.
Sketch ringSketch(const PieceDrawing& piece, double scale, const Palette& palette);
/// Hung between two nails; its length is the spread, or a metre where that is less (a stand-in, ours).
Sketch garlandSketch(const PieceDrawing& piece, double scale, const Palette& palette);

} // namespace withy::ui
