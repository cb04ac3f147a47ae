// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/schedule.h"

#include "core/runup/exact_schedule.h"
#include "core/runup/pin_faults.h"
#include "core/runup/schedule_bound.h"

#include <algorithm>

namespace withy::runup {

namespace {

Score scoreOf(const std::vector<Time>& lastEnds) {
    Score score;
    for (const Time end : lastEnds)
        if (end != always) score.spans += end;
    return score;
}

std::vector<Time> lastEnds(const ReadyProject& ready, const Laid& laid) {
    std::vector<Time> out = ready.pinnedGroup;
    for (const int t : ready.order)
        if (laid.modes[t] >= 0)
            out[ready.tasks[t].group] = std::max(out[ready.tasks[t].group], laid.places[t].end);
    return out;
}

/// The search in one direction; `soonest` on a project that may be turned about.
class Search {
public:
    Search(const ReadyProject& forward, const ReadyProject& backward, const SearchLimits& limits,
           const std::stop_token& stop)
        : forward_(forward)
        , backward_(backward)
        , limits_(limits)
        , stop_(stop)
        , bound_(forward, backward)
        , lists_(forward, backward, limits)
        , least_(bound_.byPath()) {}

    void run() {
        lists_.begin(scoreOf(least_), stop_);
        best_ = lists_.best();
        refute();
        if (!atBound() && static_cast<int>(forward_.order.size()) <= limits_.exactUpTo)
            exact_ = ExactSchedule(forward_, limits_.nodes).improve(best_, stop_);
        if (!atBound() && !exact_) {
            lists_.breed(scoreOf(least_), stop_);
            if (lists_.best().score < best_.score) best_ = lists_.best();
        }
        if (best_.score.outside == 0 && !refutedWithDeadlines_) refute();
    }

    [[nodiscard]] const Laid& best() const { return best_; }

    [[nodiscard]] const std::vector<Time>& least() const { return least_; }

    [[nodiscard]] int tried() const { return lists_.tried(); }

    [[nodiscard]] bool proved() const { return exact_ || atBound(); }

    [[nodiscard]] bool misfitProved() const {
        return best_.score.outside > 0 && (exact_ || bound_.deadlinesImpossible());
    }

private:
    [[nodiscard]] bool atBound() const { return best_.score <= scoreOf(least_); }

    void refute() {
        if (best_.score.outside >= unplacedCost) return;
        refutedWithDeadlines_ = best_.score.outside == 0;
        const auto ends = lastEnds(forward_, best_);
        for (std::size_t g = 0; g < ends.size(); ++g) {
            if (ends[g] == always || ends[g] == forward_.pinnedGroup[g] || stop_.stop_requested()) continue;
            const Time least =
                bound_.byRefutation(static_cast<int>(g), ends[g], best_.score.outside == 0, stop_);
            least_[g] = std::max(least_[g], least);
        }
    }

    const ReadyProject& forward_;
    const ReadyProject& backward_;
    const SearchLimits& limits_;
    const std::stop_token& stop_;
    ScheduleBound bound_;
    ListSearch lists_;
    std::vector<Time> least_; ///< by group
    Laid best_;
    bool refutedWithDeadlines_ = false;
    bool exact_ = false;
};

/// First moments at which each group could begin.
std::vector<Time> beginnings(const ReadyProject& ready) {
    std::vector<Time> out(ready.pinnedGroup.size(), never);
    const auto early = earliestPlaces(ready);
    for (std::size_t t = 0; t < ready.tasks.size(); ++t) {
        auto& first = out[ready.tasks[t].group];
        first = std::min(first, early[t].start);
    }
    return out;
}

void fillTasks(const ReadyProject& ready, const Laid& laid, const Project& p, bool backwards, Schedule& out) {
    for (std::size_t t = 0; t < p.tasks.size(); ++t) {
        Placed placed;
        const auto& place = laid.places[t];
        placed.start = backwards ? -place.end : place.start;
        placed.end = backwards ? -place.start : place.end;
        if (p.tasks[t].pin) {
            placed.mode = p.tasks[t].pin->mode;
        } else if (laid.modes[t] < 0) {
            placed = {};
            ++out.unplaced;
        } else {
            placed.mode = ready.tasks[t].modes[laid.modes[t]].number;
            placed.outside = std::max<Time>(0, place.end - ready.tasks[t].deadline);
        }
        out.outside += placed.outside;
        out.worst = std::max(out.worst, placed.outside);
        out.tasks.push_back(placed);
    }
}

void fillGroups(const ReadyProject& ready, const Search& search, const Project& p, bool backwards,
                Schedule& out) {
    const auto begin = beginnings(ready);
    const auto ends = lastEnds(ready, search.best());
    out.groups.resize(ends.size());
    for (std::size_t g = 0; g < ends.size(); ++g) {
        if (ends[g] == always) continue;
        auto& group = out.groups[g];
        group.first = never;
        group.last = always;
        for (std::size_t t = 0; t < p.tasks.size(); ++t) {
            if (p.tasks[t].group != static_cast<int>(g) || out.tasks[t].mode < 0) continue;
            group.first = std::min(group.first, out.tasks[t].start);
            group.last = std::max(group.last, out.tasks[t].end);
        }
        const Time least = std::min(search.least()[g], ends[g]);
        group.atBest = backwards ? -least : least;
        group.proved = out.fits() && (least == ends[g]);
        out.span += ends[g] - begin[g];
        out.spanAtLeast += least - begin[g];
    }
    if (out.proved && out.fits()) out.spanAtLeast = out.span;
}

} // namespace

double Schedule::withinPercent() const {
    if (proved || span <= spanAtLeast) return 0;
    return spanAtLeast > 0
               ? 100.0 * static_cast<double>(span - spanAtLeast) / static_cast<double>(spanAtLeast)
               : 100.0;
}

Result<Schedule, ProjectFault> schedule(const Project& project, Aim aim, const SearchLimits& limits,
                                        const std::stop_token& stop) {
    if (const auto fault = shapeFault(project)) return *fault;
    const auto pins = pinPlaces(project);
    const bool backwards = aim == Aim::latest;
    const auto ready = readyProject(project, pins, backwards);
    if (const auto fault = handsFault(project, ready, backwards)) return *fault;
    const auto other = readyProject(project, pins, !backwards, &ready);
    Search search(ready, other, limits, stop);
    search.run();
    Schedule out;
    out.pinFaults = pinFaults(project, pins);
    out.tried = search.tried();
    fillTasks(ready, search.best(), project, backwards, out);
    out.proved = search.proved();
    out.misfitProved = !out.fits() && search.misfitProved();
    out.stopped = stop.stop_requested();
    fillGroups(ready, search, project, backwards, out);
    return out;
}

} // namespace withy::runup
