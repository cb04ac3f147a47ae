// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/weather_csv.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace withy::exchange {

namespace {

std::optional<std::string> referenceFile(const char* name) {
    const char* folder = std::getenv("WITHY_REFERENCE");
    if (folder == nullptr || *folder == '\0') return std::nullopt;
    std::ifstream in(std::string(folder) + "/" + name, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

Day day(int y, int m, int d) {
    return *Day::fromYmd(y, m, d);
}

} // namespace

// Fixed points: water freezes at 32 F and boils at 212 F, the scales meet at -40 (NIST SP 811, B.8: t/C =
// (t/F - 32) / 1.8).
TEST(WeatherCsv, FahrenheitBecomesCelsius) {
    struct Case {
        double fahrenheit;
        double celsius;
    };

    for (const auto& c : {Case{32, 0}, Case{212, 100}, Case{-40, -40}, Case{50, 10}, Case{98.6, 37}}) {
        SCOPED_TRACE(c.fahrenheit);
        EXPECT_NEAR(celsiusOf(c.fahrenheit), c.celsius, 0.005);
    }
}

TEST(WeatherCsv, DatesInEveryOrderStationsWriteThem) {
    struct Case {
        const char* cell;
        DateOrder order;
        std::optional<Day> day;
    };

    const auto jan31 = day(2027, 1, 31);
    const auto mar4 = day(2027, 3, 4);
    const Case cases[] = {
        {"2027-01-31", DateOrder::yearMonthDay, jan31},
        {"20270131", DateOrder::yearMonthDay, jan31}, // ISO 8601 basic format
        {"2027-01-31T00:00:00Z", DateOrder::yearMonthDay, jan31},
        {"2027/1/31 23:59", DateOrder::yearMonthDay, jan31},
        {"31/01/2027", DateOrder::dayMonthYear, jan31},
        {"31.1.27", DateOrder::dayMonthYear, jan31},
        {"01/31/2027", DateOrder::monthDayYear, jan31},
        {"31 Jan 2027", DateOrder::yearMonthDay, jan31},
        {"January 31, 2027", DateOrder::dayMonthYear, jan31},
        {"04/03/2027", DateOrder::dayMonthYear, mar4},
        {"03/04/2027", DateOrder::monthDayYear, mar4},
        {"31/01/2027", DateOrder::monthDayYear, std::nullopt},
        {"31/01/2027", DateOrder::yearMonthDay, std::nullopt},
        {"2027-02-29", DateOrder::yearMonthDay, std::nullopt},
        {"", DateOrder::yearMonthDay, std::nullopt},
        {"31-JAN-2027", DateOrder::dayMonthYear, jan31},
        {"03-OCT-2027", DateOrder::dayMonthYear, day(2027, 10, 3)}, // not the T before a time
        {"3 OCT 2027", DateOrder::dayMonthYear, day(2027, 10, 3)},
        {"soon", DateOrder::yearMonthDay, std::nullopt},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.cell);
        EXPECT_EQ(readStationDate(c.cell, c.order), c.day);
    }
}

TEST(WeatherCsv, TemperaturesAsWritten) {
    struct Case {
        const char* cell;
        std::optional<double> read;
    };

    const Case cases[] = {{"4.4", 4.4},
                          {"4,4", 4.4},
                          {"-1.6", -1.6},
                          {"\xE2\x88\x92"
                           "3",
                           -3.0},
                          {"+7", 7.0},
                          {" 12.5 °C ", 12.5},
                          {"39F", 39.0},
                          {"", {}},
                          {"M", {}},
                          {"1.2.3", {}},
                          {"1e400", {}}};
    for (const auto& c : cases) {
        SCOPED_TRACE(c.cell);
        EXPECT_EQ(readTemperature(c.cell), c.read);
    }
}

TEST(WeatherCsv, ColumnsUnitAndOrderAreGuessed) {
    struct Case {
        const char* name;
        const char* text;
        WeatherChoice expected;
    };

    using enum DateOrder;
    using enum TemperatureUnit;
    const Case cases[] = {
        {"plain",
         "date,tmin_c,tmax_c\n2027-05-01,4,17\n2027-05-02,6,19\n",
         {0, 1, 2, yearMonthDay, celsius, true}},
        {"highest first, semicolons, decimal commas, a mark in front",
         "\xEF\xBB\xBFTag;Max;Min\r\n13.05.2027;17,5;4,1\r\n14.05.2027;19;6\r\n",
         {0, 2, 1, dayMonthYear, celsius, true}},
        {"Fahrenheit by its head",
         "Station,Date,High (F),Low (F)\nA,05/13/2027,66,41\nA,05/14/2027,70,44\n",
         {1, 3, 2, monthDayYear, fahrenheit, true}},
        {"Fahrenheit by its figures, no heads",
         "2027-07-01\t58\t81\n2027-07-02\t60\t85\n",
         {0, 1, 2, yearMonthDay, fahrenheit, true}},
        {"either order",
         "d,min,max\n04/03/2027,4,17\n05/03/2027,4,18\n",
         {0, 1, 2, dayMonthYear, celsius, false}},
        {"quoted, a remark in front",
         "# a station\n\"date\",\"rain, mm\",\"min\",\"max\"\n\"2027-05-01\",\"3\",4,17\n",
         {0, 2, 3, yearMonthDay, celsius, true}},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.name);
        const auto choice = guessWeather(splitWeather(c.text));
        EXPECT_EQ(choice.date, c.expected.date);
        EXPECT_EQ(choice.minimum, c.expected.minimum);
        EXPECT_EQ(choice.maximum, c.expected.maximum);
        EXPECT_EQ(choice.order, c.expected.order);
        EXPECT_EQ(choice.unit, c.expected.unit);
        EXPECT_EQ(choice.orderCertain, c.expected.orderCertain);
    }
}

