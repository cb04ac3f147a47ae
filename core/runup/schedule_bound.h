// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/serial_schedule.h"

#include <stop_token>

/// What no schedule can beat.
///
/// By path: what each task waits for, and its calendars. By refutation (destructive improvement, Klein and
/// Scholl 1999): a last end is supposed, the windows it leaves are narrowed by what must be going on
/// whenever (time-table), by pairs that cannot go on side by side, and by what they wait for; when more
/// work must fall between two times than there are hands for (Erschler, Lopez and Thuriot 1991, energetic
/// reasoning), the supposed end is impossible. Hands that can stand in for each other count together.
namespace withy::runup {

class ScheduleBound {
public:
    ScheduleBound(const ReadyProject& forward, const ReadyProject& backward);

    /// Last ends of the groups that cannot be beaten, by path alone. `always` for a group without tasks.
    [[nodiscard]] const std::vector<Time>& byPath() const { return path_; }

    /// The same by refutation, for one group, up to `value` (its end in a schedule that is known).
    /// `deadlinesHold`: only schedules that keep every deadline are asked after.
    [[nodiscard]] Time byRefutation(int group, Time value, bool deadlinesHold,
                                    const std::stop_token& stop = {}) const;

    /// Proved: no schedule keeps all deadlines.
    [[nodiscard]] bool deadlinesImpossible() const;

private:
    /// When a task can be going on.
    struct Window {
        Time start = 0; ///< earliest
        Time end = 0;   ///< of the earliest start
        Time lastStart = 0;
        Time lastEnd = 0;
    };

    using Windows = std::vector<Window>;

    [[nodiscard]] bool refuted(int group, Time end, bool deadlinesHold) const;
    [[nodiscard]] bool narrow(Windows& windows) const;
    [[nodiscard]] bool narrowByWaiting(Windows& windows) const;
    [[nodiscard]] bool narrowByTable(Windows& windows) const;
    [[nodiscard]] bool narrowByPairs(Windows& windows) const;
    [[nodiscard]] bool setStart(Windows& windows, int task, Time start) const;
    [[nodiscard]] bool setEnd(Windows& windows, int task, Time end) const;
    [[nodiscard]] bool overloaded(const Windows& windows, const std::vector<int>& pool) const;
    void findPairs();

    const ReadyProject& ready_;
    const ReadyProject& backward_;
    std::vector<Place> early_;
    std::vector<Time> path_;
    std::vector<std::vector<int>> pools_; ///< resources counted together
    std::vector<std::pair<int, int>> pairs_;
};

} // namespace withy::runup
