// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/serial_schedule.h"

#include <algorithm>

namespace withy::runup {

SerialSchedule::SerialSchedule(const ReadyProject& ready) : ready_(ready) {}

Time SerialSchedule::readyAt(int task, const Laid& out) const {
    Time from = ready_.tasks[task].release;
    for (const auto& link : ready_.tasks[task].before) {
        if (out.modes[link.task] < 0) return never;
        from = std::max(from, out.places[link.task].end + link.lag);
    }
    return from;
}

void SerialSchedule::place(int task, int mode, Time from, Laid& out) {
    const auto& t = ready_.tasks[task];
    out.modes[task] = -1;
    out.places[task] = {never, never};
    if (from >= never) return;
    const int first = mode < 0 ? 0 : mode;
    const int last = mode < 0 ? static_cast<int>(t.modes.size()) - 1 : mode;
    for (int m = first; m <= last; ++m) {
        const auto found = profile_.earliest(t.modes[m].mode, t.splittable, from);
        if (!found || found->end >= out.places[task].end) continue;
        out.places[task] = *found;
        out.modes[task] = m;
    }
    if (out.modes[task] >= 0) profile_.take(t.modes[out.modes[task]].mode, t.splittable, out.places[task]);
}

void SerialSchedule::judge(Laid& out) {
    last_ = ready_.pinnedGroup;
    out.score = {};
    for (const int t : ready_.order) {
        const auto& task = ready_.tasks[t];
        if (out.modes[t] < 0) {
            out.score.outside += unplacedCost;
            continue;
        }
        out.score.outside += std::max<Time>(0, out.places[t].end - task.deadline);
        last_[task.group] = std::max(last_[task.group], out.places[t].end);
    }
    for (const Time last : last_)
        if (last != always) out.score.spans += last;
}

void SerialSchedule::lay(const std::vector<int>& list, const std::vector<int>& modes,
                         const std::vector<Time>& floors, Laid& out) {
    profile_.reset(ready_.base);
    out.places = ready_.pins;
    out.modes.assign(ready_.tasks.size(), 0);
    for (const int t : list) {
        Time from = readyAt(t, out);
        if (!floors.empty()) from = std::max(from, floors[t]);
        place(t, modes.empty() ? -1 : modes[t], from, out);
    }
    judge(out);
}

ForwardBackward::ForwardBackward(const ReadyProject& forward, const ReadyProject& backward)
    : ready_(forward), forward_(forward), backward_(backward), rank_(forward.tasks.size()) {
    for (std::size_t i = 0; i < forward.order.size(); ++i)
        rank_[forward.order[i]] = static_cast<int>(i);
}

void ForwardBackward::sortByStart(std::vector<int>& list, const Laid& laid) const {
    std::sort(list.begin(), list.end(), [&](int a, int b) {
        const Time x = laid.places[a].start;
        const Time y = laid.places[b].start;
        return x != y ? x < y : rank_[a] < rank_[b];
    });
}

void ForwardBackward::improve(std::vector<int>& list, Laid& laid) {
    std::vector<Time> last = ready_.pinnedGroup;
    for (const int t : list)
        last[ready_.tasks[t].group] = std::max(last[ready_.tasks[t].group], laid.places[t].end);
    floors_.assign(ready_.tasks.size(), always);
    for (const int t : list) {
        const Time limit = std::min(ready_.tasks[t].deadline, last[ready_.tasks[t].group]);
        floors_[t] = -std::max(laid.places[t].end, limit);
    }
    back_ = list;
    std::sort(back_.begin(), back_.end(), [&](int a, int b) {
        const Time x = laid.places[a].end;
        const Time y = laid.places[b].end;
        return x != y ? x > y : rank_[a] > rank_[b];
    });
    backward_.lay(back_, laid.modes, floors_, turned_);
    for (auto& place : turned_.places)
        place = {-place.end, -place.start};
    sortByStart(list, turned_);
    forward_.lay(list, laid.modes, {}, next_);
}

int ForwardBackward::lay(std::vector<int>& list, const std::vector<int>& modes, Laid& out, int rounds) {
    forward_.lay(list, modes, {}, out);
    int laid = 1;
    for (int i = 0; i < rounds; ++i) {
        const bool whole = std::all_of(list.begin(), list.end(), [&](int t) { return out.modes[t] >= 0; });
        if (!whole) break;
        sortByStart(list, out);
        improve(list, out);
        laid += 2;
        const bool better = next_.score < out.score;
        if (next_.score <= out.score) std::swap(out, next_);
        if (!better) break;
    }
    sortByStart(list, out);
    return laid;
}

} // namespace withy::runup
