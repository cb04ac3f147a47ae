// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/stock_problem.h"

#include <algorithm>
#include <limits>

namespace withy::cutting {

double costOf(const Stock& stock, std::int64_t cut) {
    const auto left = stock.length - cut;
    return stock.opened + stock.perCut * static_cast<double>(cut) +
           (left < stock.keepFrom ? stock.perWaste * static_cast<double>(left) : 0.0);
}

CutPattern patternOf(const CutProblem& problem, std::size_t stock, const Counts& counts) {
    CutPattern pattern;
    pattern.stock = stock;
    for (std::size_t k = 0; k < counts.size(); ++k) {
        if (counts[k] == 0) continue;
        pattern.cuts.emplace_back(k, counts[k]);
        pattern.cut += counts[k] * problem.lengths[k];
        if (stock == noStock) pattern.cost += problem.alone[k] * static_cast<double>(counts[k]);
    }
    if (stock != noStock) pattern.cost = costOf(problem.stocks[stock], pattern.cut);
    return pattern;
}

CutState stateOf(const CutProblem& problem) {
    CutState state{problem.demand, {}};
    for (const auto& stock : problem.stocks)
        state.stock.push_back(stock.count);
    return state;
}

std::int64_t timesPossible(const CutPattern& pattern, const CutState& state) {
    auto times = std::numeric_limits<std::int64_t>::max();
    if (pattern.stock != noStock && state.stock[pattern.stock] != unlimited)
        times = state.stock[pattern.stock];
    for (const auto& [kind, count] : pattern.cuts)
        times = std::min(times, state.demand[kind] / count);
    return times;
}

void use(const CutPattern& pattern, std::int64_t times, CutState& state) {
    for (const auto& [kind, count] : pattern.cuts)
        state.demand[kind] -= count * times;
    if (pattern.stock != noStock && state.stock[pattern.stock] != unlimited)
        state.stock[pattern.stock] -= times;
}

bool nothingLeft(const CutState& state) {
    return std::all_of(state.demand.begin(), state.demand.end(), [](auto n) { return n == 0; });
}

std::int64_t lengthLeft(const CutProblem& problem, const CutState& state) {
    std::int64_t sum = 0;
    for (std::size_t k = 0; k < state.demand.size(); ++k)
        sum += state.demand[k] * problem.lengths[k];
    return sum;
}

} // namespace withy::cutting
