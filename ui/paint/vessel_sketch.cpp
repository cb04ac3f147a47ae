// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/vessel_sketch.h"

#include <algorithm>

namespace withy::ui {

namespace {

using Outline = VesselDrawing::Outline;

/// Half sizes in millimetres, y up from the foot.
struct Half {
    double rim;
    double widest;
    double base;
    double height;
    double neck; ///< height of the neck band
};

QPainterPath jarPath(const Half& h) {
    const double shoulder = std::min(h.height * 0.45, h.neck + (h.widest - h.rim) * 0.5 + h.height * 0.08);
    const double corner = std::min(7.0, h.widest * 0.3);
    QPainterPath p(QPointF(-h.rim, -h.height));
    p.lineTo(-h.rim, -h.height + h.neck);
    p.cubicTo(-h.rim, -h.height + (h.neck + shoulder) / 2, -h.widest, -h.height + (h.neck + shoulder) / 2,
              -h.widest, -h.height + shoulder);
    p.lineTo(-h.widest, -corner);
    p.quadTo(-h.widest, 0, -h.widest + corner, 0);
    p.lineTo(h.widest - corner, 0);
    p.quadTo(h.widest, 0, h.widest, -corner);
    p.lineTo(h.widest, -h.height + shoulder);
    p.cubicTo(h.widest, -h.height + (h.neck + shoulder) / 2, h.rim, -h.height + (h.neck + shoulder) / 2,
              h.rim, -h.height + h.neck);
    p.lineTo(h.rim, -h.height);
    p.closeSubpath();
    return p;
}

QPainterPath taperPath(const Half& h) {
    const double corner = std::min(4.0, h.base * 0.3);
    QPainterPath p(QPointF(-h.rim, -h.height));
    p.lineTo(-h.base, -corner);
    p.quadTo(-h.base, 0, -h.base + corner, 0);
    p.lineTo(h.base - corner, 0);
    p.quadTo(h.base, 0, h.base, -corner);
    p.lineTo(h.rim, -h.height);
    p.closeSubpath();
    return p;
}

QPainterPath bowlPath(const Half& h) {
    const double foot = std::min(8.0, h.height * 0.12);
    QPainterPath p(QPointF(-h.rim, -h.height));
    p.cubicTo(-h.widest * 1.04, -h.height * 0.45, -h.base * 1.25, -foot, -h.base, -foot);
    p.lineTo(-h.base, 0);
    p.lineTo(h.base, 0);
    p.lineTo(h.base, -foot);
    p.cubicTo(h.base * 1.25, -foot, h.widest * 1.04, -h.height * 0.45, h.rim, -h.height);
    p.closeSubpath();
    return p;
}

QPainterPath urnPath(const Half& h) {
    const double foot = h.base * 0.4;
    QPainterPath p(QPointF(-h.rim, -h.height));
    p.cubicTo(-h.rim, -h.height * 0.4, -h.base, -h.height * 0.16, -foot, 0);
    p.lineTo(foot, 0);
    p.cubicTo(h.base, -h.height * 0.16, h.rim, -h.height * 0.4, h.rim, -h.height);
    p.closeSubpath();
    return p;
}

QPainterPath outlinePath(Outline outline, const Half& h) {
    switch (outline) {
    case Outline::jar:
        return jarPath(h);
    case Outline::bowl:
        return bowlPath(h);
    case Outline::urn:
        return urnPath(h);
    default:
        return taperPath(h);
    }
}

Half halves(const VesselDrawing& v) {
    const bool straight = v.outline == Outline::straight || v.outline == Outline::trough;
    return {v.rim / 2, std::max(v.width, v.rim) / 2, (straight ? v.rim : v.base) / 2, v.height, v.neckHeight};
}

void addStand(VesselSketch& out, double height, double k, const PieceColours& c) {
    const auto trapeze = [k](double lower, double upper, double from, double to) {
        QPainterPath p(QPointF(-lower * k, -from * k));
        p.lineTo(lower * k, -from * k);
        p.lineTo(upper * k, -to * k);
        p.lineTo(-upper * k, -to * k);
        p.closeSubpath();
        return p;
    };
    out.behind.push_back({trapeze(150, 120, 0, 28), c.plain, c.outline, 1.3});
    out.behind.push_back({trapeze(26, 18, 28, height), c.plain, c.outline, 1.3});
}

void addHandle(VesselSketch& out, const Half& h, double k, const PieceColours& c) {
    QPainterPath arc(QPointF(-h.rim * 0.96 * k, -h.height * k));
    const double top = -(h.height + h.rim * 2.1) * k;
    arc.cubicTo(-h.rim * 0.9 * k, top, h.rim * 0.9 * k, top, h.rim * 0.96 * k, -h.height * k);
    out.behind.push_back({arc, {}, darker(c.clay, 0.5), std::max(7 * k, 1.6)});
    out.behind.push_back({arc, {}, c.clay, std::max(7 * k - 1.2, 0.8)});
}

QPainterPath level(double y, double half) {
    QPainterPath p(QPointF(-half, y));
    p.lineTo(half, y);
    return p;
}

void addWater(VesselSketch& out, const VesselDrawing& v, const QPainterPath& body, double k,
              const PieceColours& c) {
    if (v.waterLevel <= 0) return;
    const double y = -(v.floor + v.waterLevel) * k;
    const QRectF box = body.boundingRect();
    QPainterPath below;
    below.addRect(QRectF(box.left(), y, box.width(), -v.floor * k * 0.6 - y));
    const double shrink = std::max(0.5, 1 - 2 * v.wall / std::max(v.width, 1.0));
    const QPainterPath inside = QTransform::fromScale(shrink, 1).map(body);
    out.behind.push_back({inside.intersected(below), c.water, {}, 0});
    const QRectF line = inside.intersected(below).boundingRect();
    out.front.push_back({level(y, line.width() / 2), {}, c.waterEdge, 1.3});
}

/// Two bands on tin and zinc, a weave on a basket.
void addSurface(VesselSketch& out, const VesselDrawing& v, const QPainterPath& body, double k,
                const PieceColours& c) {
    if (v.outline == Outline::trough) {
        for (const double y : {v.height - 10, 10.0})
            out.front.push_back({level(-y * k, v.rim / 2 * k), {}, c.outline, 0.8});
    }
    if (v.outline != Outline::basket) return;
    QPainterPath weave;
    const double step = std::max(v.height / 6, 1.0);
    for (double y = step; y < v.height; y += step) {
        const double half = (v.base + (v.rim - v.base) * y / v.height) / 2;
        weave.addPath(level(-y * k, half * k));
    }
    out.front.push_back({weave, {}, darker(c.clay, 0.4), 0.8});
    Q_UNUSED(body)
}

} // namespace

PieceColours PieceColours::of(const Palette& palette) {
    const bool dark = palette.theme == Theme::dark;
    return {palette.of(Role::ink),
            mixed(palette.of(Role::water), palette.of(Role::paper), 0.62),
            palette.of(Role::water),
            palette.of(Role::waterEdge),
            QColor::fromRgb(dark ? 0x9C9380 : 0xB9AE98),
            palette.of(Role::mist)};
}

VesselSketch vesselSketch(const VesselDrawing& v, double k, const PieceColours& c, bool water) {
    VesselSketch out;
    const Half h = halves(v);
    const QPainterPath body = QTransform::fromScale(k, k).map(outlinePath(v.outline, h));
    if (v.stand > 0) addStand(out, v.stand, k, c);
    Sketch standing = std::move(out.behind);
    out.behind.clear();
    if (v.outline == Outline::basket) addHandle(out, h, k, c);
    const bool solid = v.outline == Outline::bowl || v.outline == Outline::basket;
    if (v.glass()) {
        out.behind.push_back({body, c.glass, {}, 0});
        if (water) addWater(out, v, body, k, c);
    } else {
        out.front.push_back({body, solid ? c.clay : c.plain, {}, 0});
    }
    addSurface(out, v, body, k, c);
    out.front.push_back({body, {}, c.outline, 1.6});
    out.front.push_back({level(-v.height * k, h.rim * k + 1), {}, c.outline, 2.4});
    if (v.stand > 0) {
        const auto up = QTransform::fromTranslate(0, -v.stand * k);
        transform(out.behind, up);
        transform(out.front, up);
    }
    append(standing, std::move(out.behind));
    out.behind = std::move(standing);
    const bool necked = v.outline == Outline::jar;
    out.rimY = -(v.stand + v.height) * k;
    out.neckY = out.rimY + (necked ? v.neckHeight * 0.7 : v.height * 0.32) * k;
    const double t = 0.32;
    out.neckHalf = (necked                          ? h.rim
                    : v.outline == Outline::tapered ? h.rim + (h.base - h.rim) * t
                    : v.outline == Outline::bowl    ? h.widest * 0.93
                                                    : h.rim) *
                   k;
    out.insideHalf = std::max(h.rim - v.wall, 0.5) * k;
    out.footY = -(v.stand + v.floor) * k;
    out.footHalf = std::max((necked ? h.widest : h.base) - v.wall, 0.5) * k;
    return out;
}

} // namespace withy::ui
