// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "ui/paint/sketch.h"

namespace withy::ui {

/// A sketch in black line (see inLine()) as shapes of a paper's drawing. `toPaper` takes the sketch's own
/// coordinates to millimetres of paper; every line becomes `line` millimetres wide. Fills turn white, black
/// ones stay black.
void addToPaper(papers::Drawing& drawing, const Sketch& sketch, const QTransform& toPaper, double line);

} // namespace withy::ui
