// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/piece_thumb.h"

#include "ui/common/style.h"
#include "ui/paint/piece_pictures.h"
#include "ui/paint/spacing.h"

#include <QPainter>

namespace withy::ui {

PieceThumb::PieceThumb(Workbench& bench, PiecePictures& pictures, Id<model::Design> design, QWidget* parent)
    : QWidget(parent), bench_(bench), pictures_(pictures), design_(design) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(&pictures_, &PiecePictures::ready, this, [this](qint64 key) {
        if (key == design_.value) update();
    });
    connect(&bench_, &Workbench::changed, this, qOverload<>(&QWidget::update));
}

QSize PieceThumb::sizeHint() const {
    return {grid(15), grid(17)};
}

void PieceThumb::paintEvent(QPaintEvent*) {
    if (!bench_.season().designs.find(design_)) return;
    const auto piece = pieceDrawing(bench_.season(), design_);
    const double scale = fittingScale(pieceBoundsMm(piece), size());
    const auto picture =
        pictures_.picture(design_.value, {piece, scale, devicePixelRatioF(), currentPalette().theme, false});
    if (picture.image.isNull()) return;
    const QSizeF drawn = picture.image.deviceIndependentSize();
    QPainter p(this);
    p.drawImage(QPointF((width() - drawn.width()) / 2, height() - drawn.height()), picture.image);
}

} // namespace withy::ui
