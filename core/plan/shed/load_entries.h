// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/shed_input.h"

/// What stands on the vehicle's floor. Walls of trays and buckets, and a can's size, are from memory.
namespace withy::plan {

/// Stems of pieces made where they stand, in buckets, and their containers.
void addMadeThere(const ShedInput& in, const LinePlan& line, const model::Container& container,
                  std::size_t drop, BookingPacking& packing);
void addTrayEntries(const model::Season& season, BookingPacking& packing);
/// Water to carry, in cans no heavier than the lifting limit. They are the first out of the door.
void addWaterCans(const model::Season& season, BookingPacking& packing);
/// The first vehicle, in order, that takes it all; where none does, the one that takes most.
void loadEntries(const ShedInput& in, BookingPacking& packing);

} // namespace withy::plan
