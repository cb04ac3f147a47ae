// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/work_calendar.h"

#include <vector>

/// Sums of stretches of time, in any order, overlapping or not; what comes out is in order and apart.
namespace withy::runup {

std::vector<TimeSpan> joined(std::vector<TimeSpan> spans);
/// `spans` without what lies in `holes`.
std::vector<TimeSpan> without(std::vector<TimeSpan> spans, std::vector<TimeSpan> holes);
/// What lies in both.
std::vector<TimeSpan> inBoth(std::vector<TimeSpan> a, std::vector<TimeSpan> b);

} // namespace withy::runup
