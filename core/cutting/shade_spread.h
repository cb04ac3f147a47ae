// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/result.h"

#include <vector>

/// Which piece of a row gets which shade of a mix. Problem fields: pieces, shades, share.
namespace withy::cutting {

inline constexpr std::int64_t mostInRow = 10'000;
inline constexpr std::size_t mostShades = 100;

struct ShadeSpread {
    std::vector<std::int64_t> counts; ///< pieces of each shade
    std::vector<std::size_t> shadeOf; ///< of each piece, in the order they stand
    std::int64_t alike = 0;           ///< neighbours of one shade
};

/// Shares are any weights, not all nought; the pieces are shared out by largest remainder (A. Hamilton's
/// method), the earlier shade first where remainders tie. Along the row each shade keeps within one piece of
/// its even share at every place: R. Tijdeman, "The chairman assignment problem", Discrete Mathematics 32
/// (1980) 323-330. With `notTwoAlike` the fewest possible neighbours are alike, none where that can be, and
/// the row is as even as that rule lets it be, place after place.
Result<ShadeSpread, Problem> spreadShades(std::int64_t pieces, const std::vector<double>& shares,
                                          bool notTwoAlike);

} // namespace withy::cutting
