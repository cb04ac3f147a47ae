// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shareout/amounts.h"

namespace withy::shareout {

/// The cut of least capacity between the tally and the lines served up to `turn`: what can be reached from
/// plants that have stems left, by taking more or by changing places, lies on one side of it. `given` must be
/// a largest flow into those lines.
Proof proofFor(const ShareProblem& problem, const std::vector<std::vector<std::vector<std::int64_t>>>& given,
               int turn);

} // namespace withy::shareout
