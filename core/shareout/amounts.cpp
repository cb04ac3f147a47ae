// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/amounts.h"

#include "core/shareout/amounts_network.h"
#include "core/shareout/proof.h"

#include <algorithm>
#include <set>

namespace withy::shareout {

namespace {

/// The sum over `pieces` of (stems in it - wanted)^2, the stems spread to within one.
std::int64_t squaresOf(std::int64_t stems, std::int64_t pieces, std::int64_t wanted) {
    if (pieces == 0) return 0;
    const auto low = stems / pieces - wanted, more = stems % pieces;
    return more * (low + 1) * (low + 1) + (pieces - more) * low * low;
}

std::int64_t placesOf(const SlotAsk& slot, const std::vector<std::int64_t>& given) {
    std::int64_t places = 0;
    for (std::size_t c = 0; c < given.size(); ++c) {
        const auto& wanted = slot.choices[c].wanted;
        const auto place = static_cast<std::int64_t>(c);
        places +=
            wanted ? std::max<std::int64_t>(0, given[c] - wanted->value) * (place + 1) : given[c] * place;
    }
    return places;
}

void addLineTo(TurnObjectives& sum, const LineAsk& line,
               const std::vector<std::vector<std::int64_t>>& given) {
    std::int64_t all = 0;
    for (std::size_t s = 0; s < given.size(); ++s) {
        std::int64_t stems = 0;
        for (const auto n : given[s])
            stems += n;
        sum.slotSquares += squaresOf(stems, line.pieces.value, line.slots[s].count.value);
        sum.places += placesOf(line.slots[s], given[s]);
        all += stems;
    }
    sum.missing += line.pieces.value * line.target().value - all;
    sum.pieceSquares += squaresOf(all, line.pieces.value, line.target().value);
}

} // namespace

Amounts amountsOf(const ShareProblem& problem) {
    std::set<int> turns;
    for (const auto& line : problem.lines)
        turns.insert(line.served());
    AmountsNetwork network(problem);
    for (const auto goal : {Goal::pieceSquares, Goal::slotSquares, Goal::places}) {
        for (const auto turn : turns)
            network.make(goal, turn);
    }
    Amounts amounts;
    amounts.given = network.given();
    for (const auto turn : turns) {
        auto& sum = amounts.objectives.emplace_back();
        sum.turn = turn;
        for (std::size_t l = 0; l < problem.lines.size(); ++l) {
            if (problem.lines[l].served() == turn) addLineTo(sum, problem.lines[l], amounts.given[l]);
        }
        amounts.proofs.push_back(proofFor(problem, amounts.given, turn));
    }
    return amounts;
}

} // namespace withy::shareout
