// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/dive.h"

#include <algorithm>
#include <cmath>

namespace withy::cutting {

namespace {

constexpr double wholeWithin = 1e-4;
constexpr int widestRound = 12;

class Dive {
public:
    Dive(const CutProblem& problem, WholePlan known, std::int64_t bound, Effort& effort)
        : problem_(problem), lp_(problem), effort_(effort), best_(std::move(known)), bound_(bound) {
        for (const auto& used : best_.used)
            lp_.add(used.pattern);
    }

    DiveAnswer run() {
        const CutState all = stateOf(problem_);
        root_ = lp_.solve(all, effort_);
        bound_ = std::max(bound_, root_.bound);
        for (int round = 0; round <= widestRound && !done(); ++round) {
            keepBack_ = round % 2;
            WholePlan taken;
            down(all, taken, round, root_);
        }
        return {best_, bound_};
    }

private:
    [[nodiscard]] bool done() const {
        return effort_.over() || best_.cost <= problem_.least + 1e-6 ||
               (problem_.wholeCosts && std::llround(best_.cost) <= bound_);
    }

    /// Whether no plan through here can be better than the best.
    [[nodiscard]] bool hopeless(const WholePlan& taken, const FractionalPlan& rest) const {
        if (!rest.complete) return false;
        const double least =
            taken.cost + (problem_.wholeCosts ? static_cast<double>(rest.bound) : rest.value);
        return least > best_.cost - (problem_.wholeCosts ? 0.5 : 1e-6);
    }

    void offer(const WholePlan& taken, const WholePlan& rest) {
        if (taken.cost + rest.cost >= best_.cost - 1e-6) return;
        best_ = taken;
        for (const auto& used : rest.used)
            addTo(best_, used.pattern, used.times);
    }

    /// All patterns the fractional plan uses at least once, less one each in every other round: what looks
    /// settled at the start is not always so.
    void takeWhole(const FractionalPlan& rest, CutState& state, WholePlan& taken) {
        for (const auto& [index, value] : rest.used) {
            const auto whole = static_cast<std::int64_t>(std::floor(value + wholeWithin)) - keepBack_;
            const auto& pattern = lp_.pattern(index);
            const auto times = std::min(whole, timesPossible(pattern, state));
            if (times <= 0 || isMissing(pattern)) continue;
            addTo(taken, pattern, times);
            use(pattern, times, state);
        }
    }

    static bool isMissing(const CutPattern& pattern) { return pattern.stock == noStock; }

    /// The patterns still possible, the one used most first.
    std::vector<std::size_t> choices(const FractionalPlan& rest, const CutState& state) const {
        std::vector<std::pair<double, std::size_t>> order;
        for (const auto& [index, value] : rest.used) {
            const auto& pattern = lp_.pattern(index);
            if (isMissing(pattern) || timesPossible(pattern, state) <= 0) continue;
            const double part = value - std::floor(value + wholeWithin);
            order.emplace_back(part > wholeWithin ? part : std::min(value, 1.0), index);
        }
        std::sort(order.begin(), order.end(), [&](const auto& a, const auto& b) {
            if (std::abs(a.first - b.first) > 1e-6) return a.first > b.first;
            const auto lengthA = lp_.pattern(a.second).cut, lengthB = lp_.pattern(b.second).cut;
            return lengthA != lengthB ? lengthA > lengthB : a.second < b.second;
        });
        std::vector<std::size_t> indexes;
        for (const auto& [part, index] : order)
            indexes.push_back(index);
        return indexes;
    }

    void down(CutState state, WholePlan taken, int discrepancy, const FractionalPlan& rest) {
        if (done() || hopeless(taken, rest)) return;
        takeWhole(rest, state, taken);
        offer(taken, fillFalling(problem_, state));
        if (lengthLeft(problem_, state) <= 40 * problem_.lengths.front())
            offer(taken, fillFullest(problem_, state, effort_));
        if (nothingLeft(state)) return;
        const auto indexes = choices(rest, state);
        const auto widest = std::min<std::size_t>(indexes.size(), static_cast<std::size_t>(discrepancy) + 1);
        for (std::size_t j = 0; j < widest && !done(); ++j) {
            CutState next = state;
            WholePlan with = taken;
            use(lp_.pattern(indexes[j]), 1, next);
            addTo(with, lp_.pattern(indexes[j]), 1);
            if (nothingLeft(next)) {
                offer(with, {});
                continue;
            }
            const auto fraction = lp_.solve(next, effort_);
            down(next, with, discrepancy - static_cast<int>(j), fraction);
        }
    }

    const CutProblem& problem_;
    PatternLp lp_;
    Effort& effort_;
    WholePlan best_;
    std::int64_t bound_ = 0;
    std::int64_t keepBack_ = 0;
    FractionalPlan root_;
};

} // namespace

DiveAnswer dive(const CutProblem& problem, WholePlan known, std::int64_t knownBound, Effort& effort) {
    return Dive(problem, std::move(known), knownBound, effort).run();
}

} // namespace withy::cutting
