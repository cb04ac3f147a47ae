// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/kit_through_time.h"
#include "core/plan/usual_holder.h"

namespace withy::plan {

/// Who keeps what away from the shelf, and from when to when.
struct HeldItem {
    model::Ref item;
    KitHold hold;
};

std::vector<HeldItem> containerHolds(const ShedInput& in);
/// Buckets while the stems stand in them, boxes for what is worn, trays while they are on the road.
std::vector<HeldItem> holderHolds(const ShedInput& in, const PackingOf& packing);
std::vector<HeldItem> sundryHolds(const ShedInput& in, const PackingOf& packing);

/// When a booking's container is due home: the last clearing of the drops it went to.
struct DueHome {
    Day day;
    bool guessed = false;
};

DueHome dueHome(const ShedInput& in, const model::Booking& booking, Id<model::Container> container);

} // namespace withy::plan
