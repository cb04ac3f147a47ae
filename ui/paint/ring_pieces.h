// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_parts.h"

namespace withy::ui {

/// A crown seen a little from above, or a wreath from the front, standing on its lowest point.
PieceParts ringParts(const PieceDrawing& piece, double scale);
/// Hung between two nails that are the spread apart.
PieceParts garlandParts(const PieceDrawing& piece, double scale, const Palette& palette);

} // namespace withy::ui
