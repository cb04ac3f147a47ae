// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/runup/every_start.h"

#include "tests/runup/schedule_checker.h"

#include <algorithm>
#include <limits>

namespace withy::runup::tests {

namespace {

class EveryStart {
public:
    EveryStart(const Project& project, Aim aim, Time from, Time to)
        : p_(project)
        , aim_(aim)
        , from_(from)
        , to_(to)
        , start_(project.tasks.size())
        , end_(project.tasks.size())
        , mode_(project.tasks.size()) {}

    std::pair<Time, Time> best() {
        for (std::size_t t = 0; t < p_.tasks.size(); ++t) {
            if (!p_.tasks[t].pin) continue;
            mode_[t] = p_.tasks[t].pin->mode;
            start_[t] = p_.tasks[t].pin->start;
            end_[t] = pinnedEnd(p_, p_.tasks[t]);
        }
        go(0);
        return best_;
    }

private:
    [[nodiscard]] bool soonest() const { return aim_ == Aim::soonest; }

    void go(std::size_t t) {
        if (t == p_.tasks.size()) {
            best_ = std::min(best_, value());
            return;
        }
        if (p_.tasks[t].pin) return go(t + 1);
        for (std::size_t m = 0; m < p_.tasks[t].modes.size(); ++m) {
            mode_[t] = static_cast<int>(m);
            for (start_[t] = from_; start_[t] <= to_; ++start_[t]) {
                end_[t] = endOf(p_, p_.tasks[t], p_.tasks[t].modes[m], start_[t]);
                if (end_[t] >= start_[t] && allowed(t)) go(t + 1);
            }
        }
    }

    /// Hard limits against the tasks before it in number and the pinned ones.
    [[nodiscard]] bool allowed(std::size_t t) const {
        const auto& task = p_.tasks[t];
        if (soonest() ? start_[t] < task.release : end_[t] > task.deadline) return false;
        for (const auto& f : p_.follows) {
            const auto a = static_cast<std::size_t>(f.before);
            const auto b = static_cast<std::size_t>(f.after);
            const bool known = (a <= t || p_.tasks[a].pin) && (b <= t || p_.tasks[b].pin);
            if ((a != t && b != t) || !known) continue;
            // Against a pin, on the far side of the aim, the order is a wish counted in value().
            if (p_.tasks[soonest() ? b : a].pin) continue;
            if (start_[b] < end_[a] + f.lag) return false;
        }
        return roomFor(t);
    }

    [[nodiscard]] int uses(std::size_t t, int resource, Time at) const {
        if (at < start_[t] || at >= end_[t]) return 0;
        const auto& mode = p_.tasks[t].modes[mode_[t]];
        if (p_.tasks[t].splittable && !hoursFor(p_, mode, at)) return 0;
        for (const auto& need : mode.needs)
            if (need.resource == resource) return need.units;
        return 0;
    }

    [[nodiscard]] bool roomFor(std::size_t t) const {
        for (const auto& need : p_.tasks[t].modes[mode_[t]].needs) {
            for (Time at = start_[t]; at < end_[t]; ++at) {
                int left = unitsAt(p_.resources[need.resource], at);
                for (std::size_t other = 0; other < p_.tasks.size(); ++other)
                    if (p_.tasks[other].pin) left -= uses(other, need.resource, at);
                left = std::max(0, left);
                for (std::size_t other = 0; other <= t; ++other)
                    if (!p_.tasks[other].pin) left -= uses(other, need.resource, at);
                if (left < 0 && uses(t, need.resource, at) > 0) return false;
            }
        }
        return true;
    }

    [[nodiscard]] std::pair<Time, Time> value() const {
        Time outside = 0;
        std::vector<Time> group(p_.tasks.size(), -1'000'000);
        for (std::size_t t = 0; t < p_.tasks.size(); ++t) {
            auto& last = group[p_.tasks[t].group];
            last = std::max(last, soonest() ? end_[t] : -start_[t]);
            if (p_.tasks[t].pin) continue;
            Time limit = soonest() ? p_.tasks[t].deadline : p_.tasks[t].release;
            for (const auto& f : p_.follows) {
                const auto a = static_cast<std::size_t>(f.before);
                const auto b = static_cast<std::size_t>(f.after);
                if (soonest() && a == t && p_.tasks[b].pin) limit = std::min(limit, start_[b] - f.lag);
                if (!soonest() && b == t && p_.tasks[a].pin) limit = std::max(limit, end_[a] + f.lag);
            }
            outside += std::max<Time>(0, soonest() ? end_[t] - limit : limit - start_[t]);
        }
        Time spans = 0;
        for (const Time last : group)
            if (last > -1'000'000) spans += last;
        return {outside, spans};
    }

    const Project& p_;
    Aim aim_;
    Time from_;
    Time to_;
    std::vector<Time> start_, end_;
    std::vector<int> mode_;
    std::pair<Time, Time> best_{std::numeric_limits<Time>::max(), 0};
};

} // namespace

std::pair<Time, Time> bestOfEveryStart(const Project& project, Aim aim, Time from, Time to) {
    return EveryStart(project, aim, from, to).best();
}

} // namespace withy::runup::tests
