// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/calendar_out.h"
#include "core/exchange/zone_changes.h"
#include "tests/exchange/calendar_reading.h"

#include <gtest/gtest.h>

#include <limits>

namespace withy::exchange::tests {

namespace {

const std::string london = "GMT0BST,M3.5.0/1:00,M10.5.0/2:00";
const std::string newYork = "EST5EDT,M3.2.0,M11.1.0";
const std::string hobart = "AEST-10AEDT,M10.1.0,M4.1.0/3";
const std::string odd = "AAA3BBB,M3.5.4/50,M10.5.0"; // changes 50 hours after the last Thursday began
const std::string kathmandu = "<+0545>-5:45";

LocalTime at(const std::string& iso) {
    return *LocalTime::parse(iso);
}

std::int64_t utc(const std::string& iso) {
    return Zone::utc().instantNear(at(iso)).seconds;
}

CalendarEntry entry(const std::string& uid, const std::string& from, const std::string& to) {
    CalendarEntry e;
    e.uid = uid;
    e.from = at(from);
    e.to = at(to);
    e.summary = uid;
    return e;
}

CalendarOut calendar(const std::string& rule, std::vector<CalendarEntry> entries) {
    return {"Season", rule, Instant{utc("2027-02-01T12:00")}, std::move(entries)};
}

/// Every reader's events; those not installed are left out.
std::vector<std::pair<std::string, ReadEvents>> readByAll(const std::vector<std::string>& files) {
    std::vector<std::pair<std::string, ReadEvents>> out;
    std::vector<std::string> complaints;
    out.emplace_back("libical", readByLibical(files, complaints));
    for (const std::string library : {"icalendar", "vobject"})
        if (auto events = readByPython(library, files, complaints))
            out.emplace_back(library, std::move(*events));
    EXPECT_EQ(complaints, std::vector<std::string>{});
    return out;
}

struct Moment {
    const char* what;
    std::string rule;
    const char* local;
    const char* universal;
};

} // namespace

/// Changes of the clocks of 2027: the day and hour of universal time as the tz database (2024a, files europe,
/// northamerica and australasia) gives them.
TEST(CalendarOut, FindsTheChangesOfTheClocks) {
    struct Row {
        std::string rule;
        const char* first;
        const char* second;
    };

    for (const auto& row : {Row{london, "2027-03-28T01:00", "2027-10-31T01:00"},
                            Row{newYork, "2027-03-14T07:00", "2027-11-07T06:00"},
                            Row{hobart, "2027-04-03T16:00", "2027-10-02T16:00"}}) {
        SCOPED_TRACE(row.rule);
        const auto changes = zoneChanges(*Zone::fromPosix(row.rule), 2027, 2027);
        ASSERT_EQ(changes.size(), 2U);
        EXPECT_EQ(changes[0].at.seconds, utc(row.first));
        EXPECT_EQ(changes[1].at.seconds, utc(row.second));
    }
    EXPECT_TRUE(zoneChanges(*Zone::fromPosix(kathmandu), 2027, 2027).empty());
}

/// The recurrences are those of RFC 5545 itself for New York (3.6.5); the others by the tz database (2024a).
TEST(CalendarOut, KnowsTheYearlyRule) {
    struct Row {
        std::string rule;
        const char* spring;
        const char* autumn;
    };

    for (const auto& row :
         {Row{newYork, "FREQ=YEARLY;BYMONTH=3;BYDAY=2SU", "FREQ=YEARLY;BYMONTH=11;BYDAY=1SU"},
          Row{london, "FREQ=YEARLY;BYMONTH=3;BYDAY=-1SU", "FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU"},
          Row{hobart, "FREQ=YEARLY;BYMONTH=4;BYDAY=1SU", "FREQ=YEARLY;BYMONTH=10;BYDAY=1SU"},
          // Changes on fixed days; and one that keeps to no weekday of its month, as it is 50 hours after
          // one.
          Row{"AAA3BBB,J60,J305", "FREQ=YEARLY;BYMONTH=3;BYMONTHDAY=1",
              "FREQ=YEARLY;BYMONTH=11;BYMONTHDAY=1"},
          Row{"AAA3BBB,M3.5.4/50,M10.5.0", "", "FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU"}}) {
        SCOPED_TRACE(row.rule);
        std::vector<LocalTime> spring, autumn;
        for (const auto& c : zoneChanges(*Zone::fromPosix(row.rule), 1971, 2040))
            (c.before.day.month() < 7 ? spring : autumn).push_back(c.before);
        EXPECT_EQ(yearlyRule(spring), row.spring);
        EXPECT_EQ(yearlyRule(autumn), row.autumn);
    }
}

/// The same moments for every reader, on either side of both changes, in the hour that is skipped and the one
/// that comes twice; universal times by the tz database (2024a).
TEST(CalendarOut, EveryReaderSeesTheSameMomentsAcrossTheChangesOfTheClocks) {
    const Moment moments[] = {
        {"night before spring", london, "2027-03-27T23:30", "2027-03-27T23:30"},
        {"last minute of winter", london, "2027-03-28T00:59", "2027-03-28T00:59"},
        {"skipped: the first minute after", london, "2027-03-28T01:30", "2027-03-28T01:00"},
        {"first minute of summer", london, "2027-03-28T02:00", "2027-03-28T01:00"},
        {"a summer noon", london, "2027-07-10T12:00", "2027-07-10T11:00"},
        {"before the night goes back", london, "2027-10-31T00:59", "2027-10-30T23:59"},
        {"twice: the first of them", london, "2027-10-31T01:30", "2027-10-31T00:30"},
        {"after the night went back", london, "2027-10-31T02:00", "2027-10-31T02:00"},
        {"a winter noon", london, "2027-12-10T12:00", "2027-12-10T12:00"},
        {"January, before any change of the year", london, "2027-01-10T12:00", "2027-01-10T12:00"},
        {"New York in summer", newYork, "2027-07-04T18:00", "2027-07-04T22:00"},
        {"New York after autumn", newYork, "2027-11-07T02:00", "2027-11-07T07:00"},
        {"Hobart in January", hobart, "2027-01-26T12:00", "2027-01-26T01:00"},
        {"Hobart in July", hobart, "2027-07-26T12:00", "2027-07-26T02:00"},
        {"no yearly rule, winter", odd, "2027-03-10T12:00", "2027-03-10T15:00"},
        {"no yearly rule, summer", odd, "2027-06-10T12:00", "2027-06-10T14:00"},
        {"Kathmandu", kathmandu, "2027-07-26T12:00", "2027-07-26T06:15"},
    };
    for (const auto& rule : {london, newYork, hobart, kathmandu, odd}) {
        SCOPED_TRACE(rule);
        std::vector<CalendarEntry> entries;
        for (const auto& m : moments)
            if (m.rule == rule) entries.push_back(entry(m.what, m.local, m.local));
        for (const auto& [reader, events] : readByAll({calendarText(calendar(rule, entries))})) {
            SCOPED_TRACE(reader);
            EXPECT_EQ(events.size(), entries.size());
            for (const auto& m : moments) {
                if (m.rule != rule) continue;
                SCOPED_TRACE(m.what);
                ASSERT_TRUE(events.contains(m.what));
                EXPECT_EQ(events.at(m.what).from, utc(m.universal));
            }
        }
    }
}

/// RFC 5545, 3.3.11: commas, semicolons, backslashes and line ends are escaped; 3.1: no line over 75 octets.
TEST(CalendarOut, WordsComeBackAsTheyWere) {
    auto e = entry("words", "2027-09-10T06:35", "2027-09-10T07:50");
    e.summary = "Cut 53 Dahlia, plum; 80 Zinnia \\ coral: \"dawn\"";
    e.location = "Köszeg Mühle, 2 Økern gate, 花園";
    e.description = "First line.\nSecond, after a break.\n";
    for (int i = 0; i < 20; ++i)
        e.description += "From patch 5, Tunnel side: 46 Zinnia – coral; ";
    e.description += ".";
    const auto file = calendarText(calendar(london, {e}));
    for (std::size_t from = 0; from < file.size();) {
        const auto end = file.find("\r\n", from);
        ASSERT_NE(end, std::string::npos) << "every line ends in CR LF";
        EXPECT_LE(end - from, 75U) << file.substr(from, end - from);
        from = end + 2;
    }
    for (const auto& [reader, events] : readByAll({file})) {
        SCOPED_TRACE(reader);
        ASSERT_EQ(events.size(), 1U);
        EXPECT_EQ(events.at("words").summary, e.summary);
        EXPECT_EQ(events.at("words").location, e.location);
        EXPECT_EQ(events.at("words").description, e.description);
    }
}

TEST(CalendarOut, WhatNoTextMayHoldBecomesReadable) {
    auto e = entry("bad", "2027-09-10T06:35", "2027-09-10T07:50");
    e.summary = "tab\there, bell\a, half \xC3, END:VCALENDAR";
    e.description = "a\r\nb";
    for (const auto& [reader, events] : readByAll({calendarText(calendar(london, {e}))})) {
        SCOPED_TRACE(reader);
        ASSERT_EQ(events.size(), 1U);
        EXPECT_EQ(events.at("bad").summary, "tab here, bell , half \xEF\xBF\xBD, END:VCALENDAR");
        EXPECT_EQ(events.at("bad").description, "a\nb");
    }
}

TEST(CalendarOut, TakenInTwiceLeavesOneOfEachAndTheLaterWords) {
    auto first = calendar(london, {entry("round", "2027-09-10T06:35", "2027-09-10T07:50"),
                                   entry("make", "2027-09-10T15:10", "2027-09-10T16:25"),
                                   entry("gone", "2027-09-10T17:00", "2027-09-10T17:10")});
    auto second = calendar(london, {entry("round", "2027-09-10T06:10", "2027-09-10T07:25"),
                                    entry("make", "2027-09-10T15:10", "2027-09-10T16:25"),
                                    entry("new", "2027-09-11T12:00", "2027-09-11T12:30")});
    second.written.seconds += 60;
    second.entries[0].summary = "Cut earlier";
    for (const auto& [reader, events] : readByAll({calendarText(first), calendarText(second)})) {
        SCOPED_TRACE(reader);
        EXPECT_EQ(events.size(), 4U);
        ASSERT_TRUE(events.contains("round"));
        EXPECT_EQ(events.at("round").summary, "Cut earlier");
        EXPECT_EQ(events.at("round").from, utc("2027-09-10T05:10"));
        EXPECT_EQ(events.at("round").to, utc("2027-09-10T06:25"));
    }
    // Taken in again in the wrong order, the later file's words stay.
    for (const auto& [reader, events] : readByAll({calendarText(second), calendarText(first)})) {
        SCOPED_TRACE(reader);
        EXPECT_EQ(events.at("round").summary, "Cut earlier");
    }
}

TEST(CalendarOut, AnEventPastMidnightAndOneOfNoLength) {
    const auto file =
        calendarText(calendar(london, {entry("party", "2027-10-30T20:00", "2027-10-31T02:30"),
                                       entry("moment", "2027-09-10T17:00", "2027-09-10T17:00")}));
    for (const auto& [reader, events] : readByAll({file})) {
        SCOPED_TRACE(reader);
        EXPECT_EQ(events.at("party").to - events.at("party").from, (6 * 60 + 30 + 60) * 60); // an hour more
        EXPECT_EQ(events.at("moment").to, events.at("moment").from);
    }
}

TEST(CalendarOut, WithoutARuleTimesBearNoZone) {
    const auto file =
        calendarText(calendar("no rule", {entry("one", "2027-09-10T17:00", "2027-09-10T18:00")}));
    EXPECT_NE(file.find("\r\nDTSTART:20270910T170000\r\n"), std::string::npos) << file;
    EXPECT_EQ(file.find("VTIMEZONE"), std::string::npos);
    std::vector<std::string> complaints;
    readByLibical({file}, complaints);
    EXPECT_EQ(complaints, std::vector<std::string>{});
}

TEST(CalendarOut, NothingToWriteIsStillACalendar) {
    const auto file = calendarText(calendar(london, {}));
    EXPECT_EQ(file.rfind("BEGIN:VCALENDAR\r\n", 0), 0U);
    EXPECT_NE(file.find("\r\nVERSION:2.0\r\n"), std::string::npos);
    EXPECT_NE(file.find("END:VCALENDAR\r\n"), std::string::npos);
}

/// The readers of the other tests: without them those would only hear libical.
TEST(CalendarOut, SecondReadersAreThere) {
    std::vector<std::string> complaints;
    std::string missing;
    for (const std::string library : {"icalendar", "vobject"})
        if (!readByPython(
                library,
                {calendarText(calendar(london, {entry("one", "2027-09-10T17:00", "2027-09-10T18:00")}))},
                complaints))
            missing += " python3-" + library;
    EXPECT_EQ(missing, "") << "not installed, so our calendars were not read; tests/run installs them";
    EXPECT_EQ(complaints, std::vector<std::string>{});
}

/// "The revision sequence number of the calendar component ... MUST be incremented each time" the organiser
/// makes a significant revision (RFC 5545, 3.8.7.4): a file written seconds later has changed too. Integers
/// are of 32 bits with a sign (3.3.8).
TEST(CalendarOut, AFileOfTheNextSecondIsALaterRevision) {
    const auto sequenceAt = [](const char* day, std::int64_t second) {
        auto file = calendar(london, {entry("round", "2027-09-10T06:35", "2027-09-10T07:50")});
        file.written = Instant{utc(day) + second};
        std::vector<std::string> complaints;
        return readByLibical({calendarText(file)}, complaints).at("round").sequence;
    };
    EXPECT_LT(sequenceAt("2027-09-06T07:00", 1), sequenceAt("2027-09-06T07:00", 2));
    EXPECT_LT(sequenceAt("2027-09-06T07:00", 59), sequenceAt("2027-09-06T07:01", 0));
    // Files of an earlier make counted minutes since 1970: none of them is the later one.
    EXPECT_GT(sequenceAt("2026-01-01T00:00", 0), (utc("2040-01-01T00:00")) / 60);
    EXPECT_GE(sequenceAt("2019-01-01T00:00", 0), 0);
    EXPECT_LE(sequenceAt("2087-12-31T00:00", 0), std::numeric_limits<std::int32_t>::max());
    EXPECT_LT(sequenceAt("2087-12-30T00:00", 0), sequenceAt("2087-12-31T00:00", 0));
}

} // namespace withy::exchange::tests
