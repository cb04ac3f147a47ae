// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_plan.h"
#include "tests/model/sample.h"

#include <cstdint>
#include <string>

/// Seasons for the run-up, small enough to count by hand or thrown by dice.
namespace withy::plan::tests {

inline constexpr Id<model::Booking> supper{1};
inline constexpr Id<model::Drop> supperDrop{1};
inline constexpr Id<model::Helper> wilf{1}, tess{2};

/// Ten jars of five zinnias for the evening of Saturday 11 September 2027, at the door by 13:00: six minutes
/// a jar, half an hour's drive, no helpers, nobody busy.
model::Edit tenJars();
model::Season tenJarsSeason();
model::Season changed(const model::Season& season, const model::Edit& edit);

/// Three bookings in one week and two helpers.
model::Season threeBookings();

/// One to four bookings within a few days, helpers, busy hours, pins and ticks at random.
model::Season diceSeason(std::uint64_t seed);

/// All that is wrong with a run-up by the words of run_up_plan.h and the records alone. Empty: nothing.
std::vector<std::string> complaintsAbout(const model::Season& season, const RunUpPlan& runUp);

} // namespace withy::plan::tests
