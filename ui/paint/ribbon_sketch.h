// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

namespace withy::ui {

/// A ribbon round a neck: wraps, then knot or bow, then tails. The middle of the band at the origin, in
/// pixels, y down; `half` is half the width it goes round. Tails end at `most` below.
Sketch ribbonSketch(const RibbonDrawing& ribbon, double half, double scale, double most);

} // namespace withy::ui
