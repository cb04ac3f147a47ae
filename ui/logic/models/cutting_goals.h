// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
#include "ui/logic/models/cut_times.h"

#include <map>
#include <vector>

/// What is to be cut for a booking, patch by patch: the goals of the cutting list and of the tally.
namespace withy::ui {

/// Stems of one patch on one day for one booking.
struct CuttingGoal {
    Id<model::Patch> patch;
    Id<model::Plant> plant;
    Day day;                           ///< of the round that cuts it; else as the cover has it
    std::int64_t need = 0;             ///< what the pieces hold
    std::int64_t spare = 0;            ///< by the season's rule, once, and what fills the last bunch
    bool orAll = false;                ///< cautiously there are fewer: all there is
    bool personal = false;             ///< for pieces that are worn, and for nothing else: kept apart
    std::optional<Millimetres> length; ///< the longest cut of the slots it is for
    std::optional<CutTime> when{};     ///< blank: no round cuts it

    [[nodiscard]] std::int64_t goal() const { return need + spare; }
};

/// From the likely level, so that no stem is asked for by two bookings. What a slot is short of is asked of
/// the patch that gives most of it, or of the first patch of the slot's first plant: cut all there is. Stems
/// that stand in the store or are to be bought are no goal. Where no cover is known, the needs alone speak.
/// When is the round's that cuts it (cut_times.h). In walking order, then by time; a goal of nought is left
/// out.
std::vector<CuttingGoal> cuttingGoals(const model::Season& season, const plan::Plan& plan,
                                      Id<model::Booking> booking);
/// The same with the days of a patch added up, under the day with most stems.
std::vector<CuttingGoal> goalsByPatch(const std::vector<CuttingGoal>& goals);

/// What they ask for by plant, without the spare.
std::map<Id<model::Plant>, std::int64_t> needByPlant(const std::vector<CuttingGoal>& goals);

/// The day on which a booking's stems are cut, for who opens its cutting day: today from the first day of
/// cutting to the event, else the day with most stems to cut.
Day cuttingDay(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking,
               std::optional<Day> today);

} // namespace withy::ui
