// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/garden_supply.h"

namespace withy::plan {

namespace {

cover::PatchSupply supplyOf(const model::Patch& patch, const PatchOutlook& outlook,
                            Stems garden::StemLevels::*level) {
    cover::PatchSupply supply;
    supply.patch = patch.id;
    supply.plant = patch.plant;
    supply.first = outlook.forecast->from;
    supply.holdDays = outlook.holdDays;
    supply.ready.reserve(outlook.forecast->days.size());
    for (const auto& day : outlook.forecast->days)
        supply.ready.push_back((day.supply.*level).value);
    return supply;
}

} // namespace

GardenSupply gardenSupply(const model::Season& season, const ForecastPlan& forecast) {
    GardenSupply supply;
    for (const auto& [id, outlook] : forecast.patches) {
        const auto* patch = season.patches.find(id);
        if (!patch || !outlook.forecast) continue;
        supply.cautious.push_back(supplyOf(*patch, outlook, &garden::StemLevels::cautious));
        supply.likely.push_back(supplyOf(*patch, outlook, &garden::StemLevels::likely));
    }
    return supply;
}

} // namespace withy::plan
