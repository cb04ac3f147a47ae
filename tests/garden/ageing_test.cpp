// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/ageing.h"

#include <gtest/gtest.h>

#include <limits>
#include <vector>

namespace withy::garden {
namespace {

constexpr double tolerance = 1e-9;
const double nan = std::numeric_limits<double>::quiet_NaN();
const double infinite = std::numeric_limits<double>::infinity();

struct AgeingRow {
    const char* name;
    double got;
    double want;
};

void expectRows(const std::vector<AgeingRow>& rows) {
    for (const AgeingRow& row : rows) {
        SCOPED_TRACE(row.name);
        EXPECT_NEAR(row.got, row.want, tolerance);
    }
}

TEST(Ageing, TemperatureScales) {
    expectRows({
        // School page: 98.6 F = 37 C, 100 C = 212 F.
        {"t1 F to C", celsiusFromFahrenheit(98.6), 37},
        {"t2 C to F", fahrenheitFromCelsius(100), 212},
        {"t3 F to C, the scales meet (own)", celsiusFromFahrenheit(-40), -40},
        {"t4 C to F, ice (own)", fahrenheitFromCelsius(0), 32},
        {"t4 F to C, ice (own)", celsiusFromFahrenheit(32), 0},
        // Conversion factors of NIST SP 811.
        {"t5 F to K", kelvinFromFahrenheit(0), 255.3722222222},
        {"t6 interval F to C", celsiusIntervalFromFahrenheit(9), 5},
        {"t6 interval C to F", fahrenheitIntervalFromCelsius(5), 9},
    });
}

TEST(Ageing, RatesAndQ10) {
    expectRows({
        // Documentation of the R package respfun: 2 at 10 C and 3 at 15 C make a Q10 of 2.25.
        {"q1 Q10 from two rates", *q10FromRates(2, 10, 3, 15), 2.25},
        {"q2 rate at T2", *rateAt(2, 10, 2.25, 15), 3},
        {"q3 rate at T1", *rateAt(3, 15, 2.25, 10), 2},
        {"q4 temperature 1", *celsiusAtRate(3, 15, 2.25, 2), 10},
        {"q5 temperature 2", *celsiusAtRate(2, 10, 2.25, 3), 15},
        // Celikel and Reid, rose and gypsophila: Q10 of 3 between 0 and 10 C; ratio 3^0.5.
        {"q6 rate ratio over 5 C", *rateAt(1, 0, 3, 5), 1.7320508076},
        // University exercise (its inputs; the answer is own arithmetic).
        {"q7 Q10 from two rates", *q10FromRates(4.7, 15.3, 7.3, 23.6), 1.6997755146},
    });
}

// Vase life of China aster: 9 days near 25 C and 52 days at 5.6 C (Colorado State University,
// Vase life and consumer preference of field-grown cut flowers, 2006). The pair gives a Q10 of about
// 2.4; rates are one over the lives.
TEST(Ageing, PublishedPairOfVaseLives) {
    const double q10 = *q10FromRates(1.0 / 52, 5.6, 1.0 / 9, 25);
    EXPECT_NEAR(q10, 2.4, 0.1);
    const double lifeAt20 = 9 * *ageingRate(q10, 25);
    EXPECT_NEAR(*lifeUsed(std::vector<Phase>{{9 * 24, 25}}, q10), lifeAt20, tolerance);
    EXPECT_NEAR(*lifeUsed(std::vector<Phase>{{52 * 24, 5.6}}, q10), lifeAt20, tolerance);
}

// Trade rule of a temperature-logging firm: every 500 C-hours cost one day of vase life. At 20 C, where
// the rule and ours must meet, that is 25 hours.
TEST(Ageing, DegreeHourRuleAt20) {
    EXPECT_NEAR(*lifeUsed(std::vector<Phase>{{500.0 / 20, 20}}, 2.5), 1, 0.05);
}

TEST(Ageing, LifeAddsUp) {
    EXPECT_DOUBLE_EQ(*ageingRate(2.5, 20), 1);
    EXPECT_DOUBLE_EQ(*ageingRate(3, 30), 3);
    EXPECT_NEAR(*ageingRate(3, 0), 1.0 / 9, tolerance);
    EXPECT_DOUBLE_EQ(*lifeUsed({}, 2.5), 0);
    // By hand, Q10 4: a day at 20 C uses 1, 12 h at 30 C use 2, 48 h at 10 C use a half.
    EXPECT_NEAR(*lifeUsed(std::vector<Phase>{{24, 20}, {12, 30}, {48, 10}}, 4), 3.5, tolerance);
    EXPECT_DOUBLE_EQ(*lifeUsed(std::vector<Phase>{{240, 5}}, 1), 10); // heat makes no difference
}

TEST(Ageing, RefusesNonsense) {
    for (const double bad : {nan, infinite, -infinite}) {
        EXPECT_EQ(ageingRate(bad, 20).error(), AgeingTrouble::notFinite);
        EXPECT_EQ(ageingRate(2, bad).error(), AgeingTrouble::notFinite);
        EXPECT_EQ(lifeUsed(std::vector<Phase>{{bad, 20}}, 2).error(), AgeingTrouble::notFinite);
        EXPECT_EQ(q10FromRates(bad, 1, 1, 2).error(), AgeingTrouble::notFinite);
        EXPECT_EQ(rateAt(1, bad, 2, 1).error(), AgeingTrouble::notFinite);
        EXPECT_EQ(celsiusAtRate(1, 1, 2, bad).error(), AgeingTrouble::notFinite);
    }
    EXPECT_EQ(ageingRate(0, 20).error(), AgeingTrouble::badQ10);
    EXPECT_EQ(ageingRate(-2, 20).error(), AgeingTrouble::badQ10);
    EXPECT_EQ(ageingRate(20.1, 20).error(), AgeingTrouble::badQ10);
    EXPECT_EQ(ageingRate(2, 60.1).error(), AgeingTrouble::badCelsius);
    EXPECT_EQ(ageingRate(2, -300).error(), AgeingTrouble::badCelsius);
    EXPECT_EQ(lifeUsed(std::vector<Phase>{{-1, 20}}, 2).error(), AgeingTrouble::negativeHours);
    const double huge = std::numeric_limits<double>::max();
    EXPECT_EQ(lifeUsed(std::vector<Phase>{{huge, 60}}, 20).error(), AgeingTrouble::notFinite);
    EXPECT_EQ(q10FromRates(0, 1, 1, 2).error(), AgeingTrouble::badRate);
    EXPECT_EQ(q10FromRates(1, 5, 2, 5).error(), AgeingTrouble::sameCelsius);
    EXPECT_EQ(celsiusAtRate(1, 5, 1, 2).error(), AgeingTrouble::flatQ10);
}

} // namespace
} // namespace withy::garden
