// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

namespace withy::ui {

/// The demo season with its bookings again and again until there are `bookings` of them, and long names.
model::Season overfullSeason(int bookings);

} // namespace withy::ui
