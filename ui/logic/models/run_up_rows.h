// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_plan.h"
#include "ui/logic/answers/answer.h"

/// What a booking's run-up comes to, in a sentence or two.
namespace withy::ui {

/// Whether it fits, from when to when the making goes and when to leave; where it does not, by how much, on
/// which day, and what would mend it.
Answer runUpAnswer(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking);

/// What would mend it: "Begin the bench 4 h earlier.", "One more helper would do it."; empty: nothing tried.
QString mendWords(const model::Season& season, const plan::RunUpMend& mend);

} // namespace withy::ui
