// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/quantity.h"
#include "core/runup/work_calendar.h"

#include <cstddef>
#include <optional>
#include <vector>

/// The cut windows of all bookings merged into the fewest outings.
///
/// An outing serves every slot that can be begun when it begins. The fewest are found exactly: slots in order
/// of the last good moment they can be begun at, an outing at that moment for the first that no outing yet
/// serves (the interval point cover; Gavril 1972 for the greedy rule). What has no good moment at all in its
/// window goes into outings of its own, the fewest too.
namespace withy::runup {

/// The stems of one plant, from one patch, for one booking.
struct CutSlot {
    LocalTime earliest;
    LocalTime latest; ///< all cut by then
    Stems stems;
    Minutes minutes;                 ///< of cutting, for one pair of hands
    int patch = 0;                   ///< of the caller's numbering
    std::int64_t stemsPerBucket = 0; ///< nought: not known, no buckets counted
};

struct PatchShare {
    int patch = 0;
    Stems stems;
    Minutes minutes;
    std::int64_t buckets = 0; ///< whole ones: patches do not share
};

struct Outing {
    LocalTime start;
    LocalTime end;
    Minutes minutes; ///< of all hands together
    Stems stems;
    std::int64_t buckets = 0;
    std::vector<PatchShare> patches; ///< by number
    std::vector<std::size_t> slots;  ///< by number
    bool inGoodHours = false;        ///< begins in them
    Minutes past; ///< how far it runs past the good hours or the first of its slots' latest
};

struct Outings {
    std::vector<Outing> outings;       ///< by time
    std::vector<std::size_t> unserved; ///< slots whose latest lies before their earliest
};

/// `goodHours` in any order, overlapping or not; busy hours taken out by the caller. `hands` that cut at
/// once, at least one. Times between 1900 and 2200.
Outings fewestOutings(const std::vector<CutSlot>& slots, const std::vector<TimeSpan>& goodHours,
                      int hands = 1);

} // namespace withy::runup
