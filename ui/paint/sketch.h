// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/palette.h"

#include <QPainterPath>
#include <QTransform>

#include <vector>

class QPainter;

/// A drawing as a list of plain paths, flat fills and lines: what every drawing of ours is made of.
/// Coordinates are the maker's (mostly pixels, y down); widths of lines are always pixels.
namespace withy::ui {

struct Mark {
    QPainterPath path;
    QColor fill; ///< invalid: not filled
    QColor line; ///< invalid: no line
    double width = 1;
    Qt::PenStyle dash = Qt::SolidLine;
    Qt::PenCapStyle cap = Qt::RoundCap;
};

using Sketch = std::vector<Mark>;

/// Draws in line only: every fill becomes `fill`, every line `line` and at most `most` wide.
struct LineOnly {
    QColor fill;
    QColor line;
    double least = 0;
    double most = 1.1;
};

void paint(QPainter& painter, const Sketch& sketch);
Sketch inLine(Sketch sketch, const LineOnly& how);
void transform(Sketch& sketch, const QTransform& by);
/// Around every path, without the width of its line.
QRectF boundsOf(const Sketch& sketch);
/// Thins every line by `factor`.
void thinLines(Sketch& sketch, double factor);
void append(Sketch& to, Sketch more);

QPainterPath ellipseAt(double cx, double cy, double rx, double ry, double degrees = 0);

QColor darker(const QColor& colour, double share = 0.38);  ///< towards green-black
QColor lighter(const QColor& colour, double share = 0.35); ///< towards white
/// 0 to 255: how light a colour looks, roughly (ITU-R BT.601 weights).
double lightness(const QColor& colour);

} // namespace withy::ui
