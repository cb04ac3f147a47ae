// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/colour_balance.h"

#include <gtest/gtest.h>

#include <cmath>

namespace withy::designs {
namespace {

const Colour blue{40, 60, 160}, white{250, 250, 245}, green{80, 120, 60}, cream{245, 240, 220};

ShownThing heads(std::int64_t count, double across, std::vector<Colour> colours) {
    ShownThing thing;
    thing.count = count;
    thing.across = across;
    thing.colours = std::move(colours);
    return thing;
}

} // namespace

/// By hand: 10 blue heads of 20 and 10 white of 40 show areas as 1 to 4.
TEST(ColourBalance, SharesTheVisibleArea) {
    const auto balance =
        colourBalance({heads(10, 20, {blue}), heads(10, 40, {white})}, {{blue, 40.0}, {white, std::nullopt}});
    ASSERT_TRUE(balance.ok());
    EXPECT_NEAR(balance->wishes[0].share, 20, 1e-9);
    EXPECT_NEAR(balance->wishes[1].share, 80, 1e-9);
    EXPECT_NEAR(balance->wishes[1].wished, 60, 1e-9);
    EXPECT_EQ(balance->otherShare, 0);
    EXPECT_EQ(balance->wishes[0].working.back().what, "share shown");
    // (10 + n) / (50 + n) = 0.4: n = 50 / 3, so 17; blue's heads are 1 against 2.5 in the mean.
    ASSERT_TRUE(balance->wishes[0].mend.has_value());
    EXPECT_EQ(balance->wishes[0].mend->add, 17);
    EXPECT_TRUE(balance->wishes[0].mend->smallHeads);
    EXPECT_FALSE(balance->wishes[1].mend.has_value());
    const auto mended = colourBalance({heads(27, 20, {blue}), heads(10, 40, {white})}, {{blue, 40.0}});
    EXPECT_GE(mended->wishes[0].share, 40);
    EXPECT_LT(colourBalance({heads(26, 20, {blue}), heads(10, 40, {white})}, {{blue, 40.0}})->wishes[0].share,
              40);
}

TEST(ColourBalance, GivesEachColourToTheNearestWishOrToNone) {
    // Cream goes to white, green to none; a head of two colours counts half for each.
    const auto balance =
        colourBalance({heads(4, 10, {cream}), heads(4, 10, {blue, white}), heads(8, 10, {green})},
                      {{white, std::nullopt}, {blue, std::nullopt}});
    ASSERT_TRUE(balance.ok());
    EXPECT_NEAR(balance->wishes[0].share, 100 * 6.0 / 16, 1e-9);
    EXPECT_NEAR(balance->wishes[1].share, 100 * 2.0 / 16, 1e-9);
    EXPECT_NEAR(balance->otherShare, 50, 1e-9);
    EXPECT_NEAR(balance->wishes[0].wished, 50, 1e-9);
}

TEST(ColourBalance, KnowsShapesAndWhatIsNotKnown) {
    ShownThing leaf = heads(1, 20, {green}), grass = leaf, ribbon = leaf, blank = leaf;
    leaf.shape = Shown::leaf;
    grass.shape = Shown::grass;
    ribbon.shape = Shown::ribbon;
    leaf.along = grass.along = ribbon.along = 100;
    EXPECT_NEAR(*shownArea(leaf), 3.14159265358979 * 10 * 50, 1e-6); // pi a b of an ellipse
    EXPECT_NEAR(*shownArea(grass), 1000, 1e-9);
    EXPECT_NEAR(*shownArea(ribbon), 2000, 1e-9);
    blank.shape = Shown::leaf;
    EXPECT_FALSE(shownArea(blank).has_value());
    const auto balance = colourBalance({blank, heads(1, 5, {})}, {{green, std::nullopt}});
    EXPECT_EQ(balance->notKnown, 2);
    EXPECT_EQ(balance->wishes[0].share, 0);
    EXPECT_FALSE(balance->wishes[0].mend.has_value());
}

TEST(ColourBalance, NamesBadInput) {
    EXPECT_EQ(colourBalance({heads(-1, 5, {blue})}, {}).error().field, "count");
    EXPECT_EQ(colourBalance({heads(1, -5, {blue})}, {}).error().field, "across");
    EXPECT_EQ(colourBalance({}, {{blue, 60.0}, {white, 50.0}}).error().code, ProblemCode::sharesNotOne);
    EXPECT_EQ(colourBalance({}, {{blue, -1.0}}).error().field, "wish_share");
    EXPECT_EQ(colourBalance({}, {}, std::nan("")).error().field, "reach");
}

} // namespace withy::designs
