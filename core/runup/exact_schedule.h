// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/serial_schedule.h"

#include <stop_token>

namespace withy::runup {

/// Branch and bound over all lists and ways of doing, for few tasks. Lists in order of starts are enough:
/// a best schedule in which nothing can be moved forward is the serial schedule of its own starts.
class ExactSchedule {
public:
    /// At most `nodes` placings.
    ExactSchedule(const ReadyProject& ready, int nodes);

    /// Looks for something better than `best` and puts it there. True: none is better than what is there
    /// now; false: stopped, or the nodes ran out.
    bool improve(Laid& best, const std::stop_token& stop);

private:
    struct Depth {
        LoadProfile profile;
        Laid laid;
    };

    void branch(std::size_t depth, Time lastStart);
    void tryAt(std::size_t depth, int task, Time lastStart);
    [[nodiscard]] bool open(int task) const;
    [[nodiscard]] Score least(const Depth& at) const;
    [[nodiscard]] Time readyAt(int task, const std::vector<Place>& places) const;

    const ReadyProject& ready_;
    int nodes_ = 0;
    bool cut_ = false; ///< stopped before the end
    std::vector<Depth> depths_;
    std::vector<bool> placed_;
    Laid* best_ = nullptr;
    std::stop_token stop_;
};

} // namespace withy::runup
