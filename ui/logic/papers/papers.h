// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
#include "ui/logic/paper_shop.h"

#include <QString>

namespace withy::ui {

papers::Document prepSheet(const PaperOrder& order);
papers::Document bookingSummary(const PaperOrder& order);
papers::Document ordersPaper(const PaperOrder& order);
/// For the day it is printed; without one, the day is left to the pencil.
papers::Document walkSheet(const PaperOrder& order);
/// Every day on which something is cut for the booking, with what the day's round cuts for others.
papers::Document cuttingList(const PaperOrder& order);

/// One sheet for each design of the booking. After a tally the counts are those of the share-out, before it
/// the design's own.
papers::Document makeUpCard(const PaperOrder& order);

/// The timed steps of a prep sheet, busy hours in their place, a head for every day but the main one. A round
/// says from which patches it cuts what, once the cover is known.
std::vector<papers::Block> prepSteps(const model::Season& season, const plan::BookingPlan& plan, Day mainDay,
                                     const plan::BookingCover* cover = nullptr);
/// "From patch 5, Tunnel side: 46 Zinnia, coral; ...": what this round cuts, and where. Empty while no cover
/// says so; `cover` may be null here and below.
QString cutFrom(const model::Season& season, const plan::BookingPlan& plan, const plan::BookingCover* cover,
                const plan::TimedStep& step);
/// Stems from the store (own and bought told apart) or cut on other days than the rounds; what is short.
std::vector<papers::Block> stemsBesideRounds(const model::Season& season, const plan::BookingPlan& plan,
                                             const plan::BookingCover* cover);
/// A table of places, plants, days and stems.
std::vector<papers::Block> stemOrigins(const model::Season& season, const plan::BookingPlan& plan,
                                       const plan::BookingCover* cover);
/// The day the make-up begins: the prep sheet's day.
Day prepDay(const plan::BookingPlan& plan);

/// Whether this part is wanted on the paper.
bool wants(const PaperOrder& order, PaperKind kind, PaperPart part);
/// A head and the working of every plant's stems, one short paragraph each.
std::vector<papers::Block> stemWorkings(const model::Season& season, const plan::BookingPlan& plan);

/// "24 Supper jar, 1 Door pedestal".
QString piecesInWords(const model::Season& season, const plan::BookingPlan& plan);

} // namespace withy::ui
