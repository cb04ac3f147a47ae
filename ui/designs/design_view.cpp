// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/design_view.h"

#include "ui/common/style.h"
#include "ui/designs/elevation.h"
#include "ui/paint/spacing.h"

#include <QPainter>

namespace withy::ui {

DesignView::DesignView(Workbench& bench, QWidget* parent) : DrawnDesign(bench, nullptr, parent) {
    setObjectName(QStringLiteral("designs.drawing"));
    setRoom({grid(110), grid(110)});
}

QSize DesignView::minimumSizeHint() const {
    return {grid(70), grid(70)};
}

void DesignView::redrawn() {
    setVisible(isThere());
    if (isThere()) setAccessibleDescription(elevationWords(piece()));
}

void DesignView::paintEvent(QPaintEvent*) {
    if (!isThere()) return;
    QPainter painter(this);
    const Elevation elevation(piece(), bounds(), rect(), currentPalette());
    const auto drawn = picture(elevation.scale());
    elevation.paintBehind(painter);
    if (!drawn.image.isNull()) painter.drawImage(elevation.foot() - drawn.foot, drawn.image);
    elevation.paintNumbers(painter);
}

} // namespace withy::ui
