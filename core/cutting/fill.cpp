// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/dive.h"

#include <algorithm>

namespace withy::cutting {

namespace {

void finishWithSingles(const CutProblem& problem, CutState& state, WholePlan& plan) {
    for (std::size_t k = 0; k < state.demand.size(); ++k) {
        if (state.demand[k] == 0) continue;
        Counts one(state.demand.size(), 0);
        one[k] = 1;
        const auto pattern = patternOf(problem, problem.aloneFrom, one);
        addTo(plan, pattern, state.demand[k]);
        use(pattern, state.demand[k], state);
    }
}

std::optional<std::size_t> longestThatFits(const CutProblem& problem, const CutState& state,
                                           std::int64_t room) {
    for (std::size_t k = 0; k < state.demand.size(); ++k) {
        if (state.demand[k] > 0 && problem.lengths[k] <= room) return k;
    }
    return std::nullopt;
}

Counts longestFirst(const CutProblem& problem, const CutState& state, std::int64_t room) {
    Counts counts(state.demand.size(), 0);
    for (std::size_t k = 0; k < counts.size(); ++k) {
        counts[k] = std::min(state.demand[k], room / problem.lengths[k]);
        room -= counts[k] * problem.lengths[k];
    }
    return counts;
}

} // namespace

void addTo(WholePlan& plan, const CutPattern& pattern, std::int64_t times) {
    plan.cost += pattern.cost * static_cast<double>(times);
    plan.used.push_back({pattern, times});
}

WholePlan fillFalling(const CutProblem& problem, CutState state) {
    WholePlan plan;
    for (std::size_t s = 0; s < problem.stocks.size();) {
        const auto pattern = patternOf(problem, s, longestFirst(problem, state, problem.stocks[s].length));
        const auto times = pattern.cuts.empty() ? 0 : timesPossible(pattern, state);
        if (times == 0) {
            ++s;
            continue;
        }
        addTo(plan, pattern, times);
        use(pattern, times, state);
    }
    finishWithSingles(problem, state, plan);
    return plan;
}

WholePlan fillFullest(const CutProblem& problem, CutState state, Effort& effort) {
    WholePlan plan;
    ExactSums sums;
    const std::size_t kinds = state.demand.size();
    for (std::size_t s = 0; s < problem.stocks.size() && !effort.over();) {
        const auto room = problem.stocks[s].length;
        const auto longest = longestThatFits(problem, state, room);
        if (state.stock[s] == 0 || !longest) {
            ++s;
            continue;
        }
        CutState rest = state;
        --rest.demand[*longest];
        Counts worth(kinds);
        for (std::size_t k = 0; k < kinds; ++k) {
            const double share = static_cast<double>(problem.lengths[k]) / static_cast<double>(room);
            worth[k] = problem.lengths[k] * 4096 + static_cast<std::int64_t>(2048 * share * share);
        }
        sums.fill(problem.lengths, rest.demand, worth,
                  std::min(room - problem.lengths[*longest], lengthLeft(problem, rest)));
        effort.spend(sums.cells());
        const auto best = std::max_element(sums.best().begin(), sums.best().end()) - sums.best().begin();
        Counts counts = sums.countsAt(best);
        ++counts[*longest];
        const auto pattern = patternOf(problem, s, counts);
        const auto times = timesPossible(pattern, state);
        addTo(plan, pattern, times);
        use(pattern, times, state);
    }
    finishWithSingles(problem, state, plan);
    return plan;
}

} // namespace withy::cutting
