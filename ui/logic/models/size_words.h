// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/size_faults.h"
#include "ui/logic/measures.h"

#include <QString>

namespace withy::ui {

/// What contradicts, and what would mend it: "Honey jar: 130 mm deep inside but only 112 mm high outside.
/// Measure both again." The drawing shows it as it is.
QString sizeWords(const plan::SizeFinding& finding, Units units);
/// The same of one among all findings, with the design it is about; empty when it is about something else.
QString sizeSentence(const plan::Finding& finding, Units units);

} // namespace withy::ui
