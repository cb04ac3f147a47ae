// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/fit_plan.h"
#include "core/plan/index.h"

#include <vector>

/// Kit and hours of a trial booking beside the season's own.
namespace withy::plan {

/// What another booking holds, and when.
struct Beside {
    Id<model::Booking> booking;
    cover::Claim claim{};
    bool made = false; ///< its jars are filled already
    Day kitFrom;       ///< containers: from the make-up to the event's end
    Day kitTo;
    Day bucketsFrom; ///< buckets: from the first cut to the make-up
    Day bucketsTo;
    std::shared_ptr<const BookingPlan> plan;
};

std::vector<Beside> allBeside(const model::Season& season, const Plan& plan, std::optional<Day> today);

/// Yes: within what is owned beside all bookings; tight: beside the firm and held ones alone, or not counted.
/// Containers that come back are out from the make-up to the end of the event; of those that do not, every
/// booking not yet made takes its own. Where the shed is planned, what is away on each day is what it says:
/// until cleared, broken ones never.
std::vector<FitKit> fitKit(const Index& index, const BookingPlan& trial, const model::Booking& booking,
                           const std::vector<Beside>& beside, const ShedPlan* shed);

/// The trial's own cutting, stripping, bench and making minutes against the working hours from the morning of
/// the day before its make-up (own choice: what is in the way then moves the work no further), or from its
/// first step where that is earlier, to the end of the make-up; busy hours and the work of the others are
/// taken away. Hours outside the working day count where the trial's own steps lie in them.
FitHours fitHours(const Index& index, const BookingPlan& trial, const std::vector<Beside>& beside);

} // namespace withy::plan
