// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/season_text.h"

#include "core/exchange/table_csv.h"
#include "core/model/schema.h"

namespace withy::exchange {

std::string exportSeason(const model::Season& season) {
    std::string out;
    for (const auto& info : model::allTables()) {
        out += "[" + std::string(info.name) + "]\r\n";
        out += exportTable(season, info.kind);
    }
    return out;
}

} // namespace withy::exchange
