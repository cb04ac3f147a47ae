// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shareout/controlled_rounding.h"

namespace withy::shareout {

/// So many pieces that are alike.
struct EvenGroup {
    std::int64_t pieces = 0;
    std::vector<std::int64_t> counts; ///< of one piece, by cell
};

/// A table of stems (rows are slots, columns plants) dealt out to `pieces` pieces: no stem is lost, and
/// between any two pieces each cell, each row's sum, each column's sum and the total differ by one at most.
///
/// One piece after the other is the controlled rounding of what is left to the base of the pieces left. The
/// rest can be dealt on in the same bounds: from lo <= y/N <= hi and x one of lo = floor(y/N), hi = ceil(y/N)
/// follows lo <= (y - x)/(N - 1) <= hi. (So networks have the integer decomposition property: S. Baum,
/// L. E. Trotter, "Integer rounding and polyhedral decomposition for totally unimodular systems", 1978.) The
/// same piece is made again as long as its bounds allow, so there are few groups: each one leaves one
/// figure more without a remainder. Precondition: pieces > 0, values not negative.
std::vector<EvenGroup> evenPieces(Table stems, std::int64_t pieces);

} // namespace withy::shareout
