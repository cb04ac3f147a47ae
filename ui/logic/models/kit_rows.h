// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/sheet.h"

/// What a booking takes from the shed: needed, on hand, short. What nobody has counted is said so and can be
/// counted in the row.
namespace withy::ui {

/// Answers for the booking beside all others, where the shed has been planned: what they have out then is not
/// on the shelf.
Answer kitAnswer(const model::Season& season, const plan::BookingPlan& plan,
                 const plan::ShedPlan* shed = nullptr);
/// Containers, ribbons, sundries, buckets and water under their heads; heads without rows are left out.
Sheet kitSheet(const model::Season& season, const plan::BookingPlan& plan,
               const plan::ShedPlan* shed = nullptr);

} // namespace withy::ui
