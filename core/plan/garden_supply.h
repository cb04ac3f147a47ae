// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
#include "core/plan/forecast_plan.h"

namespace withy::plan {

/// The forecast as what there is to share out: per patch the stems becoming ready, day by day, at the
/// cautious and the likely level. Patches without a forecast are left out.
GardenSupply gardenSupply(const model::Season& season, const ForecastPlan& forecast);

} // namespace withy::plan
