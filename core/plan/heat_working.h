// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/day_heat.h"

namespace withy::plan {

/// How warm it gets between two times of a day, as it was worked out: the day's lowest and highest, as
/// measured, forecast or usual, the hours, the limit of the settings, and the warmest of those hours. Empty
/// when nothing is known of the day.
Working warmestWorking(PlaceDays& days, LocalTime start, LocalTime end, double celsius,
                       const model::Settings& settings);

} // namespace withy::plan
