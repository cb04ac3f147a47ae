// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/answers/walk_answers.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/starting_seasons.h"

#include <gtest/gtest.h>

namespace withy::ui {

namespace {

papers::Document documentOf(const model::Season& season) {
    plan::PlanOptions options;
    options.today = Day::fromYmd(2027, 9, 6);
    const auto plan = plan::plan(season, options);
    const QDateTime printed(QDate(2027, 9, 6), QTime(6, 30));
    return paperOf(PaperKind::walkSheet, {season, plan, std::nullopt, printed});
}

std::string sheetOf(const model::Season& season) {
    return papers::renderText(documentOf(season));
}

} // namespace

TEST(WalkSheet, WhatBloomsInWalkingOrderWithThreeBoxesAndTheRestInABlock) {
    const auto season = demoSeason();
    const auto words = sheetOf(season);
    const auto expected = walkExpectations(season, *Day::fromYmd(2027, 9, 6));
    std::vector<const model::Patch*> live;
    std::vector<const model::Patch*> resting;
    for (const auto* patch : inWalkingOrder(season))
        (isOutOfBloom(expected, patch->id) ? resting : live).push_back(patch);
    ASSERT_FALSE(live.empty());
    ASSERT_FALSE(resting.empty());
    const auto paper = documentOf(season);
    std::vector<const papers::Table*> tables;
    std::string others;
    for (const auto& block : paper.body) {
        if (const auto* found = std::get_if<papers::Table>(&block.content)) tables.push_back(found);
        if (const auto* found = std::get_if<papers::Paragraph>(&block.content); found && others.empty())
            others = papers::words(found->text);
    }
    ASSERT_EQ(tables.size(), 2u);
    ASSERT_EQ(tables[0]->rows.size(), live.size());
    for (std::size_t r = 0; r < live.size(); ++r)
        EXPECT_TRUE(papers::words(tables[0]->rows[r].cells[1]).starts_with(live[r]->label)) << live[r]->label;
    for (const auto* patch : resting)
        EXPECT_NE(others.find(patch->label), std::string::npos) << patch->label;
    EXPECT_GE(tables[1]->rows.size(), 2u) << "room for what is found there all the same";
    EXPECT_NE(words.find("Mon 6 Sep"), std::string::npos) << words;
    EXPECT_NE(words.find("empty box stays not known"), std::string::npos) << words;
}

// Daffodils flower in spring, dahlias from midsummer to the first frosts: common practice, no source.
TEST(WalkSheet, InSeptemberDaffodilsRestAndDahliasDoNot) {
    const auto season = demoSeason();
    const auto expected = walkExpectations(season, *Day::fromYmd(2027, 9, 6));
    int daffodils = 0;
    int dahlias = 0;
    for (const auto& patch : season.patches) {
        const auto* plant = season.plants.find(patch.plant);
        if (!plant) continue;
        if (plant->name.find("Daffodil") != std::string::npos) {
            ++daffodils;
            EXPECT_TRUE(isOutOfBloom(expected, patch.id)) << patch.label;
        }
        if (plant->name.find("Dahlia") != std::string::npos) {
            ++dahlias;
            EXPECT_FALSE(isOutOfBloom(expected, patch.id)) << patch.label;
        }
    }
    EXPECT_GT(daffodils, 0);
    EXPECT_GT(dahlias, 0);
}

TEST(WalkSheet, AGardenWithoutPatchesPrintsThat) {
    EXPECT_NE(sheetOf(emptySeason(2027)).find("no patch to walk to"), std::string::npos);
    EXPECT_EQ(paperKind("walk"), PaperKind::walkSheet);
    EXPECT_FALSE(needsBooking(PaperKind::walkSheet));
}

} // namespace withy::ui
