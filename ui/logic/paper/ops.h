// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper/text_lines.h"

#include <QPainterPath>
#include <QPointF>
#include <QRectF>

#include <variant>
#include <vector>

/// What stands on a page, as plain data in millimetres from the sheet's top left. Black on white; grey only
/// as hatch and for the small figure in a box that a pencil will cover.
namespace withy::paper {

enum class Ink { Black, White, Grey };
enum class Fill { None, White, Black, Hatch };
enum class Dash { Solid, Dots };
enum class Sign { Caution, Pointer };

struct TextOp {
    QPointF at; // left end of the baseline
    TextLine line;
    Ink ink = Ink::Black;
    bool upwards = false; // turned by a quarter: it runs up from `at`
};

struct LineOp {
    QPointF from;
    QPointF to; // straight across or straight down
    double width = 0.25;
    Dash dash = Dash::Solid;
};

/// A rectangle; its outline lies inside, `line` 0 draws none.
struct BoxOp {
    QRectF rect;
    double line = 0.44;
    double radius = 0.5;
    Fill fill = Fill::White;
};

/// A filled black circle.
struct DiscOp {
    QPointF centre;
    double radius = 0;
};

struct SignOp {
    Sign sign = Sign::Caution;
    QRectF rect;
};

/// A drawn outline; `line` 0 draws none.
struct PathOp {
    QPainterPath path;
    double line = 0.25;
    Fill fill = Fill::None;
};

using Op = std::variant<TextOp, LineOp, BoxOp, DiscOp, SignOp, PathOp>;

/// The space an op may put ink on.
QRectF boundsOf(const Op& op);

Op moved(Op op, QPointF by);

/// Ends of the hatch lines of a rectangle, clipped to it, rising to the right.
std::vector<std::pair<QPointF, QPointF>> hatchLines(const QRectF& rect);

/// Heights of the dots of a dotted line; they sit on one grid down the sheet, so that pieces of a line meet.
std::vector<double> dotHeights(double from, double to);

inline constexpr double kHairline = 0.254; // 1.5 px at 150 dpi, between rows
inline constexpr double kThick = 0.508;    // 3 px at 150 dpi, under heads
inline constexpr double kBoxLine = 0.44;

} // namespace withy::paper
