// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/sheet.h"

/// The run-up of a booking as a plain timed list, day by day.
namespace withy::ui {

Answer runUpAnswer(const model::Season& season, const plan::BookingPlan& plan,
                   const std::vector<ListedFinding>& findings);
/// A head for each day with steps, the steps below it; busy hours and the guests stand in their place.
Sheet runUpSheet(const model::Season& season, const plan::BookingPlan& plan);

} // namespace withy::ui
