// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

/// Work to be laid into time, told apart from what it is: tasks, hands and room by number.
///
/// Times are whole units (the run-up takes minutes) from an origin of the caller's choice and may be
/// negative. A span holds its `from` and not its `to`. Tasks are named by their place in `tasks`.
namespace withy::runup {

using Time = std::int64_t;

constexpr Time never = std::numeric_limits<Time>::max() / 4; ///< no deadline
constexpr Time always = -never;                              ///< no release

/// From `at` on there are `units`.
struct Change {
    Time at = 0;
    int units = 0;
};

/// Something only so much of which can be used at once: a pair of hands, the bench, the van.
struct Resource {
    int units = 0;               ///< until the first change
    std::vector<Change> changes; ///< at rising times
};

/// Hours a resource is not there, or less of it.
struct Busy {
    Time from = 0;
    Time to = 0;
    int units = 0;
};

/// `units` always, less what is busy (spans may overlap and come in any order), never less than nought.
Resource steadyResource(int units, std::vector<Busy> busy = {});

struct Hours {
    Time from = 0;
    Time to = 0;
};

/// `units` within the hours, none outside; hours may touch and overlap.
Resource resourceInHours(int units, const std::vector<Hours>& hours);

struct Need {
    int resource = 0;
    int units = 1; ///< held while the task is worked at
};

/// One way to do a task: who with, and how long it takes them.
struct Mode {
    Time duration = 0;
    std::vector<Need> needs; ///< each resource once
};

/// Fixed by hand: it stays there, whatever else is there.
struct Pin {
    Time start = 0;
    int mode = 0;
};

struct Task {
    std::vector<Mode> modes;
    Time release = 0;      ///< not begun before
    Time deadline = never; ///< done by
    /// Laid down where a calendar ends and taken up where it goes on; never broken off for other work.
    /// It begins at a working moment and holds nothing while it lies.
    bool splittable = false;
    int group = 0; ///< the booking: each group's own span is kept short; 0 upwards
    std::optional<Pin> pin;
    bool releaseMoves = false; ///< could begin sooner if the grower did: bench work, not what must be fresh
    bool byPiece = false;      ///< takes less time when its group has fewer pieces
};

/// `after` begins `lag` or more after `before` has ended; a lag is not negative.
struct Follows {
    int before = 0;
    int after = 0;
    Time lag = 0;
};

struct Project {
    std::vector<Resource> resources;
    std::vector<Task> tasks;
    std::vector<Follows> follows;
};

enum class Aim {
    soonest, ///< from the releases on, each group done as soon as can be
    latest,  ///< back from the deadlines, each group begun as late as can be: flowers stay fresh
};

enum class ProjectTrouble {
    badResource,      ///< negative units, or changes not at rising times
    noModes,          ///< a task nobody can do
    badMode,          ///< a negative duration, or more than a hundred years
    badNeed,          ///< units below one, a resource that is not there or is named twice
    badTime,          ///< a release, deadline, pin or lag beyond a thousand years, or a negative lag
    badPin,           ///< its way of doing is not there
    badGroup,         ///< negative, or not below the number of tasks
    badFollows,       ///< names a task that is not there, or itself
    circle,           ///< tasks that wait for each other
    noDeadline,       ///< aim `latest`: nothing says when it must be done
    noHands,          ///< at no time is there enough of what it needs: helpers without hours, all busy
    longerThanAnyGap, ///< would fit only if it could be laid down in between
};

struct ProjectFault {
    ProjectTrouble trouble{};
    int task = -1;     ///< the first it concerns; -1: none
    int resource = -1; ///< the resource it concerns; -1: none
    Time longest = 0;  ///< longerThanAnyGap: the longest stretch there is
    Time needed = 0;   ///< longerThanAnyGap: the shortest way of doing it
};

/// The first fault of shape (all above but the last three), if any.
std::optional<ProjectFault> shapeFault(const Project& project);

} // namespace withy::runup
