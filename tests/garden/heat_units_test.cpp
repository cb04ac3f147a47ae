// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/heat_units.h"
#include "tests/garden/reference.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace withy::garden {
namespace {

constexpr double perCelsius = 1.8; ///< Fahrenheit degrees in a Celsius one

double celsius(double fahrenheit) {
    return (fahrenheit - 32) / perCelsius;
}

/// F days of a day given in F.
double fahrenheitDays(double low, double high, double base, std::optional<double> ceiling,
                      HeatMethod method) {
    const HeatThresholds t{celsius(base), ceiling ? std::optional(celsius(*ceiling)) : std::nullopt};
    const auto units = heatUnits(celsius(low), celsius(high), t, method);
    EXPECT_TRUE(units.ok());
    return units.ok() ? *units * perCelsius : std::nan("");
}

// One station's 366 days of 2020 by the University of California IPM calculator, thresholds 50 and 70 F,
// single sine, horizontal cut-off; github.com/UCANR-IGIS/degree-day-challenge. Rounded to 0.01.
TEST(HeatUnitsReference, ARealYearBySingleSine) {
    const auto rows = tests::referenceRows("gdd/ucipm_daily_2020.csv");
    if (!rows) GTEST_SKIP() << "skipped: WITHY_REFERENCE is not set, so there is no reference year to read";
    ASSERT_EQ(rows->size(), 366u);
    for (const auto& row : *rows) {
        SCOPED_TRACE(row[0]);
        EXPECT_NEAR(fahrenheitDays(std::stod(row[1]), std::stod(row[2]), 50, 70, HeatMethod::singleSine),
                    std::stod(row[3]), 0.006);
    }
}

// F. G. Zalom and others, Degree-days: the calculation and use of heat units in pest management,
// University of California leaflet 21373, 1983, table 7: thresholds 55 and 90 F, single sine.
TEST(HeatUnits, ZalomTable7) {
    struct Case {
        double low, high, want;
    };

    const Case cases[] = {{96, 110, 35},    {91, 105, 35},   {45, 54, 0},      {38, 50, 0},
                          {60, 80, 15},     {75, 88, 26.5},  {50, 82, 11.85},  {45, 70, 5.31},
                          {60, 100, 22.82}, {75, 95, 28.91}, {50, 101, 18.95}, {48, 95, 16.96}};
    for (const auto& c : cases) {
        SCOPED_TRACE(testing::Message() << c.low << " to " << c.high);
        EXPECT_NEAR(fahrenheitDays(c.low, c.high, 55, 90, HeatMethod::singleSine), c.want, 0.006);
    }
}

// MSU: J. Nugent, Michigan State University, Calculating Growing Degree Days. COR: Cornell NEWA blog. OSU:
// Oregon State University, ippc2.orst.edu/wea/weafaq.html. ISU: Iowa State University, Agronomy 541,
// lesson 2b. WI: a county newspaper's farm page, 25 April 2018. F.
TEST(HeatUnits, HandExamples) {
    struct Case {
        const char* name;
        HeatMethod method;
        double high, low, base;
        std::optional<double> ceiling;
        double want;
    };

    const auto average = HeatMethod::average;
    const auto modified = HeatMethod::modified;
    const Case cases[] = {
        {"MSU 1", average, 65, 40, 50, {}, 2.5},  {"MSU 2", average, 60, 35, 50, {}, 0},
        {"COR", average, 67, 46, 50, {}, 6.5},    {"OSU 1", average, 100, 40, 50, {}, 20},
        {"OSU 2", modified, 100, 40, 50, 86, 18}, {"ISU 1", modified, 70, 50, 50, 86, 10},
        {"ISU 2", modified, 120, 86, 50, 86, 36}, {"WI 1", modified, 90, 65, 50, 86, 25.5},
        {"WI 2", modified, 72, 46, 50, 86, 11},   {"WI 3", modified, 63, 42, 50, 86, 6.5},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.name);
        EXPECT_NEAR(fahrenheitDays(c.low, c.high, c.base, c.ceiling, c.method), c.want, 1e-9);
    }
}

