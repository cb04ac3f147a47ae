// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

/// How wide the columns of a table are, of what they hold and of the room there is.
namespace withy::ui {

/// All in pixels.
struct ColumnWant {
    int head = 0;         ///< what the words of its head take
    int content = 0;      ///< what its widest cell takes
    bool isWords = false; ///< words may be shortened; figures, days and ticks never
    int leastOfWords = 0; ///< what words are never made narrower than
};

/// Every column gets what it holds. What is left over goes to the columns of words, each no more than
/// `mostMore`, so that the figures of a row stay near its name on a wide screen. What is missing is taken
/// from the widest columns of words; below their least the table is wider than the room, and scrolls.
std::vector<int> fittedWidths(const std::vector<ColumnWant>& wants, int room, int mostMore);

} // namespace withy::ui
