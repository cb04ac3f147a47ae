// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/model/season.h"

#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// The model described as data, once: validation, the season file, CSV, JSON and the history of edits
/// are written against this and not against each record type.
namespace withy::model {

/// A field's value in the four shapes that files know. Blank is not nought.
using Value = std::variant<std::monostate, std::int64_t, double, std::string>;

inline bool isBlank(const Value& v) {
    return std::holds_alternative<std::monostate>(v);
}

enum class FieldKind {
    whole,     ///< int64 in Value
    real,      ///< double
    text,      ///< string, UTF-8
    yesNo,     ///< int64 0 or 1
    word,      ///< string, one of `words`
    day,       ///< string YYYY-MM-DD
    localTime, ///< string YYYY-MM-DDTHH:MM
    colour,    ///< string #rrggbb
    money,     ///< int64 minor units
    reference, ///< int64 id in `refersTo`
};

struct FieldInfo {
    std::string_view name;
    FieldKind kind = FieldKind::text;
    bool optional = false; ///< may be blank
    double least = std::numeric_limits<double>::lowest();
    double most = std::numeric_limits<double>::max();
    std::size_t longest = 200; ///< characters, for text
    bool required = false;     ///< text that may not be empty
    TableKind refersTo = TableKind::none;
    std::span<const std::string_view> words;
    std::string_view unit; ///< "mm", "C", "days" ... empty when it has none

    std::function<Value(const void*)> get;
    /// Precondition: the value has the shape of `kind`. False when a word, day, time or colour
    /// cannot be read; the record is then unchanged.
    std::function<bool(void*, const Value&)> set;
};

struct TableInfo {
    TableKind kind = TableKind::none;
    std::string_view name;      ///< in files and on the command line: "plant_fact"
    std::string_view nameField; ///< the field people know a record by; empty when it has none
    std::vector<FieldInfo> fields;
    std::vector<std::string_view> unique; ///< no two records are alike in all of these; may be empty

    [[nodiscard]] const FieldInfo* field(std::string_view fieldName) const;
};

/// All tables in file order.
const std::vector<TableInfo>& allTables();
const TableInfo& tableInfo(TableKind kind);
/// Null when no table has this name.
const TableInfo* tableNamed(std::string_view name);

/// What people call the record ("Zinnia, coral"); its id in words when it has no name.
std::string nameOf(const Season& season, TableKind kind, std::int64_t id);

} // namespace withy::model
