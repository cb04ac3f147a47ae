// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/sheet.h"

/// What a booking takes from the shed: needed, on hand, short. What nobody has counted is said so and can be
/// counted in the row.
namespace withy::ui {

Answer kitAnswer(const model::Season& season, const plan::BookingPlan& plan);
/// Containers, ribbons, sundries, buckets and water under their heads; heads without rows are left out.
Sheet kitSheet(const model::Season& season, const plan::BookingPlan& plan);

} // namespace withy::ui
