// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

/// The demo season without the window's libraries: read from resources/demo.
namespace withy::tests {

model::Season demoFromFiles();

/// Its bookings with their lines again and again, until there are so many; at least as many as the demo has.
model::Season demoManyTimes(int bookings);

} // namespace withy::tests
