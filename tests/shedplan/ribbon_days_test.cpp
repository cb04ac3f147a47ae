// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/ribbon_days.h"
#include "tests/cover/demo_files.h"
#include "tests/cutting/box_outside.h"
#include "tests/shedplan/shed_sample.h"

#include <gtest/gtest.h>

#include <random>

namespace withy::plan::tests {

namespace {

using model::RibbonPieceKind;
using model::Standing;

model::Season withLengths(const model::Season& season,
                          const std::vector<std::pair<RibbonPieceKind, std::int64_t>>& lengths) {
    model::Edit e("t");
    std::int64_t id = 0;
    for (const auto& [kind, mm] : lengths)
        putLength(e, ++id, kind, mm);
    return applied(season, e);
}

/// Every piece is cut or missing, nothing longer than what is there comes off a reel, and what one day leaves
/// is what the next one finds.
void expectSound(const ShedPlan& shed) {
    std::map<Id<model::Ribbon>, std::map<Id<model::RibbonLength>, Millimetres>> left;
    for (const auto& day : shed.ribbon)
        for (const auto& plan : day->ribbons) {
            SCOPED_TRACE(day->day.iso());
            std::map<Id<model::Line>, std::int64_t> pieces;
            for (const auto& wanted : plan->wanted)
                pieces[wanted.line] += wanted.count;
            for (const auto& missing : plan->missing)
                pieces[missing.line] -= missing.count;
            Millimetres waste;
            auto& found = left[plan->ribbon];
            std::map<Id<model::RibbonLength>, Millimetres> after;
            for (const auto& bar : plan->bars) {
                if (!found.empty()) {
                    EXPECT_EQ(found.at(bar.from.id), bar.from.length);
                }
                Millimetres cut;
                for (const auto& c : bar.cuts) {
                    cut += c.each * c.count;
                    pieces[c.line] -= c.count;
                }
                EXPECT_EQ(cut + bar.left, bar.from.length);
                if (bar.keep)
                    after[bar.from.id] = bar.left;
                else
                    waste += bar.left;
            }
            found = after;
            EXPECT_EQ(waste, plan->waste);
            for (const auto& [line, open] : pieces)
                EXPECT_EQ(open, 0) << "line " << line.value;
        }
}

cutting::RibbonBox boxOf(const RibbonCutPlan& plan) {
    cutting::RibbonBox box;
    for (const auto& on : plan.shelf)
        box.onHand.push_back(
            {on.kind == RibbonPieceKind::reel ? cutting::RibbonKind::reel : cutting::RibbonKind::end,
             on.length,
             1,
             {}});
    for (const auto& p : plan.wanted)
        box.pieces.push_back({p.each, p.count});
    box.keepFrom = plan.keepFrom;
    return box;
}

/// Missing and waste of every day as an independent integer solver has them, the shelf being what it was.
int expectOutsideOptimum(const ShedPlan& shed) {
    int compared = 0;
    for (const auto& day : shed.ribbon)
        for (const auto& plan : day->ribbons) {
            if (plan->shelf.empty()) continue;
            SCOPED_TRACE(day->day.iso());
            std::string error;
            const auto best = cutting::tests::bestByGlpsol(boxOf(*plan), error);
            if (!error.empty()) continue;
            EXPECT_TRUE(plan->proved);
            EXPECT_EQ(plan->missingLength.value, best.missing);
            EXPECT_EQ(plan->waste.value, best.waste);
            ++compared;
        }
    return compared;
}

} // namespace

// By hand: 358 mm a jar. The supper of the 4th wastes nothing: one from the end of 800 (442 go back), 23 from
// the reel of 9000 (766 go back). The one of the 11th gets one from the 442 and two from the 766, wasting 84
// + 50, and two of its five, 716 mm, are missing.
TEST(RibbonDays, WhatAnEarlierDayCutsIsGone) {
    const auto season = withLengths(shedSeason({{2, 11, 5}, {1, 4, 24}}),
                                    {{RibbonPieceKind::reel, 9000}, {RibbonPieceKind::end, 800}});
    const auto plan = plan::plan(season, on(9, 1));
    const auto& days = plan.shed->ribbon;
    ASSERT_EQ(days.size(), 2u);
    const auto& first = *days[0]->ribbons.at(0);
    const auto& second = *days[1]->ribbons.at(0);
    EXPECT_EQ(first.needed.value, 24 * 358);
    EXPECT_EQ(first.missingLength.value, 0);
    EXPECT_EQ(first.waste.value, 0);
    EXPECT_EQ(first.fromEnds.value, 358);
    ASSERT_EQ(second.bars.size(), 2u);
    EXPECT_EQ(second.bars[0].from.length.value, 442);
    EXPECT_EQ(second.bars[1].from.length.value, 766);
    EXPECT_EQ(second.waste.value, 84 + 50);
    EXPECT_EQ(second.missingLength.value, 716);
    ASSERT_EQ(plan.shed->buying.size(), 1u);
    EXPECT_EQ(plan.shed->buying[0].amount, 716);
    EXPECT_EQ(plan.shed->buying[0].neededBy.iso(), "2027-09-10");
    EXPECT_EQ(plan.shed->buying[0].cost->minor, 16); // 0.716 m at 22 pence: 15.752, rounded up
    EXPECT_TRUE(finds(*plan.shed, ShedCode::ribbonRunsOut));
    expectSound(*plan.shed);
}

TEST(RibbonDays, SettledLostAndWrittenBackTakeNothing) {
    auto season = withLengths(
        shedSeason({{1, 4, 24, Standing::settled}, {2, 11, 5, Standing::lost}, {3, 18, 4}, {4, 25, 6}}),
        {{RibbonPieceKind::reel, 9000}});
    EXPECT_EQ(plan::plan(season, on(9, 1)).shed->ribbon.size(), 2u);
    model::StepMark mark;
    mark.id = Id<model::StepMark>(1);
    mark.step = model::StepKind::cutRibbon;
    mark.booking = Id<model::Booking>(3);
    mark.number = writtenBackNumber;
    mark.done = model::sample::at(2027, 9, 17, 12);
    season = applied(season, model::Edit("t").put(mark));
    const auto plan = plan::plan(season, on(9, 20));
    ASSERT_EQ(plan.shed->ribbon.size(), 1u);
    EXPECT_EQ(plan.shed->ribbon[0]->bookings.front().value, 4);
}

TEST(RibbonDays, NeverMeasuredIsNotNone) {
    const auto plan = plan::plan(shedSeason({{1, 4, 24}}), on(9, 1));
    ASSERT_EQ(plan.shed->ribbon.size(), 1u);
    EXPECT_FALSE(plan.shed->ribbon[0]->ribbons[0]->counted);
    EXPECT_TRUE(plan.shed->buying.empty());
    EXPECT_FALSE(finds(*plan.shed, ShedCode::ribbonRunsOut));
}

/// A file written by something else may hold a reel of no length: it is named, and cuts go on without it.
TEST(RibbonDays, ReelOfNoLengthIsNamed) {
    auto season = withLengths(shedSeason({{1, 4, 2}}), {{RibbonPieceKind::reel, 9000}});
    model::RibbonLength none;
    none.id = Id<model::RibbonLength>(9);
    none.ribbon = moss;
    season.ribbonLengths.put(none);
    const auto plan = plan::plan(season, on(9, 1));
    EXPECT_TRUE(finds(*plan.shed, ShedCode::ribbonLengthNought));
    EXPECT_EQ(plan.shed->ribbon[0]->ribbons[0]->missingLength.value, 0);
    EXPECT_EQ(plan.shed->ribbon[0]->ribbons[0]->bars.size(), 1u);
}

TEST(RibbonDays, DemoIsTheOutsideSolversOptimum) {
    ASSERT_TRUE(cutting::tests::glpsolIsThere())
        << "glpsol is missing: install glpk-utils, as tests/run does";
    const auto season = withy::tests::demoFromFiles();
    const auto plan = plan::plan(season, on(6, 1));
    expectSound(*plan.shed);
    EXPECT_GE(expectOutsideOptimum(*plan.shed), 10);
}

TEST(RibbonDays, RandomSeasonsAreTheOutsideSolversOptimum) {
    ASSERT_TRUE(cutting::tests::glpsolIsThere())
        << "glpsol is missing: install glpk-utils, as tests/run does";
    std::mt19937 random(27);
    const auto upTo = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most)); };
    int compared = 0;
    for (int round = 0; round < 12; ++round) {
        SCOPED_TRACE(round);
        std::vector<Supper> suppers;
        for (int i = 0; i < 4; ++i)
            suppers.push_back({i + 1, 3 + 6 * i + upTo(3), 1 + upTo(9)});
        std::vector<std::pair<RibbonPieceKind, std::int64_t>> lengths;
        for (int i = 0; i < 3; ++i)
            lengths.emplace_back(RibbonPieceKind::end, 300 + upTo(1500));
        lengths.emplace_back(RibbonPieceKind::reel, 1500 + upTo(6000));
        const auto plan = plan::plan(withLengths(shedSeason(suppers), lengths), on(9, 1));
        expectSound(*plan.shed);
        compared += expectOutsideOptimum(*plan.shed);
    }
    EXPECT_GE(compared, 30);
}

