// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/ladder.h"

#include "tests/shareout/random_harvests.h"
#include "tests/shareout/share_checks.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace withy::shareout::tests {

namespace {

constexpr std::int64_t dahlia = 1, zinnia = 2, snapdragon = 3, fennel = 4, ninebark = 5, cosmos = 6;
const std::vector<std::int64_t> flowers{dahlia, zinnia, snapdragon, fennel, ninebark, cosmos};
const SlotRef zinniaSlot{Id<model::Line>(1), Id<model::Slot>(12)};
const Day today = *Day::fromYmd(2027, 9, 10);

/// 24 supper jars of ten stems; 64 zinnias came in and 72 were needed.
ShareProblem supperJars() {
    return {{counted(dahlia, 51), counted(zinnia, 64), counted(snapdragon, 25), counted(fennel, 58),
             counted(ninebark, 54)},
            {lineOf(1, 24,
                    {slotOf(11, 2, {dahlia}), slotOf(12, 3, {zinnia}), slotOf(13, 1, {snapdragon}),
                     slotOf(14, 2, {fennel}), slotOf(15, 2, {ninebark})})}};
}

LadderInput everythingOnOffer() {
    LadderInput input;
    input.today = today;
    input.standIns = {{plant(fennel), Stems(0), false, {zinniaSlot}},
                      {plant(cosmos), Stems(5), true, {zinniaSlot}}};
    input.releases = {{Id<model::Booking>(9), plant(zinnia), Stems(12)}};
    input.offers = {{1, plant(zinnia), Stems(5), 20, Money{450}, today, {}},
                    {2, plant(zinnia), Stems(25), 20, Money{1600}, today - 1, {}}};
    return input;
}

const Way& wayOf(const Ladder& ladder, WayKind kind, std::int64_t offer = 0) {
    const auto at = std::find_if(ladder.ways.begin(), ladder.ways.end(),
                                 [&](const auto& w) { return w.kind == kind && w.offer == offer; });
    if (at == ladder.ways.end()) throw std::runtime_error("no such way");
    return *at;
}

using Rows = std::vector<std::string>;

Rows jars(const ShareOut& share) {
    return groupsAsText(share.lines.front(), flowers);
}

} // namespace

