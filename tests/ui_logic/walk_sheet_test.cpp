// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "ui/logic/answers/garden_answers.h"
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

TEST(WalkSheet, EveryPatchInWalkingOrderWithThreeBoxes) {
    const auto season = demoSeason();
    const auto words = sheetOf(season);
    const auto patches = inWalkingOrder(season);
    const papers::Table* table = nullptr;
    const auto paper = documentOf(season);
    for (const auto& block : paper.body)
        if (const auto* found = std::get_if<papers::Table>(&block.content)) table = found;
    ASSERT_NE(table, nullptr);
    ASSERT_EQ(table->rows.size(), patches.size());
    for (std::size_t r = 0; r < patches.size(); ++r)
        EXPECT_TRUE(papers::words(table->rows[r].cells[1]).starts_with(patches[r]->label))
            << patches[r]->label;
    std::size_t boxes = 0;
    for (auto i = words.find("[     ]"); i != std::string::npos; i = words.find("[     ]", i + 1))
        ++boxes;
    EXPECT_EQ(boxes, 3 * patches.size());
    EXPECT_NE(words.find("Mon 6 Sep"), std::string::npos) << words;
    EXPECT_NE(words.find("empty box stays not known"), std::string::npos) << words;
}

TEST(WalkSheet, AGardenWithoutPatchesPrintsThat) {
    EXPECT_NE(sheetOf(emptySeason(2027)).find("no patch to walk to"), std::string::npos);
    EXPECT_EQ(paperKind("walk"), PaperKind::walkSheet);
    EXPECT_FALSE(needsBooking(PaperKind::walkSheet));
}

} // namespace withy::ui
