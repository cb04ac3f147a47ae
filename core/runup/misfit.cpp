// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/misfit.h"

#include "core/runup/energy.h"
#include "core/runup/ready_project.h"

#include <algorithm>

namespace withy::runup {

namespace {

struct WindowsOfAll {
    ReadyProject forward;
    std::vector<Place> early;
    std::vector<Time> lastEnds;
};

WindowsOfAll windowsOf(const Project& p) {
    WindowsOfAll out;
    const auto pins = pinPlaces(p);
    out.forward = readyProject(p, pins, false);
    const auto backward = readyProject(p, pins, true, &out.forward);
    out.early = earliestPlaces(out.forward);
    for (const auto& place : earliestPlaces(backward)) {
        const bool open = place.start < always / 2; // no deadline, nor what waits for it
        out.lastEnds.push_back(open ? never : place.start == never ? always : -place.start);
    }
    return out;
}

Time floorDay(Time t, Time dayLength) {
    return (t >= 0 ? t : t - dayLength + 1) / dayLength * dayLength;
}

void findChain(const WindowsOfAll& windows, Misfit& out) {
    for (const int t : windows.forward.order) {
        if (windows.early[t].end >= never) continue;
        const Time over = windows.early[t].end - windows.forward.tasks[t].deadline;
        if (over <= out.chain) continue;
        out.chain = over;
        out.chainTask = t;
    }
}

Overload overloadOf(const std::vector<int>& pool, const Crowding& c) {
    return {pool, c.from, c.to, c.work, c.room};
}

Energy energyOf(const WindowsOfAll& windows, const std::vector<int>& pool) {
    Energy energy(windows.forward, pool);
    for (const int t : windows.forward.order)
        energy.add(t, windows.early[t].start, windows.lastEnds[t]);
    return energy;
}

void findTightest(const WindowsOfAll& windows, Misfit& out) {
    for (const auto& pool : poolsOf(windows.forward)) {
        const Crowding worst = energyOf(windows, pool).worst();
        if (worst.work == 0) continue;
        const auto here = overloadOf(pool, worst);
        if (!out.tightest || here.over() > out.tightest->over()) out.tightest = here;
    }
}

void findDay(const WindowsOfAll& windows, Time dayLength, Misfit& out) {
    if (!out.tightest) return;
    Energy energy = energyOf(windows, out.tightest->resources);
    const Time last = out.tightest->to + dayLength;
    for (Time day = floorDay(out.tightest->from, dayLength); day < last; day += dayLength)
        energy.addCut(day);
    for (const auto& c : energy.betweenCuts()) {
        const auto here = overloadOf(out.tightest->resources, c);
        if (here.work > 0 && (!out.day || here.over() > out.day->over())) out.day = here;
    }
}

Time share(Time duration, std::int64_t part, std::int64_t whole) {
    return (duration * part + whole - 1) / whole;
}

/// Tries the changes of one kind.
class Mending {
public:
    Mending(const Project& project, Aim aim, const SearchLimits& limits, const std::stop_token& stop)
        : p_(project), aim_(aim), limits_(limits), stop_(stop) {}

    /// The least n from 1 to `most` with which the change of n steps fits; `most` is known to fit.
    template <class Change>
    [[nodiscard]] std::int64_t least(std::int64_t most, Change change) const {
        std::int64_t low = 1;
        while (low < most && !stop_.stop_requested()) {
            const std::int64_t middle = low + (most - low) / 2;
            if (outside(change(middle)) == 0)
                most = middle;
            else
                low = middle + 1;
        }
        return most;
    }

    /// Minutes outside; a task without a place counts as very many.
    [[nodiscard]] Time outside(const Project& changed) const {
        const auto found = schedule(changed, aim_, limits_, stop_);
        if (!found.ok()) return unplacedCost;
        return found->outside + found->unplaced * unplacedCost;
    }

    [[nodiscard]] Mend earlier(const MendChoices& choices) const {
        Mend mend{MendKind::startEarlier};
        const std::int64_t most = choices.earlierAtMost / choices.earlierStep;
        const auto change = [&](std::int64_t n) { return startedEarlier(p_, n * choices.earlierStep); };
        mend.outside = outside(change(most));
        mend.fits = mend.outside == 0;
        if (mend.fits) mend.earlier = least(most, change) * choices.earlierStep;
        return mend;
    }

