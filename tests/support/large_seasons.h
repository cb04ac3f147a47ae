// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

/// Seasons larger than anyone's, for tests, measurements and pictures.
namespace withy::ui {

/// The demo season with its bookings again and again, each with its pieces, until there are `bookings`;
/// the copies bear long names. At least as many as the demo has.
model::Season seasonWithBookings(int bookings);

/// An empty season with `plants` plants; every seventh is a zinnia, the others are foliage.
model::Season seasonOfPlants(int plants);

} // namespace withy::ui
