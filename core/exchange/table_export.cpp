// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cell.h"
#include "core/exchange/csv.h"
#include "core/exchange/table_csv.h"
#include "core/model/schema.h"

namespace withy::exchange {

std::string exportTable(const model::Season& season, model::TableKind kind) {
    const model::TableInfo& info = model::tableInfo(kind);
    const int moneyDigits = minorDigits(season.theSettings().currency).value_or(2);
    std::vector<std::string> row{"id"};
    for (const auto& field : info.fields)
        row.emplace_back(field.name);
    std::string out = csvRow(row);
    model::forEachRecord(season, kind, [&](std::int64_t id, const void* record) {
        row = {std::to_string(id)};
        for (const auto& field : info.fields)
            row.push_back(cellText(field, field.get(record), moneyDigits));
        out += csvRow(row);
    });
    return out;
}

} // namespace withy::exchange
