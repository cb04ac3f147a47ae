// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/garden.h"
#include "core/model/shed.h"

namespace withy::model {

/// How a piece is made; repeatable.
struct Design {
    Id<Design> id;
    std::string name;
    PieceKind kind = PieceKind::table;
    std::optional<Id<Container>> container; ///< blank: bound, not standing in anything
    bool loose = true;                      ///< loose in the neck, or tied
    Millimetres lift{15};                   ///< stem ends off the base
    Millimetres heightLow{60};              ///< of the heads above the rim (above the tie when bound)
    Millimetres heightMiddle{110};
    Millimetres heightTall{170};
    std::optional<Millimetres> stemsBelowTie; ///< bound pieces: from tie to stem ends
    std::optional<Millimetres> spread;        ///< widest, over all heads
    double waterShare = 75;                   ///< percent of the container's volume
    std::optional<Id<RibbonMix>> ribbonMix;
    std::int64_t wraps = 1;
    Millimetres overlap{20};
    RibbonFinish finish = RibbonFinish::none;
    Millimetres loop{}; ///< length of one bow loop, laid flat
    std::int64_t loops = 2;
    Millimetres tail{}; ///< one tail
    Millimetres trim{10};
    std::optional<double> minutes; ///< to make one
    Basis minutesBasis = Basis::commonPractice;
    std::optional<Money> price; ///< own price for one
    std::string makingNotes;
    std::string picture;             ///< file name of a photograph of a real trial
    std::optional<Stems> trialCount; ///< stems counted in a piece really made
    std::optional<Day> trialDate;
    std::string trialNote;
};

/// One ingredient of a design.
struct Slot {
    Id<Slot> id;
    Id<Design> design;
    std::int64_t position = 0; ///< making order
    std::string label;
    Purpose purpose = Purpose::filler;
    Stems count{1};
    Stems mayVaryBy{0};
    Tier tier = Tier::middle;
    bool clump = false;
};

/// A plant that may fill a slot; the lowest position is best.
struct SlotPlant {
    Id<SlotPlant> id;
    Id<Slot> slot;
    std::int64_t position = 0;
    Id<Plant> plant;
    std::optional<double> share; ///< wished percent of the slot
};

struct DesignSundry {
    Id<DesignSundry> id;
    Id<Design> design;
    Id<Sundry> sundry;
    double amount = 1; ///< per piece
};

} // namespace withy::model
