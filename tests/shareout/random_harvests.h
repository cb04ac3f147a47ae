// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shareout/problem.h"

/// Bookings and tallies out of a hat; the same seed gives the same.
namespace withy::shareout::tests {

struct HarvestSize {
    int lines = 3, pieces = 40, slots = 5, count = 6, vary = 2, plants = 10, choices = 3;
    bool clumps = true;
};

/// At most so many of each; tallies from nothing to half as much again as is needed, in one season of four a
/// good deal more; one in ten blank.
ShareProblem randomHarvest(std::uint32_t seed, const HarvestSize& size);

/// The same, listed in another order where the order means nothing.
ShareProblem shuffledHarvest(ShareProblem problem, std::uint32_t seed);

} // namespace withy::shareout::tests
