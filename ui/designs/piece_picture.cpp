// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/piece_picture.h"

#include "ui/common/style.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"

#include <QPainter>

namespace withy::ui {

PiecePicture::PiecePicture(Workbench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&bench_, &Workbench::changed, this, &PiecePicture::refresh);
    connect(&pictures_, &PiecePictures::ready, this, [this] { update(); });
}

QSize PiecePicture::sizeHint() const {
    return {grid(60), grid(56)};
}

void PiecePicture::showDesign(std::optional<Id<model::Design>> design) {
    design_ = design;
    refresh();
}

void PiecePicture::refresh() {
    const auto* d = design_ ? bench_.season().designs.find(*design_) : nullptr;
    setAccessibleName(d ? tr("Drawing of %1").arg(text(d->name)) : QString());
    if (!d) return update();
    auto piece = pieceDrawing(bench_.season(), *design_);
    if (piece == piece_) return;
    piece_ = std::move(piece);
    bounds_ = pieceBoundsMm(piece_);
    update();
}

void PiecePicture::paintEvent(QPaintEvent*) {
    if (!design_ || !bench_.season().designs.find(*design_)) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto& palette = currentPalette();
    const QSizeF room(width() - grid(2), height() - grid(2));
    const double scale = fittingScale(bounds_, room);
    const double ground = height() - grid(1);
    const auto picture = pictures_.picture(0, {piece_, scale, devicePixelRatioF(), palette.theme, false});
    const QPointF foot(width() / 2.0 - bounds_.center().x() * scale, ground);
    if (!picture.image.isNull()) painter.drawImage(foot - picture.foot, picture.image);
    painter.setPen(QPen(palette.of(Role::ink), 2));
    painter.drawLine(QPointF(0, ground), QPointF(width(), ground));
}

} // namespace withy::ui
