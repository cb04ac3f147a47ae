// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/schema.h"

#include <map>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace withy::exchange {

/// Finds records by the name people know them by, without regard to case or to spaces around it.
/// Each table is read once, when it is first asked for. The season must outlive the index.
class NameIndex {
public:
    explicit NameIndex(const model::Season& season) : season_(season) {}

    /// The ids of all records of this name, smallest first; none for tables without names.
    const std::vector<std::int64_t>& find(model::TableKind kind, std::string_view name);

private:
    using Ids = std::unordered_map<std::string, std::vector<std::int64_t>>;

    const Ids& idsOf(model::TableKind kind);

    const model::Season& season_;
    std::map<model::TableKind, Ids> tables_;
};

} // namespace withy::exchange
