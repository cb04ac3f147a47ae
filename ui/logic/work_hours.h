// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

namespace withy::ui {

/// When a booking is made up and driven out.
struct WorkHours {
    LocalTime makeUpStart;
    LocalTime makeUpEnd;
    LocalTime driveStart;
    std::optional<LocalTime> driveEnd; ///< of the first drive as it is laid; blank: the booking's own
};

/// As the run-up has laid it beside the other bookings' work; until it has, and for what is delivered, the
/// booking's own hours. With a design, the make-up of that alone. Precondition: the booking has a plan.
WorkHours workHours(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking,
                    std::optional<Id<model::Design>> only = std::nullopt);

} // namespace withy::ui
