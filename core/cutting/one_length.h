// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <stop_token>
#include <vector>

/// Pieces cut from rolls that are all of one length, with the fewest rolls: what to buy when the box is
/// empty, and the yardstick the cutting plan is measured by.
/// Problem fields: roll_length, piece_length, pieces, kinds, effort.
namespace withy::cutting {

struct PieceWish {
    Millimetres length;
    std::int64_t count = 1;
};

inline constexpr std::int64_t longestRoll = 1'000'000; ///< millimetres
inline constexpr std::int64_t mostPieces = 100'000;
inline constexpr std::size_t mostKinds = 400;

/// How long to look for better, in steps of arithmetic: about two thousand million are two seconds on a
/// machine of 2020. The same effort gives the same plan everywhere.
struct CutEffort {
    std::int64_t steps = 1'500'000'000;
};

/// Which argument shows that fewer rolls cannot do.
enum class BoundBy {
    length, ///< all pieces laid end to end
    halves, ///< pieces that cannot share a roll: S. Martello, P. Toth, Discrete Applied Mathematics 28 (1990)
            ///< 59-70, the bound L2
    patterns ///< the plan with fractions of patterns (Gilmore and Gomory 1961), rounded up
};

struct RollPattern {
    std::vector<PieceWish> cuts; ///< longest first
    std::int64_t times = 0;
    Millimetres left; ///< of each roll cut so
};

struct RollPlan {
    std::vector<RollPattern> patterns; ///< used most first
    std::int64_t rolls = 0;
    std::int64_t bound = 0; ///< no plan needs fewer
    BoundBy boundBy = BoundBy::length;
    bool proved = false;  ///< rolls == bound
    bool stopped = false; ///< told to stop before it was done
    std::int64_t steps = 0;
    Working working; ///< of the number of rolls
};

/// Pieces of the same length may be listed apart. No pieces: an empty plan. So far only the checks against
/// published instances ask: a box holds lengths of many kinds (ribbon_box.h).
Result<RollPlan, Problem> cutFromRolls(Millimetres roll, const std::vector<PieceWish>& pieces,
                                       const CutEffort& effort = {}, std::stop_token stop = {});

} // namespace withy::cutting
