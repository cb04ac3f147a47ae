// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QModelIndex>
#include <QStyleOptionViewItem>

class QPainter;

namespace withy::ui {

class RecordTableModel;

/// One cell of a record table: its words, swatch or tick, the hairline below and the ring of the cell in
/// hand. What was refused stands in osier, and so does what `asks`.
void paintCell(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index,
               const RecordTableModel& model, bool asks = false);
/// The words of a cell as they are drawn: a day within the season needs no year.
QString shownWords(const QModelIndex& index, const RecordTableModel& model);
/// What one line of a cell's words takes, with the air at its sides.
int wordsWidth(const QString& words);
int cellWidth(const QModelIndex& index, const RecordTableModel& model);
QRect tickRect(const QStyleOptionViewItem& option);

} // namespace withy::ui
