// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/fit_words.h"

namespace withy::ui {

/// Puts beside each bar of the fit check the figure it shows, with its working: what could be had, free or
/// owned, less what is promised and what is needed.
void addFitFigures(const FitView& view, Sheet& sheet);

} // namespace withy::ui
