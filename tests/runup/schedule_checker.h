// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/schedule.h"

#include <string>
#include <vector>

/// Checks a schedule against its project minute by minute, from the words of project.h alone: it shares no
/// code with the scheduler.
namespace withy::runup::tests {

/// Units of `resource` at the minute that begins at `t`.
int unitsAt(const Resource& resource, Time t);

/// Whether the calendars alone have what the mode needs at `t`.
bool hoursFor(const Project& project, const Mode& mode, Time t);

/// The end of a task begun at `start`, going on whenever it may; -1 when its hours do not allow that start.
Time endOf(const Project& project, const Task& task, const Mode& mode, Time start);

/// The end of a pinned task: it is not broken off, or, if splittable, goes on whenever its hours allow.
Time pinnedEnd(const Project& project, const Task& task);

/// What is wrong: precedence, calendars, capacity, windows, pins that moved, sums that do not add up. Empty:
/// nothing.
std::vector<std::string> complaints(const Project& project, Aim aim, const Schedule& schedule);

} // namespace withy::runup::tests
