// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace withy::packing {

/// A place in a rectangle, from its near left corner; any one unit of length.
struct Place {
    double x = 0; ///< along the length
    double y = 0; ///< along the width
};

enum class RowsRun { along, across }; ///< along the length, or across it

enum class RowsStand {
    square,    ///< each circle behind the one before
    staggered, ///< every other row moved half a step, rows stretched as far as the rectangle lets them
    turned     ///< a regular grid set askew to the sides
};

struct CircleRows {
    std::vector<Place> centres;
    RowsStand stand = RowsStand::square;
    RowsRun run = RowsRun::along;
};

/// Equal circles in a rectangle: the most that square rows, staggered rows (every row of n, or n and n - 1 in
/// turn, a row repeated squarely where there is room to spare) and turned grids hold. No two centres are
/// nearer than the diameter, none nearer to a side than half of it, within a thousand-millionth of the
/// diameter. Square rows win a tie, then staggered ones, then those along the length. It is a lower bound of
/// what can be packed: the best known packings (E. Specht, packomania.com) hold at times one or two more.
/// Sizes above 0; nothing where no circle fits or more than `most` would.
CircleRows circleRows(double length, double width, double diameter, std::size_t most = 100'000);

} // namespace withy::packing
