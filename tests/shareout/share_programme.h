// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shareout/problem.h"

#include <string>
#include <vector>

/// The share-out as an integer programme in the CPLEX LP format for GLPK's glpsol: a whole number of stems
/// for each choice of each slot of each single piece. Written from the problem alone; it knows no evenness,
/// and squares are sums of steps.
namespace withy::shareout::tests {

/// Least missing stems, piece squares, slot squares and places, each by turn, one after the other, each only
/// among the best of those before it.
struct BestShare {
    std::vector<std::int64_t> missing, pieceSquares, slotSquares, places;
};

/// All at once: the problems do not touch, so the sum is least where each is. Empty, with `error` set, when
/// the solver fails or a value is not whole.
std::vector<BestShare> solveShares(const std::vector<ShareProblem>& problems, std::string& error);

} // namespace withy::shareout::tests
