// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/list_search.h"
#include "core/runup/project.h"

#include <stop_token>

/// A project laid into time: what is pinned stays, the rest as near to the best as is told, with a bound.
namespace withy::runup {

struct Placed {
    Time start = 0;
    Time end = 0;  ///< a splittable task may lie idle in between
    int mode = -1; ///< in Task::modes; -1: no place was found in all its hours
    /// Aim `soonest`: minutes past its deadline; `latest`: minutes before its release, that is how much too
    /// early it would have to begin. What is pinned before or after it narrows both.
    Time outside = 0;
};

/// What is wrong with a pin; the pin stays all the same.
enum class PinTrouble {
    notInHours,    ///< what it needs is not there: busy hours, or no helper
    takenTwice,    ///< two pins need the same thing at the same time
    outOfOrder,    ///< it begins before a pinned task it waits for has ended
    outsideWindow, ///< before its release or past its deadline
};

struct PinFault {
    PinTrouble trouble{};
    int task = 0;
    int other = -1;    ///< the other pin, where there is one
    int resource = -1; ///< what is not there or taken twice
};

struct GroupSpan {
    Time first = 0; ///< first start
    Time last = 0;  ///< last end
    /// Aim `soonest`: no schedule ends the group sooner; `latest`: none begins it later.
    Time atBest = 0;
    bool proved = false; ///< this one is at its best
};

struct Schedule {
    std::vector<Placed> tasks;
    std::vector<GroupSpan> groups; ///< by group; nought where a group has no task
    std::vector<PinFault> pinFaults;
    Time outside = 0; ///< minutes outside the windows, all tasks together; nought: it fits
    Time worst = 0;   ///< of one task
    int unplaced = 0;
    Time span = 0;             ///< minutes, all groups together, from the first moment work may begin
    Time spanAtLeast = 0;      ///< no schedule that fits has less
    bool proved = false;       ///< no schedule is better
    bool misfitProved = false; ///< no schedule fits
    bool stopped = false;      ///< the best until the stop
    int tried = 0;             ///< schedules laid

    [[nodiscard]] bool fits() const { return outside == 0 && unplaced == 0; }

    /// How far the spans can be from the shortest, in percent; nought when proved.
    [[nodiscard]] double withinPercent() const;
};

/// The best schedule found: least outside the windows first, then the shortest spans. Pure: the same in gives
/// the same out unless stopped; at least one schedule is laid even then.
Result<Schedule, ProjectFault> schedule(const Project& project, Aim aim, const SearchLimits& limits = {},
                                        const std::stop_token& stop = {});

} // namespace withy::runup
