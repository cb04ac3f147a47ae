// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/project.h"

#include <algorithm>
#include <map>
#include <set>

namespace withy::runup {

namespace {

using Trouble = ProjectTrouble;

constexpr Time longestDuration = 60LL * 24 * 36600;
constexpr Time furthest = 60LL * 24 * 366000;

bool soundResource(const Resource& r) {
    if (r.units < 0) return false;
    for (std::size_t i = 0; i < r.changes.size(); ++i) {
        const auto& c = r.changes[i];
        if (c.units < 0 || c.at < -furthest || c.at > furthest) return false;
        if (i > 0 && c.at <= r.changes[i - 1].at) return false;
    }
    return true;
}

std::optional<ProjectFault> modeFault(const Project& p, int task, const Mode& mode) {
    if (mode.duration < 0 || mode.duration > longestDuration) return ProjectFault{Trouble::badMode, task};
    std::set<int> named;
    for (const auto& need : mode.needs) {
        const bool there = need.resource >= 0 && need.resource < static_cast<int>(p.resources.size());
        if (!there || need.units < 1 || !named.insert(need.resource).second)
            return ProjectFault{Trouble::badNeed, task, need.resource};
    }
    return std::nullopt;
}

bool soundTimes(const Task& t) {
    const bool release = t.release == always || (t.release >= -furthest && t.release <= furthest);
    const bool deadline = t.deadline == never || (t.deadline >= -furthest && t.deadline <= furthest);
    const bool pin = !t.pin || (t.pin->start >= -furthest && t.pin->start <= furthest);
    return release && deadline && pin;
}

std::optional<ProjectFault> taskFault(const Project& p, int task) {
    const auto& t = p.tasks[task];
    if (t.modes.empty()) return ProjectFault{Trouble::noModes, task};
    for (const auto& mode : t.modes)
        if (const auto fault = modeFault(p, task, mode)) return fault;
    if (!soundTimes(t)) return ProjectFault{Trouble::badTime, task};
    if (t.pin && (t.pin->mode < 0 || t.pin->mode >= static_cast<int>(t.modes.size())))
        return ProjectFault{Trouble::badPin, task};
    if (t.group < 0 || t.group >= static_cast<int>(p.tasks.size()))
        return ProjectFault{Trouble::badGroup, task};
    return std::nullopt;
}

std::optional<ProjectFault> circleFault(const Project& p) {
    std::vector<int> waits(p.tasks.size());
    for (const auto& f : p.follows)
        ++waits[f.after];
    std::vector<int> ready;
    for (std::size_t t = 0; t < p.tasks.size(); ++t)
        if (waits[t] == 0) ready.push_back(static_cast<int>(t));
    for (std::size_t i = 0; i < ready.size(); ++i) {
        for (const auto& f : p.follows)
            if (f.before == ready[i] && --waits[f.after] == 0) ready.push_back(f.after);
    }
    for (std::size_t t = 0; t < p.tasks.size(); ++t)
        if (waits[t] > 0) return ProjectFault{Trouble::circle, static_cast<int>(t)};
    return std::nullopt;
}

} // namespace

Resource steadyResource(int units, std::vector<Busy> busy) {
    std::map<Time, int> taken;
    for (const auto& b : busy) {
        if (b.to <= b.from) continue;
        taken[b.from] += b.units;
        taken[b.to] -= b.units;
    }
    Resource out{units, {}};
    int now = 0;
    for (const auto& [at, more] : taken) {
        now += more;
        out.changes.push_back({at, std::max(0, units - now)});
    }
    return out;
}

Resource resourceInHours(int units, const std::vector<Hours>& hours) {
    std::map<Time, int> open;
    for (const auto& h : hours) {
        if (h.to <= h.from) continue;
        ++open[h.from];
        --open[h.to];
    }
    Resource out;
    int now = 0;
    for (const auto& [at, more] : open) {
        now += more;
        out.changes.push_back({at, now > 0 ? units : 0});
    }
    return out;
}

std::optional<ProjectFault> shapeFault(const Project& p) {
    for (std::size_t r = 0; r < p.resources.size(); ++r)
        if (!soundResource(p.resources[r]))
            return ProjectFault{Trouble::badResource, -1, static_cast<int>(r)};
    const int tasks = static_cast<int>(p.tasks.size());
    for (int t = 0; t < tasks; ++t)
        if (const auto fault = taskFault(p, t)) return fault;
    for (const auto& f : p.follows) {
        const bool there = f.before >= 0 && f.before < tasks && f.after >= 0 && f.after < tasks;
        if (!there || f.before == f.after) return ProjectFault{Trouble::badFollows, f.before};
        if (f.lag < 0 || f.lag > furthest) return ProjectFault{Trouble::badTime, f.after};
    }
    return circleFault(p);
}

} // namespace withy::runup
