// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/shed_input.h"

namespace withy::plan {

/// Water of every line whose pieces stand in some, `arrival` saying when each is placed.
struct PlacedLine {
    Id<model::Line> line;
    LocalTime placed;
    bool madeThere = false; ///< travels dry
};

std::vector<LineWater> lineWaters(const ShedInput& in, const model::Booking& booking,
                                  const std::vector<PlacedLine>& placed);

} // namespace withy::plan
