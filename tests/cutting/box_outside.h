// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting/ribbon_box.h"

#include <string>

/// A ribbon box as a whole-number programme in the CPLEX LP format, solved by GLPK's glpsol, one objective
/// after the other. A whole variable for each kind of piece and each reel or end: no patterns.
namespace withy::cutting::tests {

bool glpsolIsThere();

/// Least missing, then least waste, then least cut from reels; `opened` is not looked at. `error` says what
/// went wrong.
BoxCost bestByGlpsol(const RibbonBox& box, std::string& error);

} // namespace withy::cutting::tests
