// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/shed_input.h"

namespace withy::plan {

/// A line whose pieces stand in water, and when they are placed.
struct PlacedLine {
    Id<model::Line> line;
    LocalTime placed;
    bool madeThere = false; ///< travels dry
};

std::vector<LineWater> lineWaters(const ShedInput& in, const model::Booking& booking,
                                  const std::vector<PlacedLine>& placed);

} // namespace withy::plan
