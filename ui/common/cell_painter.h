// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QModelIndex>
#include <QStyleOptionViewItem>

class QPainter;

namespace withy::ui {

class RecordTableModel;

/// One cell of a record table: its words, swatch or tick, the hairline below and the ring of the cell in
/// hand. What was refused stands in osier.
void paintCell(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index,
               const RecordTableModel& model);
int cellWidth(const QStyleOptionViewItem& option, const QModelIndex& index);
QRect tickRect(const QStyleOptionViewItem& option);

} // namespace withy::ui
