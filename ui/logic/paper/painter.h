// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper/layout.h"

class QPainter;

namespace withy::paper {

/// Draws one page with its top left at the painter's origin. `dotsPerMm` is the scale of the device: 1200
/// / 25.4 for a PDF of 1200 dpi, anything for a preview. The paper itself is not filled; the painter's state
/// is kept.
void drawPage(QPainter& painter, const Page& page, double dotsPerMm);

} // namespace withy::paper
