// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"
#include "core/model/season.h"
#include "core/plan/plan.h"

#include <QString>

#include <optional>

/// Tables of the season as CSV files on disk.
namespace withy::ui {

/// Writes the table; the sentence that says why not, or an empty text. An older file of the name is only
/// replaced when the new one is whole.
QString writeTable(const model::Season& season, model::TableKind kind, const QString& path);

/// The season's orders (core/exchange/orders_csv.h).
QString writeOrders(const model::Season& season, const plan::Plan& plan, const QString& path);

/// "Written to /home/nan/orders.csv."
QString writtenWords(const QString& path);

/// What a file would change: all rows or none.
struct TableReading {
    std::optional<model::Edit> edit;
    QString sentence; ///< "12 rows would be added, 3 changed", or why it cannot be taken, by line
};

/// Reads the file without changing anything.
TableReading readTable(const model::Season& season, model::TableKind kind, const QString& path);
/// The same for the text itself.
TableReading readTableText(const model::Season& season, model::TableKind kind, const std::string& csv);

inline constexpr qint64 mostCsvBytes = 64 * 1024 * 1024; ///< larger files are refused

} // namespace withy::ui
