// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/style/ticks.h"

#include "ui/common/style.h"
#include "ui/paint/spacing.h"

#include <QPainter>

namespace withy::ui {

namespace {

QColor markInk(QStyle::State state) {
    return currentPalette().of(state & QStyle::State_Enabled ? Role::green : Role::ink3);
}

/// The pen and the fill of the box itself.
void dressBox(QPainter& painter, QStyle::State state) {
    const auto& palette = currentPalette();
    const bool marked = state & (QStyle::State_On | QStyle::State_NoChange);
    const bool over = (state & QStyle::State_MouseOver) && (state & QStyle::State_Enabled);
    const QColor edge = marked || over ? markInk(state) : palette.of(Role::edge);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(edge, 1.3));
    painter.setBrush(palette.of(state & QStyle::State_Enabled ? Role::sheet : Role::paper));
}

} // namespace

int tickSide() {
    return grid(4);
}

void paintTickBox(QPainter& painter, const QRect& box, QStyle::State state) {
    painter.save();
    dressBox(painter, state);
    painter.drawRoundedRect(QRectF(box).adjusted(0.7, 0.7, -0.7, -0.7), corner, corner);
    painter.setBrush(Qt::NoBrush);
    const double w = box.width();
    painter.setPen(QPen(markInk(state), w * 0.14, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const auto at = [&](double x, double y) { return QPointF(box.left() + w * x, box.top() + w * y); };
    if (state & QStyle::State_NoChange)
        painter.drawLine(at(0.28, 0.5), at(0.72, 0.5));
    else if (state & QStyle::State_On)
        painter.drawPolyline(QPolygonF{at(0.22, 0.55), at(0.43, 0.75), at(0.8, 0.28)});
    painter.restore();
}

void paintRadio(QPainter& painter, const QRect& box, QStyle::State state) {
    painter.save();
    dressBox(painter, state);
    const QRectF round = QRectF(box).adjusted(0.7, 0.7, -0.7, -0.7);
    painter.drawEllipse(round);
    if (state & QStyle::State_On) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(markInk(state));
        const double in = round.width() * 0.26;
        painter.drawEllipse(round.adjusted(in, in, -in, -in));
    }
    painter.restore();
}

} // namespace withy::ui
