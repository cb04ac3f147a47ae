// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/sketch.h"

#include <QPainter>

#include <algorithm>
#include <iterator>

namespace withy::ui {

void paint(QPainter& painter, const Sketch& sketch) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const auto& mark : sketch) {
        painter.setBrush(mark.fill.isValid() ? QBrush(mark.fill) : QBrush(Qt::NoBrush));
        painter.setPen(mark.line.isValid() ? QPen(mark.line, mark.width, mark.dash, mark.cap, Qt::RoundJoin)
                                           : QPen(Qt::NoPen));
        painter.drawPath(mark.path);
    }
    painter.restore();
}

Sketch inLine(Sketch sketch, const LineOnly& how) {
    for (auto& mark : sketch) {
        if (mark.fill.isValid()) mark.fill = how.fill;
        if (!mark.line.isValid()) continue;
        mark.line = how.line;
        mark.width = std::clamp(mark.width, how.least, std::max(how.least, how.most));
    }
    return sketch;
}

void transform(Sketch& sketch, const QTransform& by) {
    for (auto& mark : sketch)
        mark.path = by.map(mark.path);
}

QRectF boundsOf(const Sketch& sketch) {
    QRectF all;
    for (const auto& mark : sketch) {
        const QRectF one = mark.path.boundingRect();
        // An upright line has no width, which united() takes for an empty rectangle.
        all = all.united(one.adjusted(-0.01, -0.01, 0.01, 0.01));
    }
    return all;
}

void thinLines(Sketch& sketch, double factor) {
    for (auto& mark : sketch)
        mark.width *= factor;
}

void append(Sketch& to, Sketch more) {
    to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

QPainterPath ellipseAt(double cx, double cy, double rx, double ry, double degrees) {
    QPainterPath path;
    path.addEllipse(QPointF(), rx, ry);
    QTransform place;
    place.translate(cx, cy);
    place.rotate(degrees);
    return place.map(path);
}

QColor darker(const QColor& colour, double share) {
    return mixed(colour, QColor::fromRgb(0x17211D), share);
}

QColor lighter(const QColor& colour, double share) {
    return mixed(colour, Qt::white, share);
}

double lightness(const QColor& colour) {
    return 0.3 * colour.red() + 0.59 * colour.green() + 0.11 * colour.blue();
}

} // namespace withy::ui
