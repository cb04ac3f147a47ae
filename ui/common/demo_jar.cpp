// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/demo_jar.h"

#include "ui/common/first_picture.h"
#include "ui/common/style.h"
#include "ui/logic/starting_seasons.h"
#include "ui/paint/spacing.h"
#include "ui/paint/vessel_sketch.h"

#include <QPainter>

namespace withy::ui {

namespace {

constexpr qint64 onlyKey = 1;

/// Of the first design the demo has.
std::optional<PieceDrawing> demoPiece() {
    const auto season = demoSeason();
    if (season.designs.empty()) return std::nullopt;
    return pieceDrawing(season, season.designs.begin()->id);
}

} // namespace

DemoJar::DemoJar(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("A design of the demo season"));
    new FirstPicture(this, [this] { read(); });
    connect(&pictures_, &PiecePictures::ready, this, qOverload<>(&QWidget::update));
}

void DemoJar::read() {
    pool_.start([this] {
        QMetaObject::invokeMethod(
            this,
            [this, piece = demoPiece()] {
                piece_ = piece;
                if (piece_) bounds_ = pieceBoundsMm(*piece_);
                update();
            },
            Qt::QueuedConnection);
    });
}

void DemoJar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto& palette = currentPalette();
    const double ground = height() - jarLine;
    painter.setPen(QPen(palette.of(Role::ink), jarLine));
    painter.drawLine(QPointF(0, ground), QPointF(width(), ground));
    if (!piece_) return;
    const double vessel = piece_->vessel ? std::max(piece_->vessel->width, piece_->vessel->rim) : 0;
    const double air = vessel / 3;
    const QRectF all(0, 0, vessel + air + bounds_.width(), bounds_.height());
    const double scale = fittingScale(all, QSizeF(width(), height() - jarLine));
    const double left = (width() - all.width() * scale) / 2;
    if (piece_->vessel) {
        const auto sketch = vesselSketch(*piece_->vessel, scale, PieceColours::of(palette));
        painter.save();
        painter.translate(left + vessel / 2 * scale, ground - jarLine / 2);
        paint(painter, sketch.behind);
        paint(painter, sketch.front);
        painter.restore();
    }
    const QPointF foot(left + (vessel + air - bounds_.left()) * scale, ground - jarLine / 2);
    const auto picture =
        pictures_.picture(onlyKey, {*piece_, scale, devicePixelRatioF(), palette.theme, false});
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    paintPicture(painter, picture, foot, scale);
}

} // namespace withy::ui
