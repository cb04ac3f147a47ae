// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/ribbon_sketch.h"

#include <algorithm>

namespace withy::ui {

namespace {

struct Look {
    QColor fill;
    QColor edge;
    double width; ///< of the ribbon, px
};

void addTails(Sketch& out, const Look& look, double length) {
    if (length < 1) return;
    const double w = look.width;
    for (const double side : {1.0, -1.0}) {
        const double end = length;
        const double out1 = side * std::min(w * (side > 0 ? 0.75 : 0.5), length * 0.3);
        QPainterPath tail(QPointF(side * w * 0.1, 0));
        tail.cubicTo(side * w * 0.55, end * 0.35, -side * w * 0.05, end * 0.65, out1, end);
        tail.lineTo(out1 + side * w * 0.34, end - w * 0.4); // cut in a swallow's tail
        tail.lineTo(out1 + side * w * 0.66, end - w * 0.08);
        tail.cubicTo(side * w * 0.5, end * 0.6, side * w * 1.05, end * 0.35, side * w * 0.42, 0);
        tail.closeSubpath();
        out.push_back({tail, look.fill, look.edge, 0.8});
    }
}

void addLoops(Sketch& out, const Look& look, double length, int loops) {
    const double w = look.width;
    for (int i = 0; i < loops; ++i) {
        const double side = i % 2 ? -1 : 1;
        const double reach = side * length * (i < 2 ? 1 : 0.75);
        const double drop = i < 2 ? 0.1 : 0.45;
        QPainterPath loop(QPointF(0, 0));
        loop.cubicTo(reach * 0.35, -w * 1.1, reach * 0.95, -w * 0.95 + length * drop, reach,
                     -w * 0.05 + length * drop);
        loop.cubicTo(reach * 0.98, w * 0.75 + length * drop, reach * 0.4, w * 0.7, 0, w * 0.2);
        loop.closeSubpath();
        out.push_back({loop, look.fill, look.edge, 0.9});
        QPainterPath fold(QPointF(reach * 0.2, -w * 0.02));
        fold.quadTo(reach * 0.5, -w * 0.1 + length * drop * 0.5, reach * 0.72, length * drop * 0.8);
        out.push_back({fold, {}, look.edge, 0.7});
    }
}

void addBand(Sketch& out, const Look& look, double half, int wraps) {
    const double step = look.width * 0.42;
    for (int i = wraps - 1; i >= 0; --i) {
        const double y = (i - (wraps - 1) / 2.0) * step;
        const double h = look.width / 2;
        QPainterPath band(QPointF(-half, y - h));
        band.quadTo(0, y - h * 0.5, half, y - h);
        band.lineTo(half, y + h);
        band.quadTo(0, y + h * 1.5, -half, y + h);
        band.closeSubpath();
        out.push_back({band, look.fill, look.edge, 0.9});
    }
}

} // namespace

Sketch ribbonSketch(const RibbonDrawing& r, double half, double k, double most) {
    using model::RibbonFinish;
    Sketch out;
    const Look look{r.colour, darker(r.colour, 0.4), std::max(r.width * k, 1.6)};
    const bool tied = r.finish == RibbonFinish::knot || r.finish == RibbonFinish::bow;
    if (tied) addTails(out, look, std::min(r.tail * k, most));
    addBand(out, look, half + 1, r.wraps);
    if (r.finish == RibbonFinish::bow) addLoops(out, look, r.loop * k, r.loops);
    if (tied)
        out.push_back(
            {ellipseAt(0, look.width * 0.1, std::min(half * 0.5, look.width * 0.5), look.width * 0.56),
             lighter(look.fill, 0.15), look.edge, 0.9});
    return out;
}

} // namespace withy::ui
