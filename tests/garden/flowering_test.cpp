// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/flowering.h"

#include <gtest/gtest.h>

#include <cmath>

namespace withy::garden {
namespace {

Day day(int y, int m, int d) {
    return *Day::fromYmd(y, m, d);
}

// An invented place with a cool winter; what is checked holds for any normals.
const MonthlyMeans lows{1, 1, 2, 4, 7, 10, 12, 12, 9, 7, 4, 2};
const MonthlyMeans highs{7, 8, 10, 13, 17, 19, 22, 21, 18, 14, 10, 8};

MonthlyMeans halfAYearOn(const MonthlyMeans& m) {
    MonthlyMeans on{};
    for (std::size_t i = 0; i < 12; ++i)
        on[(i + 6) % 12] = m[i];
    return on;
}

YearNormals north() {
    return YearNormals::fromMonths(lows, highs).value();
}

YearNormals south() {
    return YearNormals::fromMonths(halfAYearOn(lows), halfAYearOn(highs)).value();
}

/// Every day measured, so much warmer than normal.
std::vector<WeatherDay> warmer(const YearNormals& normals, Day from, Day to, double by) {
    std::vector<WeatherDay> days;
    for (Day d = from; d <= to; d = d + 1) {
        const auto n = normals.on(d);
        days.push_back({d, {n.minimum + by, n.maximum + by}, TemperatureKind::measured});
    }
    return days;
}

FloweringInput patch(const YearNormals& normals, Dates usual, double share = 1) {
    FloweringInput in;
    in.patch = "Bed 4";
    in.usual = usual;
    in.base = {5, Basis::commonPractice, "planning default"};
    in.heatShare = {share, Basis::mine, ""};
    in.origin = originFor(normals, usual.first);
    return in;
}

const Dates june{*Day::fromYmd(2027, 5, 30), *Day::fromYmd(2027, 6, 18), *Day::fromYmd(2027, 7, 18)};
const Day start = *Day::fromYmd(2026, 1, 1);
const Day end = *Day::fromYmd(2028, 6, 30);

Flowering flowered(const YearNormals& normals, const FloweringInput& in,
                   const std::vector<WeatherDay>& weather) {
    const auto warmth = warmthOf(normals, weather, start, end);
    auto f = flowering(in, HeatSums(warmth, {5, std::nullopt}));
    EXPECT_TRUE(f.ok());
    return f.ok() ? std::move(f).value() : Flowering{};
}

TEST(Flowering, ANormalYearGivesBackTheUsualDates) {
    for (const auto& normals : {north(), south()}) {
        for (int month = 1; month <= 12; ++month) {
            for (const bool measured : {true, false}) {
                SCOPED_TRACE(testing::Message() << month << (measured ? ", measured" : ", no weather"));
                const Day first = day(2027, month, 11);
                const auto in = patch(normals, {first, first + 17, first + 45});
                const auto weather = measured ? warmer(normals, start, end, 0) : std::vector<WeatherDay>{};
                const auto f = flowered(normals, in, weather);
                EXPECT_EQ(f.dates, in.usual);
                EXPECT_EQ(f.thermal, in.usual);
                EXPECT_EQ(f.daysEarly, 0);
            }
        }
    }
}

/// The day this year with the normal year's heat, by adding up heatUnits() (which is checked against
/// published tables) day by day.
Day byHand(const YearNormals& normals, Day origin, Day usual, double by) {
    double wanted = 0;
    for (Day d = origin; d <= usual; d = d + 1)
        wanted += *heatUnits(normals.on(d).minimum, normals.on(d).maximum, {5, {}});
    Day d = origin;
    for (double sum = 0;; d = d + 1) {
        sum += *heatUnits(normals.on(d).minimum + by, normals.on(d).maximum + by, {5, {}});
        if (sum >= wanted - 1e-9) return d;
    }
}

TEST(Flowering, AWarmYearIsEarlierAndAColdOneLater) {
    const auto normals = north();
    Dates before = june;
    for (const double by : {0.5, 1.0, 1.5, 2.0}) {
        SCOPED_TRACE(by);
        const auto in = patch(normals, june);
        const auto f = flowered(normals, in, warmer(normals, start, end, by));
        EXPECT_LT(f.dates.first, before.first);
        EXPECT_EQ(f.thermal.first, byHand(normals, *in.origin, june.first, by));
        EXPECT_EQ(f.thermal.last, byHand(normals, *in.origin, june.last, by));
        EXPECT_LT(f.dates.last - f.dates.first, june.last - june.first + 1); // shorter, or as long
        EXPECT_EQ(f.daysEarly, june.first - f.dates.first);
        before = f.dates;
        const auto cold = flowered(normals, in, warmer(normals, start, end, -by));
        EXPECT_GT(cold.dates.first, june.first);
    }
}

TEST(Flowering, HeatShareBlends) {
    const auto normals = north();
    const auto weather = warmer(normals, start, end, 1.5);
    const auto whole = flowered(normals, patch(normals, june, 1), weather);
    const auto none = flowered(normals, patch(normals, june, 0), weather);
    const auto half = flowered(normals, patch(normals, june, 0.5), weather);
    EXPECT_EQ(none.dates, june);
    EXPECT_EQ(half.dates.first,
              june.first + static_cast<int>(std::lround(0.5 * (whole.thermal.first - june.first))));
    auto in = patch(normals, june, 1);
    in.underCover = true;
    EXPECT_EQ(flowered(normals, in, weather).dates, half.dates);
}

// The same year half a year on: a southern spring over the year's end moves as the northern one does.
TEST(Flowering, SouthOfTheEquatorAndOverTheYearsEnd) {
    const Dates december{day(2027, 11, 29), day(2027, 12, 18), day(2028, 1, 17)};
    const auto n = flowered(north(), patch(north(), june), warmer(north(), start, end, 1.5));
    const auto s = flowered(south(), patch(south(), december), warmer(south(), start, end, 1.5));
    EXPECT_NEAR(s.daysEarly, n.daysEarly, 1);
    EXPECT_NEAR(december.last - s.dates.last, june.last - n.dates.last, 1);
}

TEST(Flowering, OriginIsTheColdOfTheWinterBefore) {
    const auto n = coldestBefore(north(), day(2027, 5, 30));
    EXPECT_EQ(n.year(), 2027);
    EXPECT_EQ(n.month(), 1);
    const auto s = coldestBefore(south(), day(2027, 5, 30));
    EXPECT_EQ(s.year(), 2026);
    EXPECT_EQ(s.month(), 7);
    EXPECT_EQ(originFor(north(), day(2027, 2, 10)), day(2027, 2, 10) - 45);
    EXPECT_EQ(originFor(north(), day(2027, 12, 20)), day(2027, 12, 20) - 270);
}

TEST(Flowering, MovesNoFartherThanFourWeeks) {
    const auto normals = north();
    const auto hot = flowered(normals, patch(normals, june), warmer(normals, start, end, 12));
    EXPECT_EQ(hot.dates.first, june.first - 28);
    const auto icy = flowered(normals, patch(normals, june), warmer(normals, start, end, -20));
    EXPECT_EQ(icy.dates.first, june.first + 28);
    EXPECT_LE(icy.dates.first, icy.dates.peak);
    EXPECT_LE(icy.dates.peak, icy.dates.last);
}

TEST(Flowering, Troubles) {
    const auto normals = north();
    const auto warmth = warmthOf(normals, {}, start, end);
    const HeatSums sums(warmth, {5, std::nullopt});

    struct Case {
        const char* name;
        FloweringTrouble want;
        void (*spoil)(FloweringInput&);
    };

    using enum FloweringTrouble;
    const Case cases[] = {
        {"base", notFinite, [](FloweringInput& in) { in.base.value = std::nan(""); }},
        {"ceiling", badThresholds,
         [](FloweringInput& in) {
             in.ceiling = Sourced{4, Basis::mine, ""};
         }},
        {"share", badHeatShare, [](FloweringInput& in) { in.heatShare.value = 1.2; }},
        {"order", outOfOrder, [](FloweringInput& in) { std::swap(in.usual.first, in.usual.last); }},
        {"before", outsideWarmth, [](FloweringInput& in) { in.origin = start - 1; }},
        {"after", outsideWarmth, [](FloweringInput& in) { in.usual.last = end + 1; }},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.name);
        auto in = patch(normals, june);
        c.spoil(in);
        const auto f = flowering(in, sums);
        ASSERT_FALSE(f.ok());
        EXPECT_EQ(f.error(), c.want);
    }
}

TEST(Flowering, SeasonLead) {
    const auto normals = north();
    const Sourced base{5, Basis::commonPractice, ""};
    const Day today = day(2027, 5, 10);
    const Day origin = coldestBefore(normals, today);
    for (const double by : {-1.0, 0.0, 1.0}) {
        SCOPED_TRACE(by);
        const auto warmth = warmthOf(normals, warmer(normals, start, today, by), start, end);
        const auto lead = seasonLead(HeatSums(warmth, {5, std::nullopt}), origin, today, base);
        ASSERT_TRUE(lead);
        EXPECT_EQ(lead->daysEarly > 0, by > 0);
        EXPECT_EQ(lead->daysEarly < 0, by < 0);
        EXPECT_EQ(lead->working.back().value, lead->daysEarly);
    }
    const HeatSums sums(warmthOf(normals, {}, start, end), {5, std::nullopt});
    EXPECT_FALSE(seasonLead(sums, origin, end + 1, base));
    EXPECT_FALSE(seasonLead(sums, today + 1, today, base));
    const Day autumn = day(2027, 10, 15);
    const HeatSums warm(warmthOf(normals, warmer(normals, start, autumn, 1), start, end), {5, std::nullopt});
    EXPECT_FALSE(seasonLead(warm, coldestBefore(normals, autumn), autumn, base))
        << "a normal year never has this heat, or weeks later";
}

TEST(Flowering, RegrowthAfterAHardCut) {
    const auto normals = north();
    const Day cut = day(2027, 6, 25);
    const Dates dates{june.first, june.peak, day(2027, 9, 20)};
    const HeatSums usual(warmthOf(normals, {}, start, end), {5, std::nullopt});
    const auto again = regrowth(dates, cut, 35, 1, usual);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->first, cut + 35);
    EXPECT_EQ(again->last, dates.last);
    const HeatSums warm(warmthOf(normals, warmer(normals, start, end, 3), start, end), {5, std::nullopt});
    EXPECT_LT(regrowth(dates, cut, 35, 1, warm)->first, again->first);
    EXPECT_EQ(regrowth(dates, cut, 35, 0, warm)->first, again->first);
    EXPECT_FALSE(regrowth(dates, day(2027, 9, 1), 35, 1, usual));
}

