// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
#include "ui/logic/edits.h"

/// Taking one of the ways out of a shortage; each is one edit, and undo puts it back.
namespace withy::ui::edits {

/// A swap is agreed for the booking (after those agreed before), a purchase stands as a lot of whole bunches
/// ready on the day of making, fewer pieces change the line. Empty when there is nothing left to change: the
/// plan that proposed it may lag an edit behind.
Edit takeMend(const Season& season, const plan::BookingPlan& plan, const plan::SlotCover& slot,
              const plan::Mend& mend);

} // namespace withy::ui::edits