/// Every offer by hand. 51 + 64 + 25 + 58 + 54 = 252 stems were cut; ten in each of 24 jars are 240.
TEST(Ladder, SixtyFourZinniasOfSeventyTwo) {
    const auto found = ladder(supperJars(), everythingOnOffer());
    ASSERT_TRUE(found.ok());
    EXPECT_EQ(found->ways.size(), 8U);

    // 72 - 64 = 8 short: 8 jars have 2 zinnias, 24 - 8 = 16 have 3. 240 - 8 = 232 used, 252 - 232 = 20 left.
    const Rows spread{"16 x 2 3 1 2 2 0", "8 x 2 2 1 2 2 0"};
    EXPECT_EQ(jars(found->now), spread);
    EXPECT_EQ(jars(wayOf(*found, WayKind::spread).share), spread);
    EXPECT_EQ(found->now.missing(), Stems(8));
    EXPECT_EQ(found->now.used(), Stems(232));
    EXPECT_EQ(found->now.left(), Stems(20));

    // 64 / 3 = 21 and 1 over: 21 jars, 210 stems, 42 left.
    const auto& fewer = wayOf(*found, WayKind::fewerPieces);
    EXPECT_EQ(fewer.pieces, Pieces(21));
    EXPECT_EQ(jars(fewer.share), Rows{"21 x 2 3 1 2 2 0"});
    EXPECT_EQ(fewer.share.used(), Stems(210));
    EXPECT_EQ(fewer.share.left(), Stems(42));

    // Two zinnias in each: 48 of 64; nine stems in 24 jars are 216, 252 - 216 = 36 left.
    const auto& less = wayOf(*found, WayKind::oneLess);
    EXPECT_EQ(less.slot, zinniaSlot.slot);
    EXPECT_EQ(less.stems, Stems(1));
    EXPECT_EQ(jars(less.share), Rows{"24 x 2 2 1 2 2 0"});
    EXPECT_EQ(less.share.used(), Stems(216));
    EXPECT_EQ(less.share.left(), Stems(36));

    // 58 fennel less 24 x 2 = 48 are 10 free: 8 stand in, 2 are left. 252 - 240 = 12 left in all.
    const auto& free = wayOf(*found, WayKind::freeStems);
    EXPECT_EQ(free.stems, Stems(8));
    EXPECT_EQ(free.added, Stems(0));
    EXPECT_EQ(jars(free.share), (Rows{"16 x 2 3 1 2 2 0", "8 x 2 2 1 3 2 0"}));
    EXPECT_EQ(free.share.missing(), Stems(0));
    EXPECT_EQ(free.share.left(), Stems(12));

    // 5 cosmos: 8 - 5 = 3 jars are still one short.
    const auto& swap = wayOf(*found, WayKind::swap);
    EXPECT_EQ(swap.stems, Stems(5));
    EXPECT_EQ(swap.added, Stems(5));
    EXPECT_EQ(jars(swap.share), (Rows{"16 x 2 3 1 2 2 0", "5 x 2 2 1 2 2 1", "3 x 2 2 1 2 2 0"}));

    // The later booking can spare 12, and 8 are needed.
    const auto& release = wayOf(*found, WayKind::release);
    EXPECT_EQ(release.stems, Stems(8));
    EXPECT_EQ(release.from, Id<model::Booking>(9));
    EXPECT_EQ(jars(release.share), Rows{"24 x 2 3 1 2 2 0"});

    // 8 in bunches of 5: two bunches, 2 x 4.50 = 9.00, and 64 + 10 - 72 = 2 zinnias left.
    const auto& buy = wayOf(*found, WayKind::buyIn, 1);
    EXPECT_EQ(buy.bunches, 2);
    EXPECT_EQ(buy.stems, Stems(10));
    EXPECT_EQ(buy.cost, Money{900});
    EXPECT_TRUE(buy.inTime);
    EXPECT_EQ(jars(buy.share), Rows{"24 x 2 3 1 2 2 0"});
    EXPECT_EQ(buy.share.plants[1].left, Stems(2));
    const auto& late = wayOf(*found, WayKind::buyIn, 2);
    EXPECT_EQ(late.bunches, 1);
    EXPECT_FALSE(late.inTime);

    for (const auto& way : found->ways)
        EXPECT_EQ(wrongWith(way.problem, way.share), std::vector<std::string>{});
}

/// "64 = 16 x 3 + 8 x 2" and "58 = 8 x 3 + 16 x 2 + 2 left".
TEST(Ladder, TheWorkingAddsUp) {
    const auto found = ladder(supperJars(), everythingOnOffer());
    ASSERT_TRUE(found.ok());
    const auto& share = wayOf(*found, WayKind::freeStems).share;
    const auto figures = [&](std::int64_t id) {
        std::vector<double> values;
        for (const auto& l : workingOf(share, plant(id)))
            values.push_back(l.value);
        return values;
    };
    EXPECT_EQ(figures(zinnia), (std::vector<double>{16, 3, 48, 8, 2, 16, 0, 64}));
    EXPECT_EQ(figures(fennel), (std::vector<double>{8, 3, 24, 16, 2, 32, 2, 58}));
    EXPECT_TRUE(figures(99).empty());
}

