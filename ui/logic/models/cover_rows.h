// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
#include "core/plan/forecast_plan.h"
#include "ui/logic/models/cut_times.h"
#include "ui/logic/models/sheet.h"

/// Whether the garden has a booking's stems: from where, which day, how many, how sure; and what would mend
/// it.
namespace withy::ui {

/// What the words look at. `garden` may be null: then no bar knows the hopeful level.
struct CoverView {
    const model::Season& season;
    const plan::BookingPlan& plan;
    const plan::CoverPlan& all;
    const plan::BookingCover& cover;
    const CutTimes& times;
    const plan::ForecastPlan* garden = nullptr;
};

/// "26 pieces, 295 stems, 329 with the spare. Of the 329, 301 are covered, 28 zinnias are short, and one swap
/// would mend it."
Answer coverAnswer(const CoverView& view);
/// One row a slot, a head a line. The ways out stand below a row in the order of SlotCover::mends.
Sheet coverSheet(const CoverView& view);
/// The key of a slot's row.
QString coverKey(Id<model::Line> line, Id<model::Slot> slot);
/// The slot of a row; null when the cover has it no more.
const plan::SlotCover* slotOf(const plan::BookingCover& cover, const QString& key);

} // namespace withy::ui
