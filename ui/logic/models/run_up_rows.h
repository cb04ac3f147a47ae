// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/sheet.h"

/// The run-up of a booking as a plain timed list, day by day.
namespace withy::ui {

/// One day of it; busy hours stand in their place between the steps.
struct RunUpDay {
    Day day;
    QString head; ///< "Friday 10 September"
    QString note; ///< "The day of making"
    Sheet sheet;
};

Answer runUpAnswer(const model::Season& season, const plan::BookingPlan& plan,
                   const std::vector<ListedFinding>& findings);
/// Days with steps, in order; the last holds the guests.
std::vector<RunUpDay> runUpDays(const model::Season& season, const plan::BookingPlan& plan);

} // namespace withy::ui
