// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_painter.h"

#include "ui/paint/piece_layout.h"
#include "ui/paint/ribbon_sketch.h"
#include "ui/paint/ring_pieces.h"
#include "ui/paint/vessel_sketch.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

using model::PieceKind;

/// Lines stand out beyond the outline by half their width; the widest is under 3 px, corners included.
constexpr double lineRoom = 3;

/// Where a bunch of stems comes together, in pixels.
struct Neck {
    double y = 0;
    double half = 10;     ///< room at the neck
    double footY = 0;     ///< where the stems end
    double footHalf = 20; ///< room there
    double footShare = 0.3;
};

struct Stem {
    QPointF foot, neck, head;
    double tilt; ///< radians
};

/// Straight from its foot through its place in the neck, then one curve that arrives along the tilt.
QPainterPath stemPath(const Stem& s, double rise) {
    QPainterPath p(s.foot);
    p.lineTo(s.neck);
    p.cubicTo(s.neck.x() + (s.neck.x() - s.foot.x()) * 0.4, s.neck.y() - rise * 0.35,
              s.head.x() - std::sin(s.tilt) * rise * 0.3, s.head.y() + std::cos(s.tilt) * rise * 0.3,
              s.head.x(), s.head.y());
    return p;
}

Stem stemOf(const PlacedStem& placed, const Neck& neck, double k, double spreadPx) {
    const double share = spreadPx > 0 ? placed.x * k / (spreadPx / 2) : 0;
    const double at = std::clamp(share, -1.0, 1.0);
    const double footX =
        std::clamp(-placed.x * k * neck.footShare, -neck.footHalf * 0.9, neck.footHalf * 0.9);
    return {{footX, neck.footY},
            {at * neck.half * 0.8, neck.y},
            {placed.x * k, neck.y - placed.height * k},
            placed.tilt * std::numbers::pi / 180};
}

Sketch bunchSketch(const PieceDrawing& piece, const Neck& neck, double k, Theme theme) {
    Sketch out;
    const auto placed = placeStems(piece);
    for (const auto& p : placed) {
        const auto path = stemPath(stemOf(p, neck, k, piece.spread * k), p.height * k);
        const QColor green = stemColour(p.slot->form, p.slot->bloom);
        const double width = std::max(std::min(p.slot->stem, 6.0) * 0.8 * k, 0.9);
        out.push_back({path, {}, darker(green, 0.35), width + 0.5});
        out.push_back({path, {}, green, std::max(width - 0.7, 0.5)});
    }
    for (const auto& p : placed) {
        auto head = headSketch({p.slot->form, p.head * k, p.slot->bloom, p.slot->eye, p.tilt, p.seed}, theme);
        transform(head, QTransform::fromTranslate(p.x * k, neck.y - p.height * k));
        append(out, std::move(head));
    }
    return out;
}

Sketch standingSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    const auto vessel = vesselSketch(*piece.vessel, k, PieceColours::of(palette));
    Neck neck;
    neck.y = vessel.rimY + 3 * k;
    neck.half = std::min(vessel.insideHalf, piece.spread * k * 0.2);
    neck.footY = std::min(vessel.footY - piece.lift * k, neck.y + 1);
    if (vessel.footY - piece.lift * k > neck.y) neck.footY = vessel.footY - piece.lift * k;
    neck.footHalf = std::min(vessel.footHalf, vessel.insideHalf * 1.4);
    Sketch out = vessel.behind;
    append(out, bunchSketch(piece, neck, k, palette.theme));
    append(out, vessel.front);
    if (piece.ribbon) {
        auto ribbon = ribbonSketch(*piece.ribbon, vessel.neckHalf, k, std::abs(vessel.neckY));
        transform(ribbon, QTransform::fromTranslate(0, vessel.neckY));
        append(out, std::move(ribbon));
    }
    return out;
}

/// Half the thickness of the tied stems, millimetres: their sections, loosely packed (ours: 0.6 filled).
double bundleHalf(const PieceDrawing& piece) {
    double sections = 0;
    for (const auto& s : piece.slots)
        sections += s.count * s.stem * s.stem / 4;
    return std::clamp(std::sqrt(sections / 0.6), 3.0, 60.0);
}

/// The tie at the origin.
Sketch tiedSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    const double half = bundleHalf(piece) * k;
    Neck neck;
    neck.half = half;
    neck.footY = piece.belowTie * k;
    neck.footHalf = std::max(half * 2.4, piece.spread * 0.16 * k);
    neck.footShare = 0.42;
    Sketch out = bunchSketch(piece, neck, k, palette.theme);
    // Tails end on the ground, however long.
    if (piece.ribbon) append(out, ribbonSketch(*piece.ribbon, half, k, neck.footY));
    return out;
}

Sketch boundSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    Sketch out = tiedSketch(piece, k, palette);
    const bool laid = piece.kind == PieceKind::sheaf;
    if (laid) transform(out, QTransform().rotate(-78));
    // Stands on its stem ends or lies on its lowest head, whichever is lowest.
    const QRectF box = boundsOf(out);
    if (!out.empty()) transform(out, QTransform::fromTranslate(laid ? -box.center().x() : 0, -box.bottom()));
    return out;
}

Sketch groundSketch(const QRectF& where, const Palette& palette) {
    QPainterPath line(where.bottomLeft());
    line.lineTo(where.bottomRight());
    return {{line, {}, palette.of(Role::ink), 1.6}};
}

} // namespace

Sketch pieceSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    switch (piece.kind) {
    case PieceKind::crown:
    case PieceKind::wreath:
        return ringSketch(piece, k, palette);
    case PieceKind::garland:
        return garlandSketch(piece, k, palette);
    default:
        return piece.vessel ? standingSketch(piece, k, palette) : boundSketch(piece, k, palette);
    }
}

QRectF pieceBoundsMm(const PieceDrawing& piece) {
    QRectF bounds = boundsOf(pieceSketch(piece, 1, {}));
    if (bounds.width() < leastDrawn || bounds.height() < leastDrawn)
        bounds = bounds.united({-5, -10, 10, 10});
    bounds.setBottom(std::max(bounds.bottom(), 0.0));
    return bounds;
}

QSizeF pieceSizeMm(const PieceDrawing& piece) {
    return pieceBoundsMm(piece).size();
}

double fittingScale(const QRectF& mm, const QSizeF& size) {
    const double across = std::max(size.width() - 2 * lineRoom, 1.0) / std::max(mm.width(), leastDrawn);
    const double up = std::max(size.height() - 2 * lineRoom, 1.0) / std::max(mm.height(), leastDrawn);
    return std::min(across, up);
}

void paintPiece(QPainter& painter, const PieceDrawing& piece, const QRectF& where,
                const PiecePaintOptions& options) {
    if (where.width() < 1 || where.height() < 1) return;
    const QRectF mm = pieceBoundsMm(piece);
    const double k = options.scale > 0 ? options.scale : fittingScale(mm, where.size());
    Sketch sketch = pieceSketch(piece, k, options.palette);
    if (options.lineOnly) {
        const QColor line = options.line.isValid() ? options.line : options.palette.of(Role::edge);
        const double w = options.lineWidth;
        sketch = inLine(std::move(sketch), {options.palette.of(Role::paper), line, w, w > 0 ? w : 1.1});
    }
    transform(sketch, QTransform::fromTranslate(where.center().x() - mm.center().x() * k,
                                                where.bottom() - lineRoom - mm.bottom() * k));
    if (options.ground)
        paint(painter, groundSketch(where.adjusted(0, 0, 0, -lineRoom + 0.8), options.palette));
    paint(painter, sketch);
}

} // namespace withy::ui