/// 120,000 pieces in a day are beyond what is cut: it is said with the most there may be, nothing is called
/// missing, and the reels stay for the days after.
TEST(RibbonDays, WhatIsBeyondAllCuttingIsSaid) {
    const auto season = withLengths(shedSeason({{1, 11, 60'000}, {2, 11, 60'000}, {3, 18, 4}}),
                                    {{RibbonPieceKind::reel, 9000}});
    const auto plan = plan::plan(season, on(9, 1));
    ASSERT_EQ(plan.shed->ribbon.size(), 2u);
    ASSERT_EQ(plan.shed->ribbon[0]->ribbons.size(), 1u);
    EXPECT_TRUE(ribbonIsNotCut(*plan.shed->ribbon[0]->ribbons[0]));
    const Finding* found = nullptr;
    for (const auto& f : plan.shed->findings)
        if (f.finding.code == ShedCode::ribbonNotCut) found = &f.finding;
    ASSERT_NE(found, nullptr);
    // So many pieces begin to be made long before.
    EXPECT_EQ(found->subjects, (std::vector<std::string>{"Moss", plan.shed->ribbon[0]->day.iso(), "pieces"}));
    EXPECT_EQ(found->numbers.at(0), 100'000);
    EXPECT_FALSE(finds(*plan.shed, ShedCode::ribbonRunsOut));
    const auto& later = *plan.shed->ribbon[1]->ribbons.at(0);
    EXPECT_FALSE(ribbonIsNotCut(later));
    EXPECT_EQ(later.missingLength.value, 0);
    EXPECT_EQ(later.shelf.at(0).length.value, 9000);
}

} // namespace withy::plan::tests
