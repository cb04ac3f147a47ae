// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/ring_pieces.h"

#include "ui/paint/piece_layout.h"
#include "ui/paint/ribbon_sketch.h"
#include "ui/paint/seeded.h"

#include <algorithm>

namespace withy::ui {

namespace {

const QColor twine = QColor::fromRgb(0x4D6A3F);

PlacedHead headAt(const SlotDrawing& slot, double diameter, QPointF at, double tilt, std::uint64_t seed) {
    const HeadForm form = slot.form == HeadForm::trail ? HeadForm::leaf : slot.form;
    return {{form, diameter, slot.bloom, slot.eye, tilt, seed}, at};
}

void standOnGround(PieceParts& out) {
    const QRectF box = boundsOf(out);
    shift(out, {-box.center().x(), -box.bottom()});
}

} // namespace

PieceParts ringParts(const PieceDrawing& piece, double k) {
    const bool crown = piece.kind == model::PieceKind::crown;
    const Ring ring = placeRing(piece);
    const double rx = ring.rx * k, ry = ring.ry * k;
    PieceParts out;
    out.behind.push_back({ellipseAt(0, 0, rx, ry), {}, twine, std::max((crown ? 7 : 12) * k, 1.4)});
    for (const auto& h : ring.heads)
        out.heads.push_back(headAt(*h.slot, h.head * k, {h.x * k, -h.height * k}, h.tilt, h.seed));
    if (piece.ribbon) {
        auto bow = ribbonSketch(*piece.ribbon, piece.ribbon->width * 0.4 * k, k, mostDrawn * k);
        transform(bow, QTransform::fromTranslate(crown ? rx * 0.92 : 0, crown ? ry * 0.3 : ry));
        out.front = std::move(bow);
    }
    standOnGround(out);
    return out;
}

PieceParts garlandParts(const PieceDrawing& piece, double k, const Palette& palette) {
    const auto stems = dealt(piece);
    const double length = piece.spread * k;
    const double sag = length * 0.17;
    const auto at = [&](double t) { return QPointF((t - 0.5) * length, sag * 4 * t * (1 - t)); };
    QPainterPath line(at(0));
    line.quadTo(QPointF(0, sag * 2), at(1));
    PieceParts out;
    out.behind.push_back({line, {}, twine, std::max(5 * k, 1.4)});
    Seeded seeded(piece.seed);
    for (const bool leaves : {true, false}) {
        std::size_t i = 0, n = 0;
        for (const auto* s : stems)
            n += leafy(*s) == leaves ? 1U : 0U;
        for (const auto* s : stems) {
            if (leafy(*s) != leaves) continue;
            const double t = (static_cast<double>(i) + 0.5) / static_cast<double>(n);
            const QPointF p = at(t) + QPointF(0, leaves ? 0 : (i % 2 ? 14 : -10) * k);
            // Each leafy stem is laid both ways along the twine.
            if (leaves)
                out.heads.push_back(headAt(*s, s->head * 0.55 * k, p, -75 + seeded.around(20), 2 * i + 1));
            out.heads.push_back(headAt(*s, s->head * (leaves ? 0.55 : 0.85) * k, p,
                                       (leaves ? 78 : 0) + seeded.around(20), 2 * i + 2));
            ++i;
        }
    }
    for (const double t : {0.0, 1.0})
        out.front.push_back({ellipseAt(at(t).x(), at(t).y(), 2.4, 2.4), palette.of(Role::ink), {}, 0});
    standOnGround(out);
    return out;
}

} // namespace withy::ui
