// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/index.h"
#include "core/plan/plan.h"
#include "core/runup/work_calendar.h"

namespace withy::plan {

/// A drop nobody named is reached so long before the guests (common practice, no source).
inline constexpr Minutes beforeGuests{60};

/// Water-held pieces first, hand-held last, worn ones at the very end: those have no water to stand in.
int rankInMaking(const model::Design& design);
/// To whole minutes.
Minutes roundedUp(double minutes);

/// The fixed times of a booking, worked back from its first drop. One pair of hands: the run-up proper,
/// with helpers and all bookings together, takes this over later.
struct Drive {
    const model::Drop* drop = nullptr; ///< null: the event's start stands in
    std::string place;
    LocalTime leave;
    LocalTime arrive;
    Minutes placing;
    Working placingWorking;
};

struct WorkTimes {
    std::vector<Drive> drives; ///< in order of leaving
    Minutes travel;
    bool travelGuessed = false;
    LocalTime lastHour; ///< as looksGoodTo() has it
    runup::WorkCalendar calendar;
    std::vector<const model::Line*> makeOrder; ///< water-held first, buttonholes last
};

WorkTimes workTimes(const Index& index, const model::Booking& booking, const BookingPlan& plan);

/// Adds the make-up, sorting and everything after it to `plan.steps` and sets make-up start and end.
void planMakeUp(const Index& index, const model::Booking& booking,
                const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs,
                WorkTimes& times, BookingPlan& plan);

/// Adds cutting, stripping, drinking and the bench's preparation before the make-up.
void planBeforeMakeUp(const Index& index,
                      const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs,
                      WorkTimes& times, BookingPlan& plan);

} // namespace withy::plan
