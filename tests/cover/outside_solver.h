// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cover/problem.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// The allocation as a linear programme in the CPLEX LP format, solved by GLPK's glpsol, objective after
/// objective. Written from the problem alone: a variable for each age of each patch's stems and each day of
/// cutting, with no network, no weights, and the order of service sorted anew.
namespace withy::cover::tests {

bool outsideSolverIsThere();

/// The values of all variables of a programme in the LP format, whose names begin with a small s; `error` is
/// set when glpsol finds no optimum. With a section General it solves in whole numbers.
std::map<std::string, double> runOutside(const std::string& programme, std::string& error);

/// The best values of one problem, in the order of the objectives.
struct Best {
    std::vector<std::int64_t> unmet; ///< by demand in the order served
    std::int64_t price = 0;
    std::int64_t places = 0;
    std::int64_t keeping = 0;
};

/// All at once: the problems do not touch, so the sum is least where each is. Empty, with `error` set, when
/// the solver fails or a value is not whole.
std::vector<Best> solveOutside(const std::vector<CoverProblem>& problems, std::string& error);

/// The same of one large problem in fewer runs. Unmet stems are least by claim, one claim after the other;
/// then with each demand counted by how early it is served (n for the first of n, 1 for the last), in one
/// sum; then, each demand short by `unmet`, the other three.
struct BestByClaim {
    std::array<std::int64_t, claimCount> unmet{};
    std::int64_t served = 0;
    std::int64_t price = 0;
    std::int64_t places = 0;
    std::int64_t keeping = 0;
};

BestByClaim solveByClaim(const CoverProblem& problem, const std::vector<Stems>& unmet, std::string& error);

} // namespace withy::cover::tests
