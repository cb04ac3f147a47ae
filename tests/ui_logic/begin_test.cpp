// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/zone.h"
#include "core/model/edit.h"
#include "ui/logic/begin/first_season.h"
#include "ui/logic/begin/known_places.h"
#include "ui/logic/starting_seasons.h"

#include <QFile>

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace withy::ui {

namespace {

FirstAnswers wrenBank() {
    auto a = proposedAnswers(QLocale(QLocale::English, QLocale::UnitedKingdom), QDate(2026, 11, 25));
    a.place = QStringLiteral("Wren Bank");
    a.latitude = QStringLiteral("52.4 N");
    a.longitude = QStringLiteral("2.7 W");
    return a;
}

} // namespace

TEST(ReadDegrees, TakesWhatPeopleType) {
    struct Row {
        const char* typed;
        char positive;
        char negative;
        double most;
        std::optional<double> degrees;
    };

    const std::vector<Row> rows = {
        {"52.4", 'n', 's', 90, 52.4},
        {" 52,4 N ", 'n', 's', 90, 52.4},
        {"52.4° north", 'n', 's', 90, 52.4},
        {"33.9 S", 'n', 's', 90, -33.9},
        {"-33.9", 'n', 's', 90, -33.9},
        {"2.7 W", 'e', 'w', 180, -2.7},
        {"174.8 east", 'e', 'w', 180, 174.8},
        {"90", 'n', 's', 90, 90.0},
        {"90.1", 'n', 's', 90, {}},
        {"-181", 'e', 'w', 180, {}},
        {"", 'n', 's', 90, {}},
        {"north", 'n', 's', 90, {}},
        {"52.4 E", 'n', 's', 90, {}},
        {"-5 S", 'n', 's', 90, {}},
        {"52.4.1", 'n', 's', 90, {}},
        {"1e1", 'n', 's', 90, {}},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.typed);
        EXPECT_EQ(readDegrees(QString::fromUtf8(row.typed), row.positive, row.negative, row.most),
                  row.degrees);
    }
}

// Source: the IANA time zone database as tzdata compiles it; each file ends with its POSIX rule.
TEST(KnownPlaces, ClocksAreThoseOfTheTimeZoneDatabase) {
    for (const auto& place : knownPlaces()) {
        SCOPED_TRACE(place.words().toStdString());
        EXPECT_TRUE(Zone::fromPosix(place.zoneRule));
        EXPECT_LE(std::abs(place.latitude), 90);
        EXPECT_LE(std::abs(place.longitude), 180);
        QFile file(QStringLiteral("/usr/share/zoneinfo/") + QString::fromStdString(place.zone));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << "tests/run installs tzdata";
        const auto lines = file.readAll().split('\n');
        ASSERT_GE(lines.size(), 2);
        EXPECT_EQ(lines[lines.size() - 2].toStdString(), place.zoneRule);
    }
    EXPECT_GT(knownPlaces().size(), 80u);
}

TEST(KnownPlaces, TheNearestGivesTheClock) {
    EXPECT_EQ(nearestPlace(52.4, -2.7)->zone, "Europe/London");
    EXPECT_EQ(nearestPlace(51.9, -8.4)->zone, "Europe/Dublin");
    EXPECT_EQ(nearestPlace(-41.3, 174.8)->zone, "Pacific/Auckland");
    EXPECT_EQ(nearestPlace(-40, -179)->zone, "Pacific/Auckland"); // across the line where longitudes meet
    EXPECT_EQ(placeOf(QStringLiteral(" suffolk, england"))->latitude, 52.0);
    EXPECT_EQ(placeOf(QStringLiteral("nowhere")), nullptr);
}

