// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/finding.h"
#include "ui/logic/measures.h"

#include <QString>

namespace withy::ui {

/// What is noticed of the shed, its trays and tables; empty for a finding of anything else. Part of
/// sentence() in ui/logic/wording.h, which is what pages ask.
QString shedSentence(const plan::Finding& finding, Units units);

} // namespace withy::ui
