// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/volume.h"

namespace withy::designs {

/// volumeTo() without its working, for loops that ask thousands of times. Preconditions: checkShape() has
/// nothing to say, and the level is from 0 to the depth.
double cubicMillimetresTo(const ProfileShape& shape, double level);

} // namespace withy::designs
