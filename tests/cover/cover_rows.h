// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cover/allocation.h"

#include <string>
#include <vector>

namespace withy::cover::tests {

/// Everything that is wrong with an allocation as an answer to its problem, found without the solver and
/// without its network: balances, bounds, cut windows, hold days, use-by days, and the objectives recounted.
std::vector<std::string> wrongWith(const CoverProblem& problem, const Allocation& allocation);

} // namespace withy::cover::tests
