// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/logic_fixture.h"
#include "tests/ui_logic/share_supper.h"
#include "ui/logic/edits/share_edits.h"
#include "ui/logic/models/share_rows.h"

/// Stems that stand elsewhere: free in the garden, or spared by a later booking. All counted by hand.
namespace withy::ui::tests {

namespace {

using shareout::WayKind;

constexpr Id<model::Plant> rudbeckia{7};
constexpr Id<model::Patch> rudbeckiaPatch{17}, laterZinnias{18};

/// What still stands on the bench day: stems of one patch.
cover::PatchSupply standing(Id<model::Patch> patch, Id<model::Plant> plant, std::int64_t stems) {
    return {patch, plant, supperBench, {stems}, 4};
}

/// The other supper, three days on, wants so many round stems: zinnia, or rudbeckia.
cover::Demand laterSupper(std::int64_t stems) {
    cover::Demand d;
    d.booking = otherSupper;
    d.line = Id<model::Line>(otherSupper.value);
    d.slot = roundSlot;
    d.stems = Stems(stems);
    d.claim = cover::Claim::firm;
    d.event = d.bench = supperBench + 3;
    d.choices = {{zinnia, supperBench, supperBench + 3, std::nullopt},
                 {rudbeckia, supperBench, supperBench + 3, std::nullopt}};
    return d;
}

std::shared_ptr<const plan::CoverPlan> coverOf(const cover::CoverProblem& problem) {
    auto plan = std::make_shared<plan::CoverPlan>();
    for (auto& level : plan->allocations) {
        auto done = cover::allocate(problem);
        EXPECT_TRUE(done.ok());
        level = std::move(done).value();
    }
    return plan;
}

/// The supper with a plant of the zinnias' purpose and colour beside it, and a later supper.
model::Season withRudbeckia() {
    auto records = supperRecords(true);
    auto p = model::sample::plant(rudbeckia.value, "Rudbeckia, rust");
    p.focal = true;
    p.colour1 = Colour::parse("#e8734a");
    p.stemLengthMax = Millimetres(600);
    records.put(p);
    for (const auto& [patch, plant] :
         {std::pair(rudbeckiaPatch, rudbeckia), std::pair(laterZinnias, zinnia)}) {
        model::Patch row;
        row.id = patch;
        row.plant = plant;
        row.label = "Bed " + std::to_string(patch.value);
        records.put(row);
    }
    addJars(records, otherSupper, 4);
    return seasonOf(records);
}

ShareFound foundBeside(const model::Season& season, const cover::CoverProblem& garden) {
    return findShare({season, coverOf(garden), supper, supperBench, supperBench, {}});
}

const shareout::Way* wayOf(const ShareFound& found, WayKind kind, Id<model::Plant> plant) {
    for (const auto& way : found.ladder.ways)
        if (way.kind == kind && way.plant == plant) return &way;
    return nullptr;
}

} // namespace

/// 6 rudbeckia stand free: 64 + 6 = 70 of the 72 round stems, so 2 jars have one less; 232 + 6 stems in all.
TEST(ShareOffers, FreeStemsOfAnotherPlantAreOfferedWithTheirEffect) {
    const auto season = withRudbeckia();
    cover::CoverProblem garden;
    garden.patches = {standing(rudbeckiaPatch, rudbeckia, 6)};
    const auto found = foundBeside(season, garden);
    const auto* way = wayOf(found, WayKind::freeStems, rudbeckia);
    ASSERT_NE(way, nullptr);
    EXPECT_EQ(way->stems, Stems(6));
    EXPECT_EQ(way->added, Stems(6));
    EXPECT_EQ(thinner(way->share.lines.front()), Pieces(2));
    std::int64_t used = 0;
    for (const auto& p : way->share.plants)
        used += p.counted.value - p.left.value;
    EXPECT_EQ(used, 238);
}

/// The same 6, but the later supper has 4 of them: 2 are free.
TEST(ShareOffers, WhatALaterBookingHasIsNotFree) {
    const auto season = withRudbeckia();
    cover::CoverProblem garden;
    garden.patches = {standing(rudbeckiaPatch, rudbeckia, 6)};
    garden.demands = {laterSupper(4)};
    const auto found = foundBeside(season, garden);
    const auto* way = wayOf(found, WayKind::freeStems, rudbeckia);
    ASSERT_NE(way, nullptr);
    EXPECT_EQ(way->stems, Stems(2));
    EXPECT_EQ(wayOf(found, WayKind::release, zinnia), nullptr);
}

/// The later supper has 12 zinnias of a patch not cut today. With 12 rudbeckia beside them it can spare the 8
/// that are short; with 5 it can spare 5; with none it keeps all.
TEST(ShareOffers, ALaterBookingReleasesOnlyWhatTheSeasonMendsOtherwise) {
    const auto season = withRudbeckia();
    for (const auto& [rudbeckias, released] : {std::pair(12, 8), std::pair(5, 5), std::pair(0, 0)}) {
        SCOPED_TRACE(rudbeckias);
        cover::CoverProblem garden;
        garden.patches = {standing(rudbeckiaPatch, rudbeckia, rudbeckias),
                          standing(laterZinnias, zinnia, 12)};
        garden.demands = {laterSupper(12)};
        const auto found = foundBeside(season, garden);
        const auto* way = wayOf(found, WayKind::release, zinnia);
        if (released == 0) {
            EXPECT_EQ(way, nullptr);
            continue;
        }
        ASSERT_NE(way, nullptr);
        EXPECT_EQ(way->from, otherSupper);
        EXPECT_EQ(way->stems, Stems(released));
        EXPECT_EQ(thinner(way->share.lines.front()), Pieces(8 - released));
    }
}

class ShareOfferEdits : public LogicTest {};

TEST_F(ShareOfferEdits, TakingFreeStemsOrAReleaseIsOneStepToUndo) {
    const auto season = withRudbeckia();
    cover::CoverProblem garden;
    garden.patches = {standing(rudbeckiaPatch, rudbeckia, 12), standing(laterZinnias, zinnia, 12)};
    garden.demands = {laterSupper(12)};
    const auto found = foundBeside(season, garden);
    const auto bench = benchOn(season, supperBench);
    int taken = 0;
    for (const auto& way : found.ladder.ways) {
        if (way.kind != WayKind::freeStems && way.kind != WayKind::release) continue;
        SCOPED_TRACE(static_cast<int>(way.kind));
        const auto edit = edits::takeWays(bench->season(), {supper, supperBench, found.plan.problem, {way}});
        ASSERT_FALSE(edit.empty());
        ASSERT_EQ(bench->apply(edit), QString());
        EXPECT_EQ(bench->undoName().key.rfind("share.", 0), 0U);
        ASSERT_EQ(bench->undo(), QString());
        EXPECT_FALSE(bench->canUndo());
        ++taken;
    }
    EXPECT_GE(taken, 1);
}

/// Blank is not nought: while the zinnias have no figure, no way out is offered; a nought typed is a figure.
TEST(ShareOffers, WaysWaitForTheTally) {
    auto records = supperRecords(true);
    addTally(records, zinnia, std::nullopt);
    const auto blank = findShare({seasonOf(records), nullptr, supper, supperBench, supperBench, {}});
    EXPECT_EQ(blank.waitsFor, std::vector{zinnia});
    EXPECT_TRUE(blank.ladder.ways.empty());
    const auto view = shareView(seasonOf(records), blank);
    EXPECT_TRUE(view.empty);
    EXPECT_EQ(view.head, QStringLiteral("Still to count: zinnia. Where nothing was found, say 0."));
    auto none = supperRecords(true);
    addTally(none, zinnia, 0);
    const auto nought = findShare({seasonOf(none), nullptr, supper, supperBench, supperBench, {}});
    EXPECT_TRUE(nought.waitsFor.empty());
    EXPECT_FALSE(nought.ladder.ways.empty());
}

} // namespace withy::ui::tests
