// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <optional>
#include <string>
#include <vector>

/// Trays, boxes and buckets on a vehicle's load floor. Nothing is stacked. How loads are tied down and what a
/// vehicle may carry is for its plate and the law of the road. Problem fields: floor_length, floor_width,
/// plate_load, item_length, item_width, item_mass, drop, items.
namespace withy::packing {

struct LoadFloor {
    Millimetres length; ///< from the front to the door
    Millimetres width;
    std::optional<Grams> plateLoad; ///< blank: not known
};

struct LoadItem {
    Millimetres length; ///< outside
    Millimetres width;
    std::optional<Grams> mass; ///< blank: not known
    std::int64_t drop = 1;     ///< 1 is unloaded first
    bool mayTurn = true;
    std::string subject;
};

inline constexpr std::size_t mostLoadItems = 500;
inline constexpr std::int64_t mostDrops = 1'000;

struct LoadedItem {
    std::size_t item = 0;
    Millimetres x; ///< from the front to its near side
    Millimetres y; ///< from the left wall, looking forward
    Millimetres length;
    Millimetres width; ///< as it stands, turned or not
    bool turned = false;
};

struct LoadPlan {
    std::vector<LoadedItem> loaded;     ///< in the order of loading: last drop first
    std::vector<std::size_t> notLoaded; ///< no room on the floor
    Grams mass;                         ///< of what is loaded, as far as it is known
    std::int64_t massNotKnown = 0;      ///< loaded items without a mass: heavier in truth
    std::optional<Grams> overPlate;     ///< by how much; 0 when within it; blank when the plate is not known
    Working working;                    ///< of the mass
};

/// Last drop to the front, each item as far forward as what already stands there lets it, straight from the
/// door: nothing of an earlier drop ever stands behind something of a later one. A skyline heuristic
/// (E. K. Burke, G. Kendall, G. Whitwell, Operations Research 52 (2004) 655-671) over several orders within a
/// drop, the same every time; it may miss a tighter load. An item larger than the floor is not loaded.
Result<LoadPlan, Problem> loadVehicle(const LoadFloor& floor, const std::vector<LoadItem>& items);

} // namespace withy::packing
