// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/rules.h"

#include "core/model/text_check.h"

#include <cmath>
#include <cstdio>
#include <unordered_map>

namespace withy::model {

namespace {

std::string plain(double v) {
    char text[40];
    std::snprintf(text, sizeof text, "%.15g", v);
    return text;
}

/// Shortens what was typed, so that a complaint about 10,000 characters is not 10,000 characters long.
std::string shown(const std::string& text) {
    constexpr std::size_t most = 60;
    if (text.size() <= most) return text;
    std::size_t cut = most;
    while (cut > 0 && (static_cast<unsigned char>(text[cut]) & 0xC0u) == 0x80u)
        --cut;
    return text.substr(0, cut) + "...";
}

/// Where a value stands; made into a Problem only once something is wrong with it, since opening a season
/// looks at every field of every record.
struct Where {
    const TableInfo& table;
    const FieldInfo& field;
    std::int64_t id;

    [[nodiscard]] Problem problem(ProblemCode code, std::string value,
                                  std::vector<std::string> details = {}) const {
        return {
            code, std::string(table.name), id, std::string(field.name), std::move(value), std::move(details)};
    }
};

void checkNumber(const Where& where, double v, Problems& problems) {
    const auto& f = where.field;
    if (!std::isfinite(v))
        problems.push_back(where.problem(ProblemCode::notANumber, plain(v)));
    else if (v < f.least)
        problems.push_back(
            where.problem(ProblemCode::belowLeast, plain(v), {plain(f.least), std::string(f.unit)}));
    else if (v > f.most)
        problems.push_back(
            where.problem(ProblemCode::aboveMost, plain(v), {plain(f.most), std::string(f.unit)}));
}

void checkText(const Where& where, const std::string& v, Problems& problems) {
    const auto& f = where.field;
    const auto length = charactersIn(v);
    if (!length)
        problems.push_back(where.problem(ProblemCode::notText, {}));
    else if (f.required && v.find_first_not_of(" \t\r\n") == std::string::npos)
        problems.push_back(where.problem(ProblemCode::required, shown(v)));
    else if (*length > f.longest)
        problems.push_back(where.problem(ProblemCode::tooLong, shown(v),
                                         {std::to_string(f.longest), std::to_string(*length)}));
}

std::string keyOf(const std::vector<const FieldInfo*>& fields, const void* record) {
    std::string key;
    for (const auto* f : fields) {
        const Value v = f->get(record);
        if (const auto* text = std::get_if<std::string>(&v))
            key += *text;
        else if (const auto* whole = std::get_if<std::int64_t>(&v))
            key += std::to_string(*whole);
        key += '\x1f';
    }
    return key;
}

} // namespace

void checkFields(const TableInfo& table, std::int64_t id, const void* record, Problems& problems) {
    if (id <= 0 || id > mostId) {
        problems.push_back({ProblemCode::badId, std::string(table.name), id, "id", std::to_string(id), {}});
    }
    for (const auto& f : table.fields) {
        const Value v = f.get(record);
        const Where where{table, f, id};
        if (const auto* whole = std::get_if<std::int64_t>(&v); whole && f.kind != FieldKind::reference)
            checkNumber(where, static_cast<double>(*whole), problems);
        else if (const auto* real = std::get_if<double>(&v))
            checkNumber(where, *real, problems);
        else if (const auto* text = std::get_if<std::string>(&v); text && f.kind == FieldKind::text)
            checkText(where, *text, problems);
    }
}

void checkReferences(const Season& season, const TableInfo& table, std::int64_t id, const void* record,
                     Problems& problems) {
    for (const auto& f : table.fields) {
        if (f.refersTo == TableKind::none) continue;
        const Value v = f.get(record);
        const auto* target = std::get_if<std::int64_t>(&v);
        if (!target || hasRecord(season, f.refersTo, *target)) continue;
        problems.push_back({*target == 0 ? ProblemCode::required : ProblemCode::unknownRecord,
                            std::string(table.name),
                            id,
                            std::string(f.name),
                            std::to_string(*target),
                            {std::string(tableInfo(f.refersTo).name)}});
    }
}

void checkUnique(const Season& season, const TableInfo& table, Problems& problems) {
    if (table.unique.empty()) return;
    std::vector<const FieldInfo*> fields;
    for (const auto name : table.unique)
        fields.push_back(table.field(name));
    std::unordered_map<std::string, std::int64_t> seen;
    forEachRecord(season, table.kind, [&](std::int64_t id, const void* record) {
        const auto [first, fresh] = seen.emplace(keyOf(fields, record), id);
        if (fresh) return;
        const Value v = fields.back()->get(record);
        const auto* text = std::get_if<std::string>(&v);
        const auto* whole = std::get_if<std::int64_t>(&v);
        const auto refers = fields.back()->refersTo;
        problems.push_back({ProblemCode::duplicate,
                            std::string(table.name),
                            id,
                            std::string(fields.back()->name),
                            text                        ? shown(*text)
                            : refers != TableKind::none ? nameOf(season, refers, *whole)
                                                        : std::to_string(*whole),
                            {std::to_string(first->second)}});
    });
}

} // namespace withy::model
