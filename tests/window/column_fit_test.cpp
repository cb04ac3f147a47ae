// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/column_fit.h"

#include <gtest/gtest.h>

#include <numeric>

namespace withy::ui {

namespace {

int sum(const std::vector<int>& widths) {
    return std::accumulate(widths.begin(), widths.end(), 0);
}

const ColumnWant name{40, 200, true, 80};
const ColumnWant figure{60, 30, false, 0};
const ColumnWant remark{50, 400, true, 80};

} // namespace

TEST(ColumnFit, EachColumnHoldsItsHeadAndItsCells) {
    EXPECT_EQ(fittedWidths({name, figure}, 260, 0), (std::vector<int>{200, 60}));
}

TEST(ColumnFit, WhatIsLeftOverGoesToTheWordsAndNoFurtherThanTheyMayGrow) {
    EXPECT_EQ(fittedWidths({name, figure}, 300, 1000), (std::vector<int>{240, 60}));
    EXPECT_EQ(fittedWidths({name, figure}, 2000, 100), (std::vector<int>{300, 60}));
    EXPECT_EQ(fittedWidths({figure, figure}, 2000, 100), (std::vector<int>{60, 60}));
}

TEST(ColumnFit, WhatIsMissingIsTakenFromTheWidestWords) {
    const auto widths = fittedWidths({name, figure, remark}, 500, 100);
    EXPECT_EQ(sum(widths), 500);
    EXPECT_EQ(widths[0], 200) << "the name still fits";
    EXPECT_EQ(widths[1], 60) << "a figure is never cut";
    EXPECT_EQ(widths[2], 240);
}

TEST(ColumnFit, BelowTheLeastOfTheWordsTheTableIsWiderThanItsRoom) {
    const auto widths = fittedWidths({name, figure, remark}, 100, 100);
    EXPECT_EQ(widths, (std::vector<int>{80, 60, 80}));
}

} // namespace withy::ui
