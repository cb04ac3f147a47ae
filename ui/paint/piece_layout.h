// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

namespace withy::ui {

/// One stem in its place. Millimetres from the middle of the rim (or tie), y up.
struct PlacedStem {
    const SlotDrawing* slot = nullptr;
    double x = 0;      ///< of the head
    double height = 0; ///< of the head's foot or middle, as its form wants
    double head = 40;  ///< diameter, a little different from stem to stem
    double tilt = 0;   ///< degrees
    std::uint64_t seed = 1;
};

/// Every stem of the piece, in the order they are drawn: back to front.
std::vector<PlacedStem> placeStems(const PieceDrawing& piece);

} // namespace withy::ui
