// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/schedule.h"

#include <cstdint>

/// When the work does not fit: by how much, where, and what would mend it. Mends are found by laying the
/// changed work out again, never by rule of thumb.
namespace withy::runup {

/// More work than hands between two times, each task as far outside them as its window allows.
struct Overload {
    std::vector<int> resources; ///< that can stand in for each other
    Time from = 0;
    Time to = 0;
    Time work = 0; ///< minutes of hands needed at the least
    Time room = 0; ///< minutes of hands there

    [[nodiscard]] Time over() const { return work - room; }
};

struct Misfit {
    Time minutes = 0;    ///< the task furthest outside its window, in the best schedule found
    int task = -1;       ///< that task; one without any place comes first
    bool proved = false; ///< no schedule fits
    /// One step after the other takes longer than there is, whatever other work there is: minutes past its
    /// deadline, and the task that cannot be done in time. Nought and -1: not for that reason.
    Time chain = 0;
    int chainTask = -1;
    /// Where it is tightest; `over()` above nought is a proof. Nothing when no task has a window.
    std::optional<Overload> tightest;
    /// The fullest day within it: its first minute, the least work that falls on it and its room. Nothing
    /// when its work can all be done on other days.
    std::optional<Overload> day;
};

/// `dayLength`: 1440 for minutes; days begin at its multiples.
Misfit misfit(const Project& project, const Schedule& schedule, Time dayLength = 1440);

// ---- changes to the work ----

/// All that may begin sooner (Task::releaseMoves) begins up to `earlier` sooner.
Project startedEarlier(Project project, Time earlier);

struct ExtraHands {
    Resource hours;
    int like = 0;                 ///< does what this resource does
    Time minutesPerHundred = 100; ///< takes 150 for what takes that one 100
    bool beside = false;          ///< what is done by the piece may be done by both at once
};

Project withOneMore(Project project, const ExtraHands& hands);

/// The group's tasks by the piece take `left` of `pieces` of their time, rounded up.
Project withPieces(Project project, int group, std::int64_t pieces, std::int64_t left);

// ---- mends ----

enum class MendKind { startEarlier, oneMoreHelper, fewerPieces };

struct Mend {
    MendKind kind{};
    bool fits = false;
    Time earlier = 0;        ///< startEarlier: the least that does it
    int group = -1;          ///< fewerPieces
    std::int64_t pieces = 0; ///< fewerPieces: the most that can be kept
    Time outside = 0;        ///< what stays outside when even all of the change does not do
};

struct GroupPieces {
    int group = 0;
    std::int64_t pieces = 0;
};

struct MendChoices {
    Time earlierAtMost = 2880;
    Time earlierStep = 30;
    std::optional<ExtraHands> helper;
    std::vector<GroupPieces> pieces;
};

/// Each choice laid out again; those that do come first. A project with a fault has none.
std::vector<Mend> mends(const Project& project, Aim aim, const MendChoices& choices,
                        const SearchLimits& limits = {}, const std::stop_token& stop = {});

} // namespace withy::runup
