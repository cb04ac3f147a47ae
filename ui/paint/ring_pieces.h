// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

namespace withy::ui {

/// A crown seen a little from above, or a wreath from the front, standing on its lowest point.
Sketch ringSketch(const PieceDrawing& piece, double scale, const Palette& palette);
/// Hung between two nails that are the spread apart.
Sketch garlandSketch(const PieceDrawing& piece, double scale, const Palette& palette);

} // namespace withy::ui
