// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/style.h"
#include "ui/paint/type.h"

#include <QPainter>

class QStyleOptionViewItem;

/// What the drawn rows of the garden's pages have in common.
namespace withy::ui {

inline QColor col(Role role) {
    return currentPalette().of(role);
}

/// One line, shortened where there is no room.
void drawWords(QPainter& painter, const QRect& room, TypeRole type, Role ink, const QString& words,
               Qt::Alignment align = Qt::AlignLeft | Qt::AlignVCenter);
/// The wash of a chosen row and the hairline below each.
void drawRowGround(QPainter& painter, const QStyleOptionViewItem& option);

} // namespace withy::ui
