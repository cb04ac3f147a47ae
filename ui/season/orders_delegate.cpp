// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/orders_delegate.h"

#include "ui/common/style.h"
#include "ui/logic/models/orders_model.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QPainter>

namespace withy::ui {

void OrdersDelegate::initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const {
    QStyledItemDelegate::initStyleOption(option, index);
    if (index.data(OrdersModel::SumRole).toBool() || index.column() == OrdersModel::asked)
        option->font = typeFont(TypeRole::strong);
    if (index.data(OrdersModel::LostRole).toBool())
        option->palette.setColor(QPalette::Text, currentPalette().of(Role::ink3));
}

void OrdersDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    QStyledItemDelegate::paint(painter, option, index);
    if (!index.data(OrdersModel::SumRole).toBool()) return;
    painter->save();
    painter->setPen(QPen(currentPalette().of(Role::edge), hairline));
    painter->drawLine(option.rect.topLeft(), option.rect.topRight());
    painter->restore();
}

} // namespace withy::ui
