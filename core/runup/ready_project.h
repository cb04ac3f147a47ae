// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/load_profile.h"

#include <vector>

/// A project made ready to be laid out in one direction, with what is pinned already in place.
namespace withy::runup {

struct Link {
    int task = 0;
    Time lag = 0;
};

struct ReadyMode {
    Mode mode;
    int number = 0; ///< in Task::modes
};

struct ReadyTask {
    std::vector<ReadyMode> modes; ///< those the calendars have room for at all
    Time release = always;        ///< of its own and of what is pinned before it
    Time deadline = never;        ///< of its own and of what is pinned after it
    bool splittable = false;
    int group = 0;
    bool pinned = false;
    std::vector<Link> before; ///< tasks it waits for, pinned ones left out
    std::vector<Link> after;
};

struct ReadyProject {
    std::vector<ReadyTask> tasks;
    std::vector<Place> pins;       ///< by task; only of those pinned
    std::vector<int> order;        ///< tasks not pinned, each after those it waits for
    std::vector<Time> pinnedGroup; ///< by group: the last end of what is pinned; `always`: nothing is
    LoadProfile calendar;          ///< nothing taken
    LoadProfile base;              ///< what is pinned taken
};

/// The places of the pinned tasks; nought for the others.
std::vector<Place> pinPlaces(const Project& project);

/// Project of sound shape. `backwards`: time runs the other way, t becomes -t, so that what is laid as
/// early as can be lies as late as can be. `ways`: the same project in the other direction, whose ways of
/// doing are taken over, so that both number them alike.
ReadyProject readyProject(const Project& project, const std::vector<Place>& pins, bool backwards,
                          const ReadyProject* ways = nullptr);

/// Where each task would lie by its calendars, its release (or `floors`, where later; empty: none) and
/// what it waits for alone. No schedule has an earlier start or end. `never` where there is no place.
std::vector<Place> earliestPlaces(const ReadyProject& ready, const std::vector<Time>& floors = {});

/// noDeadline (only when `backwards`), noHands or longerThanAnyGap.
std::optional<ProjectFault> handsFault(const Project& project, const ReadyProject& ready, bool backwards);

} // namespace withy::runup
