// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_painter.h"

#include "ui/paint/bunch.h"
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

Sketch bunchSketch(const PieceDrawing& piece, const Neck& neck, double k, Theme theme) {
    Sketch out;
    const auto placed = placeStems(piece);
    for (const auto& p : placed) {
        const auto path = stemOf(piece, p, neck, k).path();
        const QColor green = stemColour(p.slot->form, p.slot->bloom);
        // Two strokes: dark at the stem's true thickness, then a lighter, narrower one.
        const double width = std::max(p.slot->stem * k, 1.1);
        out.push_back({path, {}, darker(green, 0.35), width, Qt::SolidLine, Qt::FlatCap});
        out.push_back({path,
                       {},
                       green,
                       std::max(width - std::min(1.8, width * 0.45), 0.5),
                       Qt::SolidLine,
                       Qt::FlatCap});
    }
    for (const auto& p : placed) {
        auto head = headSketch({p.slot->form, p.head * k, p.slot->bloom, p.slot->eye, p.tilt, p.seed}, theme);
        transform(head, QTransform::fromTranslate(p.x * k, neck.rimY - p.height * k));
        append(out, std::move(head));
    }
    return out;
}

Sketch standingSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    const auto vessel = vesselSketch(*piece.vessel, k, PieceColours::of(palette));
    const Neck neck = standingNeck(piece, vessel, k);
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

/// The tie at the origin.
Sketch tiedSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    const Neck neck = tiedNeck(piece, k);
    Sketch out = bunchSketch(piece, neck, k, palette.theme);
    // Tails end on the ground, however long.
    if (piece.ribbon) append(out, ribbonSketch(*piece.ribbon, neck.half, k, neck.footY));
    return out;
}

Sketch boundSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    Sketch out = tiedSketch(piece, k, palette);
    const bool laid = piece.kind == PieceKind::sheaf;
    if (laid) transform(out, QTransform().rotate(laidFlat));
    if (!laid) {
        transform(out, QTransform::fromTranslate(0, -tieAboveGround(piece) * k));
        return out;
    }
    const QRectF box = boundsOf(out); // lies on its lowest head
    if (!out.empty()) transform(out, QTransform::fromTranslate(-box.center().x(), -box.bottom()));
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

double neckAboveGround(const PieceDrawing& piece) {
    if (piece.vessel) return piece.vessel->stand + piece.vessel->height;
    return tieAboveGround(piece);
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
