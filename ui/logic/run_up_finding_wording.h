// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/finding.h"
#include "core/plan/plan.h"
#include "ui/logic/measures.h"

#include <QString>

namespace withy::ui {

/// What the run-up noticed, with what mends it; empty for a finding of anything else. Part of sentence() in
/// ui/logic/wording.h, which is what pages ask.
QString runUpSentence(const plan::Finding& finding, Units units);

/// "Washing containers": the work of a step without its figures.
QString workWord(plan::StepKind kind);

} // namespace withy::ui
