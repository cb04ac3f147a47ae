// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_width.h"

#include <gtest/gtest.h>

namespace withy::papers {
namespace {

using Lines = std::vector<std::string>;

TEST(DisplayWidth, FollowsTheMainRangesOfAnnex11) {
    // East_Asian_Width W is two columns, combining marks none: Unicode Standard Annex 11.
    const struct {
        const char* words;
        int width;
    } rows[] = {{"", 0},     {"jars", 4}, {"°C", 2},   {"£0.00", 5}, {"e\xCC\x81", 1},
                {"花束", 4}, {"🌼", 2},    {"שלום", 4}, {"×", 1},     {"caf\xE9", 4}};

    for (const auto& row : rows) {
        SCOPED_TRACE(row.words);
        EXPECT_EQ(displayWidth(row.words), row.width);
    }
}

TEST(OneLine, LeavesNothingThatMovesThePrinter) {
    EXPECT_EQ(oneLine("a\nb\tc"), "a b c");
    EXPECT_EQ(oneLine(std::string("a\0b\x7f", 4)), "a b ");
    EXPECT_EQ(oneLine("caf\xE9"), "caf\xEF\xBF\xBD");
    EXPECT_EQ(oneLine("\xED\xA0\x80").find('\xED'), std::string::npos) << "a surrogate is not UTF-8";
    EXPECT_EQ(oneLine("\xC0\xAF").find('/'), std::string::npos) << "an overlong form is not UTF-8";
}

TEST(Wrap, BreaksAtBlanksThenInsideLongWords) {
    const struct {
        const char* words;
        int width;
        Lines expected;
    } rows[] = {{"", 10, {""}},
                {"one", 10, {"one"}},
                {"one two three", 7, {"one two", "three"}},
                {"one two three", 3, {"one", "two", "thr", "ee"}},
                {"abcdefgh", 3, {"abc", "def", "gh"}},
                {"one\ntwo", 10, {"one", "two"}},
                {"花束花束", 5, {"花束", "花束"}},
                {"ab", 0, {"a", "b"}}};

    for (const auto& row : rows) {
        SCOPED_TRACE(row.words);
        EXPECT_EQ(wrap(row.words, row.width), row.expected);
    }
}

TEST(Wrap, LosesNoLetterOfALongWord) {
    const std::string word(10'000, 'x');
    std::string back;
    for (const std::string& line : wrap(word, 78)) {
        EXPECT_LE(displayWidth(line), 78);
        back += line;
    }
    EXPECT_EQ(back, word);
}

TEST(Pad, CountsColumnsNotBytes) {
    EXPECT_EQ(padLeft("£5", 4), "  £5");
    EXPECT_EQ(padRight("花", 4), "花  ");
    EXPECT_EQ(padRight("longer", 3), "longer");
    EXPECT_EQ(apart("a", "b", 5), "a   b");
    EXPECT_EQ(apart("abc", "de", 4), "abc de") << "never run together";
}

} // namespace
} // namespace withy::papers
