// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <functional>

class QTableView;

namespace withy::ui {

/// Ctrl+C takes the chosen rows of a list that is only read, with the heads of the columns in view, for a
/// spreadsheet. `said` is told what was done.
void copiesRows(QTableView* view, std::function<void(const QString&)> said);

} // namespace withy::ui
