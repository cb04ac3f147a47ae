// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/runup/schedule_checker.h"

#include <algorithm>
#include <map>

namespace withy::runup::tests {

namespace {

class Check {
public:
    Check(const Project& project, Aim aim, const Schedule& schedule) : p_(project), s_(schedule), aim_(aim) {}

    std::vector<std::string> run() {
        if (s_.tasks.size() != p_.tasks.size()) return {"not as many tasks as in the project"};
        for (int t = 0; t < count(); ++t) {
            if (!placed(t)) continue;
            hours(t);
            window(t);
        }
        precedence();
        capacity();
        sums();
        return complaints_;
    }

private:
    [[nodiscard]] int count() const { return static_cast<int>(p_.tasks.size()); }

    [[nodiscard]] bool placed(int t) const { return s_.tasks[t].mode >= 0; }

    [[nodiscard]] const Mode& mode(int t) const { return p_.tasks[t].modes.at(s_.tasks[t].mode); }

    void say(int t, const std::string& what) {
        complaints_.push_back("task " + std::to_string(t) + " [" + std::to_string(s_.tasks[t].start) + ", " +
                              std::to_string(s_.tasks[t].end) + "): " + what);
    }

    void hours(int t) {
        const auto& task = p_.tasks[t];
        if (task.pin) {
            if (s_.tasks[t].start != task.pin->start || s_.tasks[t].mode != task.pin->mode)
                say(t, "a pinned task moved");
            if (s_.tasks[t].end != pinnedEnd(p_, task)) say(t, "pinned, ends at another time");
            return;
        }
        const Time end = endOf(p_, task, mode(t), s_.tasks[t].start);
        if (end < s_.tasks[t].start)
            say(t, "begins or goes on outside the hours");
        else if (end != s_.tasks[t].end)
            say(t, "should end at " + std::to_string(end));
    }

    /// Its window as its own times and the pins leave it.
    void window(int t) {
        const auto& task = p_.tasks[t];
        if (task.pin) return;
        Time release = task.release;
        Time deadline = task.deadline;
        for (const auto& f : p_.follows) {
            if (f.after == t && p_.tasks[f.before].pin)
                release = std::max(release, s_.tasks[f.before].end + f.lag);
            if (f.before == t && p_.tasks[f.after].pin)
                deadline = std::min(deadline, s_.tasks[f.after].start - f.lag);
        }
        const Time late = std::max<Time>(0, s_.tasks[t].end - deadline);
        const Time early = std::max<Time>(0, release - s_.tasks[t].start);
        if (aim_ == Aim::soonest && early > 0) say(t, "begins before its release");
        if (aim_ == Aim::latest && late > 0) say(t, "ends past its deadline");
        if (s_.tasks[t].outside != late + early) say(t, "is outside its window by another amount than said");
    }

    void precedence() {
        for (const auto& f : p_.follows) {
            if (!placed(f.before) || !placed(f.after)) continue;
            if (p_.tasks[f.before].pin || p_.tasks[f.after].pin) continue; // part of the window
            if (s_.tasks[f.after].start < s_.tasks[f.before].end + f.lag)
                say(f.after, "begins before task " + std::to_string(f.before) + " has ended and waited");
        }
    }

    void capacity() {
        std::map<std::pair<Time, int>, int> pinned, used;
        for (int t = 0; t < count(); ++t) {
            if (!placed(t)) continue;
            for (Time at = s_.tasks[t].start; at < s_.tasks[t].end; ++at) {
                if (p_.tasks[t].splittable && !hoursFor(p_, mode(t), at)) continue;
                for (const auto& need : mode(t).needs)
                    (p_.tasks[t].pin ? pinned : used)[{at, need.resource}] += need.units;
            }
        }
        for (const auto& [key, units] : used) {
            const auto pin = pinned.find(key);
            const int taken = pin == pinned.end() ? 0 : pin->second;
            const int left = std::max(0, unitsAt(p_.resources[key.second], key.first) - taken);
            if (units > left) {
                complaints_.push_back("resource " + std::to_string(key.second) + " at " +
                                      std::to_string(key.first) + ": " + std::to_string(units) + " used of " +
                                      std::to_string(left));
                return;
            }
        }
    }

    void sums() {
        Time outside = 0;
        Time worst = 0;
        int unplaced = 0;
        for (const auto& task : s_.tasks) {
            outside += task.outside;
            worst = std::max(worst, task.outside);
            unplaced += task.mode < 0 ? 1 : 0;
        }
        if (outside != s_.outside || worst != s_.worst || unplaced != s_.unplaced)
            complaints_.push_back("the sums do not add up");
        if (s_.spanAtLeast > s_.span) complaints_.push_back("the bound is above the value");
        for (int t = 0; t < count(); ++t) {
            const auto& group = s_.groups.at(p_.tasks[t].group);
            if (placed(t) && (s_.tasks[t].start < group.first || s_.tasks[t].end > group.last))
                say(t, "lies outside its group's span");
        }
    }

    const Project& p_;
    const Schedule& s_;
    Aim aim_;
    std::vector<std::string> complaints_;
};

} // namespace

int unitsAt(const Resource& resource, Time t) {
    int units = resource.units;
    for (const auto& change : resource.changes)
        if (change.at <= t) units = change.units;
    return units;
}

bool hoursFor(const Project& project, const Mode& mode, Time t) {
    return std::all_of(mode.needs.begin(), mode.needs.end(), [&](const Need& need) {
        return unitsAt(project.resources[need.resource], t) >= need.units;
    });
}

Time endOf(const Project& project, const Task& task, const Mode& mode, Time start) {
    Time left = mode.duration;
    Time t = start;
    for (Time idle = 0; left > 0; ++t) {
        const bool works = hoursFor(project, mode, t);
        if (!works && (!task.splittable || t == start || ++idle > 100'000)) return start - 1;
        if (works) --left;
    }
    return t;
}

Time pinnedEnd(const Project& project, const Task& task) {
    const auto& mode = task.modes[task.pin->mode];
    if (!task.splittable) return task.pin->start + mode.duration;
    Time left = mode.duration;
    Time t = task.pin->start;
    for (Time tried = 0; left > 0; ++t) {
        if (hoursFor(project, mode, t)) --left;
        if (++tried > 100'000) return task.pin->start + mode.duration; // its hours never come
    }
    return t;
}

std::vector<std::string> complaints(const Project& project, Aim aim, const Schedule& schedule) {
    return Check(project, aim, schedule).run();
}

} // namespace withy::runup::tests
