// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

#include <QRectF>
#include <QSizeF>

class QPainter;

/// A piece from the side, to scale: glass, water, stems, heads back to front, outline, ribbon, ground.
namespace withy::ui {

struct PiecePaintOptions {
    Palette palette;
    double scale = 0;      ///< pixels a millimetre; nought or less: as large as the rectangle takes
    bool lineOnly = false; ///< not in bloom: the same drawing without colours
    QColor line{};         ///< of lineOnly; invalid: the palette's edge
    double lineWidth = 0;  ///< of lineOnly; nought: as drawn, at most 1.1
    bool ground = false;   ///< the line it stands on, as wide as the rectangle
};

/// What the piece takes up in millimetres around the middle of its foot: x to the right, y down, the
/// ground at 0. Lines of up to 3 px stand out beyond it.
QRectF pieceBoundsMm(const PieceDrawing& piece);
QSizeF pieceSizeMm(const PieceDrawing& piece);

/// What the tiers' heights are measured from, in millimetres above the ground: the rim, or the tie of a
/// bound piece held upright over its lowest part. Nothing to measure on rings, garlands and what is laid
/// flat.
double neckAboveGround(const PieceDrawing& piece);

/// Pixels a millimetre at which the piece fits into `size` with its lines.
double fittingScale(const QRectF& boundsMm, const QSizeF& size);

/// Stands on the bottom of `where`, in its middle. Nothing is drawn outside when the scale fits.
void paintPiece(QPainter& painter, const PieceDrawing& piece, const QRectF& where,
                const PiecePaintOptions& options);

/// The same as paths, the middle of the foot at the origin; `scale` pixels a millimetre.
Sketch pieceSketch(const PieceDrawing& piece, double scale, const Palette& palette);

} // namespace withy::ui
