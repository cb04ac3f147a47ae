// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

namespace withy::plan {

/// The kind of bucket or box there is most of, which sets the measure; null when there is none.
inline const model::Holder* commonestHolder(const model::Season& season, model::HolderKind kind) {
    const model::Holder* found = nullptr;
    for (const auto& h : season.holders)
        if (h.kind == kind && (!found || h.owned.value_or(0) > found->owned.value_or(0))) found = &h;
    return found;
}

} // namespace withy::plan
