// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"

namespace withy::plan::tests {

/// A stand-in for the forecast: each patch's expected stems over a triangle from first through peak to last
/// cut in whole stems; the cautious level is `cautiousPercent` of that, rounded down day by day.
GardenSupply simpleSupply(const model::Season& season, std::int64_t cautiousPercent = 70);

} // namespace withy::plan::tests
