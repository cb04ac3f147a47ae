// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/water_level.h"
#include "core/model/season.h"

#include <vector>

namespace withy::plan {

/// Millimetres a plant's stems lengthen in water over these stretches; nought where the plant does not say
/// that it grows on, or a figure cannot be right.
double grownOn(const model::Plant& plant, const std::vector<designs::WaterPhase>& stood);

/// What the top of the design gains while it stands, each slot by its best plant: a low slot that grows much
/// may gain it nothing.
double grownOn(const model::Season& season, Id<model::Design> design,
               const std::vector<designs::WaterPhase>& stood);

} // namespace withy::plan
