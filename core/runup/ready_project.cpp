// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/ready_project.h"

#include <algorithm>

namespace withy::runup {

namespace {

Resource turned(const Resource& r) {
    Resource out;
    out.units = r.changes.empty() ? r.units : r.changes.back().units;
    for (std::size_t i = r.changes.size(); i-- > 0;)
        out.changes.push_back({-r.changes[i].at, i == 0 ? r.units : r.changes[i - 1].units});
    return out;
}

ReadyTask readyTask(const Task& t, bool backwards) {
    ReadyTask out;
    out.release = backwards ? -t.deadline : t.release;
    out.deadline = backwards ? -t.release : t.deadline;
    out.splittable = t.splittable;
    out.group = t.group;
    out.pinned = t.pin.has_value();
    return out;
}

void addLinks(const Project& p, ReadyProject& ready, bool backwards) {
    for (const auto& f : p.follows) {
        const int before = backwards ? f.after : f.before;
        const int after = backwards ? f.before : f.after;
        auto& first = ready.tasks[before];
        auto& second = ready.tasks[after];
        if (first.pinned && second.pinned) continue;
        if (first.pinned) {
            second.release = std::max(second.release, ready.pins[before].end + f.lag);
        } else if (second.pinned) {
            first.deadline = std::min(first.deadline, ready.pins[after].start - f.lag);
        } else {
            first.after.push_back({after, f.lag});
            second.before.push_back({before, f.lag});
        }
    }
}

void putInOrder(ReadyProject& ready) {
    std::vector<std::size_t> waits;
    for (std::size_t t = 0; t < ready.tasks.size(); ++t) {
        waits.push_back(ready.tasks[t].before.size());
        if (waits[t] == 0 && !ready.tasks[t].pinned) ready.order.push_back(static_cast<int>(t));
    }
    for (std::size_t i = 0; i < ready.order.size(); ++i) {
        const auto after = ready.tasks[ready.order[i]].after;
        for (const auto& link : after)
            if (--waits[link.task] == 0) ready.order.push_back(link.task);
    }
}

void putPins(const Project& p, ReadyProject& ready) {
    ready.pinnedGroup.assign(p.tasks.size(), always);
    ready.base = ready.calendar;
    for (std::size_t t = 0; t < p.tasks.size(); ++t) {
        const auto& task = p.tasks[t];
        if (!task.pin) continue;
        ready.base.take(task.modes[task.pin->mode], task.splittable, ready.pins[t], true);
        auto& last = ready.pinnedGroup[task.group];
        last = std::max(last, ready.pins[t].end);
    }
}

std::vector<ReadyMode> waysOf(const ReadyProject& ready, const Task& task, const ReadyTask& turnedTask) {
    std::vector<ReadyMode> out;
    for (std::size_t m = 0; m < task.modes.size(); ++m)
        if (ready.calendar.earliest(task.modes[m], task.splittable, turnedTask.release))
            out.push_back({task.modes[m], static_cast<int>(m)});
    return out;
}

/// Longest stretch that the calendars leave a way of doing from its release on.
Time longestGap(const ReadyProject& ready, const ReadyTask& task, const Mode& mode) {
    Time longest = 0;
    std::optional<Time> since;
    for (std::size_t k = ready.calendar.stretchAt(task.release); k < ready.calendar.stretches(); ++k) {
        if (!ready.calendar.onCalendar(k, mode)) {
            since.reset();
            continue;
        }
        if (!since) since = std::max(task.release, ready.calendar.begin(k));
        longest = std::max(longest, ready.calendar.end(k) - *since);
    }
    return longest;
}

ProjectFault noPlaceFault(const ReadyProject& ready, const Task& task, int number) {
    ProjectFault fault{ProjectTrouble::noHands, number};
    fault.needed = never;
    for (const auto& mode : task.modes) {
        fault.longest = std::max(fault.longest, longestGap(ready, ready.tasks[number], mode));
        fault.needed = std::min(fault.needed, mode.duration);
    }
    if (!task.modes.front().needs.empty()) fault.resource = task.modes.front().needs.front().resource;
    const bool gaps = fault.longest > 0 && !task.splittable;
    if (gaps) fault.trouble = ProjectTrouble::longerThanAnyGap;
    return fault;
}

} // namespace

std::vector<Place> pinPlaces(const Project& p) {
    const LoadProfile calendar(p.resources);
    std::vector<Place> out(p.tasks.size());
    for (std::size_t t = 0; t < p.tasks.size(); ++t) {
        const auto& task = p.tasks[t];
        if (!task.pin) continue;
        const auto& mode = task.modes[task.pin->mode];
        out[t] = {task.pin->start, calendar.endOnCalendar(mode, task.splittable, task.pin->start)};
    }
    return out;
}

ReadyProject readyProject(const Project& p, const std::vector<Place>& pins, bool backwards,
                          const ReadyProject* ways) {
    ReadyProject ready;
    std::vector<Resource> resources = p.resources;
    ready.pins = pins;
    if (backwards) {
        std::transform(resources.begin(), resources.end(), resources.begin(), turned);
        for (auto& place : ready.pins)
            place = {-place.end, -place.start};
    }
    ready.calendar = LoadProfile(resources);
    for (const auto& t : p.tasks)
        ready.tasks.push_back(readyTask(t, backwards));
    putPins(p, ready);
    addLinks(p, ready, backwards);
    putInOrder(ready);
    for (const int t : ready.order)
        ready.tasks[t].modes = ways ? ways->tasks[t].modes : waysOf(ready, p.tasks[t], ready.tasks[t]);
    return ready;
}

std::vector<Place> earliestPlaces(const ReadyProject& ready, const std::vector<Time>& floors) {
    std::vector<Place> out(ready.tasks.size(), Place{never, never});
    for (std::size_t t = 0; t < ready.tasks.size(); ++t)
        if (ready.tasks[t].pinned) out[t] = ready.pins[t];
    for (const int t : ready.order) {
        const auto& task = ready.tasks[t];
        Time from = task.release;
        if (!floors.empty()) from = std::max(from, floors[t]);
        for (const auto& link : task.before)
            from = std::max(from, out[link.task].end == never ? never : out[link.task].end + link.lag);
        if (from == never) continue;
        for (const auto& mode : task.modes) {
            const auto place = ready.base.earliest(mode.mode, task.splittable, from);
            if (!place) continue;
            out[t].start = std::min(out[t].start, place->start);
            out[t].end = std::min(out[t].end, place->end);
        }
    }
    return out;
}

std::optional<ProjectFault> handsFault(const Project& p, const ReadyProject& ready, bool backwards) {
    for (const int t : ready.order) {
        const auto& task = ready.tasks[t];
        if (task.modes.empty()) return noPlaceFault(ready, p.tasks[t], t);
        if (backwards && task.release == always && task.before.empty())
            return ProjectFault{ProjectTrouble::noDeadline, t};
    }
    return std::nullopt;
}

} // namespace withy::runup