TEST(WeatherCsv, EachTroubleIsNamedAndTheRestTaken) {
    const auto sheet = splitWeather("date,min,max\n"
                                    "2027-05-01,4,17\n"
                                    "2027-05-02,19,6\n" // minimum above maximum
                                    "2027-05-03,5,18\n"
                                    "2027-05-03,6,18\n" // doubled
                                    "someday,5,18\n"    // no date
                                    "2027-05-06,5,warm\n"
                                    "2027-05-07,,18\n"  // blank
                                    "2027-05-08,5,99\n" // impossible
                                    "2027-05-09,5,18\n");
    const auto read = readWeather(sheet, {0, 1, 2, DateOrder::yearMonthDay, TemperatureUnit::celsius, true});
    ASSERT_EQ(read.days.size(), 3u);
    EXPECT_EQ(read.days[1].minimum, 6) << "the later row stands";
    EXPECT_EQ(read.minAboveMax, std::vector<std::size_t>{1});
    EXPECT_EQ(read.doubled, std::vector<Day>{day(2027, 5, 3)});
    EXPECT_EQ(read.badDates, std::vector<std::size_t>{4});
    EXPECT_EQ(read.badFigures, std::vector<std::size_t>{5});
    EXPECT_EQ(read.blanks, std::vector<std::size_t>{6});
    EXPECT_EQ(read.impossible, std::vector<std::size_t>{7});
    ASSERT_EQ(read.gaps.size(), 2u);
    EXPECT_EQ(read.gaps[0].first, day(2027, 5, 2));
    EXPECT_EQ(read.gaps[1].days, 5);
    EXPECT_FALSE(read.looksFahrenheit);
}

TEST(WeatherCsv, FahrenheitReadAsCelsiusIsSuspected) {
    std::string text = "date,min,max\n";
    for (int d = 10; d < 20; ++d)
        text += "2027-05-" + std::to_string(d) + ",41,58\n";
    const auto sheet = splitWeather(text);
    WeatherChoice choice{0, 1, 2, DateOrder::yearMonthDay, TemperatureUnit::celsius, true};
    EXPECT_TRUE(readWeather(sheet, choice).looksFahrenheit);
    choice.unit = TemperatureUnit::fahrenheit;
    const auto read = readWeather(sheet, choice);
    EXPECT_FALSE(read.looksFahrenheit);
    EXPECT_NEAR(read.days.front().minimum, 5, 0.005);
}

TEST(WeatherCsv, OddTextsAreTakenCalmly) {
    const std::string longRow(100000, 'x');
    for (const std::string& text :
         {std::string(), std::string("\n\n"), std::string("\""), std::string(",,,\n,,"),
          std::string("date\n"), longRow, std::string("\0\0,\0", 5)}) {
        const auto sheet = splitWeather(text);
        const auto read = readWeather(sheet, guessWeather(sheet));
        EXPECT_TRUE(read.days.empty());
    }
}

TEST(WeatherCsv, AYearOfARealStation) {
    const auto text = referenceFile("weather_sample.csv");
    if (!text)
        GTEST_SKIP() << "skipped: WITHY_REFERENCE is not set, so there is no reference weather to read";
    const auto sheet = splitWeather(*text);
    const auto choice = guessWeather(sheet);
    EXPECT_EQ(choice.date, 0);
    EXPECT_EQ(choice.minimum, 1);
    EXPECT_EQ(choice.maximum, 2);
    const auto read = readWeather(sheet, choice);
    EXPECT_EQ(read.days.size(), sheet.rows.size());
    EXPECT_TRUE(read.gaps.empty() && read.doubled.empty() && read.minAboveMax.empty() &&
                read.badDates.empty());
    EXPECT_EQ(read.days.front().day, day(2025, 1, 1)); // the file's first row: 2025-01-01,4.4,11.1
    EXPECT_EQ(read.days.front().minimum, 4.4);
    EXPECT_EQ(read.days.front().maximum, 11.1);
}

} // namespace withy::exchange
