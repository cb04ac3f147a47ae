// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_plan.h"
#include "ui/logic/edits.h"

/// What the grower says of a step of the run-up. A mark that says nothing any more is taken out.
namespace withy::ui::edits {

/// The mark of a step; null when nothing has been said of it.
const model::StepMark* markOf(const Season& season, const plan::StepKey& step);

/// It begins then, whatever else moves.
Edit keepStepAt(const Season& season, const plan::StepKey& step, LocalTime from);
/// It may move again.
Edit letStepGo(const Season& season, const plan::StepKey& step);
/// That pair of hands does it; blank: whoever can.
Edit giveStepTo(const Season& season, const plan::StepKey& step, std::optional<plan::Worker> who);
/// Done at `at`, in so many minutes; blank: nobody looked at the clock.
Edit tickStepOff(const Season& season, const plan::StepKey& step, LocalTime at, std::optional<Minutes> took);
Edit takeTickBack(const Season& season, const plan::StepKey& step);
/// The minutes of a step that is ticked off; blank: not known.
Edit setStepMinutes(const Season& season, const plan::StepKey& step, std::optional<Minutes> took);

} // namespace withy::ui::edits
