// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/pattern_lp.h"

#include "core/cutting/simplex.h"

#include <algorithm>
#include <cmath>

namespace withy::cutting {

namespace {

constexpr double worthwhile = 1e-7; ///< least saving, in shares of the dearest single piece

/// One solve: which row is whose, and the columns in play.
class Round {
public:
    Round(const CutProblem& problem, const CutState& state, std::vector<CutPattern>& pool, ExactSums& sums,
          Effort& effort)
        : problem_(problem), state_(state), pool_(pool), sums_(sums), effort_(effort) {
        rowOfKind_.assign(problem.lengths.size(), 0);
        for (std::size_t k = 0; k < problem.lengths.size(); ++k) {
            if (state.demand[k] == 0) continue;
            rowOfKind_[k] = rhs_.size();
            kinds_.push_back(k);
            rhs_.push_back(static_cast<double>(state.demand[k]));
            startCost_.push_back(problem.alone[k]);
            dearest_ = std::max(dearest_, problem.alone[k]);
        }
        rowOfStock_.assign(problem.stocks.size(), Simplex::start);
        for (std::size_t s = 0; s < problem.stocks.size(); ++s) {
            if (state.stock[s] <= 0) continue;
            rowOfStock_[s] = rhs_.size();
            rhs_.push_back(static_cast<double>(state.stock[s]));
            startCost_.push_back(0);
        }
        scale_ = std::ldexp(1.0, 40) / std::max(dearest_, 1e-9);
        for (std::size_t i = 0; i < pool.size(); ++i) {
            if (timesPossible(pool[i], state) > 0) play(i);
        }
    }

    FractionalPlan run() {
        Simplex simplex(rhs_, startCost_);
        FractionalPlan plan;
        std::int64_t counted = 0;
        while (!effort_.over()) {
            const bool entered = enterBest(simplex, plan);
            effort_.spend(simplex.work() - counted);
            counted = simplex.work();
            if (!entered) break;
        }
        plan.value = simplex.value();
        for (std::size_t r = 0; r < rhs_.size(); ++r) {
            const auto id = simplex.ids()[r];
            if (simplex.values()[r] < 1e-6) continue;
            if (id == Simplex::start && r < kinds_.size())
                plan.used.emplace_back(kinds_[r], simplex.values()[r]);
            if (id < slackFrom) plan.used.emplace_back(id, simplex.values()[r]);
        }
        return plan;
    }

private:
    static constexpr std::size_t slackFrom = Simplex::start / 2;

    void play(std::size_t poolIndex) {
        const auto& pattern = pool_[poolIndex];
        LpColumn column;
        column.cost = pattern.cost;
        for (const auto& [kind, count] : pattern.cuts)
            column.entries.emplace_back(rowOfKind_[kind], static_cast<double>(count));
        if (pattern.stock != noStock && rowOfStock_[pattern.stock] != Simplex::start)
            column.entries.emplace_back(rowOfStock_[pattern.stock], 1.0);
        columns_.push_back(std::move(column));
        poolIndexes_.push_back(poolIndex);
    }

    /// More pieces than wanted may be cut: a dual below nought calls for that; for stock, above nought.
    bool enterSlack(Simplex& simplex) {
        std::size_t best = Simplex::start;
        double least = -worthwhile * dearest_;
        for (std::size_t r = 0; r < kinds_.size(); ++r) {
            if (simplex.duals()[r] < least) {
                least = simplex.duals()[r];
                best = r;
            }
        }
        for (std::size_t r = kinds_.size(); r < rhs_.size(); ++r) {
            if (-simplex.duals()[r] < least) {
                least = -simplex.duals()[r];
                best = r;
            }
        }
        if (best == Simplex::start) return false;
        const double sign = best < kinds_.size() ? -1.0 : 1.0;
        return simplex.enter({{{best, sign}}, 0.0}, slackFrom + best);
    }

    bool enterFromPool(Simplex& simplex) {
        std::size_t best = columns_.size();
        double least = -worthwhile * dearest_;
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            const double reduced = simplex.reducedCost(columns_[i]);
            if (reduced >= least) continue;
            least = reduced;
            best = i;
        }
        effort_.spend(static_cast<std::int64_t>(columns_.size()) * 4);
        return best < columns_.size() && simplex.enter(columns_[best], poolIndexes_[best]);
    }

