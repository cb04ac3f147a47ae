// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/share_search.h"

#include <QString>

#include <map>

/// How a share-out's stems add up with the tally beside it: what came in is used or left, and what comes out
/// of the store or the garden is told apart.
namespace withy::ui {

using StemsByPlant = std::map<Id<model::Plant>, std::int64_t>;

/// What the tally brought in for the booking, without what was shared out from the store.
StemsByPlant talliedOf(const plan::SharePlan& plan, const std::vector<shareout::TallyLine>& fromStore);

/// `tallied` and `left` add up to what came in; `tallied` and `besides` to what is used.
struct ShareSums {
    std::int64_t tallied = 0; ///< used, out of the tally
    std::int64_t besides = 0; ///< used, from elsewhere: the store, the garden, bought in
    std::int64_t left = 0;    ///< of the tally
};

ShareSums shareSums(const StemsByPlant& tallied, const shareout::ShareOut& share);
/// "232 stems, 25 left"; "295 stems, 88 of them not from the tally; 107 of the tally left".
QString sumsWords(const ShareSums& sums);

/// "In came 64 zinnias of 72. So:": of the plants that some slot lacks those that are short of their goal;
/// what came in altogether when none is. Goals as the rows of the tally have them; where there is none, what
/// the slots that name the plant first ask for.
QString cameInWords(const model::Season& season, const ShareFound& found, const StemsByPlant& goals = {});
/// "20 stems are left: 3 dahlias, 1 snapdragon, 10 fennel, 6 ninebark."; empty when none is. Of the tally:
/// what the store gives and is not used has never left it.
QString leftOverWords(const model::Season& season, const StemsByPlant& tallied,
                      const shareout::ShareOut& share);

} // namespace withy::ui
