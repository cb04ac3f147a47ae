// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

#include <QPointF>

/// A piece from above, to scale. Millimetres from its middle, y down; for trays, tables and papers alike.
namespace withy::ui {

/// One stem's head as it is seen from above. A drawing's own stand-in: a design says how high its heads stand
/// and how far they spread, not where round the piece each one is.
struct HeadFromAbove {
    const SlotDrawing* slot = nullptr;
    QPointF at;
    double diameter = 40;
    double turn = 0; ///< degrees; leaves and trails point outwards
    std::uint64_t seed = 1;
};

/// In the order they are drawn: the lowest first. The outermost touch the spread.
std::vector<HeadFromAbove> headsFromAbove(const PieceDrawing& piece);

/// Round: made as designed; square: the odd one of its row.
enum class Collar { none, round, square };

struct FromAboveLook {
    Palette palette;
    Collar collar = Collar::round;
    bool heads = true;     ///< false: the spread alone, tinted with the piece's first colour
    bool lineOnly = false; ///< paper
    QColor rim{};          ///< of the collar; invalid: ink
};

/// What it takes of a table: the wider of its spread and its container (a garland's length).
double acrossFromAbove(const PieceDrawing& piece);
/// What it stands on: the container's foot, or the bundle of its stems. Nought: it lies or hangs.
double footFromAbove(const PieceDrawing& piece);

/// As paths, the piece's middle at the origin, `scale` pixels a millimetre. Heads under 6 px are dots.
Sketch pieceFromAbove(const PieceDrawing& piece, double scale, const FromAboveLook& look);

} // namespace withy::ui
