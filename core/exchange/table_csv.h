// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/result.h"
#include "core/model/edit.h"
#include "core/model/season.h"

#include <string>
#include <string_view>

/// Tables of the season as CSV: a header with `id` and the names of the fields, then the records.
namespace withy::exchange {

/// The whole table, in order of id. Cells as cellText() writes them (core/exchange/cell.h); money in
/// the season's currency; references as ids. Text is kept as it was typed, formula signs and all.
std::string exportTable(const model::Season& season, model::TableKind kind);

/// Reads a table into one edit named "import" with the table's name and the number of rows: all rows
/// or none. Nothing is validated beyond what can be read; see importInto.
///
/// Columns may stand in any order. A row whose `id` is in the season changes that record, and fields
/// without a column stay as they are; any other row makes a record, with the next free id where the
/// cell is blank or there is no such column. A blank cell blanks an optional field, is `required`
/// where a field must be given (needed text, a reference, day, time or colour), and else stands for
/// the default. A reference is an id (any cell of digits), or a name without regard to case.
/// Settings are the one record with id 1, and their money is read in the currency of that row.
///
/// Problems bear line and column: those of parseCsv; unknownColumn (details: the columns there are),
/// repeatedColumn (detail: the first such column), missingColumn (column 0; only when a row makes a
/// record); badId, duplicate (details: the id, the line of the other row); those of readCell; unknownRecord
/// (detail: table) and ambiguousName (details: table, then up to five of the ids).
Result<model::Edit, Problems> importTable(const model::Season& season, model::TableKind kind,
                                          std::string_view csv);

/// importTable, and then judged by model::apply: its problems come back with the line and column of the
/// row and field they are about (column 0 when the file has no such column, line 0 when they are about
/// another record). Values and money limits in them are as they stand in the file.
Result<model::Edit, Problems> importInto(const model::Season& season, model::TableKind kind,
                                         std::string_view csv);

} // namespace withy::exchange
