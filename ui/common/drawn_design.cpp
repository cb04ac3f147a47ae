// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/drawn_design.h"

#include "ui/common/style.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"

#include <QPainter>

namespace withy::ui {

DrawnDesign::DrawnDesign(Workbench& bench, PiecePictures* shared, QWidget* parent)
    : QWidget(parent), bench_(bench), pictures_(shared ? shared : new PiecePictures(this)) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&bench_, &Workbench::changed, this, &DrawnDesign::refresh);
    connect(pictures_, &PiecePictures::ready, this, [this](qint64 which) {
        if (which == key()) update();
    });
}

void DrawnDesign::setRoom(QSize room) {
    room_ = room;
    updateGeometry();
}

void DrawnDesign::showDesign(std::optional<Id<model::Design>> design) {
    design_ = design;
    refresh();
}

bool DrawnDesign::isThere() const {
    return design_ && bench_.season().designs.find(*design_);
}

void DrawnDesign::refresh() {
    const auto* d = design_ ? bench_.season().designs.find(*design_) : nullptr;
    setAccessibleName(d ? tr("%1 from the side, to scale").arg(text(d->name)) : QString());
    if (d) {
        auto piece = pieceDrawing(bench_.season(), *design_);
        if (piece != piece_) {
            piece_ = std::move(piece);
            bounds_ = pieceBoundsMm(piece_);
        }
    }
    redrawn();
    update();
}

PiecePictures::Picture DrawnDesign::picture(double scale, bool fromAbove) {
    return pictures_->picture(key(),
                              {piece_, scale, devicePixelRatioF(), currentPalette().theme, false, fromAbove});
}

void DrawnDesign::paintEvent(QPaintEvent*) {
    if (!isThere()) return;
    QPainter painter(this);
    const int margin = grid(1); // lines stand out beyond the bounds
    const double scale = fittingScale(bounds_, QSizeF(width() - 2 * margin, height() - 2 * margin));
    const QPointF foot(width() / 2.0 - bounds_.center().x() * scale,
                       height() - margin - bounds_.bottom() * scale);
    const auto drawn = picture(scale);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    paintPicture(painter, drawn, foot, scale);
    if (!ground_) return;
    painter.setPen(QPen(currentPalette().of(Role::ink), jarLine));
    painter.drawLine(QPointF(0, foot.y()), QPointF(width(), foot.y()));
}

} // namespace withy::ui
