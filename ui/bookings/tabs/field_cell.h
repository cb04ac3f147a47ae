// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/sheet.h"
#include "ui/logic/workbench.h"

#include <functional>

class QWidget;

namespace withy::ui {

/// A field of a record (of the row of this name) to type in right in a row, figures at the `right`; `refused`
/// hears the sentence when it is not taken.
QWidget* makeFieldCell(Workbench& bench, const SheetField& field, const QString& rowName, bool right,
                       const std::function<void(const QString&)>& refused);

} // namespace withy::ui
