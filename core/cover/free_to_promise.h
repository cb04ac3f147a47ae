// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cover/allocation.h"

#include <vector>

namespace withy::cover {

/// A plant's stems that become ready in one ISO 8601 week, at the level of certainty of the supply given.
/// expected + inStore = promised + asked + free, always. Stems count in the week they become ready, whenever
/// they are cut; offers are not counted.
struct PlantWeek {
    Id<model::Plant> plant;
    Day monday;
    Stems expected; ///< from the garden
    Stems inStore;  ///< from lots
    Stems promised; ///< to firm and held claims
    Stems asked;    ///< by quoted and enquiry claims
    Stems free;
};

/// By plant and week; weeks in which nothing becomes ready are left out.
std::vector<PlantWeek> freeToPromise(const Allocation& allocation);

struct IsoWeek {
    int year = 0;
    int week = 0; ///< 1 to 53
};

/// ISO 8601: the week belongs to the year of its Thursday.
IsoWeek isoWeek(Day day);
Day mondayOf(Day day);

} // namespace withy::cover
