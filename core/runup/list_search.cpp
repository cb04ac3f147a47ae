// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/list_search.h"

#include <algorithm>

namespace withy::runup {

namespace {

constexpr std::size_t cropSize = 40;
constexpr int greedyWay = -1;
constexpr int mutationPercent = 5;
constexpr int staleAfter = 300; ///< children without a better one: the crop has grown alike, sow anew

} // namespace

ListSearch::ListSearch(const ReadyProject& forward, const ReadyProject& backward, const SearchLimits& limits)
    : ready_(forward), backward_(backward), limits_(limits), layer_(forward, backward), random_(limits.seed) {
    best_.score = {never, never};
    severalWays_ = std::any_of(forward.tasks.begin(), forward.tasks.end(),
                               [](const ReadyTask& t) { return t.modes.size() > 1; });
}

bool ListSearch::going(const Score& enough, const std::stop_token& stop) const {
    return tried_ < limits_.schedules && enough < best_.score && !stop.stop_requested();
}

void ListSearch::evaluate(Breed& breed) {
    Laid laid;
    tried_ += layer_.lay(breed.list, breed.modes, laid);
    breed.score = laid.score;
    breed.modes = laid.modes;
    if (laid.score < best_.score) best_ = std::move(laid);
}

void ListSearch::add(Breed breed) {
    const auto worse = [](const Score& score, const Breed& b) { return score < b.score; };
    const auto place = std::upper_bound(crop_.begin(), crop_.end(), breed.score, worse);
    for (auto same = place; same != crop_.begin() && (same - 1)->score == breed.score; --same)
        if ((same - 1)->list == breed.list && (same - 1)->modes == breed.modes) return;
    crop_.insert(place, std::move(breed));
    if (crop_.size() > cropSize) crop_.pop_back();
}

/// Latest starts that would still keep the deadlines and each group's shortest span.
std::vector<Time> ListSearch::latestStarts() const {
    const auto early = earliestPlaces(ready_);
    std::vector<Time> last = ready_.pinnedGroup;
    for (const int t : ready_.order)
        last[ready_.tasks[t].group] = std::max(last[ready_.tasks[t].group], early[t].end);
    std::vector<Time> floors(ready_.tasks.size(), always);
    for (const int t : ready_.order)
        floors[t] = -std::min(ready_.tasks[t].deadline, last[ready_.tasks[t].group]);
    const auto late = earliestPlaces(backward_, floors);
    std::vector<Time> out(ready_.tasks.size());
    for (const int t : ready_.order)
        out[t] = -late[t].end;
    return out;
}

/// Draws the next task among those that may come, the less room it has the likelier; the deeper of
/// `sharpness` draws wins. Nought: the most urgent always.
std::vector<int> ListSearch::sampledList(const std::vector<Time>& urgency, int sharpness) {
    std::vector<std::size_t> waits(ready_.tasks.size());
    std::vector<int> open;
    for (const int t : ready_.order) {
        waits[t] = ready_.tasks[t].before.size();
        if (waits[t] == 0) open.push_back(t);
    }
    const auto sooner = [&](int a, int b) {
        return urgency[a] != urgency[b] ? urgency[a] < urgency[b] : a < b;
    };
    std::vector<int> list;
    while (!open.empty()) {
        auto pick = open.begin();
        if (sharpness == 0) {
            pick = std::min_element(open.begin(), open.end(), sooner);
        } else {
            pick += static_cast<std::ptrdiff_t>(below(open.size()));
            for (int i = 1; i < sharpness; ++i) {
                const auto other = open.begin() + static_cast<std::ptrdiff_t>(below(open.size()));
                if (sooner(*other, *pick)) pick = other;
            }
        }
        const int t = *pick;
        open.erase(pick);
        list.push_back(t);
        for (const auto& link : ready_.tasks[t].after)
            if (--waits[link.task] == 0) open.push_back(link.task);
    }
    return list;
}

void ListSearch::begin(const Score& enough, const std::stop_token& stop) {
    urgency_ = latestStarts();
    sow(enough, stop);
}

void ListSearch::sow(const Score& enough, const std::stop_token& stop) {
    for (std::size_t i = 0; i < cropSize && (tried_ == 0 || going(enough, stop)); ++i) {
        Breed breed;
        breed.list = sampledList(urgency_, tried_ == 0 ? 0 : static_cast<int>(1 + i % 3));
        breed.modes.assign(ready_.tasks.size(), greedyWay);
        evaluate(breed);
        add(std::move(breed));
    }
}

const ListSearch::Breed& ListSearch::parent() {
    return crop_[std::min(below(crop_.size()), below(crop_.size()))];
}

ListSearch::Breed ListSearch::child(const Breed& a, const Breed& b) {
    const std::size_t n = a.list.size();
    std::size_t from = below(n + 1);
    std::size_t to = below(n + 1);
    if (to < from) std::swap(from, to);
    Breed out;
    out.modes = a.modes;
    std::vector<bool> taken(ready_.tasks.size());
    const auto put = [&](int t, const Breed& giver) {
        if (taken[t]) return;
        taken[t] = true;
        out.list.push_back(t);
        out.modes[t] = giver.modes[t];
    };
    for (std::size_t i = 0; i < from; ++i)
        put(a.list[i], a);
    for (std::size_t i = 0; i < n && out.list.size() < to; ++i)
        put(b.list[i], b);
    for (std::size_t i = 0; i < n; ++i)
        put(a.list[i], a);
    return out;
}

bool ListSearch::follows(int before, int after) const {
    const auto& links = ready_.tasks[before].after;
    return std::any_of(links.begin(), links.end(), [&](const Link& l) { return l.task == after; });
}

void ListSearch::mutate(Breed& breed) {
    for (std::size_t i = 1; i < breed.list.size(); ++i) {
        if (below(100) >= mutationPercent) continue;
        if (!follows(breed.list[i - 1], breed.list[i])) std::swap(breed.list[i - 1], breed.list[i]);
    }
    if (!severalWays_) return;
    for (const int t : breed.list) {
        if (below(100) >= mutationPercent) continue;
        breed.modes[t] = static_cast<int>(below(ready_.tasks[t].modes.size() + 1)) - 1;
    }
}

void ListSearch::breed(const Score& enough, const std::stop_token& stop) {
    if (ready_.order.size() < 2) return;
    int stale = 0;
    while (going(enough, stop)) {
        const Score was = best_.score;
        Breed next = child(parent(), parent());
        mutate(next);
        evaluate(next);
        add(std::move(next));
        stale = best_.score < was ? 0 : stale + 1;
        if (stale >= staleAfter) {
            crop_.clear();
            sow(enough, stop);
            stale = 0;
        }
    }
}

} // namespace withy::runup
