// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/project.h"

#include <utility>

namespace withy::runup::tests {

/// Least minutes outside the windows, then least sum of the groups' last ends (aim `soonest`) or greatest sum
/// of their first starts (`latest`), over every way of doing and every start from `from` to `to`, one after
/// the other. For very small projects.
std::pair<Time, Time> bestOfEveryStart(const Project& project, Aim aim, Time from, Time to);

} // namespace withy::runup::tests
