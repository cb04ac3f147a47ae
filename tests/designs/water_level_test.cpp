// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/water_level.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>

namespace withy::designs {
namespace {

constexpr double quarterPi = std::numbers::pi / 4;

struct CourseRow {
    const char* name;
    ProfileShape shape;
    std::function<double(double)> area; ///< square mm at a height, written from the shape's own formula
    double lift;
    std::int64_t stems;
    double diameter;
    double uptake;
    std::vector<WaterPhase> phases;
};

WaterCourseAsked askedOf(const CourseRow& row) {
    WaterCourseAsked asked;
    asked.filling.shape = row.shape;
    asked.filling.sharePerTenThousand = 7500;
    asked.filling.lift = row.lift;
    asked.filling.stems = {{row.stems, row.diameter, Basis::counted, {}}};
    asked.drinkers = {{Stems(row.stems), row.uptake, Basis::fromMemory, {}}};
    asked.phases = row.phases;
    return asked;
}

ProfileShape shapeOf(Profile kind, double rim, double base, double depth) {
    ProfileShape shape;
    shape.kind = kind;
    shape.rim = rim;
    shape.base = base;
    shape.depth = depth;
    return shape;
}

/// dz/dt = - (drunk + evaporated) / (area of the container - stems), by the classical Runge-Kutta method with
/// short steps: a differential equation for the level where the code under test has a volume.
double integrated(const CourseRow& row, const WaterCourseAsked& asked, double level, double hours) {
    const double sections = static_cast<double>(row.stems) * quarterPi * row.diameter * row.diameter;
    const double neckOpen = quarterPi * row.shape.rim * row.shape.rim - sections;
    for (const auto& phase : row.phases) {
        const double span = std::min(hours, phase.hours);
        hours -= span;
        const double drunk = static_cast<double>(row.stems) * row.uptake * 1000 / 24 *
                             std::exp(std::log(asked.uptakeQ10) * (phase.celsius - 20) / 10);
        // August-Roche-Magnus, the ratio written out.
        const double air = std::exp(17.625 * phase.celsius / (phase.celsius + 243.04) - 17.625 * 20 / 263.04);
        const double evaporated = asked.evaporation / 24 * neckOpen * air;
        const auto slope = [&](double z) {
            const bool wet = z > row.lift;
            return -((wet ? drunk : 0) + evaporated) / (row.area(z) - (wet ? sections : 0));
        };
        const int steps = 20'000;
        const double h = span / steps;
        for (int n = 0; n < steps; ++n) {
            const double k1 = slope(level), k2 = slope(level + h / 2 * k1), k3 = slope(level + h / 2 * k2),
                         k4 = slope(level + h * k3);
            level += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
    }
    return level;
}

std::vector<CourseRow> courseRows() {
    const auto cone = [](double rim, double base, double depth) {
        return [=](double z) { return quarterPi * std::pow(base + (rim - base) * z / depth, 2); };
    };
    ProfileShape globe = shapeOf(Profile::rounded, 60, 60, 160); // sphere of 200 cut where it is 120 wide
    globe.rim = 120;
    globe.base = 120;
    globe.body = 200;
    return {
        {"cylinder",
         shapeOf(Profile::cylinder, 80, 80, 150),
         cone(80, 80, 150),
         15,
         9,
         4,
         12,
         {{10, 8}, {3, 20}, {8, 26}}},
        {"tapered",
         shapeOf(Profile::tapered, 110, 70, 140),
         cone(110, 70, 140),
         20,
         14,
         5,
         15,
         {{12, 8}, {2, 24}, {10, 21}}},
        {"globe",
         globe,
         [](double z) { return std::numbers::pi * (100.0 * 100 - (z - 80) * (z - 80)); },
         10,
         20,
         4,
         20,
         {{24, 18}, {12, 25}}},
        {"dries out",
         shapeOf(Profile::cylinder, 60, 60, 100),
         cone(60, 60, 100),
         30,
         12,
         4,
         30,
         {{6, 20}, {20, 28}}},
    };
}

} // namespace

TEST(WaterLevel, AgreesWithAnIndependentIntegration) {
    int dry = 0;
    for (const auto& row : courseRows()) {
        SCOPED_TRACE(row.name);
        const auto asked = askedOf(row);
        const auto course = waterCourse(asked);
        ASSERT_TRUE(course.ok());
        ASSERT_EQ(course->curve.size(), 25U);
        const double start = course->curve.front().level;
        EXPECT_NEAR(start, waterFill(asked.filling)->level, 1e-6);
        for (std::size_t i = 0; i < course->curve.size(); i += 4) {
            const auto& point = course->curve[i];
            // Across the moment the ends come out one step of the integration straddles the kink.
            EXPECT_NEAR(point.level, integrated(row, asked, start, point.hours), 0.01) << point.hours << " h";
        }
        EXPECT_EQ(course->endIsDry, course->curve.back().level < row.lift);
        dry += course->endIsDry;
        if (!course->dryAfter) continue;
        EXPECT_NEAR(integrated(row, asked, start, *course->dryAfter), row.lift, 0.01);
        EXPECT_LT(*course->topUpAfter, *course->dryAfter);
    }
    EXPECT_EQ(dry, 1);
}

/// 100 stems, 24 ml a day each at 20 C, 5 h at 20 C, no evaporation: 500 ml by hand.
TEST(WaterLevel, CarriesWhatIsDrunkBeyondTheMargin) {
    WaterCourseAsked asked;
    asked.filling.shape = shapeOf(Profile::cylinder, 100, 100, 200);
    asked.filling.sharePerTenThousand = 2500; // 50 mm of water
    asked.filling.lift = 10;
    asked.evaporation = 0;
    asked.margin = 20;
    asked.pieces = 12;
    asked.drinkers = {{Stems(100), 24, Basis::mine, {}}, {Stems(3), std::nullopt, Basis::notKnown, {}}};
    asked.phases = {{5, 20}};
    const auto course = waterCourse(asked);
    ASSERT_TRUE(course.ok());
    const double above = 20 * std::numbers::pi * 2500 / 1000; // ml between 50 and 30 mm
    EXPECT_NEAR(course->wantedByEnd, 500, 1e-9);
    EXPECT_EQ(course->toCarry.value, static_cast<std::int64_t>(std::ceil(12 * (500 - above))));
    EXPECT_NEAR(*course->topUpAfter, above / 100, 1e-9);
    EXPECT_NEAR(*course->dryAfter, 2 * above / 100, 1e-9);
    EXPECT_TRUE(course->endIsDry);
    EXPECT_EQ(course->unknownDrinkers, 1);
    EXPECT_EQ(course->working.back().value, static_cast<double>(course->toCarry.value));
    asked.phases = {{1, 20}};
    EXPECT_FALSE(waterCourse(asked)->dryAfter.has_value());
    EXPECT_EQ(waterCourse(asked)->toCarry.value, 0);
}

/// Saturation pressure over water in hPa: R. J. List, Smithsonian Meteorological Tables (1951), table 94, by
/// way of the usual psychrometric tables: from memory, to half a percent.
TEST(WaterLevel, KnowsTheSaturationPressure) {
    EXPECT_NEAR(saturationPressure(0), 6.107, 0.03);
    EXPECT_NEAR(saturationPressure(20), 23.37, 0.1);
    EXPECT_NEAR(saturationPressure(30), 42.43, 0.2);
}

TEST(WaterLevel, NamesBadInput) {
    const auto good = askedOf(courseRows().front());
    const auto fieldOf = [&](auto change) {
        auto asked = good;
        change(asked);
        const auto course = waterCourse(asked);
        return course.ok() ? std::string("none") : course.error().field;
    };
    EXPECT_EQ(fieldOf([](auto&) {}), "none");
    EXPECT_EQ(fieldOf([](auto& a) { a.phases[0].hours = -1; }), "hours");
    EXPECT_EQ(fieldOf([](auto& a) { a.phases[0].celsius = 80; }), "celsius");
    EXPECT_EQ(fieldOf([](auto& a) { a.drinkers[0].millilitresPerDay = -1; }), "uptake");
    EXPECT_EQ(fieldOf([](auto& a) { a.uptakeQ10 = 0; }), "q10");
    EXPECT_EQ(fieldOf([](auto& a) { a.evaporation = std::nan(""); }), "evaporation");
    EXPECT_EQ(fieldOf([](auto& a) { a.points = 1; }), "points");
    EXPECT_EQ(fieldOf([](auto& a) { a.filling.shape.depth = 0; }), "inner_depth");
}

} // namespace withy::designs
