// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/shed_input.h"

namespace withy::plan {

using PackingOf = std::map<Id<model::Booking>, std::shared_ptr<const BookingPacking>>;

/// Every container, tray, bucket, gridded box and sundry that somebody wants or that was counted: what is
/// away on which day. The first to run short comes first, then what is lowest.
std::vector<KitItem> kitThroughTime(const ShedInput& in, const PackingOf& packing);

/// Still away on that day, of this hold.
std::int64_t awayOn(const KitHold& hold, Day day);

/// Away on that day, or promised away. What is late and written back by nobody counts no further than to what
/// is owned: what went out a second time had come home.
std::int64_t awayOn(const KitItem& item, Day day, bool firmOnly = false);

/// Whose the thing is on that day: those to come, where there are any; never those that are over or late.
std::vector<Id<model::Booking>> wantedBy(const KitItem& item, Day day, std::optional<Day> today);

/// Containers out and not all home, the longest due first.
std::vector<OutstandingReturn> outstandingReturns(const ShedInput& in);

/// What to get, and by when: each time the shelf would be shorter than it ever was before.
std::vector<BuyingLine> buyingList(const ShedInput& in, const std::vector<KitItem>& kit,
                                   const std::vector<std::shared_ptr<const RibbonDay>>& ribbon);

/// Each time a shelf runs short, with its first day, where no booking says so by itself (of trays and boxes
/// none does); and jars that are late.
std::vector<ShedFinding> kitFindings(const ShedInput& in, const std::vector<KitItem>& kit,
                                     const std::vector<OutstandingReturn>& returns);

} // namespace withy::plan
