// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace withy::ui {

/// Draws a row of the list of bookings: mark, name, what and when, state. In the narrow list only the mark
/// and the day of the month.
class BookingDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void setNarrow(bool narrow) { narrow_ = narrow; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paintHead(QPainter& p, const QRect& row, const QModelIndex& index) const;
    void paintBooking(QPainter& p, const QStyleOptionViewItem& option, const QModelIndex& index) const;
    void paintNarrow(QPainter& p, const QRect& row, const QModelIndex& index) const;

    bool narrow_ = false;
};

} // namespace withy::ui
