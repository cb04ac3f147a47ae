// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting/pattern_lp.h"

#include <optional>

namespace withy::cutting {

struct UsedPattern {
    CutPattern pattern;
    std::int64_t times = 0;
};

struct WholePlan {
    std::vector<UsedPattern> used;
    double cost = 0;
};

/// Adds the uses of a pattern and its cost.
void addTo(WholePlan& plan, const CutPattern& pattern, std::int64_t times);

/// First fit falling on what is left, stock after stock in the order of the problem; where that runs out,
/// single pieces. As a stock is filled longest piece first, the same fill is used as often as it can be.
WholePlan fillFalling(const CutProblem& problem, CutState state);

/// The same, but each stock filled as full as it goes around its longest piece, longer pieces preferred
/// (after minimum bin slack: J. N. D. Gupta, J. C. Ho, Production Planning and Control 10 (1999) 598-603).
WholePlan fillFullest(const CutProblem& problem, CutState state, Effort& effort);

struct DiveAnswer {
    WholePlan plan;
    std::int64_t bound = 0; ///< as FractionalPlan::bound of the whole problem
};

/// Whole patterns taken one after another from the fractional plan of what is left, in limited-discrepancy
/// order (R. Sadykov, F. Vanderbeck, A. Pessoa, I. Tahiri, E. Uchoa, "Primal heuristics for branch and price:
/// the assets of diving methods", INFORMS Journal on Computing 31 (2019) 251-267). Starts from `known`, and
/// ends when its cost meets the bound, the effort is over, or the order's widest round is done.
DiveAnswer dive(const CutProblem& problem, WholePlan known, std::int64_t knownBound, Effort& effort);

} // namespace withy::cutting
