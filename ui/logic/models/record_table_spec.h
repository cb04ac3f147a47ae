// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/edit.h"
#include "core/model/schema.h"
#endif

#include <QString>

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace withy::ui {

/// A column that is worked out and not typed.
struct ComputedColumn {
    QString head;
    std::function<QString(std::int64_t id)> text;
    bool figure = true; ///< stands at the right
    /// Place among the columns; at the end when it is beyond them.
    int at = 1000;
};

/// Which records of a table a list shows, and how.
struct RecordTableSpec {
    model::TableKind kind = model::TableKind::none;
    std::vector<std::string> columns; ///< field names, in order
    /// Only the records whose field has this id; new ones get it too.
    std::optional<std::pair<std::string, std::int64_t>> parent = std::nullopt;
    std::string orderField = {}; ///< "position": rows can be dragged
    std::string sortField = {};  ///< otherwise by this field, or by id when it is empty
    bool addRow = true;          ///< a last, blank row: typing into it makes a record
    std::function<bool(const model::Season&, std::int64_t id)> filter = nullptr;
    std::vector<ComputedColumn> computed = {};
    /// Given to every new record, beside the parent.
    std::vector<std::pair<std::string, model::Value>> given = {};
    bool newestFirst = false; ///< turns the order of sortField
};

} // namespace withy::ui
