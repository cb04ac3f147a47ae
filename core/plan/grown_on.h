// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/water_level.h"
#include "core/model/season.h"

#include <vector>

namespace withy::plan {

/// Millimetres a plant's stems lengthen in water over these stretches; nought where the plant does not say
/// that it grows on, or a figure cannot be right.
double grownOn(const model::Plant& plant, const std::vector<designs::WaterPhase>& stood);

/// The most any slot of the design grows on, each by its best plant: what the finished height gains.
double grownOn(const model::Season& season, Id<model::Design> design,
               const std::vector<designs::WaterPhase>& stood);

} // namespace withy::plan
