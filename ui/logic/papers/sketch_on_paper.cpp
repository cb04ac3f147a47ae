// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/sketch_on_paper.h"

namespace withy::ui {

namespace {

using Kind = papers::Drawing::Point::Kind;

Kind kindOf(const QPainterPath::Element& e) {
    if (e.isMoveTo()) return Kind::move;
    return e.type == QPainterPath::CurveToElement ? Kind::curve : Kind::line;
}

papers::Drawing::Fill fillOf(const Mark& mark) {
    if (!mark.fill.isValid()) return papers::Drawing::Fill::none;
    return mark.fill == QColor(Qt::black) ? papers::Drawing::Fill::black : papers::Drawing::Fill::white;
}

} // namespace

void addToPaper(papers::Drawing& drawing, const Sketch& sketch, const QTransform& toPaper, double line) {
    for (const auto& mark : sketch) {
        papers::Drawing::Shape shape;
        for (int i = 0; i < mark.path.elementCount(); ++i) {
            const auto e = mark.path.elementAt(i);
            const QPointF at = toPaper.map(QPointF(e.x, e.y));
            shape.points.push_back({kindOf(e), at.x(), at.y()});
        }
        shape.fill = fillOf(mark);
        shape.line = mark.line.isValid() || mark.fill.isValid() ? line : 0;
        drawing.shapes.push_back(std::move(shape));
    }
}

} // namespace withy::ui
