// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/index.h"
#include "core/plan/plan.h"

namespace withy::plan {

DesignPlan designPlan(const Index& index, const model::Design& design);

/// Share of a slot each of its plants gets when nothing competes: wished shares where they are given,
/// all to the best plant where not. Empty when the slot names no plant.
std::vector<std::pair<Id<model::Plant>, double>> slotFill(const Index& index, Id<model::Slot> slot);

/// The stems that stand in the neck, slot by slot, each as thick as its best plant.
std::vector<designs::StemGroup> stemGroups(const Index& index, Id<model::Design> design);

} // namespace withy::plan
