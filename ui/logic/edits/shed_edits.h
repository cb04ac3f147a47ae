// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed_plan.h"
#include "ui/logic/edits.h"

#include <optional>

/// What comes back to the shed. Each is one edit, and undone in one.
namespace withy::ui::edits {

struct CountedHome {
    std::int64_t out = 0;
    std::optional<std::int64_t> back;
    std::optional<std::int64_t> broken;
};

/// How many of a booking's containers went out, came back and broke; a record is made where there is none.
Edit noteReturn(const Season& season, Id<model::Booking> booking, Id<model::Container> container,
                const CountedHome& counted);

/// Reels and ends as the day's cutting leaves them: shortened, or taken out where what is left is waste. The
/// day's bookings are marked, so that they take no ribbon twice. Nothing where nothing was cut. Days are
/// written back in their order: a later one's reels are what the earlier ones leave.
std::optional<Edit> writeRibbonBack(const Season& season, const plan::RibbonDay& day, LocalTime now);

/// The day of a booking's ribbon that is still to be written back; null when there is none.
const plan::RibbonDay* ribbonDayOf(const plan::ShedPlan* shed, Id<model::Booking> booking);

} // namespace withy::ui::edits
