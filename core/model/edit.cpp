// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/edit.h"

#include "core/model/rules.h"

#include <map>
#include <set>

namespace withy::model {

namespace {

/// What an edit comes to: the last put of each record, and erases that no put takes back.
struct Wanted {
    std::map<Ref, const Record*> puts;
    std::set<Ref> erases;
};

Wanted collect(const Edit& edit) {
    Wanted wanted;
    for (const auto& record : edit.puts())
        wanted.puts[Ref{kindOfRecord(record), idOf(record)}] = &record;
    for (const auto& ref : edit.erases()) {
        if (!wanted.puts.contains(ref)) wanted.erases.insert(ref);
    }
    return wanted;
}

bool sameRecord(const Record& a, const Record& b) {
    const auto& info = tableInfo(kindOfRecord(a));
    const void* left = recordPointer(a);
    const void* right = recordPointer(b);
    return std::all_of(info.fields.begin(), info.fields.end(),
                       [&](const FieldInfo& f) { return f.get(left) == f.get(right); });
}

/// Carries out what really changes, noting it in `done` and the way back in `inverse`.
void carryOut(const Wanted& wanted, Applied& applied) {
    for (const auto& [ref, record] : wanted.puts) {
        const auto old = findRecord(applied.season, ref.table, ref.id);
        if (old && sameRecord(*old, *record)) continue;
        applied.done.put(*record);
        if (old)
            applied.inverse.put(*old);
        else
            applied.inverse.erase(ref);
        putRecord(applied.season, *record);
    }
    for (const auto& ref : wanted.erases) {
        const auto old = findRecord(applied.season, ref.table, ref.id);
        if (!old) continue;
        applied.done.erase(ref);
        applied.inverse.put(*old);
        eraseRecord(applied.season, ref.table, ref.id);
    }
}

/// Who, in `season`, still refers by `field` to records that were erased.
void checkUsers(const Season& season, const std::set<std::int64_t>& erased, const FieldInfo& field,
                const TableInfo& user, std::map<std::int64_t, std::vector<std::string>>& users) {
    forEachRecord(season, user.kind, [&](std::int64_t id, const void* record) {
        const Value v = field.get(record);
        const auto* target = std::get_if<std::int64_t>(&v);
        if (target && erased.contains(*target))
            users[*target].push_back(std::string(user.name) + ": " + nameOf(season, user.kind, id));
    });
}

void checkErased(const Season& before, const Season& after, const Edit& done, Problems& problems) {
    std::map<TableKind, std::set<std::int64_t>> erased;
    for (const auto& ref : done.erases())
        erased[ref.table].insert(ref.id);
    for (const auto& [kind, ids] : erased) {
        std::map<std::int64_t, std::vector<std::string>> users;
        for (const auto& user : allTables()) {
            for (const auto& field : user.fields) {
                if (field.refersTo == kind) checkUsers(after, ids, field, user, users);
            }
        }
        for (auto& [id, who] : users) {
            problems.push_back({ProblemCode::inUse, std::string(tableInfo(kind).name), id, "id",
                                nameOf(before, kind, id), std::move(who)});
        }
    }
}

void checkOne(const RuleContext& context, TableKind kind, std::int64_t id, const void* record,
              Problems& problems) {
    const auto& info = tableInfo(kind);
    const auto before = problems.size();
    checkFields(info, id, record, problems);
    checkReferences(context.season, info, id, record, problems);
    // Rules read the fields together, so they only speak when each field is right by itself.
    if (problems.size() == before) checkRules(context, kind, id, record, problems);
}

Problems judge(const Season& before, const Applied& applied) {
    Problems problems;
    const RuleContext context = contextOf(applied.season);
    std::set<TableKind> touched;
    for (const auto& record : applied.done.puts()) {
        const auto kind = kindOfRecord(record);
        touched.insert(kind);
        checkOne(context, kind, idOf(record), recordPointer(record), problems);
    }
    for (const auto kind : touched)
        checkUnique(applied.season, tableInfo(kind), problems);
    checkErased(before, applied.season, applied.done, problems);
    const bool settingsTouched = !sameRows(before, applied.season, TableKind::settings);
    if (problems.empty() && (settingsTouched || applied.season.settings.empty()))
        checkSeason(context, problems);
    return problems;
}

} // namespace

Edit::Edit() = default;

Edit::Edit(EditName name) : name_(std::move(name)) {}

Edit::Edit(std::string key, std::vector<std::string> args) : name_{std::move(key), std::move(args)} {}

Edit::Edit(const Edit& other) = default;
Edit::Edit(Edit&& other) noexcept = default;
Edit& Edit::operator=(const Edit& other) = default;
Edit& Edit::operator=(Edit&& other) noexcept = default;
Edit::~Edit() = default;

Edit& Edit::put(Record record) {
    puts_.push_back(std::move(record));
    return *this;
}

template <class R>
Edit& Edit::put(R record) {
    return put(Record(std::move(record)));
}

#define X(Type, member) template Edit& Edit::put<Type>(Type record);
WITHY_RECORDS(X)
#undef X

Edit& Edit::erase(Ref ref) {
    erases_.push_back(ref);
    return *this;
}

Result<Applied, Problems> apply(const Season& season, const Edit& edit) {
    Applied applied{season, Edit(edit.name()), Edit(edit.name())};
    carryOut(collect(edit), applied);
    if (applied.done.empty()) return applied;
    auto problems = judge(season, applied);
    if (!problems.empty()) return problems;
    return applied;
}

Problems check(const Season& season) {
    Problems problems;
    const RuleContext context = contextOf(season);
    for (const auto& info : allTables()) {
        forEachRecord(season, info.kind, [&](std::int64_t id, const void* record) {
            checkOne(context, info.kind, id, record, problems);
        });
        checkUnique(season, info, problems);
    }
    if (season.settings.empty()) checkSeason(context, problems);
    return problems;
}

} // namespace withy::model
