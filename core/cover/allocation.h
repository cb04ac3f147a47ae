// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/cover/problem.h"

#include <array>
#include <memory>
#include <vector>

namespace withy::cover {

enum class Source { patch, lot, offer };

/// So many stems from one place, on one day, for one slot.
struct Piece {
    std::size_t demand = 0; ///< index into Allocation::problem.demands
    std::size_t choice = 0; ///< index into that demand's choices: the place in its order
    Source source{};
    std::int64_t from = 0; ///< id of the patch, lot or offer
    Id<model::Plant> plant;
    Day ready; ///< when they became ready
    Day cut;   ///< when they are cut; of a lot or offer: taken from the store on the bench day
    Stems stems;
};

/// What the allocation makes least, in this order, each only among the best of those before it.
/// Unmet stems are least for the first demand served, then for the second, and so on; `unmet` sums them by
/// claim.
struct Objectives {
    std::array<std::int64_t, claimCount> unmet{}; ///< stems
    std::int64_t price = 0;                       ///< minor units, of offers taken
    std::int64_t places = 0; ///< stems x how far down their plant stands in the slot's order
    std::int64_t keeping =
        0; ///< stems x days: once for waiting on the plant, twice from the day that suits best

    friend bool operator==(const Objectives&, const Objectives&) = default;
};

class Solved;

struct Allocation {
    CoverProblem problem;      ///< in order
    std::vector<Piece> pieces; ///< by demand, choice, source, id, cut, ready
    std::vector<Stems> unmet;  ///< by demand
    Objectives objectives;
    std::shared_ptr<const Solved> solved; ///< for shortage.h and room.h
};

/// The best allocation there is, exactly; deterministic, and the same whatever order the problem is listed
/// in.
Result<Allocation, CoverFault> allocate(CoverProblem problem);

} // namespace withy::cover
