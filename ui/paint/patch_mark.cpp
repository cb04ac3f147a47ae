// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/patch_mark.h"

#include "ui/paint/type.h"

#include <QPainter>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr double ring = 1.3;

QRectF middleSquare(const QRectF& box, double share) {
    const double size = (std::min(box.width(), box.height()) - 2 * ring) * share;
    return {box.center().x() - size / 2, box.center().y() - size / 2, size, size};
}

} // namespace

void paintPatchMark(QPainter& painter, const QRectF& box, const QString& number, const Palette& palette) {
    const QRectF circle = middleSquare(box, 1);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette.of(Role::ink2), ring));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(circle);
    QFont font = typeFont(TypeRole::caption);
    if (number.size() > 2) font.setPointSizeF(font.pointSizeF() * 2 / static_cast<double>(number.size()));
    painter.setFont(font);
    painter.setPen(palette.of(Role::ink));
    painter.drawText(circle, Qt::AlignCenter, number);
    painter.restore();
}

void paintStoreMark(QPainter& painter, const QRectF& box, bool bought, const Palette& palette) {
    const QRectF square = middleSquare(box, 0.72);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette.of(Role::ink2), ring));
    painter.setBrush(bought ? Qt::NoBrush : QBrush(palette.of(Role::ink2)));
    painter.drawRect(square);
    if (bought) {
        painter.drawLine(square.topLeft(), square.bottomRight());
        painter.drawLine(square.topRight(), square.bottomLeft());
    }
    painter.restore();
}

} // namespace withy::ui
