// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractItemModel>

#include <vector>

namespace withy::ui {

/// Rows and columns of a table as a spreadsheet takes them: tabs between, cells as shown, the columns' heads
/// first. A tab or a new line within a cell is a blank; a cell that is ticked and has no words says so.
QString rowsAsText(const QAbstractItemModel& model, const std::vector<int>& rows,
                   const std::vector<int>& columns);
/// "3 rows copied; paste them into a spreadsheet."
QString rowsCopiedWords(int rows);

} // namespace withy::ui
