// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/allocation.h"
#include "core/cover/network.h"
#include "core/cover/shortage.h"
#include "tests/cover/cover_rows.h"
#include "tests/cover/random_covers.h"

#include <gtest/gtest.h>

namespace withy::cover::tests {

namespace {

const Day june = *Day::fromYmd(2027, 6, 10);

PatchSupply patchOf(int id, int plant, Day first, std::vector<std::int64_t> ready, int hold) {
    return {Id<model::Patch>(id), Id<model::Plant>(plant), first, std::move(ready), hold};
}

Demand demandOf(int booking, int stems, Claim claim, std::vector<int> plants, Day from = june,
                Day to = june + 1) {
    Demand d;
    d.booking = Id<model::Booking>(booking);
    d.line = Id<model::Line>(booking);
    d.slot = Id<model::Slot>(1);
    d.stems = Stems(stems);
    d.claim = claim;
    d.event = june + 2;
    d.bench = june + 1;
    for (const int plant : plants)
        d.choices.push_back({Id<model::Plant>(plant), from, to, std::nullopt, false});
    return d;
}

Allocation solved(const CoverProblem& problem) {
    auto a = allocate(problem);
    EXPECT_TRUE(a.ok());
    EXPECT_EQ(wrongWith(problem, *a), std::vector<std::string>{});
    return std::move(a).value();
}

bool samePieces(const Allocation& a, const Allocation& b) {
    return std::equal(a.pieces.begin(), a.pieces.end(), b.pieces.begin(), b.pieces.end(),
                      [](const Piece& x, const Piece& y) {
                          return std::tie(x.demand, x.choice, x.source, x.from, x.plant, x.ready, x.cut,
                                          x.stems) == std::tie(y.demand, y.choice, y.source, y.from, y.plant,
                                                               y.ready, y.cut, y.stems);
                      });
}

} // namespace

/// Issue 4, "must show" 4.
TEST(Allocation, BookedGetsTheNinetyAndTheEnquiryHearsIt) {
    CoverProblem p;
    p.patches = {patchOf(1, 7, june, {50, 40}, 2)};
    p.demands = {demandOf(2, 90, Claim::enquiry, {7}), demandOf(1, 90, Claim::firm, {7})};
    const auto a = solved(p);
    EXPECT_EQ(a.objectives.unmet, (std::array<std::int64_t, 4>{0, 0, 0, 90}));
    const auto shorts = shortages(a);
    ASSERT_EQ(shorts.size(), 1u);
    EXPECT_EQ(a.problem.demands[shorts[0].demand].booking.value, 2);
    EXPECT_EQ(shorts[0].stems.value, 90);
    EXPECT_TRUE(shorts[0].supplyKnown);
    ASSERT_EQ(shorts[0].competitors.size(), 1u);
    EXPECT_EQ(shorts[0].competitors[0].booking.value, 1);
    EXPECT_EQ(shorts[0].competitors[0].stems.value, 90);
    ASSERT_TRUE(shorts[0].oneMore.at(0));
    EXPECT_EQ(shorts[0].oneMore[0]->goesTo, shorts[0].demand);
}

TEST(Allocation, TheEarlierDateGoesFirstWithinAClaim) {
    CoverProblem p;
    p.patches = {patchOf(1, 7, june, {30}, 3)};
    auto late = demandOf(1, 20, Claim::quoted, {7}), early = demandOf(2, 20, Claim::quoted, {7});
    late.event = june + 3;
    p.demands = {late, early};
    const auto a = solved(p);
    EXPECT_EQ(a.problem.demands[0].booking.value, 2);
    EXPECT_EQ(a.unmet, (std::vector{Stems(0), Stems(10)}));
    // One more stem goes to the one that is short.
    const auto shorts = shortages(a);
    ASSERT_EQ(shorts.size(), 1u);
    EXPECT_EQ(shorts[0].oneMore.at(0)->goesTo, 1u);
}

/// A stem ready on the first day waits two days and no more.
TEST(Allocation, HoldDaysEndOnTheDayTheySay) {
    for (const int window : {0, 1, 2, 3, 4}) {
        SCOPED_TRACE(window);
        CoverProblem p;
        p.patches = {patchOf(1, 7, june, {10, 0, 0, 5}, 2)};
        p.demands = {demandOf(1, 20, Claim::firm, {7}, june + window, june + window)};
        p.demands[0].bench = june + window;
        const auto a = solved(p);
        EXPECT_EQ(20 - a.unmet[0].value, window < 3 ? 10 : 5);
    }
}

TEST(Allocation, StockMustBeFitOnTheBenchDay) {
    const struct {
        const char* what;
        int readyFrom;
        std::optional<int> useBy;
        int covered;
    } rows[] = {
        {"ready on the day", 1, std::nullopt, 8},
        {"ready the day after", 2, std::nullopt, 0},
        {"good until the day", -3, 1, 8},
        {"spent the day before", -3, 0, 0},
    };

    for (const auto& row : rows) {
        SCOPED_TRACE(row.what);
        CoverProblem p;
        p.lots = {{Id<model::StockLot>(4), Id<model::Plant>(7), Stems(8), june + row.readyFrom, {}, false}};
        if (row.useBy) p.lots[0].useBy = june + *row.useBy;
        p.demands = {demandOf(1, 9, Claim::firm, {7})};
        const auto a = solved(p);
        EXPECT_EQ(9 - a.unmet[0].value, row.covered);
    }
}

/// By hand: 10 own, 6 of the dearer and cheaper offers in order of price, the swap only after both
/// objectives.
TEST(Allocation, BuysOnlyWhatIsShortCheapestFirst) {
    CoverProblem p;
    p.patches = {patchOf(1, 7, june, {10}, 1)};
    const auto offer = [](int id, int price) {
        return Offer{id, Id<model::Plant>(7), Stems(5), 1, Money{price}, june, std::nullopt, june - 7};
    };
    p.offers = {offer(1, 40), offer(2, 25)};
    p.demands = {demandOf(1, 16, Claim::firm, {7})};
    const auto a = solved(p);
    EXPECT_EQ(a.objectives.price, 5 * 25 + 1 * 40);
    // One more own stem would spare the dearest that is bought.
    EXPECT_TRUE(shortages(a).empty());
}

TEST(Allocation, SharesBendBeforeAStemIsMissing) {
    CoverProblem p;
    p.patches = {patchOf(1, 7, june, {100}, 1), patchOf(2, 8, june, {5}, 1)};
    p.demands = {demandOf(1, 30, Claim::firm, {7, 8})};
    p.demands[0].choices[0].wanted = Stems(15);
    p.demands[0].choices[1].wanted = Stems(15);
    const auto a = solved(p);
    EXPECT_EQ(a.unmet[0].value, 0);
    std::int64_t ofSeven = 0;
    for (const auto& piece : a.pieces)
        ofSeven += piece.plant.value == 7 ? piece.stems.value : 0;
    EXPECT_EQ(ofSeven, 25);
    EXPECT_EQ(a.objectives.places, 10); // beyond its part, at the first place
}

TEST(Allocation, IsTheSameHoweverTheSeasonIsListed) {
    for (std::uint32_t seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE("season " + std::to_string(seed));
        const auto problem = seed <= 58 ? randomCover(seed) : largeCover(40, seed);
        const auto a = solved(problem), b = solved(problem), c = solved(shuffled(problem, seed + 77));
        EXPECT_TRUE(samePieces(a, b));
        EXPECT_TRUE(samePieces(a, c));
        EXPECT_EQ(a.unmet, c.unmet);
        EXPECT_EQ(a.objectives, c.objectives);
    }
}

/// What one more stem is worth is what the season gains when it is solved anew with that stem.
TEST(Allocation, OneMoreStemIsWorthWhatSolvingAnewSays) {
    int tried = 0;
    for (std::uint32_t seed = 1; seed <= 120; ++seed) {
        const auto problem = randomCover(seed);
        const auto a = solved(problem);
        for (const auto& s : shortages(a)) {
            const auto& demand = a.problem.demands[s.demand];
            for (std::size_t c = 0; c < s.oneMore.size(); ++c) {
                SCOPED_TRACE("season " + std::to_string(seed) + " demand " + std::to_string(s.demand));
                if (!s.oneMore[c]) continue;
                // The best of one stem more in each patch on each day of the window, or in each lot.
                std::optional<Objectives> best;
                std::optional<std::vector<Stems>> bestUnmet;
                const auto consider = [&](const CoverProblem& more) {
                    const auto b = solved(more);
                    if (!bestUnmet ||
                        std::tie(b.unmet, b.objectives.price, b.objectives.places, b.objectives.keeping) <
                            std::tie(*bestUnmet, best->price, best->places, best->keeping)) {
                        best = b.objectives;
                        bestUnmet = b.unmet;
                    }
                };
                const auto& choice = demand.choices[c];
                forEachSource(a.problem, a.solved->network, choice, demand.bench,
                              [&](std::int32_t, Source source, std::uint32_t index, Day day) {
                                  auto more = a.problem;
                                  if (source == Source::offer) return;
                                  if (source == Source::lot) {
                                      more.lots[index].stems += Stems(1);
                                      return consider(more);
                                  }
                                  // A stem that is there on that day alone: a patch of its own that does not
                                  // hold.
                                  more.patches.push_back(
                                      patchOf(1000, static_cast<int>(choice.plant.value), day, {1}, 0));
                                  consider(more);
                              });
                if (!best) continue;
                ++tried;
                for (std::size_t d = 0; d < a.unmet.size(); ++d) {
                    const bool gains = s.oneMore[c]->goesTo == d;
                    EXPECT_EQ((*bestUnmet)[d].value, a.unmet[d].value - gains);
                }
                EXPECT_EQ(best->price, a.objectives.price - s.oneMore[c]->saved);
                EXPECT_EQ(best->places, a.objectives.places - s.oneMore[c]->places);
                EXPECT_EQ(best->keeping, a.objectives.keeping - s.oneMore[c]->days);
            }
        }
    }
    EXPECT_GT(tried, 100);
}

TEST(Allocation, NamesWhatIsUnsound) {
    const CoverProblem sound = [] {
        CoverProblem p;
        p.patches = {patchOf(1, 7, june, {5}, 1)};
        p.demands = {demandOf(1, 3, Claim::firm, {7})};
        return p;
    }();
    const auto faultOf = [&](auto change) {
        auto p = sound;
        change(p);
        const auto a = allocate(p);
        EXPECT_FALSE(a.ok());
        return a.ok() ? CoverFault{} : a.error();
    };
    EXPECT_EQ(faultOf([](auto& p) { p.patches[0].ready[0] = -1; }).trouble, CoverTrouble::negative);
    EXPECT_EQ(faultOf([](auto& p) { p.patches[0].holdDays = -1; }).field, "patch");
    EXPECT_EQ(faultOf([](auto& p) { p.patches[0].ready[0] = mostStemsCovered + 1; }).trouble,
              CoverTrouble::outOfRange);
    EXPECT_EQ(faultOf([](auto& p) { p.patches.push_back(p.patches[0]); }).trouble, CoverTrouble::repeated);
    EXPECT_EQ(faultOf([](auto& p) { p.demands.push_back(p.demands[0]); }).field, "demand");
    EXPECT_EQ(faultOf([](auto& p) { p.demands[0].stems = Stems(-1); }).trouble, CoverTrouble::negative);
    EXPECT_EQ(faultOf([](auto& p) { p.demands[0].choices[0].to = june - 1; }).trouble,
              CoverTrouble::outOfOrder);
    EXPECT_TRUE(allocate(CoverProblem{}).ok());
}

/// Weights that would not fit 64 bits are refused, not wrapped round.
TEST(Allocation, RefusesASeasonTooLargeToWeigh) {
    CoverProblem p;
    for (int i = 1; i <= 3000; ++i) {
        auto d = demandOf(i, 1, Claim::firm, {}, june, june);
        for (int c = 1; c <= 60; ++c)
            d.choices.push_back({Id<model::Plant>(c), june - 700, june, std::nullopt, false});
        p.demands.push_back(std::move(d));
    }
    p.patches = {patchOf(1, 1, june - 700, {1}, 0)};
    p.offers = {{1, Id<model::Plant>(2), Stems(1), 1, Money{mostPricePerStem}, june, std::nullopt, june}};
    const auto a = allocate(p);
    ASSERT_FALSE(a.ok());
    EXPECT_EQ(a.error().trouble, CoverTrouble::tooLarge);
}

} // namespace withy::cover::tests
