// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

namespace withy::ui {

struct PlacedHead {
    Head head;
    QPointF at{};      ///< its origin
    double turned = 0; ///< degrees beyond its tilt, with all that hangs on it: of a piece laid on its side
};

/// A piece from the side, taken apart: what lies behind its heads, the heads back to front, and what stands
/// before them. The middle of the foot at the origin, in pixels, y down.
struct PieceParts {
    Sketch behind;
    std::vector<PlacedHead> heads;
    Sketch front;
};

PieceParts pieceParts(const PieceDrawing& piece, double scale, const Palette& palette);

/// All of it as paths.
Sketch joined(PieceParts parts, Theme theme);

/// Around every path and head, without the widths of lines.
QRectF boundsOf(const PieceParts& parts);
void shift(PieceParts& parts, QPointF by);

} // namespace withy::ui
