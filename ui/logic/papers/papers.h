// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper_shop.h"

#include <QString>

namespace withy::ui {

papers::Document prepSheet(const PaperOrder& order);
papers::Document bookingSummary(const PaperOrder& order);
papers::Document ordersPaper(const PaperOrder& order);
/// For the day it is printed; without one, the day is left to the pencil.
papers::Document walkSheet(const PaperOrder& order);

/// The timed steps of a prep sheet, busy hours in their place, a head for every day but the main one.
std::vector<papers::Block> prepSteps(const model::Season& season, const plan::BookingPlan& plan, Day mainDay);
/// The day the make-up begins: the prep sheet's day.
Day prepDay(const plan::BookingPlan& plan);

/// Whether this part is wanted on the paper.
bool wants(const PaperOrder& order, PaperKind kind, PaperPart part);
/// A head and the working of every plant's stems, one short paragraph each.
std::vector<papers::Block> stemWorkings(const model::Season& season, const plan::BookingPlan& plan);

/// "24 Supper jar, 1 Door pedestal".
QString piecesInWords(const model::Season& season, const plan::BookingPlan& plan);

} // namespace withy::ui
