// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_plan.h"
#include "tests/model/sample.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace withy::plan {
namespace {

using model::Season;
using model::sample::day;

constexpr Id<model::Patch> bed{1};

void setSettings(Season& s, const std::function<void(model::Settings&)>& change) {
    auto settings = s.theSettings();
    change(settings);
    s.settings.put(settings);
}

void putNormals(Season& s, double warmer = 0) {
    const double lows[] = {1, 1, 2, 4, 7, 10, 12, 12, 9, 7, 4, 2};
    const double highs[] = {7, 8, 10, 13, 17, 19, 22, 21, 18, 14, 10, 8};
    const bool south = s.theSettings().latitude < 0;
    for (std::size_t m = 0; m < 12; ++m) {
        const std::size_t from = south ? (m + 6) % 12 : m;
        s.monthNormals.put({Id<model::MonthNormal>(static_cast<std::int64_t>(m) + 1),
                            static_cast<std::int64_t>(m) + 1, lows[from] + warmer, highs[from] + warmer});
    }
}

void putWeather(Season& s, Day date, double low, double high,
                model::WeatherKind kind = model::WeatherKind::measured) {
    s.weather.put({s.weather.nextId(), date, low, high, kind});
}

/// Measured days so much warmer than the normals.
void putWarmth(Season& s, Day from, Day to, double by) {
    garden::MonthlyMeans low{};
    garden::MonthlyMeans high{};
    for (const auto& n : s.monthNormals) {
        low[static_cast<std::size_t>(n.month - 1)] = n.minCelsius;
        high[static_cast<std::size_t>(n.month - 1)] = n.maxCelsius;
    }
    const auto normals = garden::YearNormals::fromMonths(low, high).value();
    for (Day d = from; d <= to; d = d + 1)
        putWeather(s, d, normals.on(d).minimum + by, normals.on(d).maximum + by);
}

model::Patch patch() {
    model::Patch p;
    p.id = bed;
    p.plant = Id<model::Plant>(1);
    p.label = "Bed 4";
    p.expectedStems = Stems(900);
    p.firstCut = day(2027, 5, 30);
    p.peakCut = day(2027, 6, 18);
    p.lastCut = day(2027, 7, 18);
    return p;
}

model::Walk walk(Day date, std::optional<std::int64_t> ready, Id<model::Patch> at = bed) {
    model::Walk w;
    w.id = Id<model::Walk>(1);
    w.date = date;
    w.patch = at;
    if (ready) w.readyNow = Stems(*ready);
    return w;
}

/// A season with one patch and nothing to complain of.
Season season() {
    Season s = model::sample::season();
    putNormals(s);
    auto plant = model::sample::plant(1, "Cornflower");
    plant.baseCelsius = 5;
    plant.heatShare = 1;
    plant.holdDays = 2;
    s.plants.put(plant);
    s.patches.put(patch());
    putWarmth(s, day(2027, 1, 1), day(2027, 5, 10), 0);
    return s;
}

ForecastPlan planned(const Season& s, const ForecastOptions& options = {}) {
    return forecastPlan(Index(s), s, options);
}

const Finding* findingOf(const ForecastPlan& plan, FindingCode code) {
    const auto at = std::find_if(plan.findings.begin(), plan.findings.end(),
                                 [&](const auto& f) { return f.code == code; });
    return at == plan.findings.end() ? nullptr : &*at;
}

TEST(ForecastPlan, ASoundNormalSeason) {
    const auto plan = planned(season());
    EXPECT_TRUE(plan.findings.empty());
    const auto& o = plan.patches.at(bed);
    EXPECT_EQ(o.by, DatesBy::warmth);
    EXPECT_EQ(o.dates, o.usual);
    EXPECT_EQ(o.daysEarly, 0);
    EXPECT_EQ(o.holdDays, 2);
    EXPECT_LT(*o.hopefulFirst, o.dates->first);
    EXPECT_GT(*o.cautiousFirst, o.dates->first);
    ASSERT_TRUE(o.forecast);
    EXPECT_NEAR(o.forecast->expected, 900, 1e-6);
    ASSERT_TRUE(plan.lead);
    EXPECT_EQ(plan.lead->daysEarly, 0);
    EXPECT_EQ(plan.measuredDays, 130);
    EXPECT_EQ(plan.filledDays, 0);
    EXPECT_FALSE(o.datesWorking.empty());
}

TEST(ForecastPlan, AWarmSpringRunsEarly) {
    Season s = season();
    putWarmth(s, day(2027, 5, 11), day(2027, 5, 25), 0);
    for (const auto& w : Season(s).weather) {
        auto warm = w;
        warm.minCelsius += 2;
        warm.maxCelsius += 2;
        s.weather.put(warm);
    }
    const auto plan = planned(s);
    EXPECT_GT(plan.lead->daysEarly, 3);
    EXPECT_GT(plan.patches.at(bed).daysEarly, 3);
    EXPECT_LT(plan.patches.at(bed).dates->first, plan.patches.at(bed).usual->first);
}

TEST(ForecastPlan, SouthOfTheEquator) {
    Season s = model::sample::season();
    setSettings(s, [](auto& set) {
        set.latitude = -40;
        set.firstDay = day(2027, 8, 1);
        set.lastDay = day(2028, 5, 31);
    });
    putNormals(s);
    s.plants.put(*season().plants.find(Id<model::Plant>(1)));
    auto p = patch();
    p.firstCut = day(2027, 11, 29);
    p.peakCut = day(2027, 12, 18);
    p.lastCut = day(2028, 1, 17);
    s.patches.put(p);
    putWarmth(s, day(2027, 7, 1), day(2027, 11, 9), 2);
    const auto plan = planned(s);
    EXPECT_TRUE(plan.findings.empty());
    EXPECT_EQ(plan.patches.at(bed).by, DatesBy::warmth);
    EXPECT_GT(plan.patches.at(bed).daysEarly, 3);
    EXPECT_GT(plan.lead->daysEarly, 3);
}

TEST(ForecastPlan, WithoutWeatherTheCalendarStandsAndSaysSo) {
    Season s = season();
    s.weather = {};
    const auto plan = planned(s);
    EXPECT_TRUE(findingOf(plan, FindingCode::noWeather));
    const auto& o = plan.patches.at(bed);
    EXPECT_EQ(o.by, DatesBy::calendar);
    EXPECT_EQ(o.dates, o.usual);
    EXPECT_TRUE(o.forecast);
    EXPECT_FALSE(plan.lead);
}

TEST(ForecastPlan, SameSeasonSameAnswer) {
    Season s = season();
    s.walks.put(walk(day(2027, 6, 10), 40));
    const auto a = planned(s);
    const auto b = planned(s);
    const auto& fa = *a.patches.at(bed).forecast;
    const auto& fb = *b.patches.at(bed).forecast;
    EXPECT_EQ(fa.expected, fb.expected);
    EXPECT_EQ(fa.shiftDays, fb.shiftDays);
    ASSERT_EQ(fa.days.size(), fb.days.size());
    for (std::size_t i = 0; i < fa.days.size(); ++i) {
        EXPECT_EQ(fa.days[i].fresh, fb.days[i].fresh);
        EXPECT_EQ(fa.days[i].supply, fb.days[i].supply);
    }
}

TEST(ForecastPlan, TalliesCountAsHavingStoodThere) {
    Season s = season();
    s.walks.put(walk(day(2027, 6, 18), 30));
    const double without = planned(s).patches.at(bed).forecast->expected;
    model::Round round;
    round.id = Id<model::Round>(1);
    round.from = {day(2027, 6, 17), 360};
    round.to = {day(2027, 6, 17), 420};
    s.rounds.put(round);
    model::Tally tally;
    tally.id = Id<model::Tally>(1);
    tally.round = round.id;
    tally.patch = bed;
    tally.cut = Stems(60);
    s.tallies.put(tally);
    EXPECT_GT(planned(s).patches.at(bed).forecast->expected, without);
}

void cutHard(Season& s, Day on) {
    auto patch = *s.patches.find(bed);
    patch.hardCut = on;
    s.patches.put(patch);
}

TEST(ForecastPlan, AHardCutComesAgain) {
    Season s = season();
    auto plant = *s.plants.find(Id<model::Plant>(1));
    plant.habit = model::HarvestHabit::cutAndComeAgain;
    plant.regrowthDays = 14;
    s.plants.put(plant);
    cutHard(s, day(2027, 6, 20));
    const auto cut = planned(s);
    EXPECT_FALSE(findingOf(cut, FindingCode::regrowthTooLate));
    EXPECT_LT(cut.patches.at(bed).forecast->expected, 900);
    EXPECT_GT(cut.patches.at(bed).forecast->expected, 400);
}

/// Past years with their weather: a made-up plant that flowers at 250 C days above 4 from 20 February on.
Season withPastYears(int years) {
    Season s = season();
    std::uint32_t state = 5;
    double off = 0;
    for (int y = 2027 - years; y < 2027; ++y) {
        const Day from = day(y - 1, 12, 1);
        double sum = 0;
        bool cut = false;
        for (int i = 0; i < 200; ++i) {
            state = state * 1664525u + 1013904223u;
            off = 0.9 * off + (static_cast<double>(state >> 8) / 16777216.0 - 0.5) * 5;
            const double mean = 9 - 7 * std::cos(2 * M_PI * (i - 52) / 365.0) + off;
            putWeather(s, from + i, mean - 4, mean + 4);
            if (i < 81) continue;
            sum += garden::soundHeatUnits(mean - 4, mean + 4, {4, {}});
            if (cut || sum < 250) continue;
            cut = true;
            model::PastBloom b;
            b.id = s.pastBlooms.nextId();
            b.plant = Id<model::Plant>(1);
            b.firstCut = from + i;
            s.pastBlooms.put(b);
        }
    }
    return s;
}

TEST(ForecastPlan, NotedYearsWithTheirWeatherAreLearntFrom) {
    const Season s = withPastYears(8);
    auto near = s;
    auto p = patch();
    p.firstCut = day(2027, 4, 25);
    p.peakCut = day(2027, 5, 10);
    p.lastCut = day(2027, 6, 1);
    near.patches.put(p);
    const auto plan = planned(near);
    const auto& fit = plan.fits.at(Id<model::Plant>(1));
    EXPECT_EQ(fit.years, 8);
    EXPECT_EQ(fit.kind, garden::BloomModelKind::thermal);
    const auto& o = plan.patches.at(bed);
    EXPECT_EQ(o.by, DatesBy::pastYears);
    EXPECT_LE(*o.hopefulFirst, o.dates->first);
    EXPECT_GE(*o.cautiousFirst, o.dates->first);
    EXPECT_EQ(plan.filledDays, 0);
}

TEST(ForecastPlan, FewYearsOrNoneWithWeatherAreNamed) {
    const auto few = planned(withPastYears(3));
    EXPECT_TRUE(findingOf(few, FindingCode::bloomYearsTooFew));
    EXPECT_EQ(few.patches.at(bed).by, DatesBy::warmth);
    model::PastBloom b;
    b.id = Id<model::PastBloom>(99);
    b.plant = Id<model::Plant>(1);
    b.firstCut = day(2009, 6, 1);
    Season s = season();
    s.pastBlooms.put(b);
    EXPECT_TRUE(findingOf(planned(s), FindingCode::bloomYearsTooFew));
    EXPECT_FALSE(findingOf(planned(s), FindingCode::bloomYearLeftOut)) << "said by there being none";
    Season mixed = withPastYears(3);
    mixed.pastBlooms.put(b);
    EXPECT_TRUE(findingOf(planned(mixed), FindingCode::bloomYearLeftOut));
}

struct BadCase {
    const char* name;
    FindingCode code;
    void (*spoil)(Season&);
};

void changePatch(Season& s, const std::function<void(model::Patch&)>& change) {
    auto p = patch();
    change(p);
    s.patches.put(p);
}

const BadCase badCases[] = {
    {"walk without patch", FindingCode::walkWithoutPatch,
     [](Season& s) { s.walks.put(walk(day(2027, 6, 10), 40, Id<model::Patch>(99))); }},
    {"blank walk", FindingCode::walkBlank, [](Season& s) { s.walks.put(walk(day(2027, 6, 10), {})); }},
    {"negative walk", FindingCode::walkNegative, [](Season& s) { s.walks.put(walk(day(2027, 6, 10), -4)); }},
    {"walk out of season", FindingCode::walkOutOfSeason,
     [](Season& s) { s.walks.put(walk(day(2026, 6, 10), 4)); }},
    {"walk outside flowering", FindingCode::walkOutsideFlowering,
     [](Season& s) { s.walks.put(walk(day(2027, 9, 10), 4)); }},
    {"thousand times", FindingCode::walkFarAboveExpected,
     [](Season& s) { s.walks.put(walk(day(2027, 6, 18), 90000)); }},
    {"two million stems", FindingCode::patchForecastImpossible,
     [](Season& s) { changePatch(s, [](auto& p) { p.expectedStems = Stems(2000000); }); }},
    {"walk not used", FindingCode::walkNotUsed,
     [](Season& s) {
         changePatch(s, [](auto& p) { p.expectedStems.reset(); });
         s.walks.put(walk(day(2027, 6, 18), 40));
     }},
    {"week too small", FindingCode::walkWeekTooSmall,
     [](Season& s) {
         auto w = walk(day(2027, 6, 18), 40);
         w.withinThreeDays = Stems(60);
         w.withinWeek = Stems(20);
         s.walks.put(w);
     }},
    {"minimum above maximum", FindingCode::weatherMinAboveMax,
     [](Season& s) { putWeather(s, day(2027, 5, 11), 14, 4); }},
    {"impossible", FindingCode::weatherImpossible,
     [](Season& s) { putWeather(s, day(2027, 5, 11), 14, 94); }},
    {"doubled", FindingCode::weatherDoubled, [](Season& s) { putWeather(s, day(2027, 5, 10), 4, 14); }},
    {"missing", FindingCode::weatherMissing, [](Season& s) { putWeather(s, day(2027, 5, 14), 4, 14); }},
    {"Fahrenheit", FindingCode::weatherLooksFahrenheit,
     [](Season& s) {
         for (const auto& w : Season(s).weather) {
             auto f = w;
             f.minCelsius = w.minCelsius * 1.8 + 32;
             f.maxCelsius = w.maxCelsius * 1.8 + 32;
             s.weather.put(f);
         }
     }},
    {"no normals", FindingCode::noNormals,
     [](Season& s) { s.monthNormals.erase(Id<model::MonthNormal>(4)); }},
    {"impossible normals", FindingCode::normalsImpossible,
     [](Season& s) {
         s.monthNormals.put({Id<model::MonthNormal>(4), 4, 20, 3});
     }},
    {"other hemisphere", FindingCode::normalsOtherHemisphere,
     [](Season& s) { setSettings(s, [](auto& set) { set.latitude = -52; }); }},
    {"no last cut", FindingCode::patchWithoutDates,
     [](Season& s) { changePatch(s, [](auto& p) { p.lastCut.reset(); }); }},
    {"last before first", FindingCode::patchDatesOutOfOrder,
     [](Season& s) { changePatch(s, [](auto& p) { std::swap(p.firstCut, p.lastCut); }); }},
    {"dates out of season", FindingCode::patchDatesOutOfSeason,
     [](Season& s) { changePatch(s, [](auto& p) { p.lastCut = day(2027, 12, 1); }); }},
    {"no stems", FindingCode::patchWithoutStems,
     [](Season& s) { changePatch(s, [](auto& p) { p.expectedStems.reset(); }); }},
    {"heat facts missing", FindingCode::heatFactsMissing,
     [](Season& s) { s.plants.put(model::sample::plant(1, "Cornflower")); }},
    {"ceiling under base", FindingCode::heatFactsImpossible,
     [](Season& s) {
         auto p = *s.plants.find(Id<model::Plant>(1));
         p.ceilingCelsius = 2;
         s.plants.put(p);
     }},
};

TEST(ForecastPlanBadInput, EachIsNamedByItsCode) {
    for (const auto& c : badCases) {
        SCOPED_TRACE(c.name);
        Season s = season();
        c.spoil(s);
        const auto plan = planned(s);
        const auto* found = findingOf(plan, c.code);
        EXPECT_TRUE(found);
        EXPECT_EQ(plan.findings.size(), 1u + (c.code == FindingCode::walkNotUsed ? 1u : 0u) +
                                            (c.code == FindingCode::walkOutOfSeason ? 1u : 0u));
        for (const auto& f : plan.findings)
            EXPECT_FALSE(findingWord(f.code).empty());
        for (const auto& [id, o] : plan.patches) {
            if (!o.forecast) continue;
            for (const auto& d : o.forecast->days)
                EXPECT_TRUE(std::isfinite(d.mean) && d.supply.cautious.value >= 0);
        }
    }
}

// What cannot be reckoned with leaves the calendar standing.
TEST(ForecastPlanBadInput, TheCalendarStands) {
    for (const auto code :
         {FindingCode::weatherLooksFahrenheit, FindingCode::noNormals, FindingCode::normalsImpossible}) {
        SCOPED_TRACE(findingWord(code));
        Season s = season();
        for (const auto& c : badCases)
            if (c.code == code) c.spoil(s);
        const auto o = planned(s).patches.at(bed);
        EXPECT_EQ(o.by, DatesBy::calendar);
        EXPECT_EQ(o.dates, o.usual);
        EXPECT_TRUE(o.forecast);
    }
}

TEST(ForecastPlanBadInput, HardCutsThatCannotBe) {
    Season s = season();
    cutHard(s, day(2027, 7, 16));
    EXPECT_TRUE(findingOf(planned(s), FindingCode::hardCutNotUsed));
    auto plant = *s.plants.find(Id<model::Plant>(1));
    plant.habit = model::HarvestHabit::cutAndComeAgain;
    plant.regrowthDays = 30;
    s.plants.put(plant);
    EXPECT_TRUE(findingOf(planned(s), FindingCode::regrowthTooLate));
}

} // namespace
} // namespace withy::plan