// ---- warmth ----

TEST(Warmth, MeasuredBeforeForecastBeforeNormal) {
    const auto normals = north();
    const Day d = day(2027, 3, 1);
    const std::vector<WeatherDay> weather{
        {d, {1, 9}, TemperatureKind::measured},      {d, {2, 10}, TemperatureKind::forecast},
        {d + 4, {3, 11}, TemperatureKind::forecast}, {d + 4, {4, 12}, TemperatureKind::measured},
        {d + 6, {5, 13}, TemperatureKind::forecast}, {d - 400, {5, 13}, TemperatureKind::measured},
    };
    const auto w = warmthOf(normals, weather, d - 10, d + 10);
    ASSERT_EQ(w.year.size(), 21u);
    EXPECT_EQ(w.to(), d + 10);
    EXPECT_EQ(w.year[10].minimum, 1);
    EXPECT_EQ(w.year[14].minimum, 4);
    EXPECT_EQ(w.year[16].minimum, 5);
    EXPECT_EQ(w.year[11].minimum, normals.on(d + 1).minimum);
    EXPECT_EQ(w.measured, 2);
    EXPECT_EQ(w.forecast, 1);
    EXPECT_EQ(w.gaps, 4);
    EXPECT_EQ(w.firstGap, d + 1);
    EXPECT_EQ(w.lastMeasured, d + 4);
    EXPECT_TRUE(w.faults.empty());
}

