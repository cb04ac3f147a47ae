// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/table.h"
#include "core/model/tables.h"

#include <functional>
#include <optional>
#include <vector>

namespace withy::model {

/// One growing year as one value: the window, the planner and the file all speak this model.
/// Changed only through apply() (core/model/edit.h).
struct Season {
    // Spelled out in season.cpp: some fifty tables are too much to copy and destroy anew in every source.
    Season();
    Season(const Season& other);
    Season(Season&& other) noexcept;
    Season& operator=(const Season& other);
    Season& operator=(Season&& other) noexcept;
    ~Season();

#define X(Type, member) Table<Type> member;
    WITHY_RECORDS(X)
#undef X

    /// The season's settings; defaults when there are none yet.
    [[nodiscard]] const Settings& theSettings() const;
};

/// Table of record type R within a season: `tableOf<Plant>(season)`.
template <class R>
const Table<R>& tableOf(const Season& season);
template <class R>
Table<R>& tableOf(Season& season);
#define X(Type, member)                                                                                      \
    template <>                                                                                              \
    inline const Table<Type>& tableOf<Type>(const Season& season) {                                          \
        return season.member;                                                                                \
    }                                                                                                        \
    template <>                                                                                              \
    inline Table<Type>& tableOf<Type>(Season & season) {                                                     \
        return season.member;                                                                                \
    }
WITHY_RECORDS(X)
#undef X

// The same by table kind, for whatever treats all tables alike (file, CSV, checks).

std::size_t sizeOf(const Season& season, TableKind kind);
std::optional<Record> findRecord(const Season& season, TableKind kind, std::int64_t id);
bool hasRecord(const Season& season, TableKind kind, std::int64_t id);
std::int64_t nextIdOf(const Season& season, TableKind kind);
/// Visits in order of id; the pointer is to the record's own type.
void forEachRecord(const Season& season, TableKind kind,
                   const std::function<void(std::int64_t id, const void* record)>& visit);
void putRecord(Season& season, const Record& record);
void eraseRecord(Season& season, TableKind kind, std::int64_t id);
/// Id and typed pointer of the record held in a Record.
std::int64_t idOf(const Record& record);
const void* recordPointer(const Record& record);
void* recordPointer(Record& record);
/// A default record of the kind with this id.
Record emptyRecord(TableKind kind, std::int64_t id);
bool sameRows(const Season& a, const Season& b, TableKind kind);

} // namespace withy::model
