// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/water_fill.h"

#include "core/designs/solids.h"

#include <gtest/gtest.h>

#include <cmath>

namespace withy::designs {
namespace {

ProfileShape jar(double diameter, double depth) {
    ProfileShape s;
    s.rim = diameter;
    s.depth = depth;
    return s;
}

StemGroup stems(std::int64_t count, double diameter) {
    return {count, diameter, Basis::counted, {}};
}

TEST(NeckFilling, SevenStemsOfAThirdFillSevenNinths) {
    // Seven equal circles in a circle three times as wide: density 7/9 = 0.7777..., proved best
    // (R. L. Graham, Sets of points with given minimum separation, 1968; from memory).
    const auto filling = neckFilling(jar(60, 100), {stems(7, 20)});
    ASSERT_TRUE(filling.ok());
    EXPECT_NEAR(filling->share, 7.0 / 9, 1e-12);
    EXPECT_NEAR(filling->working.back().value, 700.0 / 9, 1e-9);
}

TEST(NeckFilling, GroupsAddUpAndMayBeMoreThanFull) {
    EXPECT_NEAR(neckFilling(jar(60, 100), {stems(3, 20), stems(4, 20)})->share, 7.0 / 9, 1e-12);
    EXPECT_NEAR(neckFilling(jar(60, 100), {stems(18, 20)})->share, 2, 1e-12);
    EXPECT_EQ(neckFilling(jar(60, 100), {})->share, 0);
}

WaterWanted wanted(ProfileShape shape, std::int64_t share, double lift, std::vector<StemGroup> s) {
    WaterWanted w;
    w.shape = shape;
    w.sharePerTenThousand = share;
    w.lift = lift;
    w.stems = std::move(s);
    return w;
}

TEST(WaterFill, WaterIsTheShareLessTheStemsInIt) {
    // A jar of 80 x 100 mm (row f7 of the solids' table a thousandfold: 502.6548245744 ml), half full: level
    // 50 mm; one stem of 8 mm from a lift of 35 mm stands 15 mm deep: row c3, 0.7539822368616 ml.
    const auto fill = waterFill(wanted(jar(80, 100), 5000, 35, {stems(1, 8)}));
    ASSERT_TRUE(fill.ok());
    EXPECT_NEAR(fill->level, 50, 1e-9);
    EXPECT_NEAR(fill->filled, 502.6548245744 / 2, 1e-9 * 251);
    EXPECT_NEAR(fill->immersed, 0.7539822368616, 1e-9);
    EXPECT_EQ(fill->water.value, 251); // 251.327 - 0.754 = 250.573
}

TEST(WaterFill, AMeasuredVolumeWins) {
    auto w = wanted(jar(80, 100), 7500, 15, {});
    w.measured = Millilitres(370);
    const auto fill = waterFill(w);
    ASSERT_TRUE(fill.ok());
    EXPECT_NEAR(fill->filled, 277.5, 1e-9);
    EXPECT_EQ(fill->water.value, 278); // half up
    EXPECT_NEAR(fill->level, 75, 1e-9);
    EXPECT_EQ(fill->working.front().what, "measured volume");
    EXPECT_EQ(fill->working.front().basis, Basis::counted);
}

TEST(WaterFill, StemsAboveTheWaterTakeNoRoom) {
    const auto fill = waterFill(wanted(jar(80, 100), 1000, 20, {stems(10, 8)}));
    ASSERT_TRUE(fill.ok());
    EXPECT_EQ(fill->immersed, 0);
    EXPECT_EQ(fill->water.value, 50);
}

TEST(WaterFill, WorkingEndsInTheWater) {
    const auto fill = waterFill(wanted(jar(80, 100), 7500, 15, {stems(10, 6)}));
    ASSERT_TRUE(fill.ok());
    EXPECT_EQ(fill->working.back().what, "water");
    EXPECT_EQ(fill->working.back().value, static_cast<double>(fill->water.value));
    EXPECT_LT(fill->water.value, 377);
}

TEST(WaterFill, WhatMakesNoSenseIsRefusedByName) {
    struct Row {
        const char* field;
        WaterWanted wanted;
    };

    auto measured = wanted(jar(80, 100), 7500, 15, {});
    measured.measured = Millilitres(0);
    auto absurd = measured;
    absurd.measured = Millilitres(1'000'000'000'000);
    const Row rows[] = {
        {"water_share", wanted(jar(80, 100), -1, 15, {})},
        {"water_share", wanted(jar(80, 100), 10'001, 15, {})},
        {"lift", wanted(jar(80, 100), 7500, -1, {})},
        {"lift", wanted(jar(80, 100), 7500, 101, {})},
        {"lift", wanted(jar(80, 100), 7500, std::nan(""), {})},
        {"inner_rim", wanted(jar(0, 100), 7500, 15, {})},
        {"count", wanted(jar(80, 100), 7500, 15, {stems(-1, 5)})},
        {"count", wanted(jar(80, 100), 7500, 15, {stems(1'000'000'000'000, 5)})},
        {"stem_diameter", wanted(jar(80, 100), 7500, 15, {stems(1, -5)})},
        {"stem_diameter", wanted(jar(80, 100), 7500, 15, {stems(1, std::nan(""))})},
        {"measured_volume", measured},
        {"measured_volume", absurd},
        {"stems", wanted(jar(20, 100), 7500, 0, {stems(50, 5)})}, // they do not go in
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.field);
        const auto fill = waterFill(row.wanted);
        ASSERT_FALSE(fill.ok());
        EXPECT_EQ(fill.error().field, row.field);
    }
}

TEST(PieceWeight, IsContainerWaterAndStems) {
    // Worked by hand: 200 + 275 + 10 x 20 = 675 g. Water: 1 g a millilitre, 0.998 g at 20 C (from memory).
    const auto weight = pieceWeight(Grams(200), Millilitres(275), Stems(10));
    ASSERT_TRUE(weight.ok());
    EXPECT_EQ(weight->total.value, 675);
    EXPECT_FALSE(weight->containerUnknown);
    const auto mass = std::find_if(weight->working.begin(), weight->working.end(),
                                   [](const WorkingLine& line) { return line.what == "weight of a stem"; });
    ASSERT_NE(mass, weight->working.end());
    EXPECT_EQ(mass->basis, Basis::fromMemory);
    EXPECT_EQ(pieceWeight(Grams(200), Millilitres(0), Stems(3), {12.5, Basis::counted, {}})->total.value,
              238);
    EXPECT_EQ(pieceWeight(Grams(0), Millilitres(0), Stems(3), {0.1, Basis::counted, {}})->total.value, 1);
    EXPECT_EQ(pieceWeight(Grams(0), Millilitres(0), Stems(10), {0.1, Basis::counted, {}})->total.value, 1);
}

TEST(PieceWeight, ABlankContainerIsNotWeightless) {
    const auto weight = pieceWeight({}, Millilitres(275), Stems(10));
    ASSERT_TRUE(weight.ok());
    EXPECT_TRUE(weight->containerUnknown);
    EXPECT_EQ(weight->total.value, 475);
    EXPECT_EQ(weight->working.front().basis, Basis::notKnown);
}

TEST(PieceWeight, WhatMakesNoSenseIsRefusedByName) {
    EXPECT_EQ(pieceWeight(Grams(-1), {}, {}).error().field, "empty_weight");
    EXPECT_EQ(pieceWeight(Grams(INT64_MAX), {}, {}).error().field, "empty_weight");
    EXPECT_EQ(pieceWeight({}, Millilitres(-1), {}).error().field, "water");
    EXPECT_EQ(pieceWeight({}, {}, Stems(-1)).error().field, "stems");
    EXPECT_EQ(pieceWeight({}, {}, Stems(1), {std::nan(""), {}, {}}).error().field, "stem_mass");
    EXPECT_EQ(pieceWeight({}, {}, Stems(1), {-1, {}, {}}).error().field, "stem_mass");
}

} // namespace
} // namespace withy::designs
