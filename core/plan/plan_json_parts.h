// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/json_out.h"
#include "core/plan/plan.h"

#include <optional>
#include <vector>

namespace withy::plan {

void writeFindings(exchange::JsonWriter& json, const std::vector<Finding>& findings);

/// "garden": what will be in flower. Nothing is written before the first plan.
void writeGarden(exchange::JsonWriter& json, const model::Season& season, const Plan& plan);

/// "cover": per booking who gets which stems from where; "free_to_promise": per plant and week. Cover
/// stands as [cautious, likely]; free to promise has a list for each.
void writeCover(exchange::JsonWriter& json, const model::Season& season, const Plan& plan,
                std::optional<Id<model::Booking>> only);

} // namespace withy::plan
