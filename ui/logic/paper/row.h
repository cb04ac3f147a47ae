// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper/ops.h"

#include <vector>

namespace withy::paper {

/// A strip of the sheet that is never parted between pages. Ops are millimetres from its own top left.
struct Row {
    enum class Walk { None, Start, On }; // does the dotted walk run past it, or begin here?

    std::vector<Op> ops;
    double height = 0;
    double before = 0; // air above, dropped at the top of a page
    bool keepWithNext = false;
    Walk walk = Walk::None;
    std::vector<int> repeats; // places of the heads to print again when this row begins a page
};

/// Where the walk's dotted line hangs, from the left of a walk row, and where it begins in a patch head.
inline constexpr double kWalkX = 5.25;
inline constexpr double kWalkTop = 5.1;

/// Puts ops into a row; all lengths in millimetres.
class Pen {
public:
    explicit Pen(Row& row) : m_row(row) {}

    /// One line with its baseline at `y`; `x` is the left, middle or right of it.
    void at(double x, double y, TextLine line, papers::Align align = papers::Align::Left,
            Ink ink = Ink::Black);
    /// One line centred in a strip of height `height` from `top`.
    void in(double x, double top, double height, TextLine line, papers::Align align = papers::Align::Left,
            Ink ink = Ink::Black);
    /// Lines below each other, each at least `lineMm` high. Returns the height they take.
    double lines(double x, double top, const std::vector<TextLine>& lines, double lineMm,
                 papers::Align align = papers::Align::Left);
    void across(double y, double left, double right, double width = kHairline);
    void box(const QRectF& rect, Fill fill = Fill::White, double line = kBoxLine, double radius = 0.5);
    void disc(QPointF centre, double radius);
    void sign(Sign sign, const QRectF& rect);

private:
    Row& m_row;
};

/// The height `Pen::lines` would take.
double heightOf(const std::vector<TextLine>& lines, double lineMm);

/// Where the baseline falls when a line is centred in a strip.
double baselineIn(double top, double height, const TextLine& line);

/// A length from outside brought between two sane ones; what is not a number counts as the least.
double between(double least, double value, double most);

/// Air above a row on a sheet drawn closer; air gives way faster than rows do.
double tightenedAir(double mm, double tight);

/// Air above and below the words of a row.
struct Pads {
    double top = 0;
    double bottom = 0;
};

/// Takes air so that the row is `tight` (0.92 to 1) of its height, if it has the air; type stays as it is.
Pads tightened(Pads pads, double content, double tight);

} // namespace withy::paper
