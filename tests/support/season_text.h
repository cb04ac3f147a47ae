// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_csv.h"
#include "core/model/schema.h"

#include <string>

namespace withy::exchange {

/// The whole season as text: each table in file order, empty ones too, as a line "[name]" and its CSV.
/// Two seasons give the same bytes if and only if all their records are the same.
inline std::string exportSeason(const model::Season& season) {
    std::string out;
    for (const auto& info : model::allTables()) {
        out += "[" + std::string(info.name) + "]\r\n";
        out += exportTable(season, info.kind);
    }
    return out;
}

} // namespace withy::exchange
