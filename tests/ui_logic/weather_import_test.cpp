// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/starting_seasons.h"
#include "ui/logic/weather_words.h"

#include <gtest/gtest.h>

namespace withy::ui {

namespace {

struct Import {
    exchange::WeatherSheet sheet;
    exchange::WeatherChoice choice;
    exchange::WeatherReadingResult reading;
    edits::WeatherImport import;
    QString summary;
    QString troubles;
};

Import read(const model::Season& season, const char* text) {
    Import i;
    i.sheet = exchange::splitWeather(text);
    i.choice = exchange::guessWeather(i.sheet);
    i.reading = exchange::readWeather(i.sheet, i.choice);
    i.import = edits::importWeather(season, i.reading.days, model::WeatherKind::measured);
    i.summary = importSummary(i.sheet, i.choice, i.reading, i.import);
    i.troubles = importTroubles(season, i.sheet, i.choice, i.reading).join(QLatin1Char('\n'));
    return i;
}

} // namespace

TEST(WeatherImport, DaysAreAddedOnceAndChangedWhereTheFiguresDiffer) {
    auto season = emptySeason(2027);
    const auto first = read(season, "date,min,max\n2027-05-01,4,17\n2027-05-02,6,19\n");
    EXPECT_EQ(first.import.added, 2);
    EXPECT_EQ(first.troubles.toStdString(), "");
    season = model::apply(season, first.import.edit)->season;
    const auto again = read(season, "date,min,max\n2027-05-01,4,17\n2027-05-02,6,20\n2027-05-03,5,18\n");
    EXPECT_EQ(again.import.added, 1);
    EXPECT_EQ(again.import.changed, 1);
    EXPECT_EQ(again.import.same, 1);
    season = model::apply(season, again.import.edit)->season;
    EXPECT_EQ(season.weather.size(), 3u);
    EXPECT_TRUE(read(season, "date,min,max\n2027-05-01,4,17\n2027-05-02,6,20\n").import.edit.empty());
}

TEST(WeatherImport, EachBadInputIsNamedWithItsMend) {
    struct Case {
        const char* name;
        const char* text;
        const char* says;
    };

    const Case cases[] = {
        {"min above max", "date,min,max\n2027-05-01,19,6\n2027-05-02,4,17\n", "lowest above the highest"},
        {"gap", "date,min,max\n2027-05-01,4,17\n2027-05-04,4,17\n",
         "Missing in between: Sunday 2 May 2027 and 1 more day"},
        {"doubled", "date,min,max\n2027-05-01,4,17\n2027-05-01,5,17\n", "there more than once"},
        {"no date", "date,min,max\n2027-05-01,4,17\n2027-05-32,4,17\n",
         "without a date that can be read: row 3"},
        {"no figure",
         "date,min,max\n2027-05-01,4,17\n2027-05-02,4,17\n2027-05-03,4,17\n2027-05-04,4,17\n2027-05-05,4,x\n",
         "no temperature"},
        {"blank", "date,min,max\n2027-05-01,4,17\n2027-05-02,,17\n", "stays unknown"},
        {"out of the season", "date,min,max\n2019-05-01,4,17\n2019-05-02,4,17\n",
         "None of these days is in the season"},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.name);
        const auto i = read(emptySeason(2027), c.text);
        EXPECT_TRUE(i.troubles.contains(QString::fromUtf8(c.says))) << i.troubles.toStdString();
    }
}

TEST(WeatherImport, FahrenheitTakenForCelsiusIsSuspectedByTheUsualYear) {
    const auto season = demoSeason(); // has its twelve usual months
    auto i = read(season,
                  "date,min,max\n2027-05-01,41,44\n2027-05-02,41,44\n2027-05-03,40,44\n2027-05-04,41,44\n");
    ASSERT_EQ(i.choice.unit, exchange::TemperatureUnit::celsius) << "the guess alone does not see it";
    EXPECT_TRUE(i.troubles.contains(QStringLiteral("Fahrenheit"))) << i.troubles.toStdString();
}

TEST(WeatherImport, NothingToTakeIsSaid) {
    const auto season = emptySeason(2027);
    for (const char* text : {"", "date,min,max\n", "a,b\nc,d\n"}) {
        const auto i = read(season, text);
        EXPECT_TRUE(i.import.edit.empty());
        EXPECT_FALSE(i.summary.isEmpty());
    }
    EXPECT_EQ(stationText(QByteArray("5\xB0")), "5\xC2\xB0") << "Latin-1 where it is not UTF-8";
}

} // namespace withy::ui