    [[nodiscard]] Mend helper(const ExtraHands& hands) const {
        Mend mend{MendKind::oneMoreHelper};
        mend.outside = outside(withOneMore(p_, hands));
        mend.fits = mend.outside == 0;
        return mend;
    }

    [[nodiscard]] Mend fewer(const GroupPieces& group) const {
        Mend mend{MendKind::fewerPieces};
        mend.group = group.group;
        const auto change = [&](std::int64_t n) {
            return withPieces(p_, group.group, group.pieces, group.pieces - n);
        };
        const std::int64_t most = group.pieces - 1;
        mend.outside = outside(change(most));
        mend.fits = mend.outside == 0;
        if (mend.fits) mend.pieces = group.pieces - least(most, change);
        return mend;
    }

private:
    const Project& p_;
    Aim aim_;
    const SearchLimits& limits_;
    const std::stop_token& stop_;
};

} // namespace

Misfit misfit(const Project& project, const Schedule& schedule, Time dayLength) {
    Misfit out;
    out.proved = schedule.misfitProved;
    out.minutes = schedule.worst;
    for (std::size_t t = 0; t < schedule.tasks.size(); ++t) {
        const auto& placed = schedule.tasks[t];
        const bool none = placed.mode < 0;
        if (!none && (schedule.unplaced > 0 || placed.outside == 0 || placed.outside < schedule.worst))
            continue;
        out.task = static_cast<int>(t);
        break;
    }
    const auto windows = windowsOf(project);
    findChain(windows, out);
    findTightest(windows, out);
    findDay(windows, dayLength, out);
    return out;
}

Project startedEarlier(Project project, Time earlier) {
    for (auto& task : project.tasks)
        if (task.releaseMoves && task.release != always) task.release -= earlier;
    return project;
}

Project withOneMore(Project project, const ExtraHands& hands) {
    const int number = static_cast<int>(project.resources.size());
    project.resources.push_back(hands.hours);
    for (auto& task : project.tasks) {
        const std::size_t ways = task.modes.size();
        for (std::size_t m = 0; m < ways; ++m) {
            Mode mode = task.modes[m];
            const auto need = std::find_if(mode.needs.begin(), mode.needs.end(),
                                           [&](const Need& n) { return n.resource == hands.like; });
            if (need == mode.needs.end()) continue;
            if (hands.beside && task.byPiece) {
                Mode both = mode;
                both.needs.push_back({number, 1});
                both.duration = share(mode.duration, hands.minutesPerHundred, 100 + hands.minutesPerHundred);
                task.modes.push_back(std::move(both));
            }
            need->resource = number;
            mode.duration = share(mode.duration, hands.minutesPerHundred, 100);
            task.modes.push_back(std::move(mode));
        }
    }
    return project;
}

Project withPieces(Project project, int group, std::int64_t pieces, std::int64_t left) {
    for (auto& task : project.tasks) {
        if (task.group != group || !task.byPiece) continue;
        for (auto& mode : task.modes)
            mode.duration = share(mode.duration, left, pieces);
    }
    return project;
}

std::vector<Mend> mends(const Project& project, Aim aim, const MendChoices& choices,
                        const SearchLimits& limits, const std::stop_token& stop) {
    const Mending mending(project, aim, limits, stop);
    std::vector<Mend> out;
    const bool moves = std::any_of(project.tasks.begin(), project.tasks.end(),
                                   [](const Task& t) { return t.releaseMoves && t.release != always; });
    if (moves && choices.earlierStep > 0 && choices.earlierAtMost >= choices.earlierStep)
        out.push_back(mending.earlier(choices));
    if (choices.helper) out.push_back(mending.helper(*choices.helper));
    for (const auto& group : choices.pieces)
        if (group.pieces > 1) out.push_back(mending.fewer(group));
    std::stable_sort(out.begin(), out.end(), [](const Mend& a, const Mend& b) { return a.fits > b.fits; });
    return out;
}

} // namespace withy::runup
