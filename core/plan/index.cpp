// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/index.h"

#include <algorithm>

namespace withy::plan {

namespace {

template <class Map, class Rows, class ParentOf>
void gather(Map& map, const Rows& rows, ParentOf parentOf) {
    for (const auto& row : rows)
        map[parentOf(row)].push_back(&row);
}

/// Stable, so that equal places keep the order of ids.
template <class Map, class KeyOf>
void order(Map& map, KeyOf keyOf) {
    for (auto& [parent, list] : map) {
        std::stable_sort(list.begin(), list.end(),
                         [&](const auto* a, const auto* b) { return keyOf(*a) < keyOf(*b); });
    }
}

} // namespace

Index::Index(const model::Season& s) : season(s) {
    using namespace model;
    gather(slots, s.slots, [](const Slot& r) { return r.design; });
    order(slots, [](const Slot& r) { return r.position; });
    gather(slotPlants, s.slotPlants, [](const SlotPlant& r) { return r.slot; });
    order(slotPlants, [](const SlotPlant& r) { return r.position; });
    gather(designSundries, s.designSundries, [](const DesignSundry& r) { return r.design; });
    gather(lines, s.lines, [](const Line& r) { return r.booking; });
    gather(drops, s.drops, [](const Drop& r) { return r.booking; });
    order(drops, [](const Drop& r) { return r.time; });
    gather(payments, s.payments, [](const Payment& r) { return r.booking; });
    gather(questions, s.questions, [](const Question& r) { return r.booking; });
    gather(mixParts, s.ribbonMixParts, [](const RibbonMixPart& r) { return r.mix; });
    gather(ribbonLengths, s.ribbonLengths, [](const RibbonLength& r) { return r.ribbon; });
    gather(facts, s.plantFacts, [](const PlantFact& r) { return r.plant; });
    gather(hazards, s.plantHazards, [](const PlantHazard& r) { return r.plant; });
}

} // namespace withy::plan
