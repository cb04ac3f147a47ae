// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_import.h"

#include "core/exchange/cell.h"
#include "core/exchange/table_csv.h"
#include "core/exchange/utf8.h"

#include <algorithm>

namespace withy::exchange {

using model::FieldInfo;
using model::FieldKind;
using model::TableKind;
using model::Value;

namespace {

/// No default would be right for these.
bool mustBeGiven(const FieldInfo& field) {
    if (field.optional) return false;
    switch (field.kind) {
    case FieldKind::reference:
    case FieldKind::day:
    case FieldKind::localTime:
    case FieldKind::colour:
        return true;
    default:
        return field.required;
    }
}

bool isBlankCell(const FieldInfo& field, std::string_view text) {
    return field.kind == FieldKind::text ? text.empty() : trimmed(text).empty();
}

int digitsOf(const model::Settings& settings) {
    return minorDigits(settings.currency).value_or(2);
}

} // namespace

TableImport::TableImport(const model::Season& season, TableKind kind)
    : season_(season)
    , info_(model::tableInfo(kind))
    , names_(season)
    , moneyDigits_(digitsOf(season.theSettings())) {}

Problem& TableImport::say(ProblemCode code, const CsvField& cell, std::string_view field, std::int64_t id,
                          std::vector<std::string> details) {
    Problem& p = problems_.emplace_back();
    p.code = code;
    p.table = info_.name;
    p.record = id;
    p.field = field;
    p.value = clipped(cell.text);
    p.details = std::move(details);
    p.line = cell.line;
    p.column = cell.column;
    return p;
}

void TableImport::readColumn(const CsvField& cell, std::set<std::string>& seen) {
    const std::string name = folded(trimmed(cell.text));
    const FieldInfo* field = info_.field(name);
    const std::size_t index = static_cast<std::size_t>(cell.column) - 1;
    if (!field && name != "id") {
        std::vector<std::string> known{"id"};
        for (const auto& f : info_.fields)
            known.emplace_back(f.name);
        say(ProblemCode::unknownColumn, cell, "", 0, std::move(known));
    } else if (!seen.insert(name).second) {
        const std::size_t first = field ? columnOf_[field->name] : *idColumn_;
        say(ProblemCode::repeatedColumn, cell, name, 0, {std::to_string(first + 1)});
    } else if (field) {
        columnOf_[field->name] = index;
    } else {
        idColumn_ = index;
    }
}

void TableImport::readHeader() {
    std::set<std::string> seen;
    for (const CsvField& cell : rows_.front().fields)
        readColumn(cell, seen);
}

void TableImport::checkGivenId(const CsvRow& row, const CsvField& cell) {
    const bool settings = info_.kind == TableKind::settings;
    const auto blank = trimmed(cell.text).empty();
    const auto id = blank && settings ? std::optional<std::int64_t>(1) : readId(trimmed(cell.text));
    ids_.push_back(id.value_or(blank ? 0 : -1));
    if (blank && !settings) return;
    if (!id || (settings && *id != 1)) {
        say(ProblemCode::badId, cell, "id");
        return;
    }
    const auto [at, fresh] = rowOf_.emplace(*id, static_cast<std::size_t>(&row - rows_.data()));
    if (!fresh)
        say(ProblemCode::duplicate, cell, "id", *id,
            {std::to_string(*id), std::to_string(rows_[at->second].line)});
}

void TableImport::readIds() {
    for (std::size_t i = 1; i < rows_.size(); ++i) {
        const CsvField none{{}, rows_[i].line, 0};
        checkGivenId(rows_[i], idColumn_ ? rows_[i].fields[*idColumn_] : none);
    }
}

void TableImport::giveIds() {
    std::int64_t next = model::nextIdOf(season_, info_.kind);
    for (std::size_t i = 0; i < ids_.size(); ++i) {
        if (ids_[i] != 0) continue;
        while (!rowOf_.emplace(next, i + 1).second)
            ++next;
        ids_[i] = next;
    }
}

void TableImport::checkNeededColumns() {
    const bool makesRecords = std::find(ids_.begin(), ids_.end(), 0) != ids_.end() ||
                              std::any_of(rowOf_.begin(), rowOf_.end(), [&](const auto& given) {
                                  return !model::hasRecord(season_, info_.kind, given.first);
                              });
    if (!makesRecords) return;
    const CsvField header{{}, rows_.front().line, 0};
    for (const FieldInfo& field : info_.fields) {
        if (mustBeGiven(field) && !columnOf_.contains(field.name))
            say(ProblemCode::missingColumn, header, field.name);
    }
}

void TableImport::setReference(const FieldInfo& field, const CsvField& cell, void* record, std::int64_t id) {
    const std::string_view text = trimmed(cell.text);
    const std::string table(model::tableInfo(field.refersTo).name);
    if (text.find_first_not_of("0123456789") == std::string_view::npos) {
        const auto target = readId(text);
        if (target && model::hasRecord(season_, field.refersTo, *target))
            field.set(record, *target);
        else
            say(ProblemCode::unknownRecord, cell, field.name, id, {table});
        return;
    }
    const auto& found = names_.find(field.refersTo, text);
    if (found.size() == 1) {
        field.set(record, found.front());
        return;
    }
    Problem& p = say(found.empty() ? ProblemCode::unknownRecord : ProblemCode::ambiguousName, cell,
                     field.name, id, {table});
    for (std::size_t i = 0; i < found.size() && i < 5; ++i)
        p.details.push_back(std::to_string(found[i]));
}

void TableImport::setCell(const FieldInfo& field, const CsvField& cell, void* record, std::int64_t id) {
    const auto value = readCell(field, cell.text, moneyDigits_);
    if (!value)
        say(value.error().code, cell, field.name, id, value.error().details);
    else
        field.set(record, *value);
}

void TableImport::readField(const FieldInfo& field, const CsvField& cell, const void* fresh, void* record,
                            std::int64_t id) {
    if (!isBlankCell(field, cell.text)) {
        if (field.kind == FieldKind::reference)
            setReference(field, cell, record, id);
        else
            setCell(field, cell, record, id);
    } else if (mustBeGiven(field)) {
        say(ProblemCode::required, cell, field.name, id);
    } else {
        field.set(record, field.optional ? Value{} : field.get(fresh));
    }
}

model::Record TableImport::readRow(const CsvRow& row, std::int64_t id) {
    const model::Record fresh = model::emptyRecord(info_.kind, id);
    model::Record record = model::findRecord(season_, info_.kind, id).value_or(fresh);
    // In the table's order and not the file's: the currency is read before the amounts in it.
    for (const FieldInfo& field : info_.fields) {
        const auto column = columnOf_.find(field.name);
        if (const auto* settings = std::get_if<model::Settings>(&record)) moneyDigits_ = digitsOf(*settings);
        if (column == columnOf_.end()) continue;
        readField(field, row.fields[column->second], model::recordPointer(fresh),
                  model::recordPointer(record), id);
    }
    return record;
}

Result<model::Edit, Problems> TableImport::read(std::string_view csv) {
    auto parsed = parseCsv(csv);
    if (!parsed) {
        problems_ = parsed.error();
        for (Problem& p : problems_)
            p.table = info_.name;
        return std::move(problems_);
    }
    rows_ = std::move(parsed).value();
    readHeader();
    readIds();
    checkNeededColumns();
    if (!problems_.empty()) return std::move(problems_);
    giveIds();
    model::Edit edit("import", {std::string(info_.name), std::to_string(ids_.size())});
    for (std::size_t i = 0; i < ids_.size(); ++i)
        edit.put(readRow(rows_[i + 1], ids_[i]));
    if (!problems_.empty()) return std::move(problems_);
    return edit;
}

void TableImport::place(Problem& problem) const {
    const auto row = rowOf_.find(problem.record);
    if (problem.table != info_.name || row == rowOf_.end()) return;
    const CsvRow& cells = rows_[row->second];
    problem.line = cells.line;
    const auto column = columnOf_.find(problem.field);
    if (column == columnOf_.end()) {
        if (problem.field == "id" && idColumn_) problem.column = static_cast<int>(*idColumn_) + 1;
        return;
    }
    const CsvField& cell = cells.fields[column->second];
    problem.line = cell.line;
    problem.column = cell.column;
    problem.value = clipped(cell.text);
    const bool limit = problem.code == ProblemCode::belowLeast || problem.code == ProblemCode::aboveMost;
    const FieldInfo& field = *info_.field(problem.field);
    if (!limit || field.kind != FieldKind::money || problem.details.empty()) return;
    const double bound = problem.code == ProblemCode::belowLeast ? field.least : field.most;
    problem.details.front() = limitText(field, bound, moneyDigits_);
}

Result<model::Edit, Problems> importTable(const model::Season& season, TableKind kind, std::string_view csv) {
    return TableImport(season, kind).read(csv);
}

Result<model::Edit, Problems> importInto(const model::Season& season, TableKind kind, std::string_view csv) {
    TableImport reading(season, kind);
    auto edit = reading.read(csv);
    if (!edit) return edit;
    const auto applied = model::apply(season, *edit);
    if (applied) return edit;
    Problems problems = applied.error();
    for (Problem& problem : problems)
        reading.place(problem);
    return problems;
}

} // namespace withy::exchange
