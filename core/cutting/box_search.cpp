// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/box_search.h"

#include <algorithm>
#include <limits>

namespace withy::cutting {

namespace {

constexpr std::size_t mostStates = 400'000;
constexpr std::size_t mostCells = 12'000'000; ///< states x reels and ends

std::int64_t wasteOf(const BoxTask& task, std::int64_t length, std::int64_t cut) {
    const auto left = length - cut;
    return cut > 0 && left < task.keepFrom ? left : 0;
}

/// A state is what is left to cut, as one number of mixed radix.
class BoxSearch {
public:
    BoxSearch(const BoxTask& task, const BoxPlan& known, Effort& effort)
        : task_(task), known_(known), effort_(effort), kinds_(task.lengths.size()) {
        for (std::size_t k = 0; k < kinds_; ++k) {
            weight_.push_back(states_);
            states_ *= static_cast<std::size_t>(task.demand[k]) + 1;
            if (states_ > mostStates) return;
        }
        roomAfter_.assign(task.stock.size() + 1, 0);
        endsAfter_ = roomAfter_;
        for (std::size_t s = task.stock.size(); s-- > 0;) {
            roomAfter_[s] = roomAfter_[s + 1] + task.stock[s].length;
            endsAfter_[s] = endsAfter_[s + 1] + (task.stock[s].reel ? 0 : task.stock[s].length);
        }
    }

    [[nodiscard]] bool tooLarge() const {
        return states_ > mostStates || states_ * (task_.stock.size() + 1) > mostCells;
    }

    std::optional<BoxPlan> run() {
        now_.assign(states_, none());
        now_[states_ - 1] = BoxCost{};
        reached_ = {states_ - 1};
        for (std::size_t s = 0; s < task_.stock.size(); ++s) {
            from_.emplace_back(states_, noState);
            next_.assign(states_, none());
            nextReached_.clear();
            for (const auto state : reached_) {
                if (effort_.over()) return std::nullopt;
                open(s, state);
            }
            std::swap(now_, next_);
            std::swap(reached_, nextReached_);
        }
        return best();
    }

private:
    static constexpr std::uint32_t noState = std::numeric_limits<std::uint32_t>::max();

    static BoxCost none() { return {std::numeric_limits<std::int64_t>::max(), 0, 0, 0}; }

    void open(std::size_t s, std::size_t state) {
        left_.assign(kinds_, 0);
        leftLength_ = 0;
        std::size_t rest = state;
        for (std::size_t k = kinds_; k-- > 0;) {
            left_[k] = static_cast<std::int64_t>(rest / weight_[k]);
            rest %= weight_[k];
            leftLength_ += left_[k] * task_.lengths[k];
        }
        // Only reels from here on: one that takes all and leaves no waste cannot be bettered.
        if (task_.stock[s].reel && takesCleanly(s, leftLength_)) return reach(s, state, 0, leftLength_);
        if (task_.stock[s].reel && laterTakesCleanly(s, leftLength_)) return reach(s, state, state, 0);
        settled_ = false;
        fill(s, state, 0, state, 0);
    }

    [[nodiscard]] bool takesCleanly(std::size_t s, std::int64_t left) const {
        return left > 0 && left <= task_.stock[s].length && wasteOf(task_, task_.stock[s].length, left) == 0;
    }

    [[nodiscard]] bool laterTakesCleanly(std::size_t s, std::int64_t left) const {
        for (std::size_t t = s + 1; t < task_.stock.size(); ++t) {
            if (takesCleanly(t, left)) return true;
        }
        return false;
    }

    /// Every way to cut this length, kind after kind.
    void fill(std::size_t s, std::size_t state, std::size_t kind, std::size_t to, std::int64_t cut) {
        if (kind == kinds_) {
            // A reel that leaves no waste and another that then takes the rest: two is the least here.
            settled_ = task_.stock[s].reel && takesCleanly(s, cut) && laterTakesCleanly(s, leftLength_ - cut);
            return reach(s, state, to, cut);
        }
        const auto room = task_.stock[s].length - cut;
        const auto most = std::min(left_[kind], room / task_.lengths[kind]);
        for (std::int64_t n = most; n >= 0 && !settled_; --n)
            fill(s, state, kind + 1, to - static_cast<std::size_t>(n) * weight_[kind],
                 cut + n * task_.lengths[kind]);
    }

