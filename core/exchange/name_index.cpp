// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/name_index.h"

#include "core/exchange/utf8.h"

namespace withy::exchange {

const NameIndex::Ids& NameIndex::idsOf(model::TableKind kind) {
    const auto known = tables_.find(kind);
    if (known != tables_.end()) return known->second;
    Ids& ids = tables_[kind];
    const auto& info = model::tableInfo(kind);
    if (info.nameField.empty()) return ids;
    const model::FieldInfo& field = *info.field(info.nameField);
    model::forEachRecord(season_, kind, [&](std::int64_t id, const void* record) {
        const model::Value name = field.get(record);
        if (const auto* text = std::get_if<std::string>(&name)) ids[folded(trimmed(*text))].push_back(id);
    });
    return ids;
}

const std::vector<std::int64_t>& NameIndex::find(model::TableKind kind, std::string_view name) {
    static const std::vector<std::int64_t> none;
    const Ids& ids = idsOf(kind);
    const auto at = ids.find(folded(trimmed(name)));
    return at == ids.end() ? none : at->second;
}

} // namespace withy::exchange
