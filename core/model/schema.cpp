// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/schema.h"

#include "core/model/describe.h"

#include <cassert>

namespace withy::model {

namespace {

std::vector<TableInfo> describeAll() {
    std::vector<TableInfo> all;
    for (auto part : {describeSettings(), describeGarden(), describeShed(), describeDesigns(),
                      describeBookings(), describeRunup()}) {
        all.insert(all.end(), part.begin(), part.end());
    }
    assert(all.size() == tableCount);
    for (std::size_t i = 0; i < all.size(); ++i)
        assert(static_cast<std::size_t>(all[i].kind) == i);
    return all;
}

const void* pointerTo(const Season& season, TableKind kind, std::int64_t id, std::optional<Record>& keep) {
    keep = findRecord(season, kind, id);
    return keep ? recordPointer(*keep) : nullptr;
}

} // namespace

const FieldInfo* TableInfo::field(std::string_view fieldName) const {
    for (const auto& f : fields) {
        if (f.name == fieldName) return &f;
    }
    return nullptr;
}

const std::vector<TableInfo>& allTables() {
    static const std::vector<TableInfo> all = describeAll();
    return all;
}

const TableInfo& tableInfo(TableKind kind) {
    return allTables().at(static_cast<std::size_t>(kind));
}

const TableInfo* tableNamed(std::string_view name) {
    for (const auto& t : allTables()) {
        if (t.name == name) return &t;
    }
    return nullptr;
}

std::string nameOf(const Season& season, TableKind kind, std::int64_t id) {
    const TableInfo& info = tableInfo(kind);
    std::optional<Record> keep;
    const void* record = pointerTo(season, kind, id, keep);
    if (record && !info.nameField.empty()) {
        const Value v = info.field(info.nameField)->get(record);
        if (const auto* text = std::get_if<std::string>(&v); text && !text->empty()) return *text;
    }
    return std::string(info.name) + " " + std::to_string(id);
}

} // namespace withy::model
