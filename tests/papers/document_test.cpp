// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/document.h"

#include <gtest/gtest.h>

#include <limits>
#include <numeric>

namespace withy::papers {
namespace {

TEST(PaperText, JoinsRunsAndKeepsTheirWeights) {
    const Text text = strong("24") + plain(" jars");
    ASSERT_EQ(text.size(), 2u);
    EXPECT_TRUE(text[0].strong);
    EXPECT_FALSE(text[1].strong);
    EXPECT_EQ(words(text), "24 jars");
    EXPECT_EQ(words({}), "");
}

TEST(PaperFoot, JoinsPrintedAndVersion) {
    Document document;
    EXPECT_EQ(footMiddle(document), "");
    document.version = "version 2";
    EXPECT_EQ(footMiddle(document), "version 2");
    document.footPrinted = "printed Thu 9 Sep, 19:40";
    EXPECT_EQ(footMiddle(document), "printed Thu 9 Sep, 19:40, version 2");
    document.version.clear();
    EXPECT_EQ(footMiddle(document), "printed Thu 9 Sep, 19:40");
}

TEST(TallyBoxes, AreTensAndARest) {
    // Whole division with a rest, by hand: 53 = 5 x 10 + 3.
    const struct {
        int stems;
        int bunch;
        int most;
        std::vector<int> expected;
    } rows[] = {{53, 10, 60, {10, 10, 10, 10, 10, 3}},
                {80, 10, 60, {10, 10, 10, 10, 10, 10, 10, 10}},
                {7, 10, 60, {7}},
                {0, 10, 60, {}},
                {-5, 10, 60, {}},
                {12, 5, 60, {5, 5, 2}},
                {3, 0, 60, {1, 1, 1}},
                {100, 10, 3, {10, 10, 80}}};

    for (const auto& row : rows) {
        SCOPED_TRACE(std::to_string(row.stems) + " in " + std::to_string(row.bunch));
        EXPECT_EQ(tallyBoxes(row.stems, row.bunch, row.most), row.expected);
    }
}

TEST(TallyBoxes, LoseNoStemOfAnAbsurdCount) {
    const int most = std::numeric_limits<int>::max();
    const std::vector<int> boxes = tallyBoxes(most);
    EXPECT_EQ(boxes.size(), 60u);
    EXPECT_EQ(std::accumulate(boxes.begin(), boxes.end(), 0LL), most);
}

} // namespace
} // namespace withy::papers
