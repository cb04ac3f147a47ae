// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/jar_mark.h"

#include <QPainter>

#include <algorithm>

namespace withy::ui {

namespace {

/// The jar's measures from its height: x is its middle, T its top.
struct Shape {
    double x, left, right, top, bottom, neck, shoulder, rim, line;
};

Shape shapeIn(const QRectF& box) {
    // The tilted lid stands a third of the height above the neck.
    const double h = std::min((box.height() - 2) * 0.76, (box.width() - 2) / 0.78);
    const double w = h * 0.78;
    const double top = box.bottom() - 1 - h;
    return {
        box.center().x(), box.center().x() - w / 2, box.center().x() + w / 2, top, top + h, w * 0.62, h * 0.3,
        h * 0.12,         h < 20 ? 1.3 : 1.7};
}

QPainterPath body(const Shape& s) {
    const double n = s.neck / 2;
    const double corner = std::min(2.0, (s.bottom - s.top) * 0.15);
    QPainterPath p(QPointF(s.x - n, s.top + s.rim));
    p.cubicTo(s.x - n, s.top + s.shoulder * 0.7, s.left, s.top + s.shoulder * 0.6, s.left,
              s.top + s.shoulder + 1);
    p.lineTo(s.left, s.bottom - corner);
    p.quadTo(s.left, s.bottom, s.left + corner, s.bottom);
    p.lineTo(s.right - corner, s.bottom);
    p.quadTo(s.right, s.bottom, s.right, s.bottom - corner);
    p.lineTo(s.right, s.top + s.shoulder + 1);
    p.cubicTo(s.right, s.top + s.shoulder * 0.6, s.x + n, s.top + s.shoulder * 0.7, s.x + n, s.top + s.rim);
    p.closeSubpath();
    return p;
}

double shareOf(const JarMark& mark) {
    if (mark.cover == Cover::settled || mark.cover == Cover::unknown) return 0;
    if (mark.share) return std::clamp(*mark.share, 0.0, 1.0);
    return mark.cover == Cover::covered ? 1 : mark.cover == Cover::tight ? 0.5 : 0.3;
}

QPen pen(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine) {
    QPen p(colour, width, style, style == Qt::SolidLine ? Qt::RoundCap : Qt::FlatCap, Qt::RoundJoin);
    if (style == Qt::DotLine) p.setDashPattern({1.2, 1.4});
    if (style == Qt::DashLine) p.setDashPattern({3, 1.5});
    return p;
}

void paintLid(QPainter& painter, const Shape& s, bool off) {
    const double h = s.bottom - s.top;
    if (!off) {
        painter.drawLine(QPointF(s.x - s.neck / 2 - 1.2, s.top + s.rim * 0.4),
                         QPointF(s.x + s.neck / 2 + 1.2, s.top + s.rim * 0.4));
        return;
    }
    QTransform tilt;
    tilt.translate(s.x - s.neck * 0.3, s.top);
    tilt.rotate(-34);
    tilt.translate(-(s.x - s.neck * 0.3), -s.top);
    painter.drawLine(tilt.map(QPointF(s.x - s.neck * 0.32, s.top - h * 0.06)),
                     tilt.map(QPointF(s.x + s.neck * 0.78, s.top + h * 0.02 - s.line)));
}

} // namespace

Qt::PenStyle outlineOf(model::Standing standing) {
    switch (standing) {
    case model::Standing::enquiry:
    case model::Standing::held:
        return Qt::DotLine;
    case model::Standing::quoted:
        return Qt::DashLine;
    default:
        return Qt::SolidLine;
    }
}

void paintJar(QPainter& painter, const QRectF& box, const JarMark& mark, const Palette& palette) {
    if (box.width() < 3 || box.height() < 3) return;
    const Shape s = shapeIn(box);
    const bool asks = mark.cover == Cover::missing;
    const QColor ink = palette.of(asks ? Role::osier : Role::ink);
    const QPainterPath jar = body(s);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillPath(jar, palette.of(Role::paper));
    QPainterPath fill;
    const double level = s.bottom - (s.bottom - s.top - s.rim) * shareOf(mark);
    fill.addRect(QRectF(s.left - 1, level, s.right - s.left + 2, s.bottom - level + 1));
    // A broken outline would not show on the filling: there it stands a little off it.
    const bool broken = outlineOf(mark.standing) != Qt::SolidLine;
    QPainterPath inner = jar;
    if (broken) {
        const QPointF middle(s.x, (s.top + s.bottom) / 2);
        const double off = 2 * s.line + 1;
        QTransform smaller;
        smaller.translate(middle.x(), middle.y());
        smaller.scale(1 - off / (s.right - s.left), 1 - off / (s.bottom - s.top));
        smaller.translate(-middle.x(), -middle.y());
        inner = smaller.map(jar);
    }
    if (level < s.bottom) painter.fillPath(fill.intersected(inner), ink);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen(ink, s.line, outlineOf(mark.standing)));
    painter.drawPath(jar);
    painter.setPen(pen(ink, s.line + 0.5));
    paintLid(painter, s, asks);
    painter.restore();
}

void paintTie(QPainter& painter, const QRectF& box, const QColor& colour) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double x = box.left(), w = box.width(), h = box.height();
    for (int i = 0; i < 3; ++i) {
        const double y = box.top() + i * h / 3 + h * 0.1;
        QPainterPath wrap(QPointF(x, y + h * 0.1));
        wrap.lineTo(x + w, y - h * 0.1);
        wrap.lineTo(x + w, y + h * 0.06);
        wrap.lineTo(x, y + h * 0.26);
        wrap.closeSubpath();
        painter.fillPath(wrap, colour);
    }
    painter.restore();
}

} // namespace withy::ui
