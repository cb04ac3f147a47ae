// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/shed_input.h"

namespace withy::plan {

/// What stands on the venue's tables, and whether it fits. Nothing stands on a table that no placement names.
BookingTables bookingTables(const ShedInput& in, const model::Booking& booking, const BookingPlan& plan);

/// Covers of a table as they sit: as many as have room along the sides, the others at the two ends.
packing::TableTop tableTop(const model::VenueTable& table, const packing::PlaceSetting& setting);

} // namespace withy::plan
