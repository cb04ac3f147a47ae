// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/energy.h"

#include <algorithm>
#include <iterator>
#include <numeric>

namespace withy::runup {

namespace {

/// Minutes between cuts, counted where `counts` says so, with this weight.
template <class Weight>
std::vector<Time> summedUpTo(const std::vector<Time>& cuts, const LoadProfile& profile, Weight weight) {
    std::vector<Time> out(cuts.size());
    if (cuts.empty()) return out;
    std::size_t k = profile.stretchAt(cuts.front());
    for (std::size_t i = 1; i < cuts.size(); ++i) {
        Time sum = 0;
        Time now = cuts[i - 1];
        while (now < cuts[i]) {
            const Time to = std::min(cuts[i], profile.end(k));
            sum += (to - now) * weight(k);
            now = to;
            if (now == profile.end(k)) ++k;
        }
        out[i] = out[i - 1] + sum;
    }
    return out;
}

int rootOf(std::vector<int>& parent, int x) {
    while (parent[x] != x)
        x = parent[x] = parent[parent[x]];
    return x;
}

void joinWays(const ReadyTask& task, std::vector<int>& parent) {
    std::optional<int> first;
    for (const auto& m : task.modes) {
        for (const auto& need : m.mode.needs) {
            if (!first) first = need.resource;
            parent[rootOf(parent, need.resource)] = rootOf(parent, *first);
        }
    }
}

} // namespace

std::vector<std::vector<int>> poolsOf(const ReadyProject& ready) {
    std::vector<int> parent(ready.base.resources());
    std::iota(parent.begin(), parent.end(), 0);
    for (const auto& task : ready.tasks)
        if (task.modes.size() > 1) joinWays(task, parent);
    std::vector<std::vector<int>> out;
    std::vector<std::vector<int>> joined(parent.size());
    for (int r = 0; r < static_cast<int>(parent.size()); ++r) {
        out.push_back({r});
        joined[rootOf(parent, r)].push_back(r);
    }
    std::copy_if(joined.begin(), joined.end(), std::back_inserter(out),
                 [](const auto& pool) { return pool.size() > 1; });
    return out;
}

Energy::Energy(const ReadyProject& ready, std::vector<int> pool) : ready_(ready), pool_(std::move(pool)) {}

Time Energy::unitsOn(const Mode& mode) const {
    Time units = 0;
    for (const auto& need : mode.needs)
        if (std::find(pool_.begin(), pool_.end(), need.resource) != pool_.end()) units += need.units;
    return units;
}

void Energy::add(int task, Time start, Time end) {
    const auto& modes = ready_.tasks[task].modes;
    const bool always_ = std::all_of(modes.begin(), modes.end(), [&](const ReadyMode& m) {
        return m.mode.duration > 0 && unitsOn(m.mode) > 0;
    });
    if (always_ && start > always && end < never && start < end) items_.push_back({task, start, end});
}

void Energy::addCut(Time at) {
    cuts_.push_back(at);
}

std::vector<Time> Energy::cuts() const {
    std::vector<Time> out = cuts_;
    for (const auto& item : items_) {
        out.push_back(item.start);
        out.push_back(item.end);
    }
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
}

std::vector<Time> Energy::workedUpTo(const std::vector<Time>& cuts, const Mode& mode) const {
    return summedUpTo(cuts, ready_.calendar,
                      [&](std::size_t k) { return ready_.calendar.onCalendar(k, mode) ? 1 : 0; });
}

std::vector<Time> Energy::roomUpTo(const std::vector<Time>& cuts) const {
    return summedUpTo(cuts, ready_.base, [&](std::size_t k) {
        Time free = 0;
        for (const int r : pool_)
            free += ready_.base.free(k, r);
        return free;
    });
}

std::vector<Energy::Way> Energy::waysOf(const Item& item, const std::vector<Time>& cuts) const {
    const auto placeOf = [&](Time t) {
        return static_cast<std::size_t>(std::lower_bound(cuts.begin(), cuts.end(), t) - cuts.begin());
    };
    const std::size_t start = placeOf(item.start);
    const std::size_t end = placeOf(item.end);
    std::vector<Way> out;
    for (const auto& m : ready_.tasks[item.task].modes) {
        Way way{unitsOn(m.mode), m.mode.duration, cuts, {}, {}};
        if (ready_.tasks[item.task].splittable) way.worked = workedUpTo(cuts, m.mode);
        for (const Time worked : way.worked) {
            way.before.push_back(std::max<Time>(0, worked - way.worked[start]));
            way.after.push_back(std::max<Time>(0, way.worked[end] - worked));
        }
        out.push_back(std::move(way));
    }
    return out;
}

Energy::Figures Energy::figures() const {
    Figures out;
    out.cuts = cuts();
    out.room = roomUpTo(out.cuts);
    for (const auto& item : items_)
        out.ways.push_back(waysOf(item, out.cuts));
    return out;
}

Time Energy::workBetween(const Figures& in, std::size_t a, std::size_t b) const {
    Time work = 0;
    for (std::size_t i = 0; i < items_.size(); ++i) {
        if (items_[i].start >= in.cuts[b] || items_[i].end <= in.cuts[a]) continue;
        Time least = never;
        for (const auto& w : in.ways[i]) {
            const Time inside =
                std::min(w.duration - std::max(w.before[a], w.after[b]), w.worked[b] - w.worked[a]);
            least = std::min(least, w.units * inside);
            if (least <= 0) break;
        }
        work += std::max<Time>(0, least);
    }
    return work;
}

Crowding Energy::worst() const {
    if (items_.empty()) return {};
    const Figures in = figures();
    Crowding worst;
    for (std::size_t a = 0; a < in.cuts.size(); ++a) {
        for (std::size_t b = a + 1; b < in.cuts.size(); ++b) {
            const Crowding here{in.cuts[a], in.cuts[b], workBetween(in, a, b), in.room[b] - in.room[a]};
            if (here.work == 0) continue;
            const Time over = here.work - here.room;
            const Time most = worst.work - worst.room;
            const bool shorter = over == most && here.to - here.from < worst.to - worst.from;
            if (worst.work == 0 || over > most || shorter) worst = here;
        }
    }
    return worst;
}

std::vector<Crowding> Energy::betweenCuts() const {
    const Figures in = figures();
    auto asked = cuts_;
    std::sort(asked.begin(), asked.end());
    const auto placeOf = [&](Time t) {
        return static_cast<std::size_t>(std::lower_bound(in.cuts.begin(), in.cuts.end(), t) -
                                        in.cuts.begin());
    };
    std::vector<Crowding> out;
    for (std::size_t i = 0; i + 1 < asked.size(); ++i) {
        const std::size_t a = placeOf(asked[i]);
        const std::size_t b = placeOf(asked[i + 1]);
        if (a < b) out.push_back({asked[i], asked[i + 1], workBetween(in, a, b), in.room[b] - in.room[a]});
    }
    return out;
}

} // namespace withy::runup
