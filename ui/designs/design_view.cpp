// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/design_view.h"

#include "ui/common/style.h"
#include "ui/designs/elevation.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"

#include <QPainter>

namespace withy::ui {

DesignView::DesignView(Workbench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
    setObjectName(QStringLiteral("designs.drawing"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&bench_, &Workbench::changed, this, &DesignView::refresh);
    connect(&pictures_, &PiecePictures::ready, this, [this] { update(); });
}

QSize DesignView::sizeHint() const {
    return {grid(110), grid(110)};
}

QSize DesignView::minimumSizeHint() const {
    return {grid(70), grid(70)};
}

void DesignView::showDesign(std::optional<Id<model::Design>> design) {
    design_ = design;
    refresh();
}

void DesignView::refresh() {
    const auto* d = design_ ? bench_.season().designs.find(*design_) : nullptr;
    setVisible(d != nullptr);
    if (!d) return;
    auto piece = pieceDrawing(bench_.season(), *design_);
    setAccessibleName(tr("%1 from the side, to scale").arg(text(d->name)));
    setAccessibleDescription(elevationWords(piece));
    if (piece == piece_) return;
    piece_ = std::move(piece);
    bounds_ = pieceBoundsMm(piece_);
    update();
}

void DesignView::paintEvent(QPaintEvent*) {
    if (!design_) return;
    QPainter painter(this);
    const auto& palette = currentPalette();
    const Elevation elevation(piece_, bounds_, rect(), palette);
    const auto picture =
        pictures_.picture(0, {piece_, elevation.scale(), devicePixelRatioF(), palette.theme, false});
    elevation.paintBehind(painter);
    if (!picture.image.isNull()) painter.drawImage(elevation.foot() - picture.foot, picture.image);
    elevation.paintNumbers(painter);
}

} // namespace withy::ui
