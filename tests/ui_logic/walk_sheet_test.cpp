// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/starting_seasons.h"

#include <gtest/gtest.h>

namespace withy::ui {

namespace {

std::string sheetOf(const model::Season& season) {
    plan::PlanOptions options;
    options.today = Day::fromYmd(2027, 9, 6);
    const auto plan = plan::plan(season, options);
    const QDateTime printed(QDate(2027, 9, 6), QTime(6, 30));
    return papers::renderText(paperOf(PaperKind::walkSheet, {season, plan, std::nullopt, printed}));
}

} // namespace

TEST(WalkSheet, EveryPatchInWalkingOrderWithThreeBoxes) {
    const auto season = demoSeason();
    const auto words = sheetOf(season);
    std::size_t at = 0;
    for (const auto* patch : inWalkingOrder(season)) {
        SCOPED_TRACE(patch->label);
        const auto found = words.find(patch->label, at);
        ASSERT_NE(found, std::string::npos) << words;
        at = found;
    }
    std::size_t boxes = 0;
    for (auto i = words.find("[     ]"); i != std::string::npos; i = words.find("[     ]", i + 1))
        ++boxes;
    EXPECT_EQ(boxes, 3 * season.patches.size());
    EXPECT_NE(words.find("Mon 6 Sep"), std::string::npos) << words;
    EXPECT_NE(words.find("an empty box"), std::string::npos) << words;
}

TEST(WalkSheet, AGardenWithoutPatchesPrintsThat) {
    EXPECT_NE(sheetOf(emptySeason(2027)).find("no patch to walk to"), std::string::npos);
    EXPECT_EQ(paperKind("walk"), PaperKind::walkSheet);
    EXPECT_FALSE(needsBooking(PaperKind::walkSheet));
}

} // namespace withy::ui
