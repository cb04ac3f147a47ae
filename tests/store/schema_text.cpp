// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/store/schema_text.h"

#include "core/model/schema.h"

namespace withy::test {

using model::FieldInfo;
using model::FieldKind;

namespace {

std::string quoted(std::string_view name) {
    return '"' + std::string(name) + '"';
}

std::string typeOf(FieldKind kind) {
    switch (kind) {
    case FieldKind::whole:
    case FieldKind::yesNo:
    case FieldKind::money:
    case FieldKind::reference:
        return "INTEGER";
    case FieldKind::real:
        return "REAL";
    default:
        return "TEXT";
    }
}

std::string columnText(const FieldInfo& field) {
    std::string text = "    " + quoted(field.name) + " " + typeOf(field.kind);
    if (!field.optional) text += " NOT NULL";
    if (field.kind == FieldKind::yesNo) text += " CHECK (" + quoted(field.name) + " IN (0, 1))";
    if (field.kind == FieldKind::reference)
        text += " REFERENCES " + quoted(model::tableInfo(field.refersTo).name) +
                " (\"id\") DEFERRABLE INITIALLY DEFERRED";
    return text;
}

} // namespace

std::string schemaText() {
    std::string text =
        "-- SPDX-License-Identifier: GPL-3.0-or-later\n"
        "-- Version 1 of the season file: one table per record, one column per field.\n"
        "-- Words, days (YYYY-MM-DD), times (YYYY-MM-DDTHH:MM) and colours (#rrggbb) are TEXT,\n"
        "-- money is in the currency's smallest unit, NULL is blank and never nought.\n";
    for (const auto& table : model::allTables()) {
        text += "\nCREATE TABLE " + quoted(table.name) + " (\n    \"id\" INTEGER PRIMARY KEY";
        for (const auto& field : table.fields)
            text += ",\n" + columnText(field);
        text += "\n) STRICT;\n";
    }
    return text;
}

} // namespace withy::test
