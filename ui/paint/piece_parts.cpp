// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_parts.h"

#include "ui/paint/bunch.h"
#include "ui/paint/head_look.h"
#include "ui/paint/ribbon_sketch.h"
#include "ui/paint/ring_pieces.h"
#include "ui/paint/vessel_sketch.h"

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

using model::PieceKind;

void addStem(Sketch& out, const QPainterPath& path, const QColor& green, double width) {
    // Two strokes: dark at the stem's true thickness, then a lighter, narrower one.
    out.push_back({path, {}, darker(green, 0.35), width, Qt::SolidLine, Qt::FlatCap});
    out.push_back(
        {path, {}, green, std::max(width - std::min(1.8, width * 0.45), 0.5), Qt::SolidLine, Qt::FlatCap});
}

void addBunch(PieceParts& out, const PieceDrawing& piece, const Neck& neck, double k) {
    for (const auto& p : placeStems(piece)) {
        addStem(out.behind, stemOf(piece, p, neck, k).path(), stemColour(p.slot->form, p.slot->bloom),
                std::max(p.slot->stem * k, 1.1));
        out.heads.push_back({{p.slot->form, p.head * k, p.slot->bloom, p.slot->eye, p.tilt, p.seed},
                             QPointF(p.x * k, neck.rimY - p.height * k)});
    }
}

PieceParts standingParts(const PieceDrawing& piece, double k, const Palette& palette) {
    auto vessel = vesselSketch(*piece.vessel, k, PieceColours::of(palette));
    PieceParts out;
    out.behind = std::move(vessel.behind);
    addBunch(out, piece, standingNeck(piece, vessel, k), k);
    out.front = std::move(vessel.front);
    if (piece.ribbon) {
        auto ribbon = ribbonSketch(*piece.ribbon, vessel.neckHalf, k, std::abs(vessel.neckY));
        transform(ribbon, QTransform::fromTranslate(0, vessel.neckY));
        append(out.front, std::move(ribbon));
    }
    return out;
}

void turn(PieceParts& parts, double degrees) {
    const auto by = QTransform().rotate(degrees);
    transform(parts.behind, by);
    transform(parts.front, by);
    for (auto& h : parts.heads) {
        h.at = by.map(h.at);
        h.turned += degrees;
    }
}

PieceParts boundParts(const PieceDrawing& piece, double k) {
    const Neck neck = tiedNeck(piece, k);
    PieceParts out; // the tie at the origin
    addBunch(out, piece, neck, k);
    // Tails end on the ground, however long.
    if (piece.ribbon) out.front = ribbonSketch(*piece.ribbon, neck.half, k, neck.footY);
    if (piece.kind != PieceKind::sheaf) {
        shift(out, {0, -tieAboveGround(piece) * k});
        return out;
    }
    turn(out, laidFlat);
    const QRectF box = boundsOf(out); // lies on its lowest head
    if (!box.isNull()) shift(out, {-box.center().x(), -box.bottom()});
    return out;
}

} // namespace

PieceParts pieceParts(const PieceDrawing& piece, double k, const Palette& palette) {
    switch (piece.kind) {
    case PieceKind::crown:
    case PieceKind::wreath:
        return ringParts(piece, k);
    case PieceKind::garland:
        return garlandParts(piece, k, palette);
    default:
        return piece.vessel ? standingParts(piece, k, palette) : boundParts(piece, k);
    }
}

Sketch joined(PieceParts parts, Theme theme) {
    Sketch out = std::move(parts.behind);
    for (const auto& placed : parts.heads) {
        auto head = headSketch(placed.head, theme);
        QTransform place;
        place.translate(placed.at.x(), placed.at.y());
        if (placed.turned != 0) place.rotate(placed.turned);
        transform(head, place);
        append(out, std::move(head));
    }
    append(out, std::move(parts.front));
    return out;
}

QRectF boundsOf(const PieceParts& parts) {
    QRectF all = boundsOf(parts.behind).united(boundsOf(parts.front));
    for (const auto& h : parts.heads)
        all = all.united(headExtent(h.head, h.turned).translated(h.at));
    return all;
}

void shift(PieceParts& parts, QPointF by) {
    const auto there = QTransform::fromTranslate(by.x(), by.y());
    transform(parts.behind, there);
    transform(parts.front, there);
    for (auto& h : parts.heads)
        h.at += by;
}

} // namespace withy::ui
