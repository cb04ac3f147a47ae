// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <QString>

/// The timed steps of a booking in words: on the prep sheet, in the run-up and in the diary alike. Records
/// that an older plan still names and the season no longer has are passed over in silence.
namespace withy::ui {

/// "Make up 24 x Supper jar".
QString stepTitle(const model::Season& season, const plan::BookingPlan& plan, const plan::TimedStep& step);
QString stepTitle(const model::Season& season, Id<model::Booking> booking, const plan::TimedStep& step);
/// "80 Zinnia, coral; 40 Ammi", "There by 14:30."; empty when there is nothing to add.
QString stepDetail(const model::Season& season, const plan::TimedStep& step);
/// Drinking and resting need nobody.
bool needsNobody(const plan::TimedStep& step);

} // namespace withy::ui
