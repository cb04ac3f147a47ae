// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/ready_project.h"

#include <compare>

/// Serial schedule generation: tasks in the order of a list, each as early as the calendars, the work laid
/// before and what it waits for allow. Then forward-backward improvement: everything pushed to its end, last
/// ends first, and back again, first starts first (Tormos and Lova 2001; Valls, Ballestin and Quintanilla
/// 2005, "Justification and RCPSP"). Neither push ever makes a schedule worse.
namespace withy::runup {

/// Less is better.
struct Score {
    Time outside = 0; ///< minutes past the deadlines, all tasks together
    Time spans = 0;   ///< last ends, all groups together

    friend auto operator<=>(const Score&, const Score&) = default;
};

constexpr Time unplacedCost = 1'000'000'000'000; ///< in `outside`, for a task that found no place

struct Laid {
    std::vector<Place> places;
    std::vector<int> modes; ///< among ReadyTask::modes; -1: no place was found
    Score score;
};

class SerialSchedule {
public:
    explicit SerialSchedule(const ReadyProject& ready);

    /// `list`: all tasks not pinned, each after those it waits for. `modes`: the way each is done, -1 or an
    /// empty list: whichever ends first. `floors`: no task starts before its own; empty: none.
    void lay(const std::vector<int>& list, const std::vector<int>& modes, const std::vector<Time>& floors,
             Laid& out);

private:
    [[nodiscard]] Time readyAt(int task, const Laid& out) const;
    void place(int task, int mode, Time from, Laid& out);
    void judge(Laid& out);

    const ReadyProject& ready_;
    LoadProfile profile_;
    std::vector<Time> last_; ///< by group
};

/// The two directions of a project, and a schedule improved between them.
class ForwardBackward {
public:
    ForwardBackward(const ReadyProject& forward, const ReadyProject& backward);

    /// Lays the list and improves it until it stops getting better, at most `rounds` times; `list` becomes
    /// the order of starts. Returns how many schedules were laid.
    int lay(std::vector<int>& list, const std::vector<int>& modes, Laid& out, int rounds = 1);

private:
    void improve(std::vector<int>& list, Laid& laid);
    void sortByStart(std::vector<int>& list, const Laid& laid) const;

    const ReadyProject& ready_;
    SerialSchedule forward_;
    SerialSchedule backward_;
    std::vector<int> rank_; ///< in ReadyProject::order
    std::vector<int> back_;
    std::vector<Time> floors_;
    Laid turned_;
    Laid next_;
};

} // namespace withy::runup
