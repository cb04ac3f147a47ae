// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <vector>

namespace withy::cover {

/// A minimum-cost flow: each node sends out what it has to give (or takes in, below zero), each arc carries
/// between its bounds, and the sum of carried x cost is least.
struct FlowArc {
    std::int32_t from = 0;
    std::int32_t to = 0;
    std::int64_t least = 0;
    std::int64_t most = 0;
    std::int64_t cost = 0;
};

struct FlowNetwork {
    std::vector<std::int64_t> supply; ///< of each node; must sum to nought
    std::vector<FlowArc> arcs;
};

struct FlowAnswer {
    std::vector<std::int64_t> carried;   ///< by arc
    std::vector<std::int64_t> potential; ///< by node: cost + potential[from] - potential[to] is at least
                                         ///< nought on every arc that could carry more
};

enum class FlowTrouble {
    noSolution, ///< supplies and bounds contradict each other
    tooCostly,  ///< costs so large that a path's sum could leave 64 bits
    badArc,     ///< an end that is no node, or bounds the wrong way round
};

/// Exact, by the primal network simplex method of LEMON (Z. Kiraly, P. Kovacs, "Efficient implementations of
/// minimum-cost flow algorithms", Acta Univ. Sapientiae, Informatica 4, 2012). The same network gives the
/// same answer, always.
Result<FlowAnswer, FlowTrouble> minCostFlow(const FlowNetwork& network);

} // namespace withy::cover
