// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shed/holder_totals.h"

#include <gtest/gtest.h>

namespace withy::shed {
namespace {

// Sums worked by hand; common practice, no source.
TEST(Holders, LengthClassesMeetWithoutAGap) {
    EXPECT_EQ(lengthClass(Millimetres(399)), LengthClass::shortStems);
    EXPECT_EQ(lengthClass(Millimetres(400)), LengthClass::middleStems);
    EXPECT_EQ(lengthClass(Millimetres(600)), LengthClass::middleStems);
    EXPECT_EQ(lengthClass(Millimetres(601)), LengthClass::longStems);
}

TEST(Holders, EachLengthHasItsOwnBuckets) {
    const auto buckets = bucketsFor({Stems(161), Stems(60), Stems(0)}, {Stems(80), Stems(60), std::nullopt});
    ASSERT_TRUE(buckets.ok());
    EXPECT_EQ(buckets->byClass[0], 3); // 161 in eighties
    EXPECT_EQ(buckets->byClass[1], 1);
    EXPECT_EQ(buckets->byClass[2], 0); // none to stand, so the blank does not matter
    EXPECT_EQ(buckets->total, 4);
    EXPECT_FALSE(buckets->partlyKnown);
}

TEST(Holders, ABlankRoomIsNotNought) {
    const auto buckets = bucketsFor({Stems(10), Stems(10), Stems(10)}, {Stems(80), std::nullopt, Stems(40)});
    ASSERT_TRUE(buckets.ok());
    EXPECT_FALSE(buckets->byClass[1].has_value());
    EXPECT_EQ(buckets->total, 2);
    EXPECT_TRUE(buckets->partlyKnown);
}

TEST(Holders, WaterAddsUpInLitres) {
    const auto water = waterTotal({{"Supper jar", 24, Millilitres(275)}, {"Pedestal", 1, Millilitres(1800)}});
    ASSERT_TRUE(water.ok());
    EXPECT_EQ(water->total.value, 8400);
    EXPECT_DOUBLE_EQ(water->litres, 8.4);
    EXPECT_EQ(water->unknownUses, 0);
    const auto part = waterTotal({{"Jar", 24, Millilitres(275)}, {"Urn", 1, {}}, {"None ordered", 0, {}}});
    ASSERT_TRUE(part.ok());
    EXPECT_EQ(part->total.value, 6600);
    EXPECT_EQ(part->unknownUses, 1);
}

TEST(Holders, PlantsDoNotShareACell) {
    const auto grid = griddedBoxes({{"Zinnia", Stems(21)}, {"Fennel", Stems(3)}, {"None", Stems(0)}}, 10, 3);
    ASSERT_TRUE(grid.ok());
    EXPECT_EQ(grid->cells, 4); // three and one
    EXPECT_EQ(grid->boxes, 2);
    EXPECT_EQ(grid->cellsFree, 2);
}

TEST(Holders, WhatMakesNoSenseIsRefusedByName) {
    EXPECT_EQ(bucketsFor({Stems(-1), {}, {}}, {}).error().field, "stems");
    EXPECT_EQ(bucketsFor({Stems(1'000'000'000'000), {}, {}}, {}).error().field, "stems");
    EXPECT_EQ(bucketsFor({Stems(1), {}, {}}, {Stems(0), {}, {}}).error().field, "stems_per_bucket");
    EXPECT_EQ(waterTotal({{"", -1, {}}}).error().field, "pieces");
    EXPECT_EQ(waterTotal({{"", 1'000'000'000'000, Millilitres(1)}}).error().field, "pieces");
    EXPECT_EQ(waterTotal({{"", 1, Millilitres(-1)}}).error().field, "water");
    EXPECT_EQ(griddedBoxes({}, 0, 1).error().field, "stems_per_cell");
    EXPECT_EQ(griddedBoxes({}, 1, 0).error().field, "cells");
    EXPECT_EQ(griddedBoxes({{"", Stems(-1)}}, 1, 1).error().field, "stems");
    EXPECT_EQ(griddedBoxes({}, 10, 3)->boxes, 0);
}

} // namespace
} // namespace withy::shed
