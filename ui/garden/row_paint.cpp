// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/row_paint.h"

#include "ui/paint/spacing.h"

#include <QStyleOptionViewItem>

#include <algorithm>

namespace withy::ui {

void drawWords(QPainter& painter, const QRect& room, TypeRole type, Role ink, const QString& words,
               Qt::Alignment align) {
    constexpr int longest = 2000; // letters; no row shows more
    const QFont font = typeFont(type);
    const QString line = words.left(longest).replace(QLatin1Char('\n'), QLatin1Char(' '));
    painter.setFont(font);
    painter.setPen(col(ink));
    painter.drawText(room, static_cast<int>(align) | Qt::TextSingleLine,
                     QFontMetrics(font).elidedText(line, Qt::ElideRight, std::max(0, room.width())));
}

void drawRowGround(QPainter& painter, const QStyleOptionViewItem& option) {
    if (option.state.testFlag(QStyle::State_Selected)) painter.fillRect(option.rect, col(Role::wash));
    painter.setPen(QPen(col(Role::line), hairline));
    painter.drawLine(QPointF(option.rect.left(), option.rect.bottom() + 0.5),
                     QPointF(option.rect.right() + 1, option.rect.bottom() + 0.5));
}

} // namespace withy::ui
