// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/normals.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>
#include <random>
#include <string>

namespace withy::garden {
namespace {

std::array<int, 12> lengths(bool leap) {
    return {31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
}

/// Invented, of a cool temperate place.
const MonthlyMeans mild{1.8, 1.7, 3.1, 4.6, 7.5, 10.4, 12.6, 12.4, 10.3, 7.5, 4.2, 2.1};

double monthMean(const std::vector<double>& days, bool leap, std::size_t month) {
    const auto all = lengths(leap);
    const auto first = days.begin() + std::accumulate(all.begin(), all.begin() + month, 0);
    return std::accumulate(first, first + all[month], 0.0) / all[month];
}

double mostStep(const std::vector<double>& days) {
    double most = std::abs(days.front() - days.back());
    for (std::size_t i = 1; i < days.size(); ++i)
        most = std::max(most, std::abs(days[i] - days[i - 1]));
    return most;
}

double mostDifference(const MonthlyMeans& means) {
    double most = std::abs(means.front() - means.back());
    for (std::size_t m = 1; m < means.size(); ++m)
        most = std::max(most, std::abs(means[m] - means[m - 1]));
    return most;
}

void expectKept(const MonthlyMeans& means, bool leap) {
    const auto days = dailyFromMonthly(means, leap);
    ASSERT_TRUE(days.ok());
    ASSERT_EQ(days->size(), leap ? 366u : 365u);
    for (std::size_t m = 0; m < 12; ++m)
        EXPECT_NEAR(monthMean(*days, leap, m), means[m], 1e-9) << "month " << m + 1;
    // A straight run from one month to the next takes 30 days; the smooth one may be three times as
    // steep in places but never a step. 28 days is the shortest month.
    EXPECT_LE(mostStep(*days), 3 * mostDifference(means) / 28 + 1e-12);
}

TEST(Normals, KeepEachMonthsMeanWithoutSteps) {
    for (const bool leap : {false, true}) {
        SCOPED_TRACE(leap);
        expectKept(mild, leap);
        expectKept({-20, 30, -20, 30, -20, 30, -20, 30, -20, 30, -20, 30}, leap); // saw
        expectKept({0, 0, 0, 0, 0, 10, 0, 0, 0, 0, 0, 0}, leap);                  // spike
    }
}

TEST(Normals, KeepEachMonthsMeanForAnyYear) {
    std::mt19937 random(20260321);
    std::uniform_real_distribution<double> celsius(-40, 40);
    for (int i = 0; i < 300; ++i) {
        SCOPED_TRACE(i);
        MonthlyMeans means{};
        for (double& mean : means)
            mean = celsius(random);
        expectKept(means, i % 2 == 0);
    }
}

TEST(Normals, EvenYearStaysEven) {
    const auto days = dailyFromMonthly({7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7}, false);
    for (const double day : *days)
        EXPECT_NEAR(day, 7, 1e-12);
}

TEST(Normals, RunOnSmoothlyOverTheYearsEnd) {
    const auto days = *dailyFromMonthly(mild, false);
    std::vector<double> around(days.end() - 40, days.end());
    around.insert(around.end(), days.begin(), days.begin() + 40);
    // The change of the change stays as small over New Year as at any other month's end.
    for (std::size_t i = 2; i < around.size(); ++i)
        EXPECT_LT(std::abs(around[i] - 2 * around[i - 1] + around[i - 2]), 0.01) << i;
}

// Against a year that is known in full: a cosine wave, whose means over a month or a day are
// integrals with a closed form. 10 C each way, coldest on about 20 January.
TEST(Normals, FindACosineYearAgain) {
    const double turn = 2 * std::numbers::pi / 365;
    const auto mean = [&](double from, double to) {
        const auto integral = [&](double t) { return -10 * std::sin(turn * (t - 20)) / turn; };
        return 10 + (integral(to) - integral(from)) / (to - from);
    };
    MonthlyMeans means{};
    int from = 0;
    for (std::size_t m = 0; m < 12; ++m) {
        means[m] = mean(from, from + lengths(false)[m]);
        from += lengths(false)[m];
    }
    const auto days = *dailyFromMonthly(means, false);
    for (std::size_t d = 0; d < days.size(); ++d) {
        const auto start = static_cast<double>(d);
        EXPECT_NEAR(days[d], mean(start, start + 1), 0.03) << "day " << d + 1;
    }
}

TEST(Normals, MinimumAndMaximumTogether) {
    MonthlyMeans warm = mild;
    for (double& mean : warm)
        mean += 7;
    const auto days = dailyNormals(mild, warm, false);
    ASSERT_TRUE(days.ok());
    for (const DayNormal& day : *days)
        EXPECT_NEAR(day.maximum - day.minimum, 7, 1e-9);
    EXPECT_TRUE(dailyNormals(mild, mild, true).ok());
    EXPECT_EQ(dailyNormals(warm, mild, false).error(), NormalsTrouble::minAboveMax);
}

TEST(Normals, RefuseNonsense) {
    MonthlyMeans bad = mild;
    for (const double value :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
          -std::numeric_limits<double>::infinity()}) {
        bad[4] = value;
        EXPECT_EQ(dailyFromMonthly(bad, false).error(), NormalsTrouble::notFinite);
        EXPECT_EQ(dailyNormals(mild, bad, false).error(), NormalsTrouble::notFinite);
    }
    for (const double value : {-90.1, 60.1, 1e300}) {
        bad[4] = value;
        EXPECT_EQ(dailyFromMonthly(bad, false).error(), NormalsTrouble::badCelsius);
    }
    MonthlyMeans range{20, 0, 20, 0, 20, 0, 20, 0, 20, 0, 20, 0};
    EXPECT_EQ(dailyNormals({}, range, false).error(), NormalsTrouble::rangeTooRough);
}

} // namespace
} // namespace withy::garden
