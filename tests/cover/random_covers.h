// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cover/problem.h"

#include <cstdint>

namespace withy::cover::tests {

/// Small crowded seasons: some plants, patches, lots and offers, and a few slots that want more than there
/// is. The same seed gives the same season.
CoverProblem randomCover(std::uint32_t seed);

/// A season of many bookings through half a year, eight slots each, of forty plants in fifty patches.
CoverProblem largeCover(int bookings, std::uint32_t seed);

/// The same rows listed in another order.
CoverProblem shuffled(CoverProblem problem, std::uint32_t seed);

} // namespace withy::cover::tests
