// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_painter.h"

#include "ui/paint/bunch.h"
#include "ui/paint/piece_parts.h"

#include <QPainter>

#include <algorithm>

namespace withy::ui {

namespace {

/// Lines stand out beyond the outline by half their width; the widest is under 3 px, corners included.
constexpr double lineRoom = 3;

Sketch groundSketch(const QRectF& where, const Palette& palette) {
    QPainterPath line(where.bottomLeft());
    line.lineTo(where.bottomRight());
    return {{line, {}, palette.of(Role::ink), 1.6}};
}

} // namespace

Sketch pieceSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    return joined(pieceParts(piece, k, palette), palette.theme);
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
