// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
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
    QString hour;          ///< of the planned round on that day, "06:10"; empty when there is none
    std::int64_t stems = 0;
};

/// Of one slot.
std::vector<StemSource> sourcesOf(const model::Season& season, const plan::BookingPlan& plan,
                                  const plan::SlotCover& slot);
/// Of a whole booking, the same place, day and plant added up; by day, then in walking order.
std::vector<StemSource> sourcesOf(const model::Season& season, const plan::BookingPlan& plan,
                                  const plan::BookingCover& cover);
/// Of one place, by day: "Tunnel side, Fri 10 Sep 06:10, 46"; "Tunnel side: 8 Wed 8 Sep, 41 Thu 9 Sep".
QString sourceWords(const std::vector<StemSource>& days);
/// Stems that may not be called our own.
std::int64_t boughtIn(const std::vector<StemSource>& sources);

/// The cover of a booking; null while nobody has worked it out.
const plan::BookingCover* coverOf(const plan::Plan& plan, Id<model::Booking> booking);

/// "zinnia" for "Zinnia, coral": how a row of flowers is called in passing.
QString inPassing(const model::Season& season, Id<model::Plant> plant);

} // namespace withy::ui
