// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/good_hours.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <string>

namespace withy::garden {
namespace {

LocalTime minuteOf(const char* iso) {
    return *LocalTime::parse(iso);
}

const Zone& british() {
    static const Zone zone = *Zone::fromPosix("GMT0BST,M3.5.0/1:00,M10.5.0/2:00");
    return zone;
}

GardenDay dayAt(Day day, double latitude, double minimum, double maximum) {
    DayHeat heat;
    heat.minimum = minimum;
    heat.maximum = maximum;
    return *gardenDay(day, {latitude, -1}, british(), heat);
}

/// Days around midsummer 2026 at 51 N, 1 W. Sunrise 4:49, sunset 21:22, civil dawn 4:03, dusk 22:09 by
/// the clock (PyEphem, as in the grid of the sun tests, for 21 June; the other days within a minute
/// or two).
CutHours juneHours(const char* earliest, const char* latest, double minimum, double maximum, double limit) {
    CutHours in;
    in.earliest = minuteOf(earliest);
    in.latest = minuteOf(latest);
    for (Day day = in.earliest.day; day <= in.latest.day; day = day + 1)
        in.days.push_back(dayAt(day, 51, minimum, maximum));
    in.heatLimit = limit;
    in.work = Minutes(60);
    return in;
}

TEST(GardenDayTest, CarriesTheSunOntoTheClock) {
    const GardenDay day = dayAt(*Day::fromYmd(2026, 6, 21), 51, 10, 20);
    const double quarterMinute = 15 / 3600.0;
    EXPECT_NEAR(*day.civilDawn, 4 + 2 / 60.0 + 44 / 3600.0, quarterMinute);
    EXPECT_NEAR(*day.heat.sunrise, 4 + 49 / 60.0 + 23 / 3600.0, quarterMinute);
    EXPECT_NEAR(day.heat.solarNoon, 13 + 5 / 60.0 + 49 / 3600.0, quarterMinute);
    EXPECT_NEAR(*day.heat.sunset, 21 + 22 / 60.0 + 14 / 3600.0, quarterMinute);
    EXPECT_NEAR(*day.civilDusk, 22 + 8 / 60.0 + 54 / 3600.0, quarterMinute);
    // A clock far off the sun: hours are moved so that noon falls on the day.
    const auto far = gardenDay(*Day::fromYmd(2026, 6, 21), {10, 179}, *Zone::fromPosix("FAR12"), {});
    ASSERT_TRUE(far.ok());
    EXPECT_FALSE(heatTrouble(far->heat));
    EXPECT_EQ(gardenDay(Day{20000}, {95, 0}, british(), {}).error(), SunTrouble::badLatitude);
}

TEST(GoodHours, LatestCoolDawnOrEveningFirst) {
    const auto found = goodHours(juneHours("2026-06-20T09:00", "2026-06-21T21:00", 10, 24, 20));
    ASSERT_TRUE(found.ok());
    ASSERT_EQ(found->size(), 3u);
    EXPECT_EQ((*found)[0].start.iso(), "2026-06-21T20:00"); // done by the latest
    EXPECT_EQ((*found)[0].why, GoodHourWhy::evening);
    EXPECT_EQ((*found)[1].start.iso(), "2026-06-21T04:15"); // first quarter after civil dawn
    EXPECT_EQ((*found)[1].why, GoodHourWhy::dawn);
    EXPECT_EQ((*found)[1].light, HourLight::twilight);
    EXPECT_EQ((*found)[2].start.iso(), "2026-06-20T20:15"); // done by sunset
    EXPECT_EQ((*found)[2].light, HourLight::daylight);
    for (const GoodHour& hour : *found) {
        EXPECT_FALSE(hour.overLimit);
        EXPECT_FALSE(hour.runsPast);
        EXPECT_LE(hour.celsius, 20);
    }
}

struct HoursRow {
    const char* name;
    CutHours in;
    const char* start;
    GoodHourWhy why;
    HourLight light;
    bool overLimit;
    bool runsPast;
};

TEST(GoodHours, FirstChoice) {
    const auto dawn = GoodHourWhy::dawn;
    const auto evening = GoodHourWhy::evening;
    const auto coolest = GoodHourWhy::coolestThereIs;
    CutHours longWork = juneHours("2026-06-21T00:00", "2026-06-21T23:59", 10, 20, 25);
    longWork.work = Minutes(300);
    CutHours noWork = juneHours("2026-06-21T05:07", "2026-06-21T05:07", 10, 20, 25);
    noWork.work = Minutes(0);
    const HoursRow rows[] = {
        {"morning only", juneHours("2026-06-21T00:00", "2026-06-21T12:00", 10, 24, 20), "2026-06-21T04:15",
         dawn, HourLight::twilight, false, false},
        {"window opens after dawn", juneHours("2026-06-21T06:20", "2026-06-21T12:00", 10, 24, 20),
         "2026-06-21T06:20", dawn, HourLight::daylight, false, false},
        {"too warm until sunset", juneHours("2026-06-21T16:00", "2026-06-21T23:59", 12, 30, 22),
         "2026-06-21T21:00", evening, HourLight::daylight, false, false},
        {"long work, evening", longWork, "2026-06-21T16:15", evening, HourLight::daylight, false, false},
        {"midday only, cool", juneHours("2026-06-21T11:00", "2026-06-21T15:00", 10, 20, 25),
         "2026-06-21T11:00", coolest, HourLight::daylight, false, false},
        {"midday only, hot", juneHours("2026-06-21T11:00", "2026-06-21T15:00", 10, 30, 20),
         "2026-06-21T11:00", coolest, HourLight::daylight, true, false},
        {"night only", juneHours("2026-06-20T23:00", "2026-06-21T03:00", 10, 20, 25), "2026-06-21T02:00",
         coolest, HourLight::dark, false, false},
        {"only the dark is cool enough", juneHours("2026-06-21T10:00", "2026-06-21T23:59", 12, 34, 19),
         "2026-06-21T22:45", coolest, HourLight::dark, false, false},
        {"shorter than the work", juneHours("2026-06-21T18:00", "2026-06-21T18:30", 10, 20, 25),
         "2026-06-21T18:00", coolest, HourLight::daylight, false, true},
        {"one minute, no work", noWork, "2026-06-21T05:07", dawn, HourLight::daylight, false, false},
    };
    for (const HoursRow& row : rows) {
        SCOPED_TRACE(row.name);
        const auto found = goodHours(row.in);
        ASSERT_TRUE(found.ok());
        const GoodHour& first = found->front();
        EXPECT_EQ(first.start.iso(), row.start);
        EXPECT_EQ(first.why, row.why);
        EXPECT_EQ(first.light, row.light);
        EXPECT_EQ(first.overLimit, row.overLimit);
        EXPECT_EQ(first.runsPast, row.runsPast);
    }
}

TEST(GoodHours, PolarDayAndNightInWords) {
    struct Polar {
        const char* name;
        double latitude;
        int month;
        HourLight light;
    };

    const Polar rows[] = {{"polar day", 75, 6, HourLight::polarDay},
                          {"no sunrise, but twilight", 70, 12, HourLight::twilight},
                          {"polar night", 80, 12, HourLight::polarNight}};
    for (const Polar& row : rows) {
        SCOPED_TRACE(row.name);
        CutHours in;
        in.earliest = LocalTime{*Day::fromYmd(2026, row.month, 20), 0};
        in.latest = LocalTime{*Day::fromYmd(2026, row.month, 21), 1439};
        in.days = {dayAt(in.earliest.day, row.latitude, 2, 8), dayAt(in.latest.day, row.latitude, 2, 8)};
        in.heatLimit = 10;
        in.work = Minutes(90);
        const auto found = goodHours(in);
        ASSERT_TRUE(found.ok());
        EXPECT_EQ(found->front().start.day, in.latest.day);
        EXPECT_EQ(found->front().why, GoodHourWhy::coolestThereIs);
        EXPECT_EQ(found->front().light, row.light);
        EXPECT_FALSE(found->front().overLimit);
        in.heatLimit = -5;
        EXPECT_TRUE(goodHours(in)->front().overLimit);
    }
}

/// Warmest at the quarter hours of the work and at its end, straight from the day's curve.
double warmest(const CutHours& in, LocalTime start) {
    double most = -1000;
    const std::int64_t work = in.work.value;
    for (std::int64_t m = 0; m < work + 15; m += 15) {
        const LocalTime t = start + Minutes(std::min(m, work));
        for (const GardenDay& day : in.days)
            if (day.day == t.day) most = std::max(most, *temperatureAt(day.heat, t.minute / 60.0));
    }
    return most;
}

TEST(GoodHours, NeverOverTheLimitWhileAnotherHourExists) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> share(0, 1);
    int over = 0;
    for (int i = 0; i < 300; ++i) {
        SCOPED_TRACE(i);
        const double latitude = -80 + 160 * share(random);
        CutHours in;
        in.earliest = LocalTime::fromMinutes(29'600'000 + static_cast<std::int64_t>(share(random) * 525'600));
        in.latest = in.earliest + Minutes(60 + static_cast<std::int64_t>(share(random) * 2500));
        for (Day day = in.earliest.day; day <= in.latest.day; day = day + 1)
            in.days.push_back(dayAt(day, latitude, 5 + 15 * share(random), 20 + 15 * share(random)));
        in.heatLimit = 8 + 20 * share(random);
        in.work = Minutes(static_cast<std::int64_t>(share(random) * 60));
        const auto found = goodHours(in, 4);
        ASSERT_TRUE(found.ok());
        ASSERT_FALSE(found->empty());
        ASSERT_LE(found->size(), 4u);
        for (const GoodHour& hour : *found) {
            EXPECT_GE(hour.start, in.earliest);
            EXPECT_LE(hour.start + in.work, in.latest);
            EXPECT_NEAR(hour.celsius, warmest(in, hour.start), 1e-9);
            EXPECT_EQ(hour.overLimit, hour.celsius > in.heatLimit);
        }
        if (!found->front().overLimit) continue;
        ++over;
        for (LocalTime t = in.earliest; t + in.work <= in.latest; t = t + Minutes(1))
            if (t.minute % 15 == 0) {
                EXPECT_GT(warmest(in, t), in.heatLimit) << t.iso();
            }
    }
    EXPECT_GT(over, 5); // the check above was really put to use
}

TEST(GoodHours, SameAnswerWhateverTheOrderOfDays) {
    CutHours in = juneHours("2026-06-18T09:00", "2026-06-21T21:00", 10, 24, 20);
    const auto forwards = *goodHours(in);
    std::reverse(in.days.begin(), in.days.end());
    const auto backwards = *goodHours(in);
    ASSERT_EQ(forwards.size(), backwards.size());
    for (std::size_t i = 0; i < forwards.size(); ++i)
        EXPECT_EQ(forwards[i].start, backwards[i].start);
    EXPECT_EQ(goodHours(in, 1)->size(), 1u);
    EXPECT_EQ(goodHours(in, 0)->size(), 1u);
}

TEST(GoodHours, RefusesNonsense) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const CutHours sound = juneHours("2026-06-20T09:00", "2026-06-21T21:00", 10, 24, 20);
    const auto with = [&](auto change) {
        CutHours in = sound;
        change(in);
        const auto found = goodHours(in);
        EXPECT_FALSE(found.ok());
        return found.ok() ? GoodHoursTrouble{} : found.error();
    };
    const auto infinite = std::numeric_limits<double>::infinity();
    EXPECT_EQ(with([&](CutHours& in) { in.heatLimit = nan; }), GoodHoursTrouble::notFinite);
    EXPECT_EQ(with([&](CutHours& in) { in.heatLimit = infinite; }), GoodHoursTrouble::notFinite);
    EXPECT_EQ(with([&](CutHours& in) { in.days[0].civilDawn = nan; }), GoodHoursTrouble::notFinite);
    EXPECT_EQ(with([&](CutHours& in) { in.days[0].heat.minimum = nan; }), GoodHoursTrouble::badDay);
    EXPECT_EQ(with([&](CutHours& in) { in.days[0].heat.minimum = 30; }), GoodHoursTrouble::badDay);
    EXPECT_EQ(with([](CutHours& in) { in.latest = minuteOf("2026-06-20T08:59"); }),
              GoodHoursTrouble::outOfOrder);
    EXPECT_EQ(with([](CutHours& in) { in.latest = minuteOf("2027-06-22T09:00"); }),
              GoodHoursTrouble::tooWide);
    EXPECT_EQ(with([](CutHours& in) { in.earliest.minute = -1; }), GoodHoursTrouble::badTime);
    EXPECT_EQ(with([](CutHours& in) { in.latest.day = Day{900000}; }), GoodHoursTrouble::badTime);
    EXPECT_EQ(with([](CutHours& in) { in.work = Minutes(-1); }), GoodHoursTrouble::badWork);
    EXPECT_EQ(with([](CutHours& in) { in.work = Minutes(1441); }), GoodHoursTrouble::badWork);
    EXPECT_EQ(with([](CutHours& in) { in.days.clear(); }), GoodHoursTrouble::dayNotGiven);
    EXPECT_EQ(with([](CutHours& in) {
                  for (GardenDay& day : in.days)
                      day.day = day.day + 100;
              }),
              GoodHoursTrouble::dayNotGiven);
}

} // namespace
} // namespace withy::garden
