// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/palette.h"

#include <QImage>

#include <vector>

/// Bands of bloom stacked from a baseline.
namespace withy::ui {

struct BloomBand {
    std::vector<float> thickness; ///< by day, at its noon; any unit
    QColor fill;
    QColor edge; ///< a line along its top
};

/// Which part of them is drawn, and how large. Lengths in device pixels.
struct BloomFrame {
    QSize size;
    double firstDay = 0; ///< at the left side
    double dayWidth = 1;
    double unitHeight = 1; ///< of one unit of thickness
    double edge = 0.7;     ///< thickness of the line
};

/// The bands in a picture without a ground, the baseline at its lower side. Each column is filled from
/// below with every band's true part of each pixel, so that hundreds of bands, thinner than a pixel, cost
/// little and still show their right share of colour.
QImage paintBloomBands(const std::vector<BloomBand>& bands, const BloomFrame& frame);

/// A value given at each noon, at any time: in a straight line from noon to noon, nought outside.
float betweenNoons(const std::vector<float>& days, double day);

/// A plant's colour as its band: a shade nearer the sheet on dark. `none`: no colour is known.
QColor bandFill(const Palette& palette, const std::optional<Colour>& bloom);
QColor bandEdge(const Palette& palette, const QColor& fill);
/// While another band is looked at: most of the way to the paper.
QColor steppedBack(const Palette& palette, const QColor& band);

} // namespace withy::ui
