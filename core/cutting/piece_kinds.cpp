// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/piece_kinds.h"

#include "core/base/range.h"

#include <functional>
#include <map>
#include <numeric>

namespace withy::cutting {

Result<PieceKinds, Problem> kindsOf(const std::vector<PieceWish>& pieces) {
    std::map<std::int64_t, std::int64_t, std::greater<>> byLength;
    std::int64_t all = 0;
    for (const auto& piece : pieces) {
        if (const auto p = outside("piece_length", piece.length.value, 1, longestRoll)) return *p;
        if (const auto p = outside("pieces", piece.count, 0, mostPieces)) return *p;
        all += piece.count;
        if (const auto p = outside("pieces", all, 0, mostPieces)) return *p;
        if (piece.count > 0) byLength[piece.length.value] += piece.count;
    }
    if (const auto p = outside("kinds", static_cast<std::int64_t>(byLength.size()), 0,
                               static_cast<std::int64_t>(mostKinds)))
        return *p;
    PieceKinds kinds;
    for (const auto& [length, count] : byLength) {
        kinds.lengths.push_back(length);
        kinds.demand.push_back(count);
    }
    return kinds;
}

std::int64_t commonMeasure(const std::vector<std::int64_t>& lengths) {
    std::int64_t measure = 0;
    for (const auto length : lengths)
        measure = std::gcd(measure, length);
    return measure > 0 ? measure : 1;
}

std::vector<PieceWish> cutsOf(const CutProblem& problem, const CutPattern& pattern, std::int64_t measure) {
    std::vector<PieceWish> cuts;
    for (const auto& [kind, count] : pattern.cuts)
        cuts.push_back({Millimetres(problem.lengths[kind] * measure), count});
    return cuts;
}

} // namespace withy::cutting
