// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/calendar_reading.h"
#include "tests/ui_logic/laid_run_up.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/calendar_file.h"
#include "ui/logic/format.h"

#include <gmock/gmock.h>

#include <set>

namespace withy::ui::tests {

namespace {

namespace reading = exchange::tests;

const QDateTime firstWritten(QDate(2027, 9, 6), QTime(7, 0), Qt::UTC);

std::string fileOf(const model::Season& season, const plan::Plan& plan, const QDateTime& at = firstWritten) {
    return exchange::calendarText(seasonCalendar(season, plan, at));
}

} // namespace

class CalendarFile : public LogicTest {};

TEST_F(CalendarFile, HoldsEveryBookingAndStepOnce) {
    const auto season = demoSeason();
    const auto plan = withRunUp(season, demoPlan(season));
    const auto calendar = seasonCalendar(season, plan, firstWritten);
    std::set<std::string> uids;
    for (const auto& entry : calendar.entries)
        uids.insert(entry.uid);
    EXPECT_EQ(uids.size(), calendar.entries.size());
    std::size_t expected = 0;
    for (const auto& booking : season.bookings)
        expected += booking.standing != model::Standing::lost ? 1 : 0;
    for (const auto& step : runUpSteps(season, plan))
        expected += step.to > step.from ? 1 : 0;
    EXPECT_EQ(calendar.entries.size(), expected);
    const auto supper = std::find_if(calendar.entries.begin(), calendar.entries.end(),
                                     [](const auto& e) { return e.summary == "Library roof supper"; });
    ASSERT_NE(supper, calendar.entries.end());
    EXPECT_EQ(supper->location, "Marrowby Village Hall, Church Row, Marrowby");
    EXPECT_THAT(supper->description, testing::HasSubstr("24 ×"));
    EXPECT_FALSE(supper->tentative);
}

/// The demo season runs from March to October, over both changes of the clocks.
TEST_F(CalendarFile, IsReadBackWithoutAComplaint) {
    const auto season = demoSeason();
    const auto plan = withRunUp(season, demoPlan(season));
    const auto calendar = seasonCalendar(season, plan, firstWritten);
    const auto file = exchange::calendarText(calendar);
    const auto zone = *Zone::fromPosix(season.theSettings().zoneRule);
    std::vector<std::string> complaints;
    std::vector<std::pair<std::string, reading::ReadEvents>> readers;
    readers.emplace_back("libical", reading::readByLibical({file}, complaints));
    for (const std::string library : {"icalendar", "vobject"})
        if (auto events = reading::readByPython(library, {file}, complaints))
            readers.emplace_back(library, std::move(*events));
    EXPECT_EQ(complaints, std::vector<std::string>{});
    bool winter = false, summer = false;
    for (const auto& [reader, events] : readers) {
        SCOPED_TRACE(reader);
        ASSERT_EQ(events.size(), calendar.entries.size());
        for (const auto& entry : calendar.entries) {
            const auto& read = events.at(entry.uid);
            EXPECT_EQ(read.summary, entry.summary);
            EXPECT_EQ(read.from, zone.instantNear(entry.from).seconds) << entry.from.iso();
            EXPECT_EQ(read.to, std::max(zone.instantNear(entry.to), zone.instantNear(entry.from)).seconds);
            (entry.from.day.month() < 4 ? winter : summer) = true;
        }
    }
    EXPECT_TRUE(winter && summer);
}

TEST_F(CalendarFile, AMoveAndANewNameUpdateWhatIsThere) {
    auto season = demoSeason();
    const auto before = withRunUp(season, demoPlan(season));
    auto supper = *season.bookings.find(roofSupper);
    supper.title = "Roof supper, moved";
    supper.eventStart = supper.eventStart + Minutes(60);
    supper.eventEnd = supper.eventEnd + Minutes(60);
    auto settings = season.theSettings();
    settings.seasonName = "Another name";
    auto moved = season;
    moved.bookings.put(supper);
    moved.settings.put(settings);
    const auto after = withRunUp(moved, demoPlan(moved));
    std::vector<std::string> complaints;
    const auto first = fileOf(season, before);
    const auto second = fileOf(moved, after, firstWritten.addSecs(3600));
    const auto once = reading::readByLibical({first}, complaints);
    const auto both = reading::readByLibical({first, second, second}, complaints);
    EXPECT_EQ(complaints, std::vector<std::string>{});
    EXPECT_EQ(both.size(), once.size()) << "nothing doubled";
    int renamed = 0;
    for (const auto& [uid, event] : both) {
        renamed += event.summary == "Roof supper, moved" ? 1 : 0;
        EXPECT_NE(event.summary, "Library roof supper");
    }
    EXPECT_EQ(renamed, 1);
}

TEST_F(CalendarFile, AnotherSeasonsThingsAreOthers) {
    const auto season = demoSeason();
    const auto plan = demoPlan(season);
    auto next = season.theSettings();
    next.firstDay = *Day::fromYmd(2028, 3, 1);
    next.lastDay = *Day::fromYmd(2028, 10, 31);
    auto later = season;
    later.settings.put(next);
    std::set<std::string> uids;
    for (const auto& entry : seasonCalendar(season, plan, firstWritten).entries)
        uids.insert(entry.uid);
    const auto others = seasonCalendar(later, plan, firstWritten).entries;
    ASSERT_FALSE(uids.empty() || others.empty());
    for (const auto& entry : others)
        EXPECT_FALSE(uids.contains(entry.uid)) << entry.summary;
}

TEST_F(CalendarFile, IsWrittenOrSaysWhyNot) {
    const auto season = demoSeason();
    const auto plan = demoPlan(season);
    const QString path = at("season.ics");
    EXPECT_EQ(writeCalendar(season, plan, firstWritten, path), QString());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().toStdString(), fileOf(season, plan));
    EXPECT_TRUE(writeCalendar(season, plan, firstWritten, at("no such folder/season.ics"))
                    .contains(QStringLiteral("Choose another folder")));
    EXPECT_TRUE(calendarFileName(season).endsWith(QStringLiteral(".ics")));
}

} // namespace withy::ui::tests
