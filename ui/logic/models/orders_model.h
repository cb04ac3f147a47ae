// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/plan/plan.h"
#include "core/review/orders.h"
#endif

#include <QAbstractTableModel>

#include <vector>

namespace withy::ui {

/// All bookings as orders, with their sum as the last row whatever they are sorted by. Lost ones are
/// shown, and not in the sum.
class OrdersModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { date, title, kind, standing, pieces, stems, asked, owed, given, columns };

    enum Role { BookingRole = Qt::UserRole + 1, SumRole, LostRole };

    using QAbstractTableModel::QAbstractTableModel;

    void show(const model::Season& season, const plan::Plan& plan);

    [[nodiscard]] const review::Orders& orders() const { return orders_; }

    [[nodiscard]] bool isSum(int row) const { return row >= 0 && row == static_cast<int>(rows_.size()); }

    /// The row of a booking; -1 when it is not there.
    [[nodiscard]] int rowOf(Id<model::Booking> booking) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    void sort(int column, Qt::SortOrder order) override;

private:
    struct Row {
        const model::Booking* booking; ///< lives in season_
        review::OrderRow order;
    };

    [[nodiscard]] QString cell(const Row* row, const review::OrderRow& order, int column) const;
    [[nodiscard]] bool before(const Row& a, const Row& b) const;
    void sortRows();

    model::Season season_; ///< as shown; shares its rows with the workbench
    review::Orders orders_;
    std::vector<Row> rows_;
    int sortColumn_ = date;
    Qt::SortOrder sortOrder_ = Qt::AscendingOrder;
};

} // namespace withy::ui
