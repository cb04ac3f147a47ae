// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_demands.h"

namespace withy::plan {

/// What would mend a short slot: swaps with free stems (nearest in colour first), stems to buy, fewer pieces.
/// Agreed swaps are taken by the allocation itself. A swap is proposed only where its length and colour are
/// known to do; where the slot's own plant has no colour noted, colour is not asked for.
std::vector<Mend> mendsFor(const Index& index, const SlotDemand& slot, Stems shortBy,
                           const cover::FreeStock& free, BookingWindows& windows,
                           const CoverOptions& options);

} // namespace withy::plan
