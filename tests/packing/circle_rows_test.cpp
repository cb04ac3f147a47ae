// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/circle_rows.h"
#include "tests/garden/reference.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::packing {
namespace {

/// Every circle inside and no two overlapping, within 1e-9 of the diameter.
void expectSound(const CircleRows& rows, double length, double width, double diameter) {
    const double slack = 1e-9 * diameter;
    for (std::size_t i = 0; i < rows.centres.size(); ++i) {
        const auto [x, y] = rows.centres[i];
        ASSERT_GE(std::min({x, y, length - x, width - y}), diameter / 2 - 2 * slack) << "circle " << i;
        for (std::size_t j = 0; j < i; ++j)
            ASSERT_GE(std::hypot(x - rows.centres[j].x, y - rows.centres[j].y), diameter - 2 * slack)
                << "circles " << j << " and " << i;
    }
}

/// A grid with one side `step` along, the next row moved by `shift` and lifted as little as diameter 1
/// allows; turned by `angle`. The most of its points in a rectangle `a` by `b`, over 4 x 4 places to start.
std::size_t mostOfGrid(double a, double b, double step, double shift, double angle) {
    const double lift = std::sqrt(std::max(1 - shift * shift, 0.25));
    const double c = std::cos(angle), s = std::sin(angle);
    const double ux = step * c, uy = step * s, vx = shift * c - lift * s, vy = shift * s + lift * c;
    const auto reach = static_cast<int>((a + b) / std::min(step, lift)) + 3;
    std::size_t most = 0;
    for (int start = 0; start < 16; ++start) {
        const double f = (start % 4) / 4.0, g = (start / 4) / 4.0;
        std::size_t inside = 0;
        for (int j = -reach; j <= reach; ++j) {
            const double x = (j + g) * vx + f * ux, y = (j + g) * vy + f * uy;
            // The row's points nearest to the middle; beyond half the diagonal none is inside.
            const double nearest = ((a / 2 - x) * ux + (b / 2 - y) * uy) / (step * step);
            const double half = std::hypot(a, b) / 2 / step + 1;
            for (int i = static_cast<int>(nearest - half); i <= nearest + half; ++i) {
                const double px = x + i * ux, py = y + i * uy;
                inside += px >= 0 && py >= 0 && px <= a && py <= b;
            }
        }
        most = std::max(most, inside);
    }
    return most;
}

/// By brute force over angles, stretches and shifts; `a` and `b` are where centres may be.
std::size_t mostOfGrids(double a, double b) {
    std::size_t most = 0;
    for (const double step : {1.0, 1.1}) {
        for (const double shift : {0.0, 0.25, 0.5}) {
            for (int degrees = 0; degrees < 180; degrees += 5)
                most = std::max(most, mostOfGrid(a, b, step, shift * step, degrees * std::numbers::pi / 180));
        }
    }
    return most;
}

struct Shape {
    double length;
    double width;
};

/// 20 trays, millimetres.
constexpr Shape trayShapes[] = {{600, 400}, {400, 300}, {800, 600},   {600, 300},  {500, 500},
                                {400, 400}, {530, 325}, {650, 530},   {1000, 300}, {1200, 400},
                                {700, 350}, {450, 300}, {380, 280},   {620, 420},  {900, 450},
                                {550, 365}, {480, 320}, {1000, 1000}, {610, 229},  {360, 240}};

} // namespace

/// Never more than the largest known packings of n circles in a square, and sound.
TEST(CircleRows, NeverBeatsTheBestKnownInASquare) {
    const auto rows = garden::tests::referenceRows("circles/square.csv");
    if (!rows) GTEST_SKIP() << "reference data not checked: WITHY_REFERENCE is not set";
    ASSERT_EQ(rows->size(), 50U);
    std::size_t equal = 0;
    for (const auto& row : *rows) {
        const auto n = static_cast<std::size_t>(std::stoul(row[0]));
        SCOPED_TRACE(row[0] + " circles");
        const double diameter = 2 * std::stod(row[1]);
        // A little larger than the largest n circles: n would be one too many. A little smaller: n may fit.
        const auto larger = circleRows(1, 1, diameter * (1 + 1e-6));
        EXPECT_LT(larger.centres.size(), n);
        const auto smaller = circleRows(1, 1, diameter * (1 - 1e-6));
        EXPECT_LE(smaller.centres.size(), n);
        expectSound(smaller, 1, 1, diameter * (1 - 1e-6));
        equal += smaller.centres.size() == n;
    }
    EXPECT_GE(equal, 10U); // the best known ones that are rows
}

TEST(CircleRows, NeverBeatsTheBestKnownInARectangle) {
    const auto rows = garden::tests::referenceRows("circles/rectangle.csv");
    if (!rows) GTEST_SKIP() << "reference data not checked: WITHY_REFERENCE is not set";
    ASSERT_GE(rows->size(), 30U);
    for (const auto& row : *rows) {
        SCOPED_TRACE(row[1] + " high, " + row[2] + " circles");
        const double height = std::stod(row[1]), diameter = 2 * std::stod(row[3]);
        const auto n = static_cast<std::size_t>(std::stoul(row[2]));
        for (const double by : {1 + 1e-6, 1 - 1e-6}) {
            const auto found = circleRows(1, height, diameter * by);
            EXPECT_LE(found.centres.size(), by > 1 ? n - 1 : n);
            expectSound(found, 1, height, diameter * by);
            const auto upright = circleRows(height, 1, diameter * by);
            EXPECT_EQ(upright.centres.size(), found.centres.size());
        }
    }
}

/// In each of 20 trays the diameter goes down until 60 jars fit; at each step no turned, stretched or shifted
/// grid holds more.
TEST(CircleRows, HoldsAsManyAsTheBestGridByBruteForce) {
    std::size_t steps = 0;
    for (const auto& tray : trayShapes) {
        std::size_t last = 1;
        for (double diameter = std::min(tray.length, tray.width) * 0.98; last < 60; diameter *= 0.97) {
            const auto rows = circleRows(tray.length, tray.width, diameter);
            last = rows.centres.size();
            if (last < 2 || last > 60) continue;
            SCOPED_TRACE(std::to_string(tray.length) + " x " + std::to_string(tray.width) + ", " +
                         std::to_string(diameter));
            expectSound(rows, tray.length, tray.width, diameter);
            EXPECT_GE(rows.centres.size(),
                      mostOfGrids(tray.length / diameter - 1, tray.width / diameter - 1));
            ++steps;
        }
    }
    EXPECT_GT(steps, 900U);
}

/// By hand: jars of 150 in 600 x 400 stand 4 x 2 squarely, but 2 and 1 in turn with 250 from jar to jar lie
/// sqrt(150^2 - 125^2) = 82.9 apart: six rows, nine jars. Jars of 130 in 400 x 400: 3 x 3.
TEST(CircleRows, FillsPlainTrays) {
    EXPECT_EQ(circleRows(600, 400, 150).centres.size(), 9U);
    EXPECT_EQ(circleRows(400, 400, 130).centres.size(), 9U);
    EXPECT_EQ(circleRows(400, 400, 130).stand, RowsStand::square);
    EXPECT_EQ(circleRows(100, 100, 100).centres.size(), 1U);
    EXPECT_EQ(circleRows(99, 200, 100).centres.size(), 0U);
}

} // namespace withy::packing
