// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
#include "ui/logic/models/cut_times.h"
#include "ui/logic/models/sheet.h"

/// From where a booking's stems come, as the cover shares them out.
namespace withy::ui {

/// Stems of one plant from one place on one day. What the likely level gives: one sharing-out for all
/// bookings, so that no stem is promised twice on paper.
struct StemSource {
    Id<model::Plant> plant;
    StemOrigin origin = StemOrigin::patch;
    std::int64_t from = 0; ///< id of the patch or lot
    QString mark;          ///< the patch's number on the walk
    QString place;         ///< "Tunnel side"; "left over, in the store"; "bought in, in the store"
    Day day;               ///< when they are cut, or taken from the store
    QString hour;          ///< of the round that cuts them, "06:10"; empty when there is none
    std::int64_t stems = 0;
    std::optional<std::size_t> round{}; ///< of RunUpPlan::rounds
};

/// Of one slot.
std::vector<StemSource> sourcesOf(const model::Season& season, const CutTimes& times,
                                  const plan::SlotCover& slot);
/// Of a whole booking, the same place, day and plant added up; by day, then in walking order.
std::vector<StemSource> sourcesOf(const model::Season& season, const CutTimes& times,
                                  const plan::BookingCover& cover);

/// What other plants than the slot's first give.
struct SwappedIn {
    std::int64_t stems = 0;
    std::optional<Id<model::Plant>> most; ///< gives most of them
    bool alone = true;                    ///< gives all of them
};

SwappedIn swappedIn(const model::Season& season, const CutTimes& times, const plan::SlotCover& slot);
/// Of one place: "Tunnel side, 46, Fri 10 Sep 06:10"; cut on several rounds "Tunnel side, 68, Mon 6 to Fri 10
/// Sep".
QString sourceWords(const std::vector<StemSource>& days);
/// Each round with its stems: "8 on Mon 6 Sep 19:20, 60 on Fri 10 Sep 06:02". Empty for one round alone.
QString roundByRound(const std::vector<StemSource>& days);
/// Whether any of the plant's stems are to be cut: not all of them stand in the store or are bought. True
/// while no cover is known.
bool isCut(const plan::BookingCover* cover, Id<model::Plant> plant);
/// Stems that may not be called our own.
std::int64_t boughtIn(const std::vector<StemSource>& sources);

/// The cover of a booking; null while nobody has worked it out.
const plan::BookingCover* coverOf(const plan::Plan& plan, Id<model::Booking> booking);

/// "zinnia" for "Zinnia, coral": how a row of flowers is called in passing.
QString inPassing(const model::Season& season, Id<model::Plant> plant);
/// "8 zinnias", "1 zinnia", "60 fennel": plants counted by their heads take an s, others stay as they are.
QString countedPlant(const model::Season& season, Id<model::Plant> plant, std::int64_t stems);
/// "zinnias" for "zinnia", as countedPlant() has it.
QString pluralOf(const QString& plant);

} // namespace withy::ui
