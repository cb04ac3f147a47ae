// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_draft.h"
#include "core/runup/rounds.h"

namespace withy::plan {

/// What one booking wants cut of one plant in one patch, and when.
struct CutWish {
    std::optional<Id<model::Patch>> patch; ///< blank: from wherever the plant stands
    Id<model::Plant> plant;
    int group = 0;
    LocalTime earliest;
    LocalTime latest;
    LocalTime atTheSoonest; ///< the plant's own window; `earliest` waits for the stems to be ready
    Stems stems;
    Minutes conditioning;
    std::int64_t stemsPerBucket = 0;
};

/// From the cover where it knows the booking, at the likely level, which is what is gone out for: each patch from the day its
/// stems are ready for as long as they may wait on the plant, within the plant's window. What the cover
/// finds nowhere is cut from wherever the plant stands. What is in store or bought is not cut.
std::vector<CutWish> cutWishes(const RunUpFacts& facts, const BookingPlan& plan, int group);

struct CutMinutes {
    Minutes minutes;
    Working working; ///< without a result
};

/// For one pair of hands, at the plant's own rate where it is known.
CutMinutes cutMinutes(const RunUpFacts& facts, Id<model::Plant> plant, Stems stems);

} // namespace withy::plan
