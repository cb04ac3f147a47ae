// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/flow.h"

#include <gtest/gtest.h>

namespace withy::paper {
namespace {

Row row(double height, bool keep = false, std::vector<int> repeats = {}) {
    Row made;
    made.height = height;
    made.keepWithNext = keep;
    made.repeats = std::move(repeats);
    return made;
}

std::vector<int> sourcesOn(const Flow& flow, std::size_t page) {
    std::vector<int> sources;
    for (const PlacedRow& placed : flow.pages().at(page).rows)
        sources.push_back(placed.source);
    return sources;
}

using Places = std::vector<int>;

TEST(Flow, TurnsThePageBeforeARowThatDoesNotFit) {
    Flow flow(10, 20, 50); // 40 on the first page, 30 on the others
    flow.place({row(20), row(19), row(2), row(28)}, 5, 100, flow.start(), 0);
    EXPECT_EQ(sourcesOn(flow, 0), (Places{0, 1}));
    EXPECT_EQ(sourcesOn(flow, 1), (Places{2, 3}));
    EXPECT_DOUBLE_EQ(flow.pages()[1].rows[0].rect.top(), 20);
    EXPECT_DOUBLE_EQ(flow.pages()[1].rows[1].rect.bottom(), 50);
}

TEST(Flow, FillsAPageToItsLastMillimetre) {
    Flow flow(10, 10, 50);
    flow.place({row(20), row(20)}, 0, 100, flow.start(), 0);
    EXPECT_EQ(flow.pages().size(), 1u);
}

TEST(Flow, AHeadGoesOverWithItsFirstRow) {
    Flow flow(0, 0, 50);
    flow.place({row(40), row(5, true), row(3, true), row(10)}, 0, 100, flow.start(), 0);
    EXPECT_EQ(sourcesOn(flow, 0), (Places{0}));
    EXPECT_EQ(sourcesOn(flow, 1), (Places{1, 2, 3}));
}

TEST(Flow, RepeatsHeadsWhereARowBeginsAPage) {
    Flow flow(0, 0, 50);
    std::vector<Row> rows{row(5, true), row(4, true, {0})};
    for (int i = 0; i < 6; ++i)
        rows.push_back(row(20, false, {0, 1}));
    flow.place(rows, 0, 100, flow.start(), 0);
    ASSERT_EQ(flow.pages().size(), 3u);
    EXPECT_EQ(sourcesOn(flow, 1), (Places{0, 1, 4, 5}));
    EXPECT_TRUE(flow.pages()[1].rows[0].repeated);
    EXPECT_TRUE(flow.pages()[1].rows[1].repeated);
    EXPECT_FALSE(flow.pages()[1].rows[2].repeated);
}

TEST(Flow, HeadsTooHighToRepeatDoNotLoop) {
    Flow flow(0, 0, 50);
    std::vector<Row> rows{row(30, true), row(15, false, {0}), row(45, false, {0}), row(45, false, {0})};
    flow.place(rows, 0, 100, flow.start(), 0);
    EXPECT_EQ(flow.pages().size(), 3u);
}

TEST(Flow, ARowHigherThanAPageTakesOneOfItsOwn) {
    Flow flow(0, 0, 50);
    flow.place({row(10), row(80), row(10)}, 0, 100, flow.start(), 0);
    ASSERT_EQ(flow.pages().size(), 3u);
    EXPECT_EQ(sourcesOn(flow, 1), (Places{1}));
}

TEST(Flow, AirIsDroppedAtTheTopOfAPage) {
    Flow flow(0, 0, 50);
    std::vector<Row> rows{row(40), row(20)};
    rows[0].before = 7;
    rows[1].before = 7;
    flow.place(rows, 0, 100, flow.start(), 0);
    EXPECT_DOUBLE_EQ(flow.pages()[0].rows[0].rect.top(), 0);
    EXPECT_DOUBLE_EQ(flow.pages()[1].rows[0].rect.top(), 0);
}

TEST(Flow, ColumnsFlowOnTheirOwn) {
    Flow flow(0, 0, 50);
    const Cursor from = flow.place({row(20)}, 0, 100, flow.start(), 0);
    const Cursor left = flow.place({row(25), row(25), row(25)}, 0, 60, from, 1);
    const Cursor right = flow.place({row(5)}, 70, 30, from, 4);
    EXPECT_EQ(left.page, 1);
    EXPECT_DOUBLE_EQ(left.y, 50);
    EXPECT_EQ(right.page, 0);
    EXPECT_DOUBLE_EQ(right.y, 25);
}

TEST(Flow, LastRowsStandAtTheBottom) {
    Flow flow(0, 0, 50);
    const Cursor from = flow.place({row(20)}, 0, 100, flow.start(), 0);
    flow.placeAtBottom({row(10)}, 0, 100, from, 1);
    ASSERT_EQ(flow.pages().size(), 1u);
    EXPECT_DOUBLE_EQ(flow.pages()[0].rows[1].rect.bottom(), 50);
}

TEST(Flow, LastRowsGoOverWhenTheyDoNotFit) {
    Flow flow(0, 0, 50);
    const Cursor from = flow.place({row(45)}, 0, 100, flow.start(), 0);
    flow.placeAtBottom({row(10)}, 0, 100, from, 1);
    ASSERT_EQ(flow.pages().size(), 2u);
    EXPECT_DOUBLE_EQ(flow.pages()[1].rows[0].rect.top(), 0);
}

TEST(Tightened, TakesAirOnlyAndNoMoreThanThereIs) {
    const Pads some = tightened({2, 3}, 20, 0.92); // 8 % of 25 is 2
    EXPECT_DOUBLE_EQ(some.top + some.bottom, 3);
    const Pads none = tightened({0.5, 0.5}, 40, 0.92);
    EXPECT_DOUBLE_EQ(none.top + none.bottom, 0);
    const Pads all = tightened({2, 3}, 20, 1);
    EXPECT_DOUBLE_EQ(all.top + all.bottom, 5);
}

} // namespace
} // namespace withy::paper
