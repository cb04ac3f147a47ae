// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/text_label.h"
#include "ui/logic/models/sheet.h"

namespace withy::ui {

/// "Face dahlia, plum": the name strong, the rest plain. Words longer than a line may break.
void setName(AnswerLabel& label, const SheetRow& row);

} // namespace withy::ui
