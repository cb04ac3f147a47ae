// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/cutting_goals.h"

/// An outing may cut for several bookings at once: what is to come in of a patch, and how much of it is for
/// whom.
namespace withy::ui {

struct OutingGoal {
    CuttingGoal goal; ///< of all the bookings
    std::int64_t forOthers = 0;
    std::vector<Id<model::Booking>> others; ///< by id
};

/// The other bookings that the run-up cuts for on the booking's round of that day; by id.
std::vector<Id<model::Booking>> outingWith(const model::Season& season, const plan::Plan& plan,
                                           Id<model::Booking> booking, Day day);

/// The booking's goals by patch, and on the days of its shared rounds those of the others with them. `until`:
/// only what is due on that day and before.
std::vector<OutingGoal> outingGoals(const model::Season& season, const plan::Plan& plan,
                                    Id<model::Booking> booking, std::optional<Day> until = std::nullopt);

} // namespace withy::ui
