// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/schedule.h"

namespace withy::runup {

/// What is wrong with the pins alone. `places`: theirs, as pinPlaces() gives them.
std::vector<PinFault> pinFaults(const Project& project, const std::vector<Place>& places);

} // namespace withy::runup
