// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/flower_in_line.h"

#include "ui/paint/bloom_heads.h"

#include <algorithm>

namespace withy::ui {

namespace {

constexpr double pxPerMm = 6; // of the sketch, so that its lines come out thin on paper
constexpr double inkLine = 0.25;

} // namespace

papers::Drawing flowerInLine(const model::Plant& plant, double side) {
    using Kind = papers::Drawing::Point::Kind;
    using Fill = papers::Drawing::Fill;
    papers::Drawing out;
    out.width = out.height = side;
    Head head;
    head.form = headForm(plant);
    head.diameter = side * pxPerMm;
    head.bloom = Qt::white;
    head.seed = static_cast<std::uint64_t>(plant.id.value);
    const Sketch sketch = inLine(headSketch(head), {Qt::white, Qt::black, 0, 1.1});
    const QRectF bounds = boundsOf(sketch);
    const double widest = std::max(bounds.width(), bounds.height());
    if (widest <= 0) return out;
    const double scale = side / widest;
    const QPointF middle(side / 2, side / 2);
    for (const auto& mark : sketch) {
        papers::Drawing::Shape shape;
        for (int i = 0; i < mark.path.elementCount(); ++i) {
            const auto e = mark.path.elementAt(i);
            const QPointF at = (QPointF(e.x, e.y) - bounds.center()) * scale + middle;
            const Kind kind = e.isMoveTo()                             ? Kind::move
                              : e.type == QPainterPath::CurveToElement ? Kind::curve
                                                                       : Kind::line;
            shape.points.push_back({kind, at.x(), at.y()});
        }
        shape.fill = mark.fill.isValid() ? Fill::white : Fill::none;
        shape.line = inkLine;
        out.shapes.push_back(std::move(shape));
    }
    return out;
}

} // namespace withy::ui
