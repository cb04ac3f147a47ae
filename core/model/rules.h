// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/zone.h"
#include "core/model/schema.h"

namespace withy::model {

/// Problems of one record's fields taken one by one: range, length, required, text that is text.
void checkFields(const TableInfo& table, std::int64_t id, const void* record, Problems& problems);
/// Problems of a record's references within `season`.
void checkReferences(const Season& season, const TableInfo& table, std::int64_t id, const void* record,
                     Problems& problems);

/// What rules look at besides the record; made once for a whole check.
struct RuleContext {
    const Season& season;
    std::optional<Zone> zone; ///< blank when the settings' rule cannot be read
};

RuleContext contextOf(const Season& season);

/// Problems between the fields of a record, and between it and the season's settings.
void checkRules(const RuleContext& context, TableKind kind, std::int64_t id, const void* record,
                Problems& problems);
/// Records of the table that are the same in its `unique` fields. The later one is named.
void checkUnique(const Season& season, const TableInfo& table, Problems& problems);
/// Problems of the season as a whole: settings there, bookings within the season's days.
void checkSeason(const RuleContext& context, Problems& problems);

} // namespace withy::model
