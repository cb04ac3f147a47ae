// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"
#include "core/packing/table_fit.h"
#include "ui/logic/measures.h"

#include <QString>

#include <optional>

namespace withy::ui {

packing::TableTop tableTopOf(const model::VenueTable& table);

/// The table a design is next placed on.
struct NextTable {
    const model::VenueTable* table = nullptr;
    std::int64_t perTable = 1;
};

NextTable nextTableOf(const model::Season& season, Id<model::Design> design, std::optional<Day> today);

/// "On trestle, 2440 × 760 mm, 8 settings, 2 pieces"
QString onTableWords(const model::VenueTable& table, std::int64_t pieces, Units units);
/// "From above: spread 210 mm, foot 70 mm. No table carries it yet."
QString offTableWords(double spread, double foot, Units units);

} // namespace withy::ui
