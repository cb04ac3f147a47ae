// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/one_length.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"
#include "core/cutting/dive.h"
#include "core/cutting/piece_kinds.h"

#include <algorithm>
#include <cmath>

namespace withy::cutting {

namespace {

struct Bound {
    std::int64_t rolls = 0;
    BoundBy by = BoundBy::length;
};

std::int64_t rollsFor(std::int64_t length, std::int64_t roll) {
    return (length + roll - 1) / roll;
}

/// L2 of Martello and Toth: with a limit k up to half a roll, pieces over roll - k take a roll alone, those
/// over a half a roll each, and what the pieces from k to a half need beyond the room beside them.
std::int64_t withLimit(const CutProblem& problem, std::int64_t k) {
    const auto roll = problem.stocks.front().length;
    std::int64_t alone = 0, halves = 0, halvesLength = 0, smallLength = 0;
    for (std::size_t i = 0; i < problem.lengths.size(); ++i) {
        const auto length = problem.lengths[i], count = problem.demand[i];
        if (length > roll - k)
            alone += count;
        else if (2 * length > roll) {
            halves += count;
            halvesLength += count * length;
        } else if (length >= k)
            smallLength += count * length;
    }
    const auto beyond = smallLength - (halves * roll - halvesLength);
    return alone + halves + (beyond > 0 ? rollsFor(beyond, roll) : 0);
}

Bound simpleBound(const CutProblem& problem) {
    const auto roll = problem.stocks.front().length;
    Bound bound{rollsFor(lengthLeft(problem, stateOf(problem)), roll), BoundBy::length};
    std::vector<std::int64_t> limits{0};
    for (const auto length : problem.lengths) {
        if (2 * length <= roll) limits.push_back(length);
    }
    for (const auto k : limits) {
        if (const auto rolls = withLimit(problem, k); rolls > bound.rolls) bound = {rolls, BoundBy::halves};
    }
    return bound;
}

CutProblem problemOf(const PieceKinds& kinds, std::int64_t roll, std::int64_t& measure) {
    measure = commonMeasure(kinds.lengths);
    CutProblem problem;
    for (const auto length : kinds.lengths)
        problem.lengths.push_back(length / measure);
    problem.demand = kinds.demand;
    problem.stocks = {{roll / measure, unlimited, 1, 0, 0, 0}};
    problem.alone.assign(kinds.lengths.size(), 1.0);
    problem.aloneFrom = 0;
    problem.wholeCosts = true;
    return problem;
}

RollPlan planOf(const CutProblem& problem, const WholePlan& whole, std::int64_t roll, std::int64_t measure) {
    RollPlan plan;
    for (const auto& used : whole.used) {
        const RollPattern pattern{cutsOf(problem, used.pattern, measure), used.times,
                                  Millimetres(roll - used.pattern.cut * measure)};
        const auto alike = [&](const RollPattern& other) {
            return std::equal(
                other.cuts.begin(), other.cuts.end(), pattern.cuts.begin(), pattern.cuts.end(),
                [](const auto& a, const auto& b) { return a.length == b.length && a.count == b.count; });
        };
        const auto same = std::find_if(plan.patterns.begin(), plan.patterns.end(), alike);
        plan.rolls += used.times;
        if (same == plan.patterns.end())
            plan.patterns.push_back(pattern);
        else
            same->times += used.times;
    }
    std::stable_sort(plan.patterns.begin(), plan.patterns.end(),
                     [](const auto& a, const auto& b) { return a.times > b.times; });
    return plan;
}

Working workingOf(const PieceKinds& kinds, std::int64_t roll, const RollPlan& plan) {
    Working working;
    std::int64_t all = 0;
    for (std::size_t k = 0; k < kinds.lengths.size(); ++k) {
        working.push_back(lineOf(Step::given, "pieces", kinds.demand[k], Unit::pieces));
        working.push_back(lineOf(Step::times, "piece length", kinds.lengths[k], Unit::millimetres));
        all += kinds.demand[k] * kinds.lengths[k];
    }
    working.push_back(lineOf(Step::result, "length of all pieces", all, Unit::millimetres));
    working.push_back(lineOf(Step::over, "roll length", roll, Unit::millimetres, Basis::mine));
    working.push_back(lineOf(Step::result, "fewest rolls possible", plan.bound, Unit::count));
    working.push_back(lineOf(Step::result, "rolls", plan.rolls, Unit::count));
    return working;
}

/// The better of two quick plans.
WholePlan quickPlan(const CutProblem& problem, Effort& effort) {
    const CutState all = stateOf(problem);
    auto falling = fillFalling(problem, all);
    auto fullest = fillFullest(problem, all, effort);
    return fullest.cost < falling.cost && nothingLeft([&] {
               CutState state = all;
               for (const auto& used : fullest.used)
                   use(used.pattern, used.times, state);
               return state;
           }())
               ? fullest
               : falling;
}

} // namespace

Result<RollPlan, Problem> cutFromRolls(Millimetres roll, const std::vector<PieceWish>& pieces,
                                       const CutEffort& steps, std::stop_token stop) {
    if (const auto p = outside("roll_length", roll.value, 1, longestRoll)) return *p;
    if (steps.steps < 0)
        return problemAt(ProblemCode::belowLeast, "effort", std::to_string(steps.steps), {"0"});
    const auto kinds = kindsOf(pieces);
    if (!kinds.ok()) return kinds.error();
    if (kinds->lengths.empty()) {
        RollPlan none;
        none.proved = true;
        return none;
    }
    if (kinds->lengths.front() > roll.value)
        return problemAt(ProblemCode::moreThan, "piece_length", std::to_string(kinds->lengths.front()),
                         {"roll_length", std::to_string(roll.value)});
    std::int64_t measure = 1;
    const auto problem = problemOf(*kinds, roll.value, measure);
    Effort effort(steps.steps, std::move(stop));
    auto bound = simpleBound(problem);
    auto whole = quickPlan(problem, effort);
    if (std::llround(whole.cost) > bound.rolls &&
        ExactSums::cellsFor(problem.demand, problem.stocks.front().length) < 400'000'000) {
        auto answer = dive(problem, std::move(whole), bound.rolls, effort);
        if (answer.bound > bound.rolls) bound = {answer.bound, BoundBy::patterns};
        whole = std::move(answer.plan);
    }
    auto plan = planOf(problem, whole, roll.value, measure);
    plan.bound = bound.rolls;
    plan.boundBy = bound.by;
    plan.proved = plan.rolls == plan.bound;
    plan.stopped = effort.stopped();
    plan.steps = effort.spent();
    plan.working = workingOf(*kinds, roll.value, plan);
    return plan;
}

} // namespace withy::cutting
