// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/index.h"
#include "core/plan/plan.h"

namespace withy::plan {

/// Whole numbers in the proportion of `weights` that sum to `total`: largest remainders, earlier first on
/// ties (Hamilton's method). Weights sum to 1; empty weights give an empty answer.
std::vector<std::int64_t> shareOut(std::int64_t total, const std::vector<double>& weights);

/// Fills lines, needs and the stem sums of `plan`. The spare is counted once for each plant of the booking.
void planNeeds(const Index& index, const model::Booking& booking,
               const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs,
               BookingPlan& plan);

/// The spare rule for a plant: the season's percentage, or by risk with the plant's own loss.
bookings::SpareTerms spareTerms(const Index& index, const model::Plant& plant);

} // namespace withy::plan
