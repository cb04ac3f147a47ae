// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_plan.h"

/// Where a step is really worked at: one that may be split lies idle over busy hours and the night.
namespace withy::ui {

/// By these people together: not in busy hours, nor outside working hours unless it must.
std::vector<runup::TimeSpan> workedAt(const plan::RunUpStep& step,
                                      const std::vector<const plan::WorkerHours*>& people);
/// By whoever the run-up gives it to; never empty, in order of time. Without a run-up the step as it stands.
std::vector<runup::TimeSpan> workedAt(const plan::RunUpPlan* runUp, const plan::RunUpStep& step);
/// What each pair of hands has to do of it.
Minutes minutesEach(const plan::RunUpStep& step);

} // namespace withy::ui
