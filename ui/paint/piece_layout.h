// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

namespace withy::ui {

/// One stem in its place. Millimetres from the middle of the rim (or tie), y up.
struct PlacedStem {
    const SlotDrawing* slot = nullptr;
    double x = 0;      ///< of the head
    double height = 0; ///< of the head's foot or middle, as its form wants
    double head = 40;  ///< diameter
    double tilt = 0;   ///< degrees
    std::uint64_t seed = 1;

    /// What a tier's height is measured to: the middle of a round head, the tip of a spike, spray or umbel.
    [[nodiscard]] double top() const;
    /// How far the head reaches to the right (+1) or left (-1) of the piece's middle.
    [[nodiscard]] double reach(int side) const;
};

/// Every stem of the piece, in the order they are drawn: back to front. The highest of a tier stands exactly
/// at the tier's height, what its plant grew on comes on top of that; with two stems or more the outermost
/// reach exactly half the spread on each side that has one. Heads keep their diameter, so one wider than the
/// spread stands out of it.
std::vector<PlacedStem> placeStems(const PieceDrawing& piece);

/// A crown's or wreath's heads round the middle of their ring, which lies flat (a crown, seen from a little
/// above) or stands. `x` to the right and `height` up from the ring's middle; the widest reach is half the
/// spread.
struct Ring {
    double rx = 0;
    double ry = 0;
    std::vector<PlacedStem> heads; ///< back to front
};

Ring placeRing(const PieceDrawing& piece);

/// The stems of all slots, dealt out in turn so that no colour gathers.
std::vector<const SlotDrawing*> dealt(const PieceDrawing& piece);
bool leafy(const SlotDrawing& slot);

} // namespace withy::ui
