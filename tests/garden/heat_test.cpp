// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/heat.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

namespace withy::garden {
namespace {

DayHeat equinox() {
    DayHeat day;
    day.minimum = 10;
    day.maximum = 20;
    day.sunrise = 6;
    day.sunset = 18;
    return day;
}

// Worked by hand from the formula in the header. Night of 12 h: q = exp(-3) = 0.0497870684,
// temperature at sunset 10 + 10 sin 144 deg = 15.8778525229.
TEST(Heat, HandValues) {
    struct Row {
        double hour;
        double celsius;
    };

    const Row rows[] = {
        {6, 10},                // sunrise: the minimum
        {9.75, 17.0710678119},  // 10 + 10 sin 45 deg
        {13.5, 20},             // an hour and a half after noon: the maximum
        {17.25, 17.0710678119}, // 10 + 10 sin 135 deg
        {18, 15.8778525229},    // sunset
        {22, 11.9676642927},    // 4 h later: 10 + 5.8778525229 (e^-1 - q) / (1 - q)
        {2, 10.5291864316},     // 8 h later: 10 + 5.8778525229 (e^-2 - q) / (1 - q)
    };
    for (const Row& row : rows)
        EXPECT_NEAR(*temperatureAt(equinox(), row.hour), row.celsius, 1e-9) << row.hour;
}

// Parton and Logan's own form (Agricultural Meteorology 23, 1981), as documented for the R package
// TrenchR: T = Tn + (Ts - Tn) exp(-gamma n / night) after sunset. With the same lag and gamma = night
// / tau it differs from ours only by the small correction that lets the night end on the minimum.
TEST(Heat, NightIsCloseToPartonAndLogan) {
    const double sunset = 10 + 10 * std::sin(0.8 * 3.14159265358979);
    for (double hour = 18; hour <= 24; hour += 0.5) {
        const double theirs = 10 + (sunset - 10) * std::exp(-3 * (hour - 18) / 12);
        const double ours = *temperatureAt(equinox(), hour);
        EXPECT_LE(ours, theirs + 1e-9) << hour;
        EXPECT_NEAR(ours, theirs, 0.05 * (sunset - 10)) << hour;
    }
}

std::vector<DayHeat> manyDays() {
    std::vector<DayHeat> days;
    for (const double daylight : {0.5, 3.9, 4.0, 4.1, 8.0, 12.0, 16.5, 19.9, 20.0, 20.1, 23.5})
        for (const double middle : {11.0, 12.2, 13.4}) {
            DayHeat day = equinox();
            day.sunrise = middle - daylight / 2;
            day.sunset = middle + daylight / 2;
            days.push_back(day);
            day.previousMaximum = 26;
            day.nextMinimum = 4;
            days.push_back(day);
        }
    DayHeat polar = equinox();
    polar.sunrise = polar.sunset = std::nullopt;
    days.push_back(polar);
    polar.solarNoon = 13.1;
    polar.nextMinimum = 12;
    days.push_back(polar);
    return days;
}

TEST(Heat, ContinuousWithinItsBounds) {
    for (const DayHeat& day : manyDays()) {
        SCOPED_TRACE(std::to_string(day.sunrise.value_or(-1)) + " to " +
                     std::to_string(day.sunset.value_or(-1)));
        double before = *temperatureAt(day, 0);
        double lowest = before;
        double highest = before;
        for (int i = 1; i <= 1440; ++i) {
            const double now = *temperatureAt(day, i / 60.0);
            EXPECT_LT(std::abs(now - before), 0.25) << "minute " << i;
            lowest = std::min(lowest, now);
            highest = std::max(highest, now);
            before = now;
        }
        EXPECT_GE(lowest, std::min(day.minimum, day.nextMinimum.value_or(10)) - 1e-9);
        EXPECT_LE(highest, std::max(day.maximum, day.previousMaximum.value_or(20)) + 1e-9);
    }
}

TEST(Heat, MinimumAndMaximumAreReached) {
    for (const DayHeat& day : manyDays()) {
        const bool sun = day.sunrise && day.sunset;
        const double daylight = sun ? *day.sunset - *day.sunrise : 0;
        const double middle = sun ? (*day.sunrise + *day.sunset) / 2 : day.solarNoon;
        const double top = middle + maximumLag;
        const double bottom = daylight >= 4 && daylight <= 20 ? *day.sunrise : top - 12;
        SCOPED_TRACE(daylight);
        EXPECT_NEAR(*temperatureAt(day, top), day.maximum, 1e-9);
        EXPECT_NEAR(*temperatureAt(day, bottom), day.minimum, 1e-9);
    }
}

TEST(Heat, OneDayRunsIntoTheNext) {
    DayHeat today = equinox();
    DayHeat tomorrow = equinox();
    tomorrow.minimum = 7;
    tomorrow.maximum = 15;
    today.nextMinimum = tomorrow.minimum;
    tomorrow.previousMaximum = today.maximum;
    EXPECT_NEAR(*temperatureAt(today, 24), *temperatureAt(tomorrow, 0), 1e-9);
    today.sunrise = today.sunset = tomorrow.sunrise = tomorrow.sunset = std::nullopt;
    EXPECT_NEAR(*temperatureAt(today, 24), *temperatureAt(tomorrow, 0), 1e-9);
}

TEST(Heat, EvenDayStaysEven) {
    DayHeat day = equinox();
    day.maximum = day.minimum = 12;
    for (int hour = 0; hour <= 24; ++hour)
        EXPECT_NEAR(*temperatureAt(day, hour), 12, 1e-12);
}

TEST(Heat, FirstHourAboveALimit) {
    // By hand: 10 + 10 sin x = 15 at x = 30 deg, which is 2.5 h after sunrise.
    const auto first = *firstHourAbove(equinox(), 15);
    ASSERT_TRUE(first);
    EXPECT_NEAR(*first, 8.5, 1.0 / 60 + 1e-9);
    EXPECT_GT(*temperatureAt(equinox(), *first), 15);
    EXPECT_FALSE(*firstHourAbove(equinox(), 20));
    EXPECT_TRUE(*firstHourAbove(equinox(), 19.9999999));
    EXPECT_EQ(**firstHourAbove(equinox(), 15, 12.25), 12.25); // it is already
    EXPECT_FALSE(*firstHourAbove(equinox(), 16, 19));
    EXPECT_EQ(**firstHourAbove(equinox(), 9), 0);
}

TEST(Heat, RefusesNonsense) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinite = std::numeric_limits<double>::infinity();
    const auto with = [](auto change) {
        DayHeat day = equinox();
        change(day);
        return temperatureAt(day, 12).error();
    };
    for (const double bad : {nan, infinite, -infinite}) {
        EXPECT_EQ(with([&](DayHeat& d) { d.minimum = bad; }), HeatTrouble::notFinite);
        EXPECT_EQ(with([&](DayHeat& d) { d.maximum = bad; }), HeatTrouble::notFinite);
        EXPECT_EQ(with([&](DayHeat& d) { d.previousMaximum = bad; }), HeatTrouble::notFinite);
        EXPECT_EQ(with([&](DayHeat& d) { d.nextMinimum = bad; }), HeatTrouble::notFinite);
        EXPECT_EQ(with([&](DayHeat& d) { d.sunrise = bad; }), HeatTrouble::notFinite);
        EXPECT_EQ(with([&](DayHeat& d) { d.sunset = bad; }), HeatTrouble::notFinite);
        EXPECT_EQ(with([&](DayHeat& d) { d.solarNoon = bad; }), HeatTrouble::notFinite);
        EXPECT_EQ(temperatureAt(equinox(), bad).error(), HeatTrouble::badHour);
        EXPECT_EQ(firstHourAbove(equinox(), bad).error(), HeatTrouble::notFinite);
        EXPECT_EQ(firstHourAbove(equinox(), 15, bad).error(), HeatTrouble::badHour);
    }
    EXPECT_EQ(with([](DayHeat& d) { d.minimum = 20.5; }), HeatTrouble::minAboveMax);
    EXPECT_EQ(with([](DayHeat& d) { d.maximum = 61; }), HeatTrouble::badCelsius);
    EXPECT_EQ(with([](DayHeat& d) { d.nextMinimum = -91; }), HeatTrouble::badCelsius);
    EXPECT_EQ(with([](DayHeat& d) { d.sunset = 6; }), HeatTrouble::badSun);
    EXPECT_EQ(with([](DayHeat& d) { d.sunset = 30; }), HeatTrouble::badSun);
    EXPECT_EQ(with([](DayHeat& d) { d.sunrise = -13; }), HeatTrouble::badSun);
    EXPECT_EQ(with([](DayHeat& d) { d.solarNoon = -0.1; }), HeatTrouble::badSun);
    EXPECT_EQ(temperatureAt(equinox(), -0.01).error(), HeatTrouble::badHour);
    EXPECT_EQ(temperatureAt(equinox(), 24.01).error(), HeatTrouble::badHour);
}

} // namespace
} // namespace withy::garden