// G. S. McMaster and W. W. Wilhelm, Growing degree-days: one equation, two interpretations, Agricultural
// and Forest Meteorology 87 (1997), table 1, base 0 C: mean first, and each lifted to the base first.
TEST(HeatUnits, McMasterAndWilhelmTable1) {
    struct Case {
        double high, low, meanFirst, liftedFirst;
    };

    const Case cases[] = {{20, 10, 15, 15},  {10, 1, 5.5, 5.5}, {8, -2, 3, 4},  {6, 0, 3, 3},
                          {10, 5, 7.5, 7.5}, {5, -5, 0, 2.5},   {-2, -7, 0, 0}, {-5, -10, 0, 0},
                          {10, -2, 4, 5},    {15, 2, 8.5, 8.5}};
    for (const auto& c : cases) {
        SCOPED_TRACE(testing::Message() << c.low << " to " << c.high);
        EXPECT_NEAR(*heatUnits(c.low, c.high, {0, {}}, HeatMethod::average), c.meanFirst, 1e-9);
        EXPECT_NEAR(*heatUnits(c.low, c.high, {0, {}}, HeatMethod::modified), c.liftedFirst, 1e-9);
    }
}

/// The definition itself: the mean of a fine comb over the day's sine.
double byComb(double low, double high, const HeatThresholds& t) {
    constexpr int teeth = 200000;
    double sum = 0;
    for (int i = 0; i < teeth; ++i) {
        const double at = (low + high) / 2 + (high - low) / 2 * std::sin(2 * M_PI * (i + 0.5) / teeth);
        sum += std::max(0.0, std::min(at, t.ceiling.value_or(1e9)) - t.base);
    }
    return sum / teeth;
}

TEST(HeatUnits, TheDefinitionSummedUp) {
    struct Case {
        double low, high, base;
        std::optional<double> ceiling;
    };

    const Case cases[] = {{-3, 8, 5, {}}, {-3, 8, 5, 6.5}, {2, 21, 5, 18},
                          {5, 5, 5, {}},  {7, 7, 5, 6},    {4, 26, 10, 30}};
    for (const auto& c : cases) {
        SCOPED_TRACE(testing::Message() << c.low << " to " << c.high);
        EXPECT_NEAR(*heatUnits(c.low, c.high, {c.base, c.ceiling}),
                    byComb(c.low, c.high, {c.base, c.ceiling}), 1e-6);
    }
}

// Against the normal distribution summed up in steps of a hundredth of its spread.
TEST(HeatUnits, ExpectedOverDaysThatScatter) {
    struct Case {
        double low, high, spread;
    };

    const Case cases[] = {{-1, 6, 3.5}, {2, 9, 3.5}, {-5, 2, 4}, {8, 19, 3}, {1, 9, 0}};
    for (const auto& c : cases) {
        SCOPED_TRACE(testing::Message() << c.low << " to " << c.high << ", " << c.spread);
        double want = c.spread > 0 ? 0 : soundHeatUnits(c.low, c.high, {5, {}});
        for (double z = -6; c.spread > 0 && z < 6; z += 0.01)
            want += soundHeatUnits(c.low + z * c.spread, c.high + z * c.spread, {5, {}}) *
                    std::exp(-z * z / 2) * 0.01 / std::sqrt(2 * M_PI);
        EXPECT_NEAR(expectedHeatUnits(c.low, c.high, c.spread, {5, {}}), want,
                    0.12); // three points, so coarse
    }
}

TEST(HeatUnits, Troubles) {
    const double nan = std::nan("");
    const double inf = std::numeric_limits<double>::infinity();

    struct Case {
        double low, high, base;
        std::optional<double> ceiling;
        HeatUnitsTrouble want;
    };

    using enum HeatUnitsTrouble;
    const Case cases[] = {
        {nan, 5, 5, {}, notFinite},  {1, inf, 5, {}, notFinite},        {1, 5, nan, {}, notFinite},
        {1, 5, 5, nan, notFinite},   {6, 5, 5, {}, minAboveMax},        {41, 70, 5, {}, badCelsius},
        {-91, 5, 5, {}, badCelsius}, {1, 5, 5, 5, ceilingNotAboveBase}, {1, 5, 5, 4, ceilingNotAboveBase},
        {1, 5, 61, {}, badCelsius},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(testing::Message() << c.low << ", " << c.high << ", " << c.base);
        const auto got = heatUnits(c.low, c.high, {c.base, c.ceiling});
        ASSERT_FALSE(got.ok());
        EXPECT_EQ(got.error(), c.want);
    }
}

} // namespace
} // namespace withy::garden
