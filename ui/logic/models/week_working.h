// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/sheet.h"
#include "ui/logic/models/week_steps.h"

namespace withy::ui {

/// "14 h 05": the work of all hands in these days, by day and booking; each booking's leads to it. Empty
/// words when there is none.
SheetFigure weekFigure(const std::vector<WeekDay>& days);

} // namespace withy::ui
