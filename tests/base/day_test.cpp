// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/day.h"

#include <gtest/gtest.h>

namespace withy {
namespace {

struct DayRow {
    const char* iso;
    int number;
    int weekday;
    int dayOfYear;
};

// Worked out with Python 3.11 datetime (toordinal, isoweekday, tm_yday). The rows of 1954, 1978 and 1988 are
// worked examples of J. Meeus, Astronomical Algorithms, chapter 7 (Wednesday; 318; 113), from memory.
constexpr DayRow dayRows[] = {
    {"1970-01-01", 0, 4, 1},      {"1954-06-30", -5664, 3, 181}, {"1978-11-14", 3239, 2, 318},
    {"1988-04-22", 6686, 5, 113}, {"2000-01-01", 10957, 6, 1},   {"2000-02-29", 11016, 2, 60},
    {"2024-02-29", 19782, 4, 60}, {"2026-12-31", 20818, 4, 365}, {"2024-12-31", 20088, 2, 366},
    {"1900-01-01", -25567, 1, 1}, {"2200-12-31", 84370, 3, 365},
};

TEST(Day, NumbersWeekdaysAndDaysOfTheYear) {
    for (const auto& row : dayRows) {
        SCOPED_TRACE(row.iso);
        const auto day = Day::parse(row.iso);
        ASSERT_TRUE(day.has_value());
        EXPECT_EQ(day->number, row.number);
        EXPECT_EQ(day->weekday(), row.weekday);
        EXPECT_EQ(day->dayOfYear(), row.dayOfYear);
        EXPECT_EQ(day->iso(), row.iso);
        EXPECT_EQ(Day::fromYmd(day->year(), day->month(), day->dayOfMonth()), day);
    }
}

TEST(Day, EveryDayOfThreeCenturiesReadsBack) {
    int count = 0;
    for (Day d = *Day::fromYmd(1900, 1, 1); d <= *Day::fromYmd(2200, 12, 31); d = d + 1, ++count)
        ASSERT_EQ(Day::parse(d.iso()), d);
    EXPECT_EQ(count, 109'938); // Python 3.11: date(2201,1,1) - date(1900,1,1)
}

TEST(Day, WhatIsNoDateIsRefused) {
    for (const char* text :
         {"",           "2026",        "2026-02-29",  "1900-02-29",  "2026-13-01", "2026-00-10",
          "2026-04-31", "2026-01-00",  "2026-1-01",   "2026-01-1",   "26-01-01",   "2026/01/01",
          "01-01-2026", " 2026-01-01", "2026-01-01 ", "2026-01-01T", "1899-12-31", "2201-01-01",
          "+026-01-01", "2026-01-0a",  "-2026-01-1"}) {
        SCOPED_TRACE(text);
        EXPECT_FALSE(Day::parse(text).has_value());
    }
}

TEST(Day, NumbersThatDoNotFitACalendarAreRefused) {
    EXPECT_FALSE(Day::fromYmd(2026, 257, 1).has_value()); // 256 + 1: January in eight bits
    EXPECT_FALSE(Day::fromYmd(2026, 1, 257).has_value());
    EXPECT_FALSE(Day::fromYmd(65'536 + 2026, 1, 1).has_value()); // 2026 in sixteen bits
    EXPECT_FALSE(Day::fromYmd(2026, -1, 1).has_value());
    EXPECT_FALSE(Day::fromYmd(2026, 0, 0).has_value());
}

TEST(Day, DaysAreCountedAcrossALeapDay) {
    EXPECT_EQ(*Day::parse("2024-03-01") - *Day::parse("2024-02-28"), 2);
    EXPECT_EQ(*Day::parse("2026-03-01") - *Day::parse("2026-02-28"), 1);
    EXPECT_EQ((*Day::parse("2024-02-28") + 1).iso(), "2024-02-29");
    EXPECT_EQ((*Day::parse("2024-03-01") - 1).iso(), "2024-02-29");
}

TEST(LocalTime, ReadsAndWrites) {
    const auto t = LocalTime::parse("2026-06-20T06:05");
    ASSERT_TRUE(t.has_value());
    EXPECT_EQ(t->minute, 365);
    EXPECT_EQ(t->clock(), "06:05");
    EXPECT_EQ(t->iso(), "2026-06-20T06:05");
    EXPECT_EQ(LocalTime::parse("2026-06-20 06:05"), t);
    EXPECT_EQ(LocalTime::parse("2024-02-29T23:59")->minute, 1439);
}

TEST(LocalTime, WhatIsNoTimeIsRefused) {
    for (const char* text :
         {"", "2026-06-20", "2026-06-20T24:00", "2026-06-20T23:60", "2026-06-20T6:05", "2026-06-20T06-05",
          "2026-06-20x06:05", "2026-02-29T06:05", "2026-06-20T06:05:00", "2026-06-20T-1:05"}) {
        SCOPED_TRACE(text);
        EXPECT_FALSE(LocalTime::parse(text).has_value());
    }
}

TEST(LocalTime, MinutesCarryIntoDaysBothWays) {
    const LocalTime late = *LocalTime::parse("2026-12-31T23:50");
    EXPECT_EQ((late + Minutes(20)).iso(), "2027-01-01T00:10");
    EXPECT_EQ((late + Minutes(20) - Minutes(20)), late);
    EXPECT_EQ((*LocalTime::parse("1970-01-01T00:00") - Minutes(1)).iso(), "1969-12-31T23:59");
    EXPECT_EQ(LocalTime::fromMinutes(-1440).iso(), "1969-12-31T00:00");
    EXPECT_EQ((late - *LocalTime::parse("2026-12-30T23:50")).value, 1440);
    EXPECT_LT(late, late + Minutes(1));
}

} // namespace
} // namespace withy