TEST(ProposedAnswers, FollowTheComputersLanguageAndTheDate) {
    const auto british = wrenBank();
    EXPECT_EQ(british.units, model::UnitSystem::metric);
    EXPECT_EQ(british.currency, QStringLiteral("GBP"));
    EXPECT_EQ(british.paper, model::PaperSize::a4);
    EXPECT_EQ(british.first, QDate(2027, 3, 1)); // in November one plans the next year
    const auto american =
        proposedAnswers(QLocale(QLocale::English, QLocale::UnitedStates), QDate(2027, 4, 1));
    EXPECT_EQ(american.units, model::UnitSystem::imperial);
    EXPECT_EQ(american.currency, QStringLiteral("USD"));
    EXPECT_EQ(american.paper, model::PaperSize::letter);
    EXPECT_EQ(american.last, QDate(2027, 10, 31));
    EXPECT_EQ(proposedDates(-36, QDate(2027, 2, 1)), std::pair(QDate(2026, 9, 1), QDate(2027, 4, 30)));
    EXPECT_EQ(proposedDates(-36, QDate(2027, 8, 1)), std::pair(QDate(2027, 9, 1), QDate(2028, 4, 30)));
}

TEST(FirstSeason, HoldsTheAnswersTheCatalogueAndAPatchForEachPlant) {
    auto a = wrenBank();
    ASSERT_FALSE(troubleWith(a));
    const auto names = catalogueNames();
    ASSERT_GT(names.size(), 80);
    a.grows = {names[3].toStdString(), names[0].toStdString(), "no such plant"};
    const auto season = firstSeason(a);
    EXPECT_TRUE(model::check(season).empty());
    const auto& s = season.theSettings();
    EXPECT_EQ(s.placeName, "Wren Bank");
    EXPECT_DOUBLE_EQ(s.latitude, 52.4);
    EXPECT_DOUBLE_EQ(s.longitude, -2.7);
    EXPECT_EQ(s.zoneRule, "GMT0BST,M3.5.0/1,M10.5.0");
    EXPECT_EQ(s.seasonName, "Season 2027");
    ASSERT_EQ(season.patches.size(), 2u);
    EXPECT_EQ(season.patches.begin()->label, names[3].toStdString());
    EXPECT_EQ(season.patches.begin()->place, 1);
}

TEST(FirstSeason, SaysWhatIsWrongByField) {
    struct Row {
        const char* field;
        std::function<void(FirstAnswers&)> spoil;
    };

    const std::vector<Row> rows = {
        {"place", [](auto& a) { a.place = QString(10'000, QLatin1Char('x')); }},
        {"place", [](auto& a) { a.place = QStringLiteral("Wren") + QChar(1) + QStringLiteral("Bank"); }},
        {"place", [](auto& a) { a.place = QStringLiteral("Wren Bank") + QChar(0x7f) + QLatin1Char('x'); }},
        {"first",
         [](auto& a) {
             a.first = QDate(12000, 3, 1);
             a.last = QDate(12000, 10, 1);
         }},
        {"latitude", [](auto& a) { a.latitude = QStringLiteral("ninety"); }},
        {"latitude", [](auto& a) { a.latitude.clear(); }},
        {"longitude", [](auto& a) { a.longitude = QStringLiteral("200 W"); }},
        {"last", [](auto& a) { a.last = a.first; }},
        {"last", [](auto& a) { a.last = a.first.addYears(3); }},
        {"currency", [](auto& a) { a.currency = QStringLiteral("coins"); }},
        {"place", [](auto& a) { a.zoneRule = "not a rule"; }},
    };
    for (const auto& row : rows) {
        auto a = wrenBank();
        row.spoil(a);
        const auto trouble = troubleWith(a);
        ASSERT_TRUE(trouble) << row.field;
        EXPECT_EQ(trouble->field.toStdString(), row.field);
        EXPECT_TRUE(trouble->sentence.endsWith(QLatin1Char('.'))) << trouble->sentence.toStdString();
    }
}

TEST(FirstSeason, FileNamesHoldOnlyWhatDisksTake) {
    auto a = wrenBank();
    EXPECT_EQ(proposedFileName(a), QStringLiteral("Wren Bank 2027.withy"));
    a.place = QStringLiteral("../a/b:c*\n🌻 Réunion");
    EXPECT_EQ(proposedFileName(a), QStringLiteral("abc Réunion 2027.withy"));
    a.place = QStringLiteral("///");
    EXPECT_EQ(proposedFileName(a), QStringLiteral("Season 2027.withy"));
}

} // namespace withy::ui
