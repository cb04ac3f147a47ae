// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/step_delegate.h"

#include "ui/common/style.h"
#include "ui/logic/models/week_steps.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QLineEdit>
#include <QPainter>

namespace withy::ui {

void StepDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const bool head = index.data(WeekStepsModel::HeadRole).toBool();
    QStyleOptionViewItem styled(option);
    if (!head) {
        if (index.data(WeekStepsModel::NobodyRole).toBool())
            styled.palette.setColor(QPalette::Text, currentPalette().of(Role::ink2));
        QStyledItemDelegate::paint(painter, styled, index);
        return;
    }
    painter->save();
    if (option.state & QStyle::State_Selected)
        painter->fillRect(option.rect, currentPalette().of(Role::wash));
    const bool first = index.column() == WeekStepsModel::timeColumn;
    painter->setFont(typeFont(first ? TypeRole::strong : TypeRole::text));
    painter->setPen(currentPalette().of(first ? Role::ink : Role::ink2));
    const QRect inside = option.rect.adjusted(grid(2), 0, -grid(2), -grid(1));
    const auto right = index.column() == WeekStepsModel::minutesColumn;
    painter->drawText(inside, (right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignBottom,
                      index.data().toString());
    painter->setPen(QPen(currentPalette().of(Role::edge), hairline));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter->restore();
}

void StepDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    const auto* line = qobject_cast<QLineEdit*>(editor);
    if (line && line->isModified()) return;
    QStyledItemDelegate::setEditorData(editor, index);
}

QSize StepDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    auto size = QStyledItemDelegate::sizeHint(option, index);
    if (index.data(WeekStepsModel::HeadRole).toBool() && index.column() == WeekStepsModel::timeColumn)
        size.setWidth(QFontMetrics(typeFont(TypeRole::strong)).horizontalAdvance(index.data().toString()) +
                      grid(6));
    return size.expandedTo({0, tableRow()});
}

} // namespace withy::ui
