// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/zone.h"

#include <gtest/gtest.h>

namespace withy {
namespace {

struct ClockRow {
    const char* place;
    const char* rule;
    std::int64_t instant;
    const char* local;
};

// The minute before and the minute of every change of the clocks in 2026 (London also 2028), worked out
// with Python 3.11 zoneinfo on the IANA time zone database 2025b; the rule is the last line of the zone's
// file.
constexpr ClockRow clockRows[] = {
    {"Europe/London", "GMT0BST,M3.5.0/1,M10.5.0", 1774745940, "2026-03-29T00:59"},
    {"Europe/London", "GMT0BST,M3.5.0/1,M10.5.0", 1774746000, "2026-03-29T02:00"},
    {"Europe/London", "GMT0BST,M3.5.0/1,M10.5.0", 1792889940, "2026-10-25T01:59"},
    {"Europe/London", "GMT0BST,M3.5.0/1,M10.5.0", 1792890000, "2026-10-25T01:00"},
    {"Europe/London", "GMT0BST,M3.5.0/1,M10.5.0", 1837645140, "2028-03-26T00:59"},
    {"Europe/London", "GMT0BST,M3.5.0/1,M10.5.0", 1837645200, "2028-03-26T02:00"},
    {"Europe/London", "GMT0BST,M3.5.0/1,M10.5.0", 1856393940, "2028-10-29T01:59"},
    {"Europe/London", "GMT0BST,M3.5.0/1,M10.5.0", 1856394000, "2028-10-29T01:00"},
    {"America/New_York", "EST5EDT,M3.2.0,M11.1.0", 1772953140, "2026-03-08T01:59"},
    {"America/New_York", "EST5EDT,M3.2.0,M11.1.0", 1772953200, "2026-03-08T03:00"},
    {"America/New_York", "EST5EDT,M3.2.0,M11.1.0", 1793512740, "2026-11-01T01:59"},
    {"America/New_York", "EST5EDT,M3.2.0,M11.1.0", 1793512800, "2026-11-01T01:00"},
    {"Australia/Sydney", "AEST-10AEDT,M10.1.0,M4.1.0/3", 1775318340, "2026-04-05T02:59"},
    {"Australia/Sydney", "AEST-10AEDT,M10.1.0,M4.1.0/3", 1775318400, "2026-04-05T02:00"},
    {"Australia/Sydney", "AEST-10AEDT,M10.1.0,M4.1.0/3", 1791043140, "2026-10-04T01:59"},
    {"Australia/Sydney", "AEST-10AEDT,M10.1.0,M4.1.0/3", 1791043200, "2026-10-04T03:00"},
    {"Europe/Dublin", "IST-1GMT0,M10.5.0,M3.5.0/1", 1774745940, "2026-03-29T00:59"},
    {"Europe/Dublin", "IST-1GMT0,M10.5.0,M3.5.0/1", 1774746000, "2026-03-29T02:00"},
    {"Europe/Dublin", "IST-1GMT0,M10.5.0,M3.5.0/1", 1792889940, "2026-10-25T01:59"},
    {"Europe/Dublin", "IST-1GMT0,M10.5.0,M3.5.0/1", 1792890000, "2026-10-25T01:00"},
    {"Australia/Lord_Howe", "<+1030>-10:30<+11>-11,M10.1.0,M4.1.0", 1775314740, "2026-04-05T01:59"},
    {"Australia/Lord_Howe", "<+1030>-10:30<+11>-11,M10.1.0,M4.1.0", 1775314800, "2026-04-05T01:30"},
    {"Australia/Lord_Howe", "<+1030>-10:30<+11>-11,M10.1.0,M4.1.0", 1791041340, "2026-10-04T01:59"},
    {"Australia/Lord_Howe", "<+1030>-10:30<+11>-11,M10.1.0,M4.1.0", 1791041400, "2026-10-04T02:30"},
    {"Asia/Jerusalem", "IST-2IDT,M3.4.4/26,M10.5.0", 1774569540, "2026-03-27T01:59"},
    {"Asia/Jerusalem", "IST-2IDT,M3.4.4/26,M10.5.0", 1774569600, "2026-03-27T03:00"},
    {"Asia/Jerusalem", "IST-2IDT,M3.4.4/26,M10.5.0", 1792882740, "2026-10-25T01:59"},
    {"Asia/Jerusalem", "IST-2IDT,M3.4.4/26,M10.5.0", 1792882800, "2026-10-25T01:00"},
    {"Asia/Kathmandu", "<+0545>-5:45", 1782864000, "2026-07-01T05:45"},
    {"America/Nuuk", "<-02>2<-01>,M3.5.0/-1,M10.5.0/0", 1774745940, "2026-03-28T22:59"},
    {"America/Nuuk", "<-02>2<-01>,M3.5.0/-1,M10.5.0/0", 1774746000, "2026-03-29T00:00"},
    {"America/Nuuk", "<-02>2<-01>,M3.5.0/-1,M10.5.0/0", 1792889940, "2026-10-24T23:59"},
    {"America/Nuuk", "<-02>2<-01>,M3.5.0/-1,M10.5.0/0", 1792890000, "2026-10-24T23:00"},
    {"America/St_Johns", "NST3:30NDT,M3.2.0,M11.1.0", 1772947740, "2026-03-08T01:59"},
    {"America/St_Johns", "NST3:30NDT,M3.2.0,M11.1.0", 1772947800, "2026-03-08T03:00"},
    {"America/St_Johns", "NST3:30NDT,M3.2.0,M11.1.0", 1793507340, "2026-11-01T01:59"},
    {"America/St_Johns", "NST3:30NDT,M3.2.0,M11.1.0", 1793507400, "2026-11-01T01:00"},
};

TEST(Zone, LocalTimesAreThoseOfTheIanaDatabase) {
    for (const auto& row : clockRows) {
        SCOPED_TRACE(std::string(row.place) + " " + row.local);
        const auto zone = Zone::fromPosix(row.rule);
        ASSERT_TRUE(zone.has_value());
        EXPECT_EQ(zone->local(Instant{row.instant}).iso(), row.local);
    }
}

TEST(Zone, EveryLocalTimeThatHappensOnceReadsBackToItsInstant) {
    for (const auto& row : clockRows) {
        SCOPED_TRACE(std::string(row.place) + " " + row.local);
        const auto zone = Zone::fromPosix(row.rule);
        ASSERT_TRUE(zone.has_value());
        int twice = 0;
        for (std::int64_t hours = -400; hours <= 400; ++hours) {
            const Instant at{row.instant + hours * 3600};
            const auto back = zone->instant(zone->local(at));
            if (back.ok()) {
                EXPECT_EQ(*back, at);
            } else {
                EXPECT_EQ(back.error(), ClockTrouble::repeated);
                ++twice;
            }
        }
        EXPECT_LE(twice, 2); // an hour apart: both readings of one repeated hour at most
    }
}

struct TroubleRow {
    const char* place;
    const char* rule;
    const char* local;
    bool skipped;         ///< or else repeated
    std::int64_t nearest; ///< the moment of the change; the first of the two
};

// Gaps and overlaps as in the table above (IANA 2025b).
constexpr TroubleRow troubleRows[] = {
    {"London, skipped from", "GMT0BST,M3.5.0/1,M10.5.0", "2026-03-29T01:00", true, 1774746000},
    {"London, skipped to", "GMT0BST,M3.5.0/1,M10.5.0", "2026-03-29T01:59", true, 1774746000},
    {"London, twice from", "GMT0BST,M3.5.0/1,M10.5.0", "2026-10-25T01:00", false, 1792886400},
    {"London, twice to", "GMT0BST,M3.5.0/1,M10.5.0", "2026-10-25T01:59", false, 1792889940},
    {"New York, skipped", "EST5EDT,M3.2.0,M11.1.0", "2026-03-08T02:30", true, 1772953200},
    {"New York, twice", "EST5EDT,M3.2.0,M11.1.0", "2026-11-01T01:30", false, 1793511000},
    {"Sydney, skipped", "AEST-10AEDT,M10.1.0,M4.1.0/3", "2026-10-04T02:30", true, 1791043200},
    {"Sydney, twice", "AEST-10AEDT,M10.1.0,M4.1.0/3", "2026-04-05T02:30", false, 1775316600},
    {"Dublin, skipped", "IST-1GMT0,M10.5.0,M3.5.0/1", "2026-03-29T01:30", true, 1774746000},
    {"Dublin, twice", "IST-1GMT0,M10.5.0,M3.5.0/1", "2026-10-25T01:30", false, 1792888200},
    {"Lord Howe, skipped", "<+1030>-10:30<+11>-11,M10.1.0,M4.1.0", "2026-10-04T02:15", true, 1791041400},
    {"Lord Howe, twice", "<+1030>-10:30<+11>-11,M10.1.0,M4.1.0", "2026-04-05T01:45", false, 1775313900},
};

TEST(Zone, SkippedAndRepeatedMinutesAreToldApart) {
    for (const auto& row : troubleRows) {
        SCOPED_TRACE(row.place);
        const auto zone = Zone::fromPosix(row.rule);
        ASSERT_TRUE(zone.has_value());
        const LocalTime t = *LocalTime::parse(row.local);
        ASSERT_FALSE(zone->instant(t).ok());
        EXPECT_EQ(zone->instant(t).error(), row.skipped ? ClockTrouble::skipped : ClockTrouble::repeated);
        EXPECT_EQ(zone->instantNear(t).seconds, row.nearest);
    }
}

TEST(Zone, TheMinutesNextToAChangeHappenOnce) {
    const Zone london = *Zone::fromPosix("GMT0BST,M3.5.0/1:00,M10.5.0/2:00");
    for (const char* t : {"2026-03-29T00:59", "2026-03-29T02:00", "2026-10-25T00:59", "2026-10-25T02:00"}) {
        SCOPED_TRACE(t);
        EXPECT_TRUE(london.instant(*LocalTime::parse(t)).ok());
    }
}

TEST(Zone, TheNightTheClocksChangeHasAnHourLessOrMore) {
    const Zone london = *Zone::fromPosix("GMT0BST,M3.5.0/1,M10.5.0");
    const auto day = [&](const char* from, const char* to) {
        return london.hoursBetween(*LocalTime::parse(from), *LocalTime::parse(to));
    };
    EXPECT_DOUBLE_EQ(day("2026-03-28T12:00", "2026-03-29T12:00"), 23);
    EXPECT_DOUBLE_EQ(day("2026-10-24T12:00", "2026-10-25T12:00"), 25);
    EXPECT_DOUBLE_EQ(day("2026-06-20T12:00", "2026-06-21T12:00"), 24);
    EXPECT_DOUBLE_EQ(day("2026-06-21T12:00", "2026-06-20T12:00"), -24);
}

TEST(Zone, RulesByDayNumber) {
    // IEEE Std 1003.1 Base Definitions 8.3: Jn counts from 1 and never 29 February, n counts from 0 and does.
    const Zone julian = *Zone::fromPosix("AAA0BBB,J60/0,J300/0");
    const Zone counted = *Zone::fromPosix("AAA0BBB,59/0,299/0");
    const auto summer = [](const Zone& z, const char* text) {
        const LocalTime t = *LocalTime::parse(text);
        return z.instant(t)->seconds != t.minutesSinceEpoch() * 60;
    };
    EXPECT_FALSE(summer(julian, "2024-02-29T12:00"));
    EXPECT_TRUE(summer(julian, "2024-03-01T12:00"));
    EXPECT_TRUE(summer(counted, "2024-02-29T12:00"));
    EXPECT_FALSE(summer(counted, "2024-02-28T12:00"));
}

TEST(Zone, WhatIsNoRuleIsRefused) {
    const std::string bad[] = {"",
                               "GMT",
                               "0",
                               "GM0",
                               "Europe/London",
                               "GMT0BST",
                               "GMT0BST,M3.5.0/1",
                               "GMT0BST,M13.5.0/1,M10.5.0",
                               "GMT0BST,M3.6.0/1,M10.5.0",
                               "GMT0BST,M3.0.0/1,M10.5.0",
                               "GMT0BST,M3.5.7/1,M10.5.0",
                               "GMT0BST,J0,J300",
                               "GMT0BST,J366,J300",
                               "GMT0BST,M3.5.0/168,M10.5.0",
                               "GMT0BST,M3.5.0/1:60,M10.5.0",
                               "GMT0BST,M3.5.0/1,M10.5.0 ",
                               "GMT25",
                               "GMT16",
                               "<GMT0",
                               "<>0",
                               "GMT99999999999999999999",
                               std::string(200, 'A') + "0"};
    for (const auto& text : bad) {
        SCOPED_TRACE("'" + text + "'");
        EXPECT_FALSE(Zone::fromPosix(text).has_value());
    }
}

TEST(Zone, UniversalTimeIsItself) {
    EXPECT_EQ(Zone::utc().local(Instant{0}).iso(), "1970-01-01T00:00");
    EXPECT_EQ(Zone::utc().local(Instant{-1}).iso(), "1969-12-31T23:59");
    // 1234567890: the well-known Unix second, 13 February 2009 23:31:30 UTC (Python 3.11 datetime agrees).
    EXPECT_EQ(Zone::utc().local(Instant{1234567890}).iso(), "2009-02-13T23:31");
}

} // namespace
} // namespace withy
