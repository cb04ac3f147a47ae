// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/project.h"

#include <cstdint>

namespace withy::runup::tests {

/// Plain ones: a few resources with busy blocks, tasks with ways of doing, lags, windows, splits and pins.
struct PlainShape {
    int tasks = 20;
    int resources = 3;
    Time longest = 12; ///< of a task
    Time reach = 120;  ///< blocks, releases and pins lie within
    int pinPercent = 8;
};

/// All of it can be worked at in the end: after `reach` nothing is busy. With `latest`, the same from the
/// other end: nothing is busy before nought, and what nothing waits for has a deadline.
Project plainProject(std::uint64_t seed, const PlainShape& shape, bool latest = false);

/// Weeks of one to four bookings: each washed, ribboned, filled, cut in a window, stripped, stood, made up,
/// rested, packed, driven at a fixed hour and placed; a grower with busy hours, none to two helpers with
/// hours of their own who can do some of it, slower or as fast; a bench and a van. In minutes, from a
/// Monday's midnight; three weeks of working days lie before it.
Project seasonProject(std::uint64_t seed);

} // namespace withy::runup::tests
