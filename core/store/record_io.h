// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"
#include "core/model/schema.h"
#include "core/store/connection.h"

#include <map>

namespace withy::store {

/// A field's value as SQLite takes it. Blank becomes NULL, an empty text stays a text.
QVariant toVariant(const model::Value& value);

/// Puts and erases whole records; each table's statements are prepared once and kept.
/// The caller holds the transaction.
class RecordWriter {
public:
    explicit RecordWriter(Connection& connection) : connection_(connection) {}

    void put(const model::Record& record);
    void put(const model::TableInfo& table, std::int64_t id, const void* record);
    void erase(model::Ref ref);
    void putAll(const model::Season& season);

private:
    using Prepared = std::map<model::TableKind, QSqlQuery>;
    QSqlQuery& prepared(Prepared& among, const model::TableInfo& table,
                        QString (*sqlFor)(const model::TableInfo&));

    Connection& connection_;
    Prepared puts_;
    Prepared erases_;
};

/// Every record of the file. Values that the model cannot read (a date that is none, a word not in
/// its list) are told in `problems` and left at the field's default.
model::Season readSeason(Connection& connection, Problems& problems);

} // namespace withy::store
