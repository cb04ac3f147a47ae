// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/base/day.h"
#endif

#include <QHeaderView>
#include <QStyledItemDelegate>

#include <optional>

namespace withy::ui {

/// The days the curves are drawn over, shared by all rows.
struct ForecastAxis {
    Day from;
    Day to;
    std::optional<Day> today;

    [[nodiscard]] double x(double left, double width, double day) const {
        return left + width * (day - from.number) / std::max(1, to - from);
    }
};

/// Paints the garden's forecast: each patch with its curve on one axis of days. A usual year is a dotted
/// ghost, the likely a line, cautious to hopeful a band in the plant's colour, a walk a dot, today osier.
class ForecastDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void setAxis(const ForecastAxis& axis) { axis_ = axis; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

private:
    ForecastAxis axis_;
};

/// Heads of the columns, with the days over the curves.
class ForecastHeads : public QHeaderView {
    Q_OBJECT

public:
    explicit ForecastHeads(QWidget* parent);
    void setAxis(const ForecastAxis& axis);

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;

private:
    ForecastAxis axis_;
};

} // namespace withy::ui
