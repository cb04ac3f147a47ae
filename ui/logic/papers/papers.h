// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
#include "core/plan/run_up_plan.h"
#include "ui/logic/models/cut_times.h"
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

/// The days on which something is cut for the booking.
std::vector<PaperDay> cuttingDays(const PaperOrder& order);

/// The road: every step with its time and the latest, every drop with what the driver needs to know there.
papers::Document runSheet(const PaperOrder& order);
/// For who receives: what is left where, care, cautions, what comes home. In whole sentences; it says nothing
/// of law.
papers::Document handOverSheet(const PaperOrder& order);
/// One label a bucket or box that the booking's stems go into.
papers::Document bucketLabels(const PaperOrder& order);
/// For each helper with hours or work in the week a sheet of their own.
papers::Document helperSheets(const PaperOrder& order);
/// The week's days side by side.
papers::Document weekBoard(const PaperOrder& order);
/// Monday of the week that a paper of the week is about: of the day asked for, of the booking's event, or of
/// the season's first day.
Day weekOfPaper(const PaperOrder& order);

/// One sheet for each design of the booking. After a tally the counts are those of the share-out, before it
/// the design's own.
papers::Document makeUpCard(const PaperOrder& order);

/// The timed steps of a prep sheet until the van leaves, with whose they are, busy hours in their place, a
/// head for every day but the main one. A round says from which patches it cuts what for the booking, once
/// the cover is known.
std::vector<papers::Block> prepSteps(const PaperOrder& order, Day mainDay);
/// "From patch 5, Tunnel side: 46 Zinnia, coral; ...": what this round of these cuts for the booking, and
/// where. Empty while no cover says so; `cover` may be null here and below.
QString cutFrom(const model::Season& season, const CutTimes& times, const plan::BookingCover* cover,
                const std::vector<plan::RunUpStep>& steps, const plan::RunUpStep& step);
/// Stems from the store (own and bought told apart) or cut on other days than the rounds; what is short.
std::vector<papers::Block> stemsBesideRounds(const model::Season& season, const CutTimes& times,
                                             const plan::BookingCover* cover,
                                             const std::vector<plan::RunUpStep>& steps);
/// A table of places, plants, days and stems.
std::vector<papers::Block> stemOrigins(const model::Season& season, const CutTimes& times,
                                       const plan::BookingCover* cover);

/// Whether this part is wanted on the paper.
bool wants(const PaperOrder& order, PaperKind kind, PaperPart part);
/// A head and the working of every plant's stems, one short paragraph each.
std::vector<papers::Block> stemWorkings(const model::Season& season, const plan::BookingPlan& plan);

/// "24 Supper jar, 1 Door pedestal".
QString piecesInWords(const model::Season& season, const plan::BookingPlan& plan);

} // namespace withy::ui
