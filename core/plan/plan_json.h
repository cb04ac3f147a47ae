// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <optional>
#include <string>

namespace withy::plan {

/// The plan of one booking, or of all, as JSON in the model's words. Every figure carries its value, unit
/// and working.
std::string planJson(const model::Season& season, const Plan& plan,
                     std::optional<Id<model::Booking>> only = std::nullopt);

} // namespace withy::plan
