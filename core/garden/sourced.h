// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/working.h"

#include <string>

namespace withy::garden {

/// A value together with where it comes from, so that a working can say so.
struct Sourced {
    double value = 0;
    Basis basis = Basis::notKnown;
    std::string source; ///< may be empty
    Origin from{};      ///< where it can be changed
};

} // namespace withy::garden
