// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"
#include "core/plan/shared_rounds.h"
#include "core/shareout/ladder.h"
#include "core/shareout/tally.h"

#include <variant>
#include <vector>

/// The share-out of a booking, from the season and what its rounds brought home.
namespace withy::plan {

/// Stems that stand in a clump where a slot says clump, or all of the slot when it has fewer (common
/// practice, no source).
inline constexpr std::int64_t stemsOfClump = 3;

struct SharePlan {
    shareout::TallySum tally;
    shareout::ShareProblem problem;
    shareout::ShareOut share;
    std::vector<SetAside> setAside; ///< of the tally, for other bookings of the same rounds
};

/// Why there is no share-out.
enum class ShareRefusal { noSuchBooking, alreadyDelivered };
using ShareStop = std::variant<ShareRefusal, shareout::TallyFault, shareout::ShareFault>;

/// Every line with its spare pieces; hand-tied pieces, buttonholes, corsages and crowns are in hand. A slot's
/// plants with a wished share come first, each with its part (largest remainders), then the others in order.
/// The tally is that of all rounds that serve the booking, less what stays for others of the same rounds
/// (setAsideForOthers). `fromStore` are stems out of lots that this
/// booking may have, as lines without a patch: which they are, the caller knows (cover_plan.h). Bookings
/// delivered, settled or lost are refused.
Result<SharePlan, ShareStop> planShare(const model::Season& season, Id<model::Booking> booking,
                                       const std::vector<shareout::TallyLine>& fromStore = {});

/// The booking's agreed swaps as stand-ins for every slot that names the plant, with what the tally leaves of
/// them and no more. In the order agreed.
std::vector<shareout::StandIn> agreedStandIns(const model::Season& season, Id<model::Booking> booking,
                                              const shareout::ShareProblem& problem);

} // namespace withy::plan