/// The agreed swap for five, then a bunch for the last three; and the first problem is as it was.
TEST(Ladder, WaysAreMixedAndUndone) {
    const auto before = supperJars();
    const auto first = ladder(before, everythingOnOffer());
    ASSERT_TRUE(first.ok());
    const auto& swap = wayOf(*first, WayKind::swap);
    const auto rest = without(everythingOnOffer(), swap);
    EXPECT_EQ(rest.standIns[1].stems, Stems(0));
    const auto second = ladder(swap.problem, rest);
    ASSERT_TRUE(second.ok());
    EXPECT_EQ(second->now.missing(), Stems(3));
    EXPECT_TRUE(std::none_of(second->ways.begin(), second->ways.end(),
                             [](const auto& w) { return w.kind == WayKind::swap; })); // none are left
    const auto& buy = wayOf(*second, WayKind::buyIn, 1);
    EXPECT_EQ(buy.bunches, 1);
    EXPECT_EQ(buy.cost, Money{450});
    EXPECT_EQ(without(rest, buy).offers[0].bunches, 19);
    const auto third = ladder(buy.problem, without(rest, buy));
    ASSERT_TRUE(third.ok());
    EXPECT_EQ(third->now.missing(), Stems(0));
    EXPECT_EQ(third->now.lines.front().slots[1].plants[0].stems, Stems(69)); // 64 + 5
    EXPECT_EQ(third->now.lines.front().slots[1].plants[1].stems, Stems(3));  // two cosmos are left over
    const auto again = ladder(before, everythingOnOffer());
    ASSERT_TRUE(again.ok());
    EXPECT_EQ(jars(again->now), jars(first->now));
}

TEST(Ladder, NothingShortNoWays) {
    auto problem = supperJars();
    problem.counted[1].stems = Stems(72);
    const auto found = ladder(problem, everythingOnOffer());
    ASSERT_TRUE(found.ok());
    EXPECT_TRUE(found->ways.empty());
    EXPECT_EQ(found->now.missing(), Stems(0));
}

/// What may vary stands in by itself; the ways out then say how it would be with nothing standing in.
TEST(Ladder, LeaveToVaryIsUsedFirst) {
    auto problem = supperJars();
    problem.lines[0].slots[3].mayVaryBy = Stems(1);
    const auto found = ladder(problem, {});
    ASSERT_TRUE(found.ok());
    EXPECT_EQ(jars(found->now), (Rows{"16 x 2 3 1 2 2 0", "8 x 2 2 1 3 2 0"}));
    EXPECT_EQ(belowDesign(found->now), Stems(8));
    EXPECT_EQ(jars(wayOf(*found, WayKind::spread).share), (Rows{"16 x 2 3 1 2 2 0", "8 x 2 2 1 2 2 0"}));
    EXPECT_EQ(wayOf(*found, WayKind::fewerPieces).pieces, Pieces(21));
}

namespace {

/// Every slot of the line full, all others as whole as without it: by the share-out alone.
bool wholeAt(ShareProblem problem, std::size_t l, std::int64_t pieces, Stems othersLack) {
    problem.lines[l].pieces = Pieces(pieces);
    const auto share = shareOut(problem);
    if (share->missing() != othersLack) return false;
    for (const auto& line : share->lines) {
        if (line.line != problem.lines[l].line) continue;
        for (const auto& s : line.slots) {
            if (s.given < s.asked) return false;
        }
        return line.missing.value == 0;
    }
    return false;
}

std::int64_t mostByTrying(ShareProblem problem, std::size_t l) {
    const auto all = problem.lines[l].pieces.value;
    for (auto& s : problem.lines[l].slots)
        s.mayVaryBy = Stems(0);
    auto none = problem;
    none.lines[l].pieces = Pieces(0);
    const auto othersLack = shareOut(none)->missing();
    for (auto n = all; n > 0; --n) {
        if (wholeAt(problem, l, n, othersLack)) return n;
    }
    return 0;
}

/// The fewest stems that leave as few missing, and slots as near, as many more do: by trying each number.
std::int64_t fewestByTrying(const ShareProblem& problem, std::size_t counted, std::int64_t most) {
    const auto with = [&](std::int64_t n) {
        auto more = problem;
        more.counted[counted].stems = Stems(more.counted[counted].stems->value + n);
        std::vector<std::int64_t> squares;
        const auto share = shareOut(more);
        for (const auto& o : share->objectives)
            squares.push_back(o.pieceSquares);
        for (const auto& o : share->objectives)
            squares.push_back(o.slotSquares);
        return squares;
    };
    const auto best = with(most);
    for (std::int64_t n = 0; n <= most; ++n) {
        if (with(n) == best) return n;
    }
    return most;
}

} // namespace

