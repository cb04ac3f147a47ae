// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper_shop.h"

namespace withy::ui {

/// The van: trays from above, what goes in first, weights, water to carry.
papers::Document packingSheet(const PaperOrder& order);
/// The venue: its tables with the pieces on them, one table near to, and what to tick.
papers::Document tablePlanPaper(const PaperOrder& order);
/// The bench: reels and ends of the booking's make-up day with their cuts, whoever's pieces they are.
papers::Document ribbonPlanPaper(const PaperOrder& order);
/// The shelves: what the booking needs, what is there, what is short, by when.
papers::Document kitListPaper(const PaperOrder& order);
/// The shop: what to get for all that is booked, in order of the day it is needed.
papers::Document buyingListPaper(const PaperOrder& order);

} // namespace withy::ui
