// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/shareout/random_harvests.h"
#include "tests/shareout/share_checks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace withy::shareout::tests {

namespace {

/// Tries every way to put whole stems into every piece, one cell of one piece after the other, and keeps the
/// best objectives. Knows nothing of networks, of evenness, or that pieces of a line are alike.
class EveryWay {
public:
    explicit EveryWay(const ShareProblem& problem) : problem_(problem) {
        for (const auto& c : problem.counted) {
            if (c.stems) left_[c.plant] = c.stems->value;
        }
        std::size_t row = 0;
        for (const auto& l : problem.lines) {
            turns_.insert(l.served());
            for (const auto& s : l.slots)
                all_[&s].assign(s.choices.size(), 0);
            for (std::int64_t piece = 0; piece < l.pieces.value; ++piece, ++row) {
                for (const auto& s : l.slots) {
                    for (std::size_t c = 0; c < s.choices.size(); ++c)
                        cells_.push_back({&l, &s, c, row, c + 1 == s.choices.size()});
                }
                inPiece_.push_back(l.target().value);
                lineOf_.push_back(&l);
            }
        }
        go(0, 0);
    }

    std::vector<std::int64_t> best;           ///< piece squares by turn, slot squares by turn, places by turn
    std::map<int, std::int64_t> leastMissing; ///< by turn: of its lines and all before them
    std::int64_t ways = 0;

private:
    struct CellOfPiece {
        const LineAsk* line;
        const SlotAsk* slot;
        std::size_t choice;
        std::size_t piece;
        bool last; ///< of its slot
    };

    void go(std::size_t at, std::int64_t inSlot) {
        if (at == cells_.size()) {
            judge();
            return;
        }
        const auto& cell = cells_[at];
        auto& left = left_[cell.slot->choices[cell.choice].plant];
        const auto most = std::min(
            {left, inPiece_[cell.piece], cell.slot->count.value + cell.slot->mayVaryBy.value - inSlot});
        for (std::int64_t n = 0; n <= most; ++n) {
            left -= n;
            inPiece_[cell.piece] -= n;
            all_[cell.slot][cell.choice] += n;
            const auto off = inSlot + n - cell.slot->count.value;
            if (cell.last) slotSquares_[cell.line->served()] += off * off;
            go(at + 1, cell.last ? 0 : inSlot + n);
            if (cell.last) slotSquares_[cell.line->served()] -= off * off;
            all_[cell.slot][cell.choice] -= n;
            inPiece_[cell.piece] += n;
            left += n;
        }
    }

    void judge() {
        ++ways;
        std::map<int, std::int64_t> pieceSquares, places, missing;
        for (std::size_t p = 0; p < inPiece_.size(); ++p) {
            pieceSquares[lineOf_[p]->served()] += inPiece_[p] * inPiece_[p];
            missing[lineOf_[p]->served()] += inPiece_[p];
        }
        for (const auto& l : problem_.lines) {
            for (const auto& s : l.slots) {
                for (std::size_t c = 0; c < s.choices.size(); ++c) {
                    const auto n = all_[&s][c];
                    const auto place = static_cast<std::int64_t>(c);
                    const auto& wanted = s.choices[c].wanted;
                    places[l.served()] += !wanted             ? n * place
                                          : n > wanted->value ? (n - wanted->value) * (place + 1)
                                                              : 0;
                }
            }
        }
        std::vector<std::int64_t> found;
        for (auto* goal : {&pieceSquares, &slotSquares_, &places}) {
            for (const auto turn : turns_)
                found.push_back((*goal)[turn]);
        }
        if (best.empty() || found < best) best = found;
        std::int64_t upToHere = 0;
        for (const auto turn : turns_) {
            upToHere += missing[turn];
            const auto [least, first] = leastMissing.try_emplace(turn, upToHere);
            if (!first) least->second = std::min(least->second, upToHere);
        }
    }

    const ShareProblem& problem_;
    std::set<int> turns_;
    std::map<Id<model::Plant>, std::int64_t> left_;
    std::vector<CellOfPiece> cells_;
    std::vector<std::int64_t> inPiece_; ///< stems each piece still lacks
    std::vector<const LineAsk*> lineOf_;
    std::map<const SlotAsk*, std::vector<std::int64_t>> all_;
    std::map<int, std::int64_t> slotSquares_;
};

} // namespace

/// 400 small bookings against every way there is to share them out.
TEST(ShareOutExhaustive, NothingIsBetterInFourHundredSmallHarvests) {
    constexpr HarvestSize small{.lines = 2,
                                .pieces = 3,
                                .slots = 2,
                                .count = 2,
                                .vary = 1,
                                .plants = 3,
                                .choices = 2,
                                .clumps = false};
    int tried = 0, twoTurns = 0, uneven = 0;
    std::int64_t ways = 0;
    for (std::uint32_t seed = 1; tried < 400; ++seed) {
        const auto problem = randomHarvest(seed, small);
        std::int64_t pieces = 0;
        for (const auto& l : problem.lines)
            pieces += l.pieces.value;
        if (pieces < 2 || pieces > 4) continue;
        SCOPED_TRACE("harvest " + std::to_string(seed));
        ++tried;
        const EveryWay every(problem);
        const auto share = shareOut(problem);
        ASSERT_TRUE(share.ok());
        std::vector<std::int64_t> ours;
        for (const auto goal :
             {&TurnObjectives::pieceSquares, &TurnObjectives::slotSquares, &TurnObjectives::places}) {
            for (const auto& o : share->objectives)
                ours.push_back(o.*goal);
        }
        EXPECT_EQ(ours, every.best);
        std::int64_t missing = 0;
        for (const auto& o : share->objectives) {
            missing += o.missing;
            EXPECT_EQ(missing, every.leastMissing.at(o.turn));
        }
        EXPECT_EQ(wrongWith(problem, *share), std::vector<std::string>{});
        ways += every.ways;
        twoTurns += share->objectives.size() > 1;
        uneven += missing > 0;
    }
    EXPECT_GT(ways, 1'000'000);
    EXPECT_GT(twoTurns, 50);
    EXPECT_GT(uneven, 50);
}

} // namespace withy::shareout::tests