/// 150 harvests: the pieces of "fewer pieces" and the stems of "release" against trying every number.
TEST(Ladder, NumbersAreTheBestOfAll) {
    constexpr HarvestSize size{.lines = 3,
                               .pieces = 15,
                               .slots = 3,
                               .count = 4,
                               .vary = 1,
                               .plants = 5,
                               .choices = 2,
                               .clumps = true};
    int pieces = 0, stems = 0;
    for (std::uint32_t seed = 20'000; seed < 20'150; ++seed) {
        SCOPED_TRACE("harvest " + std::to_string(seed));
        auto problem = inOrder(randomHarvest(seed, size));
        for (auto& l : problem.lines)
            l.total.reset();
        LadderInput input;
        constexpr std::int64_t spare = 30;
        for (const auto& c : problem.counted) {
            if (c.stems) input.releases.push_back({Id<model::Booking>(1), c.plant, Stems(spare)});
        }
        const auto found = ladder(problem, input);
        ASSERT_TRUE(found.ok());
        if (found->ways.empty()) continue;
        for (std::size_t l = 0; l < problem.lines.size(); ++l) {
            const auto at = std::find_if(found->ways.begin(), found->ways.end(), [&](const auto& w) {
                return w.kind == WayKind::fewerPieces && w.line == problem.lines[l].line;
            });
            if (at == found->ways.end()) continue;
            EXPECT_EQ(at->pieces.value, mostByTrying(problem, l));
            ++pieces;
        }
        for (std::size_t c = 0; c < problem.counted.size(); ++c) {
            if (!problem.counted[c].stems) continue;
            const auto at = std::find_if(found->ways.begin(), found->ways.end(), [&](const auto& w) {
                return w.kind == WayKind::release && w.plant == problem.counted[c].plant;
            });
            EXPECT_EQ(at == found->ways.end() ? 0 : at->stems.value, fewestByTrying(problem, c, spare));
            ++stems;
        }
        for (const auto& way : found->ways)
            EXPECT_EQ(wrongWith(way.problem, way.share), std::vector<std::string>{});
    }
    EXPECT_GT(pieces, 50);
    EXPECT_GT(stems, 200);
}

struct OfferRow {
    const char* name;
    LadderInput input;
    ShareTrouble trouble;
    const char* field;
};

TEST(Ladder, BadInputIsNamed) {
    const OfferRow rows[] = {
        {"negative stand-in",
         {today, {{plant(6), Stems(-1), true, {zinniaSlot}}}, {}, {}},
         ShareTrouble::negative,
         "standIn"},
        {"release above every limit",
         {today, {}, {{Id<model::Booking>(1), plant(zinnia), Stems(mostCounted)}}, {}},
         ShareTrouble::tooLarge,
         "release"},
        {"bunch of none",
         {today, {}, {}, {{1, plant(zinnia), Stems(0), 1, Money{1}, today, {}}}},
         ShareTrouble::tooSmall,
         "bunch"},
        {"price below nought",
         {today, {}, {}, {{1, plant(zinnia), Stems(5), 1, Money{-1}, today, {}}}},
         ShareTrouble::negative,
         "price"},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        const auto found = ladder(supperJars(), row.input);
        ASSERT_FALSE(found.ok());
        EXPECT_EQ(found.error().trouble, row.trouble);
        EXPECT_EQ(found.error().field, row.field);
    }
}

} // namespace withy::shareout::tests