TEST(Warmth, BadDaysAreNamedAndLeftOut) {
    const auto normals = north();
    const Day d = day(2027, 3, 1);
    const auto measured = TemperatureKind::measured;
    const std::vector<WeatherDay> weather{{d, {9, 1}, measured},      {d + 1, {std::nan(""), 9}, measured},
                                          {d + 2, {3, 88}, measured}, {d + 3, {3, 9}, measured},
                                          {d + 3, {4, 9}, measured},  {d + 5, {7, 2}, measured}};
    const auto w = warmthOf(normals, weather, d, d + 9);
    ASSERT_EQ(w.faults.size(), 4u);
    EXPECT_EQ(w.faults[0].trouble, WeatherTrouble::minAboveMax);
    EXPECT_EQ(w.faults[0].day, d);
    EXPECT_EQ(w.faults[0].days, 2);
    EXPECT_EQ(w.faults[1].trouble, WeatherTrouble::notFinite);
    EXPECT_EQ(w.faults[2].trouble, WeatherTrouble::badCelsius);
    EXPECT_EQ(w.faults[3].trouble, WeatherTrouble::doubled);
    EXPECT_EQ(w.year[0].minimum, normals.on(d).minimum);
    EXPECT_EQ(w.year[3].minimum, 4);
    EXPECT_EQ(w.measured, 1);
}

