// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/index.h"
#include "core/plan/plan.h"

namespace withy::plan {

/// Containers, ribbons, sundries, buckets and water of a booking, against what the shed holds. Other
/// bookings are not looked at here: what is promised to them comes with availability through time.
void planKit(const Index& index,
             const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs,
             BookingPlan& plan);

} // namespace withy::plan
