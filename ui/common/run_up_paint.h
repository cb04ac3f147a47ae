// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/run_up_layout.h"
#include "ui/paint/palette.h"

class QPainter;

namespace withy::ui {

/// What of the board is looked at.
struct BoardLooks {
    std::optional<std::size_t> chosen; ///< index into RunUpPlan::steps
    bool focused = false;
    std::int64_t moved = 0; ///< minutes the chosen step is being moved by
};

/// Behind night, dusk and day; the heat line with its limit, hatched above; lanes with steps, threads, busy
/// hours and guests.
void paintRunUp(QPainter& painter, const Board& board, const RunUpLayout& layout, BoardStyle style,
                const Palette& palette, const BoardLooks& looks);

} // namespace withy::ui
