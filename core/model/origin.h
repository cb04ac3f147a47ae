// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/working.h"
#include "core/model/edit.h"

#include <optional>

/// Between the records and the lines of workings that rest on them.
namespace withy::model {

inline Origin originOf(const Ref& ref) {
    return {static_cast<int>(ref.table), ref.id};
}

inline Origin originOf(TableKind table, std::int64_t id) {
    return originOf(Ref{table, id});
}

/// The settings are one record.
inline Origin originInSettings() {
    return originOf(TableKind::settings, 1);
}

/// Blank: the line rests on no record.
inline std::optional<Ref> placeOf(const Origin& origin) {
    if (origin.table < 0 || origin.table >= static_cast<int>(TableKind::none)) return std::nullopt;
    return Ref{static_cast<TableKind>(origin.table), origin.id};
}

} // namespace withy::model
