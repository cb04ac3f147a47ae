// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting/stock_problem.h"

namespace withy::cutting {

/// The cutting plan with fractions of patterns allowed, solved by column generation: P. C. Gilmore,
/// R. E. Gomory, "A linear programming approach to the cutting-stock problem", Operations Research 9 (1961)
/// 849-859; each pattern holds no more of a kind than is wanted. Patterns found stay in the pool.
struct FractionalPlan {
    double value = 0;
    std::vector<std::pair<std::size_t, double>> used; ///< pattern in the pool, how often
    /// No plan costs less (Farley 1990): found in whole numbers from the duals. Only where one unlimited
    /// stock at cost 1 is all there is; elsewhere 0.
    std::int64_t bound = 0;
    bool complete = false; ///< the optimum, or near enough that the rounded bound cannot rise
};

class PatternLp {
public:
    explicit PatternLp(const CutProblem& problem);

    FractionalPlan solve(const CutState& state, Effort& effort);

    [[nodiscard]] const CutPattern& pattern(std::size_t index) const { return pool_[index]; }

    /// A pattern worth starting from.
    void add(CutPattern pattern) { pool_.push_back(std::move(pattern)); }

private:
    const CutProblem& problem_;
    std::vector<CutPattern> pool_; ///< the first are those of single pieces
    ExactSums sums_;
};

} // namespace withy::cutting
