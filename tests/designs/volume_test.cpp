// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/volume.h"

#include "core/designs/solids.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

namespace withy::designs {
namespace {

ProfileShape cylinder(double diameter, double depth) {
    ProfileShape s;
    s.rim = diameter;
    s.depth = depth;
    return s;
}

ProfileShape tapered(double base, double rim, double depth) {
    ProfileShape s = cylinder(rim, depth);
    s.kind = Profile::tapered;
    s.base = base;
    return s;
}

/// A globe of radius r cut level at `depth`, above its middle: the rim is the circle it is cut in.
ProfileShape globe(double r, double depth) {
    ProfileShape s = cylinder(2 * std::sqrt(depth * (2 * r - depth)), depth);
    s.kind = Profile::rounded;
    s.base = 0;
    s.body = 2 * r;
    return s;
}

ProfileShape trough(double length, double width, double depth) {
    ProfileShape s = cylinder(width, depth);
    s.kind = Profile::trough;
    s.length = length;
    return s;
}

double fullOf(const ProfileShape& shape) {
    return fullVolume(shape)->cubicMillimetres;
}

struct FullRow {
    const char* row;
    ProfileShape shape;
    double expected;
};

// The rows of the solids' table that are containers (sources there), millimetres for their unit of length.
TEST(Volume, ContainersFilledToTheRim) {
    const FullRow rows[] = {
        {"f1", tapered(18, 30, 30), 13854.423602331},
        {"f1 upside down", tapered(30, 18, 30), 13854.423602331},
        {"f2", tapered(6, 10, 10), 513.1268000863},
        {"f3", tapered(4, 10, 3), 122.52211349},
        {"f4", tapered(4.1, 4.8, 4.5), 70.1321290006},
        {"f5", tapered(3.9, 4.1, 4.5), 56.5604487371},
        {"f6", tapered(3.2, 3.9, 11), 109.2305585714},
        {"f7", tapered(8, 8, 10), 502.6548245744},
        {"f8", tapered(0, 8, 9), 150.7964473723},
        {"f7 as a cylinder", cylinder(8, 10), 502.6548245744},
        {"s1", globe(6, 10), 837.7580409573},
        {"s2", globe(6, 8), 670.2064327658},
        {"c3", cylinder(8, 15), 753.9822368616},
        {"c4", trough(10, 8, 12), 960},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.row);
        ASSERT_TRUE(fullVolume(row.shape).ok());
        EXPECT_NEAR(fullOf(row.shape), row.expected, 1e-9 * row.expected);
    }
}

struct PartRow {
    const char* row;
    double radius;
    double depth; ///< of the globe, cut off above the level
    double level;
    double expected;
};

TEST(Volume, AGlobeFilledPartOfTheWay) {
    constexpr PartRow rows[] = {
        {"s1", 6, 11, 10, 837.7580409573}, {"s2", 6, 10, 8, 670.2064327658},
        {"s3", 10, 15, 3, 254.4690049408}, {"s4", 5, 9, 5, 261.7993877991},
        {"s5", 12, 20, 5, 811.5781021774},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.row);
        const auto filled = volumeTo(globe(row.radius, row.depth), row.level);
        ASSERT_TRUE(filled.ok());
        EXPECT_NEAR(filled->cubicMillimetres, row.expected, 1e-9 * row.expected);
    }
}

TEST(Volume, AGlobeAllButClosedHoldsTheFullSphere) {
    // Row s6, 800 times as large: a globe must be open, here by 0.2 mm on 9.6 m, far less than 1e-9 of it.
    const double expected = 904.7786842339 * 800 * 800 * 800;
    EXPECT_NEAR(fullOf(globe(4800, 9600 - 1e-6)), expected, 1e-9 * expected);
}

TEST(Volume, TheRoundedBodyIsTheEllipsoidItSays) {
    // Against Simpson's rule on r(z)^2, which is exact for a quadratic: r is half of base, waist and rim.
    ProfileShape s = cylinder(60, 104);
    s.kind = Profile::rounded;
    s.body = 76;
    s.base = 66;
    const double sBase = std::sqrt(1 - 66.0 * 66 / (76 * 76));
    const double sRim = std::sqrt(1 - 60.0 * 60 / (76 * 76));
    const double half = 104 / (sBase + sRim);
    const auto radiusSquared = [&](double z) {
        const double y = (z - half * sBase) / half;
        return 38 * 38 * (1 - y * y);
    };
    EXPECT_NEAR(radiusSquared(0), 33 * 33, 1e-9);
    EXPECT_NEAR(radiusSquared(104), 30 * 30, 1e-9);
    const double simpson =
        std::numbers::pi * 104 / 6 * (radiusSquared(0) + 4 * radiusSquared(52) + radiusSquared(104));
    EXPECT_NEAR(fullOf(s), simpson, 1e-9 * simpson);
}

