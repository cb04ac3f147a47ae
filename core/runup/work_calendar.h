// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"

#include <vector>

/// When one pair of hands is free: within the day's working hours and outside busy hours.
namespace withy::runup {

struct TimeSpan {
    LocalTime from;
    LocalTime to; ///< exclusive
};

class WorkCalendar {
public:
    /// Minutes after midnight, 0 <= workFrom < workTo <= 1440. Busy spans may overlap and come in any order.
    WorkCalendar(int workFrom, int workTo, std::vector<TimeSpan> busy);

    /// Latest start so that `work` free minutes lie between it and `end`. Looks back at most 60 days and
    /// then gives the start of the search: busy hours that cover everything leave no other answer.
    [[nodiscard]] LocalTime startFor(LocalTime end, Minutes work) const;
    /// Earliest end so that `work` free minutes lie between `start` and it; looks ahead at most 60 days.
    [[nodiscard]] LocalTime endFor(LocalTime start, Minutes work) const;
    /// Takes these minutes away too.
    void occupy(TimeSpan span);

    [[nodiscard]] const std::vector<TimeSpan>& busy() const { return busy_; }

private:
    /// The free stretches of one day, in order.
    [[nodiscard]] std::vector<TimeSpan> freeOn(Day day) const;

    int workFrom_;
    int workTo_;
    std::vector<TimeSpan> busy_; ///< sorted, not overlapping
};

} // namespace withy::runup
