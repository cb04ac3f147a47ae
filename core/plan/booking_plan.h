// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/day_heat.h"
#include "core/plan/index.h"
#include "core/plan/plan.h"

namespace withy::plan {

BookingPlan bookingPlan(const Index& index, const model::Booking& booking,
                        const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs,
                        PlaceDays& days, const PlanOptions& options);

} // namespace withy::plan