TEST(Warmth, FahrenheitInACelsiusColumn) {
    const auto normals = north();
    const Day d = day(2027, 1, 1);
    auto weather = warmer(normals, d, d + 40, 2);
    EXPECT_FALSE(readsLikeFahrenheit(normals, weather));
    for (auto& w : weather) {
        w.range.minimum = w.range.minimum * 1.8 + 32;
        w.range.maximum = w.range.maximum * 1.8 + 32;
    }
    EXPECT_TRUE(readsLikeFahrenheit(normals, weather));
    // One month among years that are sound, and a warm spell in winter that is real.
    auto years = warmer(normals, day(2023, 1, 1), day(2026, 12, 31), 1);
    EXPECT_FALSE(readsLikeFahrenheit(normals, years));
    for (auto& w : years)
        if (w.day >= day(2026, 1, 1) && w.day <= day(2026, 1, 10)) w.range = {14, 20};
    EXPECT_FALSE(readsLikeFahrenheit(normals, years));
    for (auto& w : years)
        if (w.day >= day(2026, 4, 1) && w.day <= day(2026, 4, 30))
            w.range = {w.range.minimum * 1.8 + 32, w.range.maximum * 1.8 + 32};
    EXPECT_TRUE(readsLikeFahrenheit(normals, years));
}

// Real days scatter; on average they must not look early beside their own normals.
TEST(Warmth, ScatterAloneMakesNoSeasonEarly) {
    const auto normals = north();
    double sum = 0;
    constexpr int years = 40;
    std::uint32_t state = 9;
    for (int year = 0; year < years; ++year) {
        auto weather = warmer(normals, day(2026, 12, 1), day(2027, 8, 31), 0);
        for (auto& w : weather) {
            state = state * 1664525u + 1013904223u;
            const double off = (static_cast<double>(state >> 8) / 16777216.0 - 0.5) * 12; // spread 3.5
            w.range.minimum += off;
            w.range.maximum += off;
        }
        const auto warmth = warmthOf(normals, weather, start, end);
        EXPECT_NEAR(warmth.spread, 3.46, 0.6);
        const Dates april{day(2027, 4, 5), day(2027, 4, 20), day(2027, 5, 10)};
        sum += flowering(patch(normals, april), HeatSums(warmth, {5, std::nullopt}))->daysEarly;
    }
    EXPECT_NEAR(sum / years, 0, 1);
}

} // namespace
} // namespace withy::garden
