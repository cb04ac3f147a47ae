// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
#include "core/plan/day_heat.h"
#include "core/plan/index.h"
#include "core/plan/work_times.h"

#include <map>
#include <optional>
#include <vector>

/// From a booking's plan to what it asks of the garden.
namespace withy::plan {

/// Agreed swaps by booking, in the order to try them.
using SwapsOf = Index::By<model::Booking, model::AgreedSwap>;
SwapsOf agreedSwaps(const model::Season& season);

/// The days on which any plant may be cut for one booking. A day counts when part of the window lies in its
/// working hours; a window that misses them all counts as the day of its end.
class BookingWindows {
public:
    /// All must outlive it.
    BookingWindows(const Index& index, const model::Booking& booking, const BookingPlan& plan,
                   PlaceDays& days);

    struct Days {
        Day from;
        Day to;
        std::optional<Day> best; ///< of a round that is planned anyway
    };

    /// Nothing where no day will do.
    std::optional<Days> of(Id<model::Plant> plant);

private:
    std::optional<Days> daysOf(const PlantWindow& window, int round) const;
    std::optional<Days> workOut(Id<model::Plant> plant);

    const Index& index_;
    const model::Booking& booking_;
    const BookingPlan& plan_;
    PlaceDays& days_;
    std::optional<WorkTimes> times_; ///< when first needed
    std::map<Id<model::Plant>, std::optional<Days>> known_;
};

struct SlotDemand {
    cover::Demand demand;
    std::vector<LeftOut> leftOut;
    Stems perPiece;
    std::optional<Millimetres> cutLength;
};

/// What each slot of each line asks for: pieces x count, and its part of the spare that the booking counts
/// once for each plant (largest remainders). Stems added to fill a last bunch are not asked of the garden.
std::vector<SlotDemand> slotDemands(const Index& index, const model::Booking& booking,
                                    const BookingPlan& plan, cover::Claim claim,
                                    const std::vector<const model::AgreedSwap*>& swaps,
                                    BookingWindows& windows);

} // namespace withy::plan
