// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"
#include "core/plan/share_plan.h"

#include <memory>
#include <optional>
#include <set>
#include <vector>

/// A booking's share-out and its ways out, from the season as it is planned. Takes longer than a frame:
/// belongs on a thread of its own.
namespace withy::ui {

struct ShareQuestion {
    model::Season season;
    std::shared_ptr<const plan::CoverPlan> cover; ///< null: the garden is not asked for free stems
    Id<model::Booking> booking;
    Day bench; ///< of the make-up
    std::optional<Day> today;
    std::vector<shareout::Way> mixed; ///< ways already chosen, in turn; each began where the last one ended
};

struct ShareFound {
    std::optional<plan::ShareStop> stop;    ///< why there is no share-out
    bool tallied = false;                   ///< anything was counted on a round of this booking
    std::vector<Id<model::Plant>> waitsFor; ///< a slot is short of all its plants and none was counted: no
                                            ///< ways out are looked for before these are
    /// Plants the tally has a row for, because some of their stems are cut for the booking; blank while no
    /// cover is known.
    std::optional<std::set<Id<model::Plant>>> cutFor;
    plan::SharePlan plan;                       ///< as it is in the season
    std::vector<shareout::TallyLine> fromStore; ///< counted in it besides the tally
    shareout::LadderInput input;                ///< what may still be had
    shareout::Ladder ladder; ///< after what is mixed already; no ways when nothing is short
};

ShareFound findShare(const ShareQuestion& question);

/// What a booking may have out of the store, when it is made up on `bench`: of each lot what the cover gives
/// to no other booking. For planShare().
std::vector<shareout::TallyLine> storeFor(const model::Season& season, const plan::CoverPlan* cover,
                                          Id<model::Booking> booking, Day bench);

/// Whether anything was counted on a round that serves the booking.
bool isTallied(const model::Season& season, Id<model::Booking> booking);

inline constexpr int shareLeadDays = 7; ///< from order to bench (common practice, no source; as in the cover)

} // namespace withy::ui
