// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/share_sums.h"

#include "ui/logic/format.h"
#include "ui/logic/models/stem_sources.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

struct ShareSumsSay {
    Q_DECLARE_TR_FUNCTIONS(ShareWords)
};

std::int64_t stemsOf(const StemsByPlant& of, Id<model::Plant> plant) {
    const auto found = of.find(plant);
    return found == of.end() ? 0 : found->second;
}

/// What the slots that name a plant first ask for, of the plants that some slot lacks.
StemsByPlant lackingPlants(const shareout::ShareOut& share) {
    StemsByPlant asked;
    std::set<Id<model::Plant>> lacking;
    for (const auto& line : share.lines) {
        for (const auto& slot : line.slots) {
            if (slot.plants.empty()) continue;
            asked[slot.plants.front().plant] += slot.asked.value;
            if (slot.given < slot.asked) lacking.insert(slot.plants.front().plant);
        }
    }
    std::erase_if(asked, [&](const auto& n) { return !lacking.contains(n.first); });
    return asked;
}

} // namespace

StemsByPlant talliedOf(const plan::SharePlan& plan, const std::vector<shareout::TallyLine>& fromStore) {
    StemsByPlant all;
    for (const auto& c : plan.problem.counted)
        if (c.stems) all[c.plant] += c.stems->value;
    for (const auto& line : fromStore)
        if (const auto at = all.find(line.plant); at != all.end() && line.cut)
            at->second = std::max<std::int64_t>(0, at->second - line.cut->value);
    return all;
}

ShareSums shareSums(const StemsByPlant& tallied, const shareout::ShareOut& share) {
    ShareSums sums;
    StemsByPlant left = tallied;
    for (const auto& use : share.plants) {
        const auto own = std::min(use.used.value, stemsOf(left, use.plant));
        sums.tallied += own;
        sums.besides += use.used.value - own;
        if (own > 0) left[use.plant] -= own;
    }
    for (const auto& [plant, stems] : left)
        sums.left += stems;
    return sums;
}

QString sumsWords(const ShareSums& sums) {
    const QString used = whole(sums.tallied + sums.besides);
    const int form = static_cast<int>(sums.tallied + sums.besides);
    if (sums.besides == 0)
        return ShareSumsSay::tr("%1 stem(s), %2 left", nullptr, form).arg(used, whole(sums.left));
    return ShareSumsSay::tr("%1 stem(s), %2 of them not from the tally; %3 of the tally left", nullptr, form)
        .arg(used, whole(sums.besides), whole(sums.left));
}

QString cameInWords(const model::Season& season, const ShareFound& found, const StemsByPlant& goals) {
    const auto tallied = talliedOf(found.plan, found.fromStore);
    QStringList all;
    for (const auto& [plant, asked] : lackingPlants(found.plan.share)) {
        const auto goal = goals.find(plant);
        const auto of = goal == goals.end() ? asked : goal->second;
        const auto came = stemsOf(tallied, plant);
        if (tallied.contains(plant) && came < of)
            all << ShareSumsSay::tr("%1 of %2").arg(countedPlant(season, plant, came), whole(of));
    }
    if (!all.isEmpty()) return ShareSumsSay::tr("%1 came in. So:").arg(all.join(QStringLiteral(", ")));
    std::int64_t stems = 0;
    for (const auto& [plant, came] : tallied)
        stems += came;
    return ShareSumsSay::tr("%n stem(s) came in. So:", nullptr, static_cast<int>(stems));
}

QString leftOverWords(const model::Season& season, const StemsByPlant& tallied,
                      const shareout::ShareOut& share) {
    QStringList all;
    std::int64_t sum = 0;
    for (const auto& use : share.plants) {
        const auto left = stemsOf(tallied, use.plant) - use.used.value;
        if (left <= 0) continue;
        sum += left;
        all << countedPlant(season, use.plant, left);
    }
    if (all.isEmpty()) return {};
    return ShareSumsSay::tr("%n stem(s) (is|are) left: %1.", nullptr, static_cast<int>(sum))
        .arg(all.join(QStringLiteral(", ")));
}

} // namespace withy::ui
