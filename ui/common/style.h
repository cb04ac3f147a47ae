// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/palette.h"

#include <optional>

/// The one place that dresses the program: palette, style and size of text.
namespace withy::ui {

/// The palette in use; light until applyStyle has been called.
const Palette& currentPalette();

/// The theme the desktop asked for, read from the palette it started us with.
Theme systemTheme();

/// Dresses the whole program; may be called again at any time. `points` is the size of plain text.
void applyStyle(Theme theme, double points);

} // namespace withy::ui
