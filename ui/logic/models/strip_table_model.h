// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/bloom_strip_model.h"

#include <QAbstractTableModel>

namespace withy::ui {

/// The bloom strip as a table: a row for each week, by its Monday, a column for each plant, then
/// foliage and all together; stems standing ready on that Monday, at the likely level.
class StripTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void setFigures(StripFigures figures);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

    /// For a spreadsheet: tabs between the columns, heads included.
    [[nodiscard]] QString asText() const;

private:
    [[nodiscard]] int mondayAt(int row) const; ///< from the figures' first day
    [[nodiscard]] std::int64_t stems(int row, int column) const;

    StripFigures figures_;
};

} // namespace withy::ui
