// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <unordered_map>
#include <vector>

namespace withy::plan {

/// Children by parent, in their order, so that a plan never searches a table.
struct Index {
    explicit Index(const model::Season& season);

    const model::Season& season;

    template <class Parent, class Child>
    using By = std::unordered_map<Id<Parent>, std::vector<const Child*>>;

    By<model::Design, model::Slot> slots;         ///< in making order
    By<model::Slot, model::SlotPlant> slotPlants; ///< best first
    By<model::Design, model::DesignSundry> designSundries;
    By<model::Booking, model::Line> lines;
    By<model::Booking, model::Drop> drops; ///< in order of time
    By<model::Booking, model::Payment> payments;
    By<model::Booking, model::Question> questions;
    By<model::RibbonMix, model::RibbonMixPart> mixParts;
    By<model::Ribbon, model::RibbonLength> ribbonLengths;
    By<model::Plant, model::PlantFact> facts;
    By<model::Plant, model::PlantHazard> hazards;

    /// The children of one parent; empty when it has none.
    template <class Map, class Key>
    static const typename Map::mapped_type& of(const Map& map, Key key) {
        static const typename Map::mapped_type none;
        const auto found = map.find(key);
        return found == map.end() ? none : found->second;
    }
};

} // namespace withy::plan
