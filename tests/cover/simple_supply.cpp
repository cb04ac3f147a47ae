// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cover/simple_supply.h"

#include "core/plan/needs_plan.h"

namespace withy::plan::tests {

namespace {

/// Heights of the triangle, summing to 1.
std::vector<double> triangle(int toPeak, int toLast) {
    std::vector<double> heights;
    double sum = 0;
    for (int day = 0; day <= toLast; ++day) {
        const double h =
            day <= toPeak ? (day + 1.0) / (toPeak + 1) : (toLast - day + 1.0) / (toLast - toPeak + 1);
        heights.push_back(h);
        sum += h;
    }
    for (auto& h : heights)
        h /= sum;
    return heights;
}

} // namespace

GardenSupply simpleSupply(const model::Season& season, std::int64_t cautiousPercent) {
    GardenSupply supply;
    for (const auto& patch : season.patches) {
        if (!patch.expectedStems || !patch.firstCut || !patch.peakCut || !patch.lastCut) continue;
        cover::PatchSupply likely;
        likely.patch = patch.id;
        likely.plant = patch.plant;
        likely.first = *patch.firstCut;
        likely.holdDays = static_cast<int>(season.plants.find(patch.plant)->holdDays.value_or(0));
        likely.ready = shareOut(patch.expectedStems->value,
                                triangle(*patch.peakCut - *patch.firstCut, *patch.lastCut - *patch.firstCut));
        auto cautious = likely;
        for (auto& n : cautious.ready)
            n = n * cautiousPercent / 100;
        supply.likely.push_back(std::move(likely));
        supply.cautious.push_back(std::move(cautious));
    }
    return supply;
}

} // namespace withy::plan::tests
