// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/index.h"
#include "core/plan/plan.h"

namespace withy::plan {

DesignPlan designPlan(const Index& index, const model::Design& design);

/// Share of a slot each of its plants gets when nothing competes: wished shares where they are given,
/// all to the best plant where not. Empty when the slot names no plant.
std::vector<std::pair<Id<model::Plant>, double>> slotFill(const Index& index, Id<model::Slot> slot);

} // namespace withy::plan
