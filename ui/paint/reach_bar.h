// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/palette.h"

#include <QRectF>

#include <cstdint>
#include <optional>

class QPainter;

namespace withy::ui {

/// Doubt against need. A post stands at the need; the bar is solid as far as the cautious level covers it,
/// hatched as far as the likely one does, and a dashed gap is left empty. A whisker runs from what there is
/// at the cautious level over the likely (a dot) to the hopeful one.
struct ReachBar {
    std::int64_t need = 0;
    std::int64_t cautious = 0;      ///< covered, never above need
    std::int64_t likely = 0;        ///< covered, cautious or more
    std::int64_t thereCautious = 0; ///< that could be had
    std::int64_t thereLikely = 0;
    std::optional<std::int64_t> thereHopeful; ///< blank: the whisker ends at the likely
    std::int64_t swapped = 0;                 ///< the last of what is covered: drawn in its own colour
    bool known = true;                        ///< false: only the dashed outline up to the post
};

/// The figure at the right end of a bar's scale: the post stands at 55 % of it at least, so that what lies
/// beyond is seen; what lies further is cut off there.
double reachScale(const ReachBar& bar);
/// `fill` is the plant's bloom colour; ink for what is no plant. `swap` is that of what is swapped in.
void paintReachBar(QPainter& painter, const QRectF& box, const ReachBar& bar, const QColor& fill,
                   const Palette& palette, const QColor& swap = {});

} // namespace withy::ui
