// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/day_heat.h"
#include "core/plan/index.h"
#include "core/plan/plan.h"
#include "core/plan/work_times.h"

namespace withy::plan {

/// Fills the cut window of every need of `plan` (its make-up times must be there).
void planWindows(const Index& index, const model::Booking& booking, const WorkTimes& times, PlaceDays& days,
                 BookingPlan& plan);

/// Merges the windows into the fewest rounds that respect all of them (stabbing by latest end, which is
/// optimal for intervals) and gives each its best hour.
void planRounds(const Index& index, PlaceDays& days, BookingPlan& plan);

} // namespace withy::plan