TEST(Volume, BlankSizesFallBackAsTheHeaderSays) {
    ProfileShape s = cylinder(80, 100);
    s.kind = Profile::rounded; // body and base as the rim: a cylinder
    EXPECT_NEAR(fullOf(s), cylinderVolume(80, 100), 1e-6);
    s.kind = Profile::tapered;
    EXPECT_NEAR(fullOf(s), cylinderVolume(80, 100), 1e-6);
    s.kind = Profile::cylinder;
    s.body = 90; // a narrower neck on straight walls
    EXPECT_NEAR(fullOf(s), cylinderVolume(90, 100), 1e-6);
}

TEST(Volume, TroughsMayTaperAndHaveRoundedCorners) {
    ProfileShape s = trough(300, 120, 100);
    s.base = 100;
    s.baseLength = 280;
    // Prismoidal formula: depth / 6 x (base + 4 middle + rim), exact for a straight taper.
    const double prismoid = 100.0 / 6 * (280.0 * 100 + 4 * 290.0 * 110 + 300.0 * 120);
    EXPECT_NEAR(fullOf(s), prismoid, 1e-9 * prismoid);
    s.corner = 20;
    EXPECT_NEAR(fullOf(s), prismoid - (4 - std::numbers::pi) * 400 * 100, 1e-9 * prismoid);
    ProfileShape square = trough(80, 80, 100);
    square.corner = 40;
    EXPECT_NEAR(fullOf(square), cylinderVolume(80, 100), 1e-6);
}

TEST(Volume, MillilitresAreToTheNearest) {
    EXPECT_EQ(fullVolume(trough(10, 10, 14.9))->millilitres.value, 1);
    EXPECT_EQ(fullVolume(trough(10, 10, 15.1))->millilitres.value, 2);
    EXPECT_EQ(fullVolume(cylinder(80, 100))->millilitres.value, 503);
}

TEST(Volume, LevelAndVolumeAreEachOthersInverse) {
    ProfileShape belly = cylinder(60, 104);
    belly.kind = Profile::rounded;
    belly.body = 76;
    belly.base = 40;
    ProfileShape box = trough(300, 120, 100);
    box.base = 80;
    const ProfileShape shapes[] = {cylinder(80, 100),
                                   tapered(40, 90, 150),
                                   tapered(90, 40, 150),
                                   tapered(0, 90, 150),
                                   belly,
                                   globe(60, 100),
                                   box};
    for (const auto& shape : shapes) {
        double before = -1;
        for (int i = 0; i <= 20; ++i) {
            const double level = shape.depth * i / 20;
            SCOPED_TRACE(std::to_string(shape.rim) + " to " + std::to_string(level));
            const double volume = volumeTo(shape, level)->cubicMillimetres;
            EXPECT_GT(volume, before);
            before = volume;
            const auto back = levelFor(shape, volume);
            ASSERT_TRUE(back.ok());
            EXPECT_NEAR(volumeTo(shape, back->millimetres)->cubicMillimetres, volume, 1e-9 * fullOf(shape));
            if (i > 0) {
                EXPECT_NEAR(back->millimetres, level, 1e-6 * shape.depth);
            }
        }
    }
}

TEST(Volume, NeckAndGirth) {
    // Girths are rows c1, c2 and c6 of the solids' table.
    EXPECT_NEAR(neck(cylinder(10, 50))->innerGirth, 31.4159265359, 1e-9);
    EXPECT_NEAR(neck(cylinder(10, 50))->area, 78.5398163397, 1e-9);
    EXPECT_NEAR(neck(trough(30, 20, 50))->innerGirth, 100, 1e-9);
    ProfileShape square = trough(10, 10, 50);
    square.corner = 2;
    EXPECT_NEAR(neck(square)->innerGirth, 36.5663706144, 1e-9);
    // A wall of 2 round a neck of 10 is an outer neck of 14; round corners of 2 it is corners of 4 on 14.
    EXPECT_NEAR(outerGirth(cylinder(10, 50), 2)->value, circleGirth(14), 1e-9);
    EXPECT_NEAR(outerGirth(square, 2)->value, roundedRectangleGirth(14, 14, 4), 1e-9);
}

