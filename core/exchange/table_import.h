// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv.h"
#include "core/exchange/name_index.h"
#include "core/model/edit.h"
#include "core/model/schema.h"

#include <map>
#include <set>

/// How a table's CSV becomes records; behind importTable and importInto.
namespace withy::exchange {

/// One reading of one file. Season and text must outlive it.
class TableImport {
public:
    TableImport(const model::Season& season, model::TableKind kind);

    /// Call once.
    Result<model::Edit, Problems> read(std::string_view csv);

    /// Adds line, column and typed value to a problem about a record that was read.
    void place(Problem& problem) const;

private:
    void readHeader();
    void readColumn(const CsvField& cell, std::set<std::string>& seen);
    void readIds();
    void checkGivenId(const CsvRow& row, const CsvField& cell);
    void giveIds();
    void checkNeededColumns();
    model::Record readRow(const CsvRow& row, std::int64_t id);
    void readField(const model::FieldInfo& field, const CsvField& cell, const void* fresh, void* record,
                   std::int64_t id);
    void setCell(const model::FieldInfo& field, const CsvField& cell, void* record, std::int64_t id);
    void setReference(const model::FieldInfo& field, const CsvField& cell, void* record, std::int64_t id);
    Problem& say(ProblemCode code, const CsvField& cell, std::string_view field, std::int64_t id = 0,
                 std::vector<std::string> details = {});

    const model::Season& season_;
    const model::TableInfo& info_;
    NameIndex names_;
    int moneyDigits_; ///< of the season's currency; of the row's own in the settings
    CsvRows rows_;
    Problems problems_;
    std::optional<std::size_t> idColumn_;
    std::map<std::string_view, std::size_t> columnOf_; ///< field to index in a row
    std::vector<std::int64_t> ids_;             ///< of each row after the header; 0: none yet, -1: not an id
    std::map<std::int64_t, std::size_t> rowOf_; ///< id to index in rows_
};

} // namespace withy::exchange
