// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/build_up.h"

#include <gtest/gtest.h>

namespace withy::designs {
namespace {

// The sums are worked by hand; common practice, no source. The recut of 25 mm is published: 2.5 cm off before
// placing (University of Massachusetts).
Standing jar() {
    return {Millimetres(104), Millimetres(15), {Millimetres(55), Millimetres(105), Millimetres(165)}};
}

Bound posy() {
    return {Millimetres(120), {Millimetres(60), Millimetres(110), Millimetres(170)}};
}

TEST(CutLength, IsDepthLessLiftPlusHeightPlusRecut) {
    EXPECT_EQ(cutLength(jar(), Tier::low)->length.value, 169);    // 104 - 15 + 55 + 25
    EXPECT_EQ(cutLength(jar(), Tier::middle)->length.value, 219); // 104 - 15 + 105 + 25
    EXPECT_EQ(cutLength(jar(), Tier::tall)->length.value, 279);   // 104 - 15 + 165 + 25
    EXPECT_EQ(cutLength(posy(), Tier::low)->length.value, 205);   // 120 + 60 + 25
    EXPECT_EQ(cutLength(posy(), Tier::tall)->length.value, 315);
}

TEST(CutLength, TheWorkingNamesTheSourceOfTheRecut) {
    const auto cut = cutLength(jar(), Tier::tall);
    ASSERT_TRUE(cut.ok());
    ASSERT_EQ(cut->working.size(), 5u);
    double sum = 0;
    for (const auto& line : cut->working) {
        if (line.step == Step::given || line.step == Step::plus) sum += line.value;
        if (line.step == Step::minus) sum -= line.value;
    }
    EXPECT_EQ(sum, cut->working.back().value);
    EXPECT_EQ(cut->working.back().what, "cut length");
    EXPECT_EQ(cut->working[3].what, "recut");
    EXPECT_EQ(cut->working[3].basis, Basis::published);
    EXPECT_FALSE(cut->working[3].source.empty());
}

TEST(ShortStems, LongEnoughIsNoComplaint) {
    const auto fits = tooShort(jar(), Tier::tall, {Millimetres(279), true, {}, {}, {}});
    ASSERT_TRUE(fits.ok());
    EXPECT_FALSE(fits->has_value());
}

TEST(ShortStems, ChoicesAreOnlyThoseThatHelp) {
    const auto found =
        tooShort(jar(), Tier::tall, {Millimetres(230), true, Basis::counted, "", "Cornflower"});
    ASSERT_TRUE(found.ok());
    ASSERT_TRUE(found->has_value());
    const ShortStem& s = **found;
    EXPECT_EQ(s.missing.value, 49);
    ASSERT_EQ(s.choices.size(), 3u);
    EXPECT_EQ(s.choices[0].mend, ShortStemMend::pull);
    EXPECT_EQ(s.choices[1].mend, ShortStemMend::lowerTier);
    EXPECT_EQ(s.choices[1].tier, Tier::middle);
    EXPECT_EQ(s.choices[2].mend, ShortStemMend::smallerJar);
    EXPECT_EQ(s.choices[2].depth, Millimetres(55));
    // What is proposed does help.
    EXPECT_LE(cutLength(jar(), Tier::middle)->length.value, 230);
    Standing smaller = jar();
    smaller.insideDepth = Millimetres(55);
    EXPECT_EQ(cutLength(smaller, Tier::tall)->length.value, 230);
}

TEST(ShortStems, ASeverelyShortStemMayHaveNoMend) {
    const auto low = tooShort(jar(), Tier::low, {Millimetres(60), false, {}, {}, {}});
    ASSERT_TRUE(low.ok() && low->has_value());
    EXPECT_EQ((*low)->missing.value, 109);
    EXPECT_TRUE((*low)->choices.empty()); // no lower tier, and no jar is shallow enough
    const auto lowest = tooShort(jar(), Tier::tall, {Millimetres(170), false, {}, {}, {}});
    ASSERT_TRUE(lowest.ok() && lowest->has_value());
    ASSERT_EQ((*lowest)->choices.size(), 1u);
    EXPECT_EQ((*lowest)->choices[0].tier, Tier::low);
}

TEST(ShortStems, BoundPiecesHaveNoJarToChange) {
    const auto found = tooShort(posy(), Tier::tall, {Millimetres(260), false, {}, {}, {}});
    ASSERT_TRUE(found.ok() && found->has_value());
    EXPECT_EQ((*found)->missing.value, 55);
    ASSERT_EQ((*found)->choices.size(), 1u);
    EXPECT_EQ((*found)->choices[0].tier, Tier::middle);
}

TEST(CutLength, WhatMakesNoSenseIsRefusedByName) {
    struct Row {
        const char* field;
        void (*change)(Standing&);
    };

    const Row rows[] = {
        {"inner_depth", [](Standing& p) { p.insideDepth = Millimetres(-1); }},
        {"inner_depth", [](Standing& p) { p.insideDepth = Millimetres(1'000'000'000'000); }},
        {"lift", [](Standing& p) { p.lift = Millimetres(-1); }},
        {"lift", [](Standing& p) { p.lift = Millimetres(105); }},
        {"height_low", [](Standing& p) { p.heights.low = Millimetres(-1); }},
        {"height_middle", [](Standing& p) { p.heights.middle = Millimetres(20'000); }},
        {"height_tall", [](Standing& p) { p.heights.tall = Millimetres(INT64_MAX); }},
        {"recut", [](Standing& p) { p.recut = Millimetres(-1); }},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.field);
        Standing piece = jar();
        row.change(piece);
        ASSERT_FALSE(cutLength(piece, Tier::tall).ok());
        EXPECT_EQ(cutLength(piece, Tier::tall).error().field, row.field);
        EXPECT_FALSE(tooShort(piece, Tier::tall, {}).ok());
    }
    Bound bound = posy();
    bound.stemsBelowTie = Millimetres(-1);
    EXPECT_EQ(cutLength(bound, Tier::low).error().field, "stems_below_tie");
    EXPECT_EQ(tooShort(jar(), Tier::low, {Millimetres(-1), false, {}, {}, {}}).error().field, "stem_length");
}

} // namespace
} // namespace withy::designs