TEST(Volume, WhatCannotBeIsRefusedByName) {
    const double nan = std::nan("");
    const double endless = std::numeric_limits<double>::infinity();

    struct Row {
        const char* what;
        ProfileShape shape;
        const char* field;
    };

    const auto with = [](ProfileShape s, auto change) {
        change(s);
        return s;
    };
    ProfileShape belly = cylinder(60, 100);
    belly.kind = Profile::rounded;
    const Row rows[] = {
        {"no rim", cylinder(0, 100), "inner_rim"},
        {"rim below nought", cylinder(-80, 100), "inner_rim"},
        {"rim no number", cylinder(nan, 100), "inner_rim"},
        {"rim endless", cylinder(endless, 100), "inner_rim"},
        {"rim absurd", cylinder(1e12, 100), "inner_rim"},
        {"no depth", cylinder(80, 0), "inner_depth"},
        {"depth below nought", cylinder(80, -1), "inner_depth"},
        {"depth no number", cylinder(80, nan), "inner_depth"},
        {"deeper than it is high", with(cylinder(80, 100), [](auto& s) { s.outerHeight = 99; }),
         "inner_depth"},
        {"no height", with(cylinder(80, 100), [](auto& s) { s.outerHeight = 0; }), "outer_height"},
        {"base below nought", tapered(-1, 80, 100), "inner_base"},
        {"base no number", tapered(nan, 80, 100), "inner_base"},
        {"body under the rim", with(belly, [](auto& s) { s.body = 59; }), "inner_body"},
        {"body under the base",
         with(belly,
              [](auto& s) {
                  s.body = 65;
                  s.base = 70;
              }),
         "inner_body"},
        {"straight body under the rim", with(cylinder(80, 100), [](auto& s) { s.body = 70; }), "inner_body"},
        {"trough with no length", with(trough(1, 80, 100), [](auto& s) { s.length.reset(); }),
         "inner_length"},
        {"trough of no length", trough(0, 80, 100), "inner_length"},
        {"trough to a line", with(trough(300, 80, 100), [](auto& s) { s.base = 0; }), "inner_base"},
        {"trough base length", with(trough(300, 80, 100), [](auto& s) { s.baseLength = -1; }),
         "inner_base_length"},
        {"corner too round", with(trough(300, 80, 100), [](auto& s) { s.corner = 41; }), "corner"},
        {"corner below nought", with(trough(300, 80, 100), [](auto& s) { s.corner = -1; }), "corner"},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.what);
        const auto full = fullVolume(row.shape);
        ASSERT_FALSE(full.ok());
        EXPECT_EQ(full.error().field, row.field);
        EXPECT_FALSE(volumeTo(row.shape, 1).ok());
        EXPECT_FALSE(levelFor(row.shape, 1).ok());
        EXPECT_FALSE(neck(row.shape).ok());
        EXPECT_FALSE(outerGirth(row.shape, 1).ok());
    }
}

TEST(Volume, LevelsAndVolumesBeyondTheContainerAreRefused) {
    const auto jar = cylinder(80, 100);
    for (const double level : {-1.0, 100.001, std::nan("")})
        EXPECT_EQ(volumeTo(jar, level).error().field, "level");
    EXPECT_EQ(levelFor(jar, -1).error().code, ProblemCode::belowLeast);
    EXPECT_EQ(levelFor(jar, std::nan("")).error().code, ProblemCode::notANumber);
    EXPECT_EQ(levelFor(jar, 502'655).error().code, ProblemCode::moreThan);
    EXPECT_EQ(levelFor(jar, std::numeric_limits<double>::infinity()).error().code, ProblemCode::moreThan);
    EXPECT_EQ(outerGirth(jar, -1).error().field, "wall");
    EXPECT_DOUBLE_EQ(levelFor(jar, 0)->millimetres, 0);
    EXPECT_DOUBLE_EQ(levelFor(jar, fullOf(jar))->millimetres, 100);
}

} // namespace
} // namespace withy::designs
