// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/result.h"
#include "core/base/working.h"
#include "core/designs/water_level.h"

#include <vector>

/// Some stems lengthen in water after they are cut. Problem fields: grows_on, hours, celsius, q10.
namespace withy::designs {

struct GrowingOn {
    double millimetresPerDay = 0; ///< at 20 C
    double q10 = 2;               ///< from memory: growth follows the life of the flower
    std::vector<WaterPhase> phases;
};

struct GrownOn {
    double millimetres = 0;
    Working working;
};

/// Sum over the phases of rate x hours / 24 x q10^((T - 20) / 10): a stem grows faster where it is warmer,
/// by the same factor as its life is shorter (computation 5 scales vase life so).
Result<GrownOn, Problem> growOn(const GrowingOn& asked);

} // namespace withy::designs
