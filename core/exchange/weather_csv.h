// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Daily minimum and maximum from the CSV of any weather station, or rows pasted from a spreadsheet. The
/// person says which columns, which unit and which order of the date; a first guess is made from the text.
namespace withy::exchange {

/// The text as cells. Separator: tab, semicolon or comma, whichever splits most rows alike.
struct WeatherSheet {
    std::vector<std::string> heads; ///< as wide as the widest row; "" where the text has no head row
    std::vector<std::vector<std::string>> rows;
    std::size_t firstLine = 1; ///< line of rows.front() in the text, counted without blank lines
    char separator = ',';
};

/// Takes a byte-order mark, quoted cells, any line break; lines of "#" in front are passed over.
WeatherSheet splitWeather(std::string_view text);

enum class TemperatureUnit { celsius, fahrenheit };
enum class DateOrder { yearMonthDay, dayMonthYear, monthDayYear };

struct WeatherChoice {
    int date = -1; ///< columns from 0; -1: none chosen
    int minimum = -1;
    int maximum = -1;
    DateOrder order = DateOrder::yearMonthDay;
    TemperatureUnit unit = TemperatureUnit::celsius;
    bool orderCertain = false; ///< guessed: some date can be read in one way only
};

/// Columns by their heads and by what stands in them; the order of dates by what all of them can be; the
/// unit by the heads, else Fahrenheit when the maxima's mean is over 45.
WeatherChoice guessWeather(const WeatherSheet& sheet);

struct ReadDay {
    Day day;
    double minimum = 0; ///< C
    double maximum = 0;
    std::size_t row = 0; ///< of the sheet, from 0
};

struct DayGap {
    Day first;
    int days = 0;
};

struct WeatherReadingResult {
    std::vector<ReadDay> days;            ///< in order of day, each once; what may be taken
    std::vector<std::size_t> badDates;    ///< rows without a date that can be read
    std::vector<std::size_t> badFigures;  ///< rows with something that is no temperature
    std::vector<std::size_t> blanks;      ///< rows without one of the two
    std::vector<std::size_t> minAboveMax; ///< rows left out
    std::vector<std::size_t> impossible;  ///< rows beyond -60 to 60 C, left out
    std::vector<Day> doubled;             ///< days there more than once; the last row stands
    std::vector<DayGap> gaps;             ///< between the first and the last day taken
    bool looksFahrenheit = false; ///< read as Celsius, and too warm for any place: mean maximum over 45
};

WeatherReadingResult readWeather(const WeatherSheet& sheet, const WeatherChoice& choice);

/// One date in the order; a time of day behind it is passed over. Month names in English are taken too.
std::optional<Day> readStationDate(std::string_view cell, DateOrder order);
/// One temperature as written: "4.4", "4,4", "-1.6 °C".
std::optional<double> readTemperature(std::string_view cell);
/// (F - 32) x 5 / 9, to a hundredth. Definition of the degree Fahrenheit (NIST SP 811, B.8).
double celsiusOf(double fahrenheit);

} // namespace withy::exchange
