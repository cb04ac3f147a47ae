// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/bloom_fit.h"
#include "core/plan/forecast_plan_weather.h"
#include "core/plan/index.h"

#include <map>
#include <vector>

namespace withy::plan {

/// What the plants' noted years teach, with the years that teach nothing. A plant's first cut in a year is
/// that of its earliest patch. Days of at most a working week that nobody measured are filled from the
/// normals.
std::map<Id<model::Plant>, garden::BloomModel>
fitPlants(const model::Season& season, const GardenWeather& weather, std::vector<Finding>& findings);

} // namespace withy::plan