    void reach(std::size_t s, std::size_t state, std::size_t to, std::int64_t cut) {
        effort_.spend(20);
        BoxCost cost = now_[state];
        cost.waste += wasteOf(task_, task_.stock[s].length, cut);
        cost.fromReels += task_.stock[s].reel ? cut : 0;
        cost.opened += cut > 0 ? 1 : 0;
        if (!(cost < next_[to]) || hopeless(s + 1, cost, leftLength_ - cut)) return;
        if (next_[to] == none()) nextReached_.push_back(to);
        next_[to] = cost;
        from_[s][to] = static_cast<std::uint32_t>(state);
    }

    [[nodiscard]] bool hopeless(std::size_t s, const BoxCost& cost, std::int64_t left) const {
        BoxCost least = cost;
        least.missing = std::max<std::int64_t>(left - roomAfter_[s], 0);
        least.fromReels += std::max<std::int64_t>(left - least.missing - endsAfter_[s], 0);
        return !(least < known_.cost);
    }

    BoxPlan best() const {
        std::optional<BoxCost> least;
        std::size_t at = 0;
        for (const auto state : reached_) {
            BoxCost cost = now_[state];
            cost.missing = 0;
            std::size_t rest = state;
            for (std::size_t k = kinds_; k-- > 0; rest %= weight_[k])
                cost.missing += static_cast<std::int64_t>(rest / weight_[k]) * task_.lengths[k];
            if (least && !(cost < *least)) continue;
            least = cost;
            at = state;
        }
        if (!least || !(*least < known_.cost)) return known_;
        return {traced(at), *least};
    }

    std::vector<Counts> traced(std::size_t state) const {
        std::vector<Counts> cuts(task_.stock.size(), Counts(kinds_, 0));
        for (std::size_t s = task_.stock.size(); s-- > 0;) {
            const std::size_t before = from_[s][state];
            std::size_t a = before, b = state;
            for (std::size_t k = kinds_; k-- > 0; a %= weight_[k], b %= weight_[k])
                cuts[s][k] =
                    static_cast<std::int64_t>(a / weight_[k]) - static_cast<std::int64_t>(b / weight_[k]);
            state = before;
        }
        return cuts;
    }

    const BoxTask& task_;
    const BoxPlan& known_;
    Effort& effort_;
    std::size_t kinds_;
    std::size_t states_ = 1;
    std::vector<std::size_t> weight_;
    std::vector<std::int64_t> roomAfter_, endsAfter_;
    std::vector<BoxCost> now_, next_;
    std::vector<std::size_t> reached_, nextReached_;
    std::vector<std::vector<std::uint32_t>> from_; ///< by reel or end, by state after it
    Counts left_;
    std::int64_t leftLength_ = 0;
    bool settled_ = false; ///< this state needs no further tries
};

} // namespace

BoxCost costOf(const BoxTask& task, const std::vector<Counts>& cuts) {
    BoxCost cost;
    Counts done(task.lengths.size(), 0);
    for (std::size_t s = 0; s < cuts.size(); ++s) {
        std::int64_t cut = 0;
        for (std::size_t k = 0; k < done.size(); ++k) {
            done[k] += cuts[s][k];
            cut += cuts[s][k] * task.lengths[k];
        }
        cost.waste += wasteOf(task, task.stock[s].length, cut);
        cost.fromReels += task.stock[s].reel ? cut : 0;
        cost.opened += cut > 0 ? 1 : 0;
    }
    for (std::size_t k = 0; k < done.size(); ++k)
        cost.missing += (task.demand[k] - done[k]) * task.lengths[k];
    return cost;
}

BoxCost leastCost(const BoxTask& task) {
    std::int64_t wanted = 0, room = 0, ends = 0;
    for (std::size_t k = 0; k < task.lengths.size(); ++k)
        wanted += task.demand[k] * task.lengths[k];
    for (const auto& stock : task.stock) {
        room += stock.length;
        ends += stock.reel ? 0 : stock.length;
    }
    BoxCost least;
    least.missing = std::max<std::int64_t>(wanted - room, 0);
    least.fromReels = std::max<std::int64_t>(wanted - least.missing - ends, 0);
    return least;
}

std::optional<BoxPlan> searchAll(const BoxTask& task, const BoxPlan& known, Effort& effort) {
    BoxSearch search(task, known, effort);
    if (search.tooLarge()) return std::nullopt;
    return search.run();
}

} // namespace withy::cutting
