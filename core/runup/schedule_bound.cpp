// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/schedule_bound.h"

#include "core/runup/energy.h"

#include <algorithm>

namespace withy::runup {

namespace {

constexpr int mostPasses = 6;
constexpr Time finestShare =
    32; ///< of the gap between path and value, for the bound to be nearer is little use

const Mode& onlyMode(const ReadyTask& t) {
    return t.modes.front().mode;
}

bool singleAndWhole(const ReadyTask& t) {
    return t.modes.size() == 1 && !t.splittable && onlyMode(t).duration > 0;
}

std::vector<int> mostFree(const ReadyProject& ready) {
    std::vector<int> out(ready.base.resources());
    for (std::size_t k = 0; k < ready.base.stretches(); ++k)
        for (std::size_t r = 0; r < out.size(); ++r)
            out[r] = std::max(out[r], ready.base.free(k, static_cast<int>(r)));
    return out;
}

int unitsOf(const Mode& mode, int resource) {
    for (const auto& need : mode.needs)
        if (need.resource == resource) return need.units;
    return 0;
}

bool sideBySide(const Mode& a, const Mode& b, const std::vector<int>& most) {
    return std::all_of(a.needs.begin(), a.needs.end(), [&](const Need& need) {
        return need.units + unitsOf(b, need.resource) <= most[need.resource];
    });
}

} // namespace

ScheduleBound::ScheduleBound(const ReadyProject& forward, const ReadyProject& backward)
    : ready_(forward)
    , backward_(backward)
    , early_(earliestPlaces(forward))
    , path_(forward.pinnedGroup)
    , pools_(poolsOf(forward)) {
    for (const int t : forward.order)
        path_[forward.tasks[t].group] = std::max(path_[forward.tasks[t].group], early_[t].end);
    findPairs();
}

void ScheduleBound::findPairs() {
    const auto most = mostFree(ready_);
    const auto& order = ready_.order;
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (!singleAndWhole(ready_.tasks[order[i]])) continue;
        for (std::size_t j = i + 1; j < order.size(); ++j) {
            if (!singleAndWhole(ready_.tasks[order[j]])) continue;
            if (!sideBySide(onlyMode(ready_.tasks[order[i]]), onlyMode(ready_.tasks[order[j]]), most))
                pairs_.emplace_back(order[i], order[j]);
        }
    }
}

bool ScheduleBound::setStart(Windows& windows, int task, Time start) const {
    auto& w = windows[task];
    if (start <= w.start) return true;
    Place best{never, never};
    for (const auto& m : ready_.tasks[task].modes) {
        const auto place = ready_.base.earliest(m.mode, ready_.tasks[task].splittable, start);
        if (!place) continue;
        best.start = std::min(best.start, place->start);
        best.end = std::min(best.end, place->end);
    }
    w.start = best.start;
    w.end = std::max(w.end, best.end);
    return w.start <= w.lastStart && w.end <= w.lastEnd && w.start < never;
}

bool ScheduleBound::setEnd(Windows& windows, int task, Time end) const {
    auto& w = windows[task];
    if (end >= w.lastEnd) return true;
    Place best{always, always};
    for (const auto& m : backward_.tasks[task].modes) {
        const auto place = backward_.base.earliest(m.mode, backward_.tasks[task].splittable, -end);
        if (!place) continue;
        best.start = std::max(best.start, -place->end);
        best.end = std::max(best.end, -place->start);
    }
    w.lastEnd = best.end;
    w.lastStart = std::min(w.lastStart, best.start);
    return w.start <= w.lastStart && w.end <= w.lastEnd;
}

bool ScheduleBound::narrowByWaiting(Windows& windows) const {
    for (const int t : ready_.order) {
        for (const auto& link : ready_.tasks[t].after)
            if (!setStart(windows, link.task, windows[t].end + link.lag)) return false;
    }
    for (auto t = ready_.order.rbegin(); t != ready_.order.rend(); ++t) {
        for (const auto& link : ready_.tasks[*t].before) {
            if (windows[*t].lastStart >= never) continue;
            if (!setEnd(windows, link.task, windows[*t].lastStart - link.lag)) return false;
        }
    }
    return true;
}

