// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/bunch.h"
#include "ui/paint/piece_painter.h"
#include "ui/paint/piece_parts.h"
#include "ui/paint/ribbon_sketch.h"

#include <algorithm>

namespace withy::ui {

namespace {

using model::PieceKind;

void take(QRectF& bounds, QPointF p) {
    bounds = bounds.united(QRectF(p.x() - 0.01, p.y() - 0.01, 0.02, 0.02));
}

/// Stems and heads; a curve lies within its control points.
QRectF bunchBounds(const PieceDrawing& piece, const Neck& neck, double turned = 0) {
    const auto turn = QTransform().rotate(turned);
    QRectF bounds;
    for (const auto& p : placeStems(piece)) {
        const auto stem = stemOf(piece, p, neck, 1);
        for (const auto& point : {stem.foot, stem.neck, stem.leaving, stem.arriving, stem.head})
            take(bounds, turn.map(point));
        bounds =
            bounds.united(headBounds(p.slot->form, p.head, p.tilt + turned).translated(turn.map(stem.head)));
    }
    return bounds;
}

QRectF standingBounds(const PieceDrawing& piece) {
    const auto vessel = vesselSketch(*piece.vessel, 1, PieceColours::of({}), false);
    QRectF bounds = boundsOf(vessel.behind).united(boundsOf(vessel.front));
    bounds = bounds.united(bunchBounds(piece, standingNeck(piece, vessel, 1)));
    if (!piece.ribbon) return bounds;
    const auto ribbon = ribbonSketch(*piece.ribbon, vessel.neckHalf, 1, std::abs(vessel.neckY));
    return bounds.united(boundsOf(ribbon).translated(0, vessel.neckY));
}

/// Before it is stood on the ground: the tie at the origin.
QRectF boundsRoundTie(const PieceDrawing& piece) {
    const bool laid = piece.kind == PieceKind::sheaf;
    const Neck neck = tiedNeck(piece, 1);
    QRectF bounds = bunchBounds(piece, neck, laid ? laidFlat : 0);
    take(bounds, laid ? QTransform().rotate(laidFlat).map(QPointF(0, neck.footY)) : QPointF(0, neck.footY));
    if (!piece.ribbon) return bounds;
    auto ribbon = ribbonSketch(*piece.ribbon, neck.half, 1, neck.footY);
    if (laid) transform(ribbon, QTransform().rotate(laidFlat));
    return bounds.united(boundsOf(ribbon));
}

QRectF tiedBounds(const PieceDrawing& piece) {
    const QRectF bounds = boundsRoundTie(piece);
    const bool laid = piece.kind == PieceKind::sheaf;
    return bounds.translated(laid ? -bounds.center().x() : 0, -bounds.bottom());
}

bool inTiers(const PieceDrawing& piece) {
    switch (piece.kind) {
    case PieceKind::crown:
    case PieceKind::wreath:
    case PieceKind::garland:
        return false;
    default:
        return true;
    }
}

} // namespace

double tieAboveGround(const PieceDrawing& piece) {
    return boundsRoundTie(piece).bottom();
}

QRectF pieceBoundsMm(const PieceDrawing& piece) {
    QRectF bounds = !inTiers(piece) ? boundsOf(pieceParts(piece, 1, {}))
                    : piece.vessel  ? standingBounds(piece)
                                    : tiedBounds(piece);
    if (bounds.width() < leastDrawn || bounds.height() < leastDrawn)
        bounds = bounds.united({-5, -10, 10, 10});
    bounds.setBottom(std::max(bounds.bottom(), 0.0));
    return bounds;
}

} // namespace withy::ui
