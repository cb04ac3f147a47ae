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
    const double shoulder = std::clamp(h.neck + (h.widest - h.rim) * 0.5 + h.height * 0.08, h.neck,
                                       std::max(h.height * 0.7, h.neck));
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

/// Widest at the rim, or at a belly below it.
QPainterPath bowlPath(const Half& h) {
    const double foot = std::min(8.0, h.height * 0.12);
    const bool open = h.widest < h.rim * 1.02;
    const double belly = h.height * 0.6;
    QPainterPath p(QPointF(-h.rim, -h.height));
    if (open) {
        p.cubicTo(-h.rim, -h.height * 0.45, -std::min(h.base * 1.25, h.rim), -foot, -h.base, -foot);
    } else {
        p.cubicTo(-(h.rim + h.widest) / 2, -(h.height * 0.65 + belly * 0.35), -h.widest,
                  -(belly + h.height * 0.16), -h.widest, -belly);
        p.cubicTo(-h.widest, -belly * 0.4, -std::min(h.base * 1.25, h.widest), -foot, -h.base, -foot);
    }
    p.lineTo(-h.base, 0);
    p.lineTo(0, 0);
    QPainterPath right = QTransform::fromScale(-1, 1).map(p).toReversed();
    p.connectPath(right);
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
    // A neck as high as the jar leaves no shoulder.
    const double neck = std::min(v.neckHeight, v.height * 0.9);
    return {v.rim / 2, std::max(v.width, v.rim) / 2, (straight ? v.rim : v.base) / 2, v.height, neck};
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

/// From the inside of the bottom up to the level, within the glass.
void addWater(VesselSketch& out, const VesselDrawing& v, const QPainterPath& body, double k,
              const PieceColours& c) {
    if (v.waterLevel <= 0) return;
    const double y = -(v.floor + v.waterLevel) * k, bottom = -v.floor * k;
    const QRectF box = body.boundingRect();
    const double shrink = std::clamp(1 - 2 * v.wall / std::max(v.width, 1.0), 0.5, 1.0);
    const QPainterPath inside = QTransform::fromScale(shrink, 1).map(body);
    const auto band = [&](double from, double to) {
        QPainterPath p;
        p.addRect(QRectF(QPointF(box.left(), from), QPointF(box.right(), to)));
        return inside.intersected(p);
    };
    out.behind.push_back({band(y, bottom), c.water, {}, 0});
    // As wide as the glass is there; over the rim there is none.
    const double half = band(y, y + std::max(0.5 * k, 0.5)).boundingRect().width() / 2;
    out.front.push_back({level(y, half > 0 ? half : v.rim / 2 * k), {}, c.waterEdge, 1.3});
}

/// Two bands on tin and zinc, a weave on a basket.
void addSurface(VesselSketch& out, const VesselDrawing& v, double k, const PieceColours& c) {
    if (v.outline == Outline::trough) {
        for (const double y : {v.height - 10, 10.0})
            out.front.push_back({level(-y * k, v.rim / 2 * k), {}, c.outline, 0.8});
    }
    if (v.outline != Outline::basket) return;
    const auto halfAt = [&](double y) { return (v.base + (v.rim - v.base) * y / v.height) / 2; };
    constexpr int rows = 6, stakes = 12;
    QPainterPath weave, upright;
    const double step = v.height / rows;
    for (int row = 0; row < rows; ++row) {
        const double y = row * step;
        if (row > 0) weave.addPath(level(-y * k, halfAt(y) * k));
        // Each row hides every other stake.
        for (int i = row % 2; i < stakes; i += 2) {
            const double across = 2 * (i + 0.5) / stakes - 1;
            upright.moveTo(across * halfAt(y) * k, -y * k);
            upright.lineTo(across * halfAt(y + step) * k, -(y + step) * k);
        }
    }
    out.front.push_back({weave, {}, darker(c.clay, 0.4), 0.8});
    out.front.push_back({upright, {}, darker(c.clay, 0.3), 0.8});
}

/// Half of what a ribbon goes round, a third of the way down where there is no neck.
double ribbonHalf(const VesselDrawing& v, const Half& h) {
    constexpr double down = 0.32;
    switch (v.outline) {
    case Outline::jar:
        return v.neck / 2;
    case Outline::tapered:
    case Outline::basket:
        return h.rim + (h.base - h.rim) * down;
    case Outline::bowl:
        return h.widest * 0.93;
    default:
        return h.rim;
    }
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
    addSurface(out, v, k, c);
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
    out.neckY = out.rimY + (necked ? v.neckHeight * 0.5 : v.height * 0.32) * k;
    out.neckHalf = ribbonHalf(v, h) * k;
    out.insideHalf = std::max(h.rim - v.wall, 0.5) * k;
    out.footY = -(v.stand + v.floor) * k;
    out.footHalf = std::max((necked ? h.widest : h.base) - v.wall, 0.5) * k;
    return out;
}

} // namespace withy::ui
