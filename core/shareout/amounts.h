// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shareout/problem.h"

#include <utility>
#include <vector>

/// How many stems of each plant go to each slot, before they are dealt out to its pieces.
namespace withy::shareout {

/// What the share-out makes least, in this order, each only among the best of those before it:
///  1. pieceSquares of the first turn, then of the next, ... ;
///  2. slotSquares of the first turn, then of the next, ... ;
///  3. places of the first turn, then of the next, ... .
/// Pieces of one line and turn come out within one stem of each other: that is where the squares are least.
/// `missing` is then the least there is too, for every turn together with all before it: the amounts lines
/// can get form a polymatroid, on which a sum of decreasing convex terms is least at a largest point.
struct TurnObjectives {
    int turn = 0;
    std::int64_t missing = 0;      ///< stems: the sum over pieces of target - total
    std::int64_t pieceSquares = 0; ///< the sum over pieces of (target - total)^2
    std::int64_t slotSquares =
        0;                   ///< the sum over pieces and slots of (count in the piece - design's count)^2
    std::int64_t places = 0; ///< stems x how far down their plant stands among the choices; within its wished
                             ///< part it counts 0, beyond that one place lower than it stands

    friend bool operator==(const TurnObjectives&, const TurnObjectives&) = default;
};

/// Why the lines of a turn and of all before it cannot get more: every stem would have to come through one of
/// these plants, slots or lines, and they are used up, full and complete. Anyone can check it: `most` is the
/// sum of what these may carry (the tally; pieces x the most the slot may hold; pieces x target), and the
/// share-out uses exactly that many (L. R. Ford, D. R. Fulkerson, "Maximal flow through a network", 1956).
struct Proof {
    int turn = 0;
    std::vector<Id<model::Plant>> usedUp;
    std::vector<std::pair<Id<model::Line>, Id<model::Slot>>> full;
    std::vector<Id<model::Line>> complete;
    Stems most;
};

struct Amounts {
    std::vector<std::vector<std::vector<std::int64_t>>> given; ///< by line, slot, choice
    std::vector<TurnObjectives> objectives;                    ///< by turn, first served first
    std::vector<Proof> proofs;                                 ///< by turn
};

/// Exact: one minimum-cost flow for each objective, each on the optimal face of the one before (arcs whose
/// reduced cost is not nought stay as they are). Precondition: no shareFault(), inOrder().
Amounts amountsOf(const ShareProblem& problem);

} // namespace withy::shareout
