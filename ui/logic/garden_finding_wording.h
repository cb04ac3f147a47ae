// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/finding.h"
#include "ui/logic/measures.h"

#include <QString>

namespace withy::ui {

/// What the forecast noticed of walks, weather and patches; empty for a finding of anything else. Part of
/// sentence() in ui/logic/wording.h, which is what pages ask.
QString gardenSentence(const plan::Finding& finding, Units units);

} // namespace withy::ui
