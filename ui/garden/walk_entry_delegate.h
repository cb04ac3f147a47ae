// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace withy::ui {

/// Paints the sheet of a walk: patch numbers strung on the walk, three boxes with what was expected beside
/// them (a blank is a dashed box), the remark with what is odd below it.
class WalkEntryDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

    /// The box to write in, within a cell.
    static QRect boxIn(const QRect& cell);
};

/// Height of a row of the sheet.
int walkRowHeight();

} // namespace withy::ui
