// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

namespace withy::plan {

/// Of two choices for a slot: one that has a share of it before one that has none, then by position.
inline bool isBefore(const model::SlotPlant& a, const model::SlotPlant& b) {
    const auto hasShare = [](const model::SlotPlant& choice) { return choice.share && *choice.share > 0; };
    return hasShare(a) != hasShare(b) ? hasShare(a) : a.position < b.position;
}

/// The plant that a slot is drawn, named and measured by: the first that has a share of it, or the first of
/// all where nobody gave shares, as slotFill() has it. Null when the slot names no plant.
inline const model::Plant* bestPlant(const model::Season& season, Id<model::Slot> slot) {
    const model::SlotPlant* best = nullptr;
    for (const auto& choice : season.slotPlants) {
        if (choice.slot == slot && (!best || isBefore(choice, *best))) best = &choice;
    }
    return best ? season.plants.find(best->plant) : nullptr;
}

} // namespace withy::plan
