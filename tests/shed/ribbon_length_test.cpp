// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shed/ribbon_length.h"

#include <gtest/gtest.h>

#include <cmath>

namespace withy::shed {
namespace {

Tie plain(std::int64_t wraps, std::int64_t overlap, std::int64_t trim) {
    Tie tie;
    tie.wraps = wraps;
    tie.overlap = Millimetres(overlap);
    tie.trim = Millimetres(trim);
    return tie;
}

/// The florist bow of the Georgia Agriculture Education Curriculum Office, How to make bows (2005), in
/// inches: four 5 inch loops a side, 8 inches of starting end for the centre, tails of 14 inches.
Tie floristBow(std::int64_t tails) {
    Tie tie;
    tie.wraps = 0;
    tie.finish = Finish::bow;
    tie.loops = 8;
    tie.loop = Millimetres(127);
    tie.centre = Millimetres(203);
    tie.tails = tails;
    tie.tail = Millimetres(356);
    return tie;
}

TEST(Girth, IsPiTimesTheNeck) {
    // Row c1 of the solids' table, and tenfold.
    EXPECT_NEAR(girthOfNeck(Millimetres(10))->value, 31.4159265359, 1e-9);
    EXPECT_NEAR(girthOfNeck(Millimetres(100))->value, 314.159265359, 1e-8);
    EXPECT_EQ(girthOfNeck(Millimetres(10))->working.back().what, "girth");
}

struct BundleRow {
    int stems;
    double widths; ///< diameter of the smallest circle round so many equal ones, in their diameters
};

TEST(Girth, BoundStemsAtTheDensityOfAKnownBundle) {
    // Smallest circle round N equal circles (S. Kravitz, Packing cylinders into cylindrical containers,
    // Mathematics Magazine 40, 1967; from memory): 7 in 3, 19 in 1 + sqrt 2 + sqrt 6.
    const BundleRow rows[] = {{1, 1}, {2, 2}, {7, 3}, {19, 1 + std::sqrt(2.0) + std::sqrt(6.0)}};
    for (const auto& row : rows) {
        SCOPED_TRACE(row.stems);
        const double packing = row.stems / (row.widths * row.widths);
        const auto girth = girthOfBound(Stems(row.stems), 6, packing);
        ASSERT_TRUE(girth.ok());
        EXPECT_NEAR(girth->value, std::acos(-1.0) * 6 * row.widths, 1e-9);
    }
}

TEST(Girth, TheUsualPackingIsMarkedAsRemembered) {
    const auto girth = girthOfBound(Stems(30), 6);
    ASSERT_TRUE(girth.ok());
    EXPECT_EQ(girth->working[2].what, "packing");
    EXPECT_EQ(girth->working[2].basis, Basis::fromMemory);
    EXPECT_LT(usualPacking, 0.9069); // Thue's bound, from memory
}

TEST(RibbonLength, TheFloristBowIsAsLongAsPublished) {
    // The source's steps come to 116 inches with two tails wired on and 102 with one; its makers' range is
    // given as about 2.6 to 2.9 m. Whole millimetres of each part shift the sum by less than 1 mm.
    EXPECT_NEAR(static_cast<double>(ribbonForPiece(0, floristBow(2))->length.value), 116 * 25.4, 1);
    EXPECT_NEAR(static_cast<double>(ribbonForPiece(0, floristBow(1))->length.value), 102 * 25.4, 1);
}

TEST(RibbonLength, WrapsFinishAndTrimAddUp) {
    // By hand, girth of a 60 mm neck 188.4956 mm; common practice, no source.
    const double girth = girthOfNeck(Millimetres(60))->value;
    EXPECT_EQ(ribbonForPiece(girth, plain(1, 20, 10))->length.value, 219); // 218.4956 up
    EXPECT_EQ(ribbonForPiece(girth, plain(3, 20, 10))->length.value, 636); // 3 x 208.4956 + 10 = 635.487
    Tie knot = plain(1, 20, 10);
    knot.finish = Finish::knot;
    knot.tail = Millimetres(120);
    EXPECT_EQ(ribbonForPiece(girth, knot)->length.value, 459); // 218.4956 + 240
    knot.loop = Millimetres(80);                               // a knot has no loops
    EXPECT_EQ(ribbonForPiece(girth, knot)->length.value, 459);
    knot.finish = Finish::bow;
    EXPECT_EQ(ribbonForPiece(girth, knot)->length.value, 779); // + 2 x 2 x 80
    knot.finish = Finish::none;
    EXPECT_EQ(ribbonForPiece(girth, knot)->length.value, 0);
}

TEST(RibbonLength, RoundsUpOnceAndOnlyAtTheEnd) {
    EXPECT_EQ(ribbonForPiece(100.1, plain(10, 0, 0))->length.value, 1001); // wrap by wrap it would be 1010
    EXPECT_EQ(ribbonForPiece(0.1, plain(30, 0, 0))->length.value, 3); // binary 0.1 x 30 is a shade above 3
    EXPECT_EQ(ribbonForPiece(100.001, plain(1, 0, 0))->length.value, 101);
}

TEST(RibbonLength, TheWorkingEndsInTheLength) {
    const auto piece = ribbonForPiece(0, floristBow(2));
    ASSERT_TRUE(piece.ok());
    EXPECT_EQ(piece->working.back().what, "ribbon a piece");
    EXPECT_EQ(piece->working.back().value, static_cast<double>(piece->length.value));
}

TEST(RibbonTotal, PiecesAndSparePiecesAgainstWhatIsThere) {
    const auto enough = ribbonTotal(Millimetres(460), 24, 2, Millimetres(12'000));
    ASSERT_TRUE(enough.ok());
    EXPECT_EQ(enough->needed.value, 11'960);
    EXPECT_DOUBLE_EQ(enough->metres, 11.96);
    EXPECT_EQ(enough->missing, Millimetres(0));
    EXPECT_EQ(enough->left, Millimetres(40));
    const auto missing = ribbonTotal(Millimetres(460), 24, 2, Millimetres(9'400));
    ASSERT_TRUE(missing.ok());
    EXPECT_EQ(missing->missing, Millimetres(2'560));
    EXPECT_EQ(missing->left, Millimetres(0));
    EXPECT_EQ(missing->working.back().what, "missing");
}

TEST(RibbonTotal, BlankOnHandIsNotNought) {
    const auto unknown = ribbonTotal(Millimetres(460), 24, 0, {});
    ASSERT_TRUE(unknown.ok());
    EXPECT_FALSE(unknown->missing.has_value());
    EXPECT_FALSE(unknown->left.has_value());
    const auto none = ribbonTotal(Millimetres(460), 24, 0, Millimetres(0));
    ASSERT_TRUE(none.ok());
    EXPECT_EQ(none->missing, Millimetres(11'040));
}

TEST(RibbonLength, WhatMakesNoSenseIsRefusedByName) {
    struct Row {
        const char* field;
        void (*change)(Tie&);
    };

    const Row rows[] = {
        {"wraps", [](Tie& t) { t.wraps = -1; }},
        {"wraps", [](Tie& t) { t.wraps = 1'000'000'000'000; }},
        {"overlap", [](Tie& t) { t.overlap = Millimetres(-1); }},
        {"tail", [](Tie& t) { t.tail = Millimetres(INT64_MAX); }},
        {"tails", [](Tie& t) { t.tails = -2; }},
        {"loop", [](Tie& t) { t.loop = Millimetres(-1); }},
        {"loops", [](Tie& t) { t.loops = 1'000'000; }},
        {"centre", [](Tie& t) { t.centre = Millimetres(-1); }},
        {"trim", [](Tie& t) { t.trim = Millimetres(-1); }},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.field);
        Tie tie = floristBow(2);
        row.change(tie);
        ASSERT_FALSE(ribbonForPiece(100, tie).ok());
        EXPECT_EQ(ribbonForPiece(100, tie).error().field, row.field);
    }
    for (const double girth : {-1.0, 1e12, std::nan("")})
        EXPECT_EQ(ribbonForPiece(girth, floristBow(2)).error().field, "girth");
    EXPECT_EQ(girthOfNeck(Millimetres(0)).error().field, "outer_neck");
    EXPECT_EQ(girthOfBound(Stems(0), 6).error().field, "stems");
    EXPECT_EQ(girthOfBound(Stems(10), 0).error().field, "stem_diameter");
    EXPECT_EQ(girthOfBound(Stems(10), std::nan("")).error().field, "stem_diameter");
    EXPECT_EQ(girthOfBound(Stems(10), 6, 0).error().field, "packing");
    EXPECT_EQ(girthOfBound(Stems(10), 6, 1.1).error().field, "packing");
    EXPECT_EQ(ribbonTotal(Millimetres(-1), 1, 0, {}).error().field, "ribbon");
    EXPECT_EQ(ribbonTotal(Millimetres(1), -1, 0, {}).error().field, "pieces");
    EXPECT_EQ(ribbonTotal(Millimetres(1), 1'000'000'000'000, 0, {}).error().field, "pieces");
    EXPECT_EQ(ribbonTotal(Millimetres(1), 1, -1, {}).error().field, "spare_pieces");
    EXPECT_EQ(ribbonTotal(Millimetres(1), 1, 0, Millimetres(-1)).error().field, "on_hand");
}

} // namespace
} // namespace withy::shed
