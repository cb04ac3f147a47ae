// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "ui/logic/paper/type.h"

#include <vector>

namespace withy::paper {

/// Of the number of a patch in a table.
inline constexpr double kDiscRadius = 4;

/// Where a column of a table stands, in millimetres.
struct TableSlot {
    double x = 0;
    double width = 0;
};

/// Columns without weight are as wide as their longest entry, at most a third of the table if they are
/// words; the weighted ones share the rest. If all that is too wide, words give way first, then figures.
std::vector<TableSlot> tableSlots(const papers::Table& table, double widthMm, const Type& normal,
                                  const Type& strong);

} // namespace withy::paper
