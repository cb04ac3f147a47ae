// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting/one_length.h"
#include "core/cutting/stock_problem.h"

#include <optional>

namespace withy::cutting {

/// Pieces gathered by length, longest first, after the checks both plans share.
struct PieceKinds {
    std::vector<std::int64_t> lengths;
    Counts demand;
};

Result<PieceKinds, Problem> kindsOf(const std::vector<PieceWish>& pieces);

/// The largest length that divides all of these; 1 when there are none.
std::int64_t commonMeasure(const std::vector<std::int64_t>& lengths);

/// Cuts of a pattern as lengths, longest first.
std::vector<PieceWish> cutsOf(const CutProblem& problem, const CutPattern& pattern, std::int64_t measure);

} // namespace withy::cutting
