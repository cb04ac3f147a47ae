// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/exact_schedule.h"

#include <algorithm>

namespace withy::runup {

ExactSchedule::ExactSchedule(const ReadyProject& ready, int nodes) : ready_(ready), nodes_(nodes) {}

bool ExactSchedule::open(int task) const {
    const auto& before = ready_.tasks[task].before;
    return !placed_[task] &&
           std::all_of(before.begin(), before.end(), [&](const Link& l) { return placed_[l.task]; });
}

Time ExactSchedule::readyAt(int task, const std::vector<Place>& places) const {
    Time from = ready_.tasks[task].release;
    for (const auto& link : ready_.tasks[task].before) {
        if (places[link.task].end >= never) return never;
        from = std::max(from, places[link.task].end + link.lag);
    }
    return from;
}

/// What is laid, and the rest each as if it were alone with it.
Score ExactSchedule::least(const Depth& at) const {
    auto places = at.laid.places;
    std::vector<Time> last = ready_.pinnedGroup;
    Score score;
    for (const int t : ready_.order) {
        const auto& task = ready_.tasks[t];
        if (!placed_[t]) {
            places[t] = {never, never};
            const Time from = readyAt(t, places);
            for (const auto& m : task.modes) {
                if (from >= never) break;
                const auto place = at.profile.earliest(m.mode, task.splittable, from);
                if (place && place->end < places[t].end) places[t] = *place;
            }
        }
        if (places[t].end >= never) {
            score.outside += unplacedCost;
            continue;
        }
        score.outside += std::max<Time>(0, places[t].end - task.deadline);
        last[task.group] = std::max(last[task.group], places[t].end);
    }
    for (const Time end : last)
        if (end != always) score.spans += end;
    return score;
}

void ExactSchedule::tryAt(std::size_t depth, int task, Time lastStart) {
    const auto& t = ready_.tasks[task];
    const Time from = readyAt(task, depths_[depth].laid.places);
    for (std::size_t m = 0; m < t.modes.size() && !cut_; ++m) {
        const auto place = depths_[depth].profile.earliest(t.modes[m].mode, t.splittable, from);
        if (!place || place->start < lastStart) continue;
        cut_ = --nodes_ < 0 || stop_.stop_requested();
        auto& next = depths_[depth + 1];
        next.profile.reset(depths_[depth].profile);
        next.profile.take(t.modes[m].mode, t.splittable, *place);
        next.laid = depths_[depth].laid;
        next.laid.places[task] = *place;
        next.laid.modes[task] = static_cast<int>(m);
        placed_[task] = true;
        next.laid.score = least(next);
        if (next.laid.score < best_->score) branch(depth + 1, place->start);
        placed_[task] = false;
    }
}

void ExactSchedule::branch(std::size_t depth, Time lastStart) {
    if (depth == ready_.order.size()) {
        *best_ = depths_[depth].laid;
        return;
    }
    for (const int t : ready_.order)
        if (!cut_ && open(t)) tryAt(depth, t, lastStart);
}

bool ExactSchedule::improve(Laid& best, const std::stop_token& stop) {
    best_ = &best;
    stop_ = stop;
    depths_.assign(ready_.order.size() + 1, {});
    depths_[0].profile = ready_.base;
    depths_[0].laid.places = ready_.pins;
    depths_[0].laid.modes.assign(ready_.tasks.size(), 0);
    placed_.assign(ready_.tasks.size(), false);
    for (std::size_t t = 0; t < ready_.tasks.size(); ++t)
        placed_[t] = ready_.tasks[t].pinned;
    branch(0, always);
    return !cut_;
}

} // namespace withy::runup
