// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/season.h"

#include <cassert>
#include <stdexcept>

namespace withy::model {

namespace {

/// Calls f with the table of `kind`; the one switch behind every by-kind function.
template <class SeasonRef, class F>
auto withTable(SeasonRef& season, TableKind kind, F f) {
    switch (kind) {
#define X(Type, member)                                                                                      \
    case TableKind::member:                                                                                  \
        return f(season.member);
        WITHY_RECORDS(X)
#undef X
    case TableKind::none:
        break;
    }
    throw std::logic_error("no such table");
}

template <class R>
R typeOfTable(const Table<R>&);

} // namespace

Season::Season() = default;
Season::Season(const Season& other) = default;
Season::Season(Season&& other) noexcept = default;
Season& Season::operator=(const Season& other) = default;
Season& Season::operator=(Season&& other) noexcept = default;
Season::~Season() = default;

const Settings& Season::theSettings() const {
    static const Settings defaults;
    const Settings* s = settings.find(Id<Settings>(1));
    return s ? *s : defaults;
}

std::size_t sizeOf(const Season& season, TableKind kind) {
    return withTable(season, kind, [](const auto& t) { return t.size(); });
}

std::optional<Record> findRecord(const Season& season, TableKind kind, std::int64_t id) {
    return withTable(season, kind, [&](const auto& t) -> std::optional<Record> {
        using R = decltype(typeOfTable(t));
        const R* r = t.find(Id<R>(id));
        return r ? std::optional<Record>(*r) : std::nullopt;
    });
}

bool hasRecord(const Season& season, TableKind kind, std::int64_t id) {
    return withTable(season, kind,
                     [&](const auto& t) { return t.find(Id<decltype(typeOfTable(t))>(id)) != nullptr; });
}

std::int64_t nextIdOf(const Season& season, TableKind kind) {
    return withTable(season, kind, [](const auto& t) { return t.nextId().value; });
}

void forEachRecord(const Season& season, TableKind kind,
                   const std::function<void(std::int64_t, const void*)>& visit) {
    withTable(season, kind, [&](const auto& t) {
        for (const auto& record : t)
            visit(record.id.value, &record);
    });
}

void putRecord(Season& season, const Record& record) {
    std::visit(
        [&](const auto& r) {
            using R = std::decay_t<decltype(r)>;
            if constexpr (!std::is_same_v<R, detail::End>) tableOf<R>(season).put(r);
        },
        record);
}

void eraseRecord(Season& season, TableKind kind, std::int64_t id) {
    withTable(season, kind, [&](auto& t) { t.erase(Id<decltype(typeOfTable(t))>(id)); });
}

std::int64_t idOf(const Record& record) {
    return std::visit(
        [](const auto& r) -> std::int64_t {
            if constexpr (std::is_same_v<std::decay_t<decltype(r)>, detail::End>)
                return 0;
            else
                return r.id.value;
        },
        record);
}

const void* recordPointer(const Record& record) {
    return std::visit([](const auto& r) -> const void* { return &r; }, record);
}

void* recordPointer(Record& record) {
    return std::visit([](auto& r) -> void* { return &r; }, record);
}

Record emptyRecord(TableKind kind, std::int64_t id) {
    const Season none;
    return withTable(none, kind, [&](const auto& t) -> Record {
        using R = decltype(typeOfTable(t));
        R r;
        r.id = Id<R>(id);
        return r;
    });
}

bool sameRows(const Season& a, const Season& b, TableKind kind) {
    switch (kind) {
#define X(Type, member)                                                                                      \
    case TableKind::member:                                                                                  \
        return a.member.sameRowsAs(b.member);
        WITHY_RECORDS(X)
#undef X
    case TableKind::none:
        break;
    }
    return true;
}

} // namespace withy::model