    bool enterBest(Simplex& simplex, FractionalPlan& plan) {
        return enterSlack(simplex) || enterFromPool(simplex) || enterNew(simplex, plan);
    }

    /// Pricing: the table of best sums serves every stock at once.
    bool enterNew(Simplex& simplex, FractionalPlan& plan) {
        Counts worth(problem_.lengths.size(), 0);
        for (std::size_t r = 0; r < kinds_.size(); ++r)
            worth[kinds_[r]] = static_cast<std::int64_t>(std::max(simplex.duals()[r], 0.0) * scale_);
        std::int64_t room = 0;
        for (std::size_t s = 0; s < problem_.stocks.size(); ++s) {
            if (state_.stock[s] != 0) room = std::max(room, problem_.stocks[s].length);
        }
        room = std::min(room, lengthLeft(problem_, state_));
        sums_.fill(problem_.lengths, state_.demand, worth, room);
        effort_.spend(sums_.cells());
        noteBound(worth, simplex.value(), plan);
        if (plan.complete) return false;
        bool entered = false;
        std::size_t found = 0;
        for (std::size_t s = 0; s < problem_.stocks.size(); ++s) {
            if (state_.stock[s] == 0) continue;
            const auto sum = bestSum(simplex, s);
            if (sum == 0) continue;
            ++found;
            pool_.push_back(patternOf(problem_, s, sums_.countsAt(sum)));
            play(pool_.size() - 1);
            if (simplex.reducedCost(columns_.back()) < -worthwhile * dearest_)
                entered = simplex.enter(columns_.back(), pool_.size() - 1) || entered;
        }
        if (found == 0) plan.complete = true;
        return entered;
    }

    /// The sum whose pattern saves most on this stock; 0: none saves.
    std::int64_t bestSum(const Simplex& simplex, std::size_t s) const {
        const auto& stock = problem_.stocks[s];
        const double price = rowOfStock_[s] == Simplex::start ? 0.0 : simplex.duals()[rowOfStock_[s]];
        double least = -worthwhile * dearest_;
        std::int64_t best = 0;
        const auto most =
            std::min<std::int64_t>(stock.length, static_cast<std::int64_t>(sums_.best().size()) - 1);
        for (std::int64_t sum = 1; sum <= most; ++sum) {
            if (sums_.best()[sum] < 0) continue;
            const double reduced =
                costOf(stock, sum) - price - static_cast<double>(sums_.best()[sum]) / scale_;
            if (reduced >= least) continue;
            least = reduced;
            best = sum;
        }
        return best;
    }

    void noteBound(const Counts& worth, double value, FractionalPlan& plan) const {
        if (!problem_.wholeCosts) return;
        const auto most = *std::max_element(sums_.best().begin(), sums_.best().end());
        if (most <= 0) return;
        std::int64_t all = 0;
        for (std::size_t k = 0; k < worth.size(); ++k)
            all += worth[k] * state_.demand[k];
        plan.bound = std::max(plan.bound, (all + most - 1) / most);
        if (static_cast<double>(plan.bound) >= value - 1e-4) plan.complete = true;
    }

    const CutProblem& problem_;
    const CutState& state_;
    std::vector<CutPattern>& pool_;
    ExactSums& sums_;
    Effort& effort_;
    std::vector<std::size_t> kinds_; ///< by row
    std::vector<std::size_t> rowOfKind_;
    std::vector<std::size_t> rowOfStock_;
    std::vector<double> rhs_;
    std::vector<double> startCost_;
    std::vector<LpColumn> columns_;
    std::vector<std::size_t> poolIndexes_;
    double dearest_ = 0;
    double scale_ = 1;
};

} // namespace

PatternLp::PatternLp(const CutProblem& problem) : problem_(problem) {
    for (std::size_t k = 0; k < problem.lengths.size(); ++k) {
        Counts one(problem.lengths.size(), 0);
        one[k] = 1;
        pool_.push_back(patternOf(problem, problem.aloneFrom, one));
    }
}

FractionalPlan PatternLp::solve(const CutState& state, Effort& effort) {
    return Round(problem_, state, pool_, sums_, effort).run();
}

} // namespace withy::cutting
