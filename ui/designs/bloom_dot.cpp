// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/bloom_dot.h"

#include "core/plan/best_plant.h"
#include "ui/common/style.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QEvent>
#include <QPainter>

namespace withy::ui {

BloomDot::BloomDot(const QColor& colour, QWidget* parent) : QWidget(parent), colour_(colour) {
    fixedOnGrid(this, 3.5, 3.5);
}

void BloomDot::setColour(const QColor& colour) {
    colour_ = colour;
    update();
}

void BloomDot::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) setFixedSize(grid(3.5), grid(3.5));
}

void BloomDot::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paintDot(painter, rect(), colour_);
}

void paintDot(QPainter& painter, const QRectF& box, const QColor& bloom) {
    const auto& palette = currentPalette();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(bloom.isValid() ? palette.bloomEdge(bloom) : palette.of(Role::edge), 1.2));
    painter.setBrush(bloom.isValid() ? QBrush(bloom) : QBrush(Qt::NoBrush));
    const double side = std::min(box.width(), box.height()) - 2;
    painter.drawEllipse(box.center(), side / 2, side / 2);
    painter.restore();
}

QColor slotColour(const model::Season& season, Id<model::Slot> slot) {
    const auto* p = plan::bestPlant(season, slot);
    return p && p->colour1 ? Palette::bloom(*p->colour1) : QColor();
}

} // namespace withy::ui
