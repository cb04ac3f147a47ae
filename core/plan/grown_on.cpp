// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/grown_on.h"

#include "core/designs/growing_on.h"
#include "core/plan/best_plant.h"

#include <algorithm>

namespace withy::plan {

double grownOn(const model::Plant& plant, const std::vector<designs::WaterPhase>& stood) {
    if (!plant.growsOnMmPerDay) return 0;
    designs::GrowingOn asked;
    asked.millimetresPerDay = *plant.growsOnMmPerDay;
    asked.q10 = plant.q10.value_or(asked.q10);
    asked.phases = stood;
    const auto grown = designs::growOn(asked);
    return grown.ok() ? grown->millimetres : 0;
}

double grownOn(const model::Season& season, Id<model::Design> design,
               const std::vector<designs::WaterPhase>& stood) {
    const auto* d = season.designs.find(design);
    if (!d) return 0;
    // What counts is the top: a low stem may grow past no taller one.
    const auto heightOf = [&](model::Tier tier) {
        return tier == model::Tier::low      ? d->heightLow.value
               : tier == model::Tier::middle ? d->heightMiddle.value
                                             : d->heightTall.value;
    };
    double before = 0, after = 0;
    for (const auto& slot : season.slots) {
        if (slot.design != design || slot.count.value < 1) continue;
        const auto* plant = bestPlant(season, slot.id);
        const double height = static_cast<double>(heightOf(slot.tier));
        before = std::max(before, height);
        after = std::max(after, height + (plant ? grownOn(*plant, stood) : 0));
    }
    return after - before;
}

} // namespace withy::plan