bool ScheduleBound::narrowByTable(Windows& windows) const {
    LoadProfile table = ready_.base;
    const Windows was = windows;
    for (const int t : ready_.order) {
        const auto& task = ready_.tasks[t];
        if (task.modes.size() != 1 || was[t].lastStart >= was[t].end) continue;
        table.take(onlyMode(task), task.splittable, {was[t].lastStart, was[t].end});
    }
    for (std::size_t k = 0; k < table.stretches(); ++k)
        for (const auto& pool : pools_)
            if (pool.size() == 1 && table.free(k, pool.front()) < 0) return false;
    for (const int t : ready_.order) {
        const auto& task = ready_.tasks[t];
        if (!singleAndWhole(task) || was[t].lastEnd >= never) continue;
        const Mode& mode = onlyMode(task);
        const auto blocked = [&](std::size_t k) {
            const bool own = was[t].lastStart <= table.begin(k) && table.end(k) <= was[t].end;
            return std::any_of(mode.needs.begin(), mode.needs.end(), [&](const Need& need) {
                return table.free(k, need.resource) + (own ? need.units : 0) < need.units;
            });
        };
        Time start = windows[t].start;
        for (std::size_t k = table.stretchAt(start); table.begin(k) < start + mode.duration; ++k) {
            if (blocked(k)) start = table.end(k);
            if (start > windows[t].lastStart) return false;
            if (k + 1 == table.stretches()) break;
        }
        if (!setStart(windows, t, start)) return false;
        Time end = windows[t].lastEnd;
        for (std::size_t k = table.stretchAt(end - 1); table.end(k) > end - mode.duration; --k) {
            if (blocked(k)) end = table.begin(k);
            if (end < windows[t].end) return false;
            if (k == 0) break;
        }
        if (!setEnd(windows, t, end)) return false;
    }
    return true;
}

bool ScheduleBound::narrowByPairs(Windows& windows) const {
    for (const auto& [a, b] : pairs_) {
        const bool aFirst = windows[a].end <= windows[b].lastStart;
        const bool bFirst = windows[b].end <= windows[a].lastStart;
        if (!aFirst && !bFirst) return false;
        if (aFirst && bFirst) continue;
        const int first = aFirst ? a : b;
        const int second = aFirst ? b : a;
        if (!setStart(windows, second, windows[first].end)) return false;
        if (windows[second].lastStart < never && !setEnd(windows, first, windows[second].lastStart))
            return false;
    }
    return true;
}

bool ScheduleBound::narrow(Windows& windows) const {
    const auto sum = [&] {
        Time all = 0;
        for (const int t : ready_.order)
            all += windows[t].start - std::min(windows[t].lastEnd, never / 4096);
        return all;
    };
    for (int pass = 0; pass < mostPasses; ++pass) {
        const Time before = sum();
        if (!narrowByWaiting(windows) || !narrowByTable(windows) || !narrowByPairs(windows)) return false;
        if (sum() == before) break;
    }
    return true;
}

bool ScheduleBound::overloaded(const Windows& windows, const std::vector<int>& pool) const {
    Energy energy(ready_, pool);
    for (const int t : ready_.order)
        energy.add(t, windows[t].start, windows[t].lastEnd);
    return energy.worst().work > energy.worst().room;
}

bool ScheduleBound::refuted(int group, Time end, bool deadlinesHold) const {
    Windows windows(ready_.tasks.size());
    for (const int t : ready_.order)
        windows[t] = {early_[t].start, early_[t].end, never, never};
    for (const int t : ready_.order) {
        const auto& task = ready_.tasks[t];
        Time last = deadlinesHold ? task.deadline : never;
        if (task.group == group) last = std::min(last, end);
        if (!setEnd(windows, t, last)) return true;
    }
    if (!narrow(windows)) return true;
    return std::any_of(pools_.begin(), pools_.end(),
                       [&](const auto& pool) { return overloaded(windows, pool); });
}

Time ScheduleBound::byRefutation(int group, Time value, bool deadlinesHold,
                                 const std::stop_token& stop) const {
    Time least = path_[group];
    if (least >= value) return least == never ? value : least;
    if (refuted(group, value - 1, deadlinesHold)) return value;
    Time most = value - 1;
    const Time step = (most - least) / finestShare;
    while (least + step < most && !stop.stop_requested()) {
        const Time middle = least + (most - least) / 2;
        if (refuted(group, middle, deadlinesHold))
            least = middle + 1;
        else
            most = middle;
    }
    return least;
}

bool ScheduleBound::deadlinesImpossible() const {
    return refuted(-1, never, true);
}

} // namespace withy::runup
