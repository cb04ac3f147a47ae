// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/strip_design.h"
#include "ui/paint/bloom_bands.h"
#include "ui/shell/strip/strip_geometry.h"

#include <QPixmap>

class QPainter;

namespace withy::ui {

/// The bands as they are painted, colours and all; made once for figures and palette.
std::vector<BloomBand> bloomBands(const StripFigures& figures, const Palette& palette);

/// All that does not move with the mouse.
struct StripPicture {
    const StripFigures& figures;
    const StripGeometry& geometry;
    const std::vector<BloomBand>& bands;
    std::optional<std::size_t> lookedAt{}; ///< this band stands out, the others step back
    const StripDesign& design;             ///< its bands stand out; without plants: none is in view

    [[nodiscard]] QPixmap paint(QSize size, double ratio, const Palette& palette) const;
};

} // namespace withy::ui
