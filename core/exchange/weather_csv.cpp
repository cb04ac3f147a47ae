// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/weather_csv.h"

#include "core/exchange/decimal.h"
#include "core/exchange/utf8.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace withy::exchange {

namespace {

constexpr double coldest = -60; // what the weather table holds
constexpr double warmest = 60;
constexpr double tooWarm = 45; // mean daily maximum of no place on earth
constexpr std::size_t lookedAt = 2000;

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

std::string lowered(std::string_view s) {
    std::string out(s);
    std::transform(out.begin(), out.end(), out.begin(), lower);
    return out;
}

using Rows = std::vector<std::vector<std::string>>;

/// Cells of the whole text; a cell in quotes may hold the separator and line breaks.
Rows cellsOf(std::string_view text, char separator) {
    Rows rows;
    std::vector<std::string> row;
    std::string cell;
    bool quoted = false;
    const auto endCell = [&] {
        row.emplace_back(trimmed(cell));
        cell.clear();
    };
    const auto endRow = [&] {
        endCell();
        const bool blank = std::all_of(row.begin(), row.end(), [](const auto& c) { return c.empty(); });
        if (!blank && !(rows.empty() && row.front().starts_with('#'))) rows.push_back(row);
        row.clear();
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (quoted) {
            if (c != '"')
                cell += c;
            else if (i + 1 < text.size() && text[i + 1] == '"')
                cell += text[++i];
            else
                quoted = false;
        } else if (c == '"' && trimmed(cell).empty()) {
            quoted = true;
        } else if (c == separator) {
            endCell();
        } else if (c == '\n' || c == '\r') {
            endRow();
        } else {
            cell += c;
        }
    }
    endRow();
    return rows;
}

/// Rows that have as many cells as most, when there is more than one.
std::size_t alike(const Rows& rows) {
    std::map<std::size_t, std::size_t> widths;
    for (const auto& r : rows)
        if (r.size() > 1) ++widths[r.size()];
    std::size_t most = 0;
    for (const auto& [width, count] : widths)
        most = std::max(most, count);
    return most;
}

std::optional<int> monthNamed(std::string_view word) {
    static constexpr std::array<std::string_view, 12> names{"jan", "feb", "mar", "apr", "may", "jun",
                                                            "jul", "aug", "sep", "oct", "nov", "dec"};
    if (word.size() < 3) return std::nullopt;
    const auto start = lowered(word.substr(0, 3));
    const auto found = std::find(names.begin(), names.end(), start);
    if (found == names.end()) return std::nullopt;
    return static_cast<int>(found - names.begin()) + 1;
}

/// The three parts of a date as written; a month's name becomes -month.
std::vector<int> datePartsOf(std::string_view cell) {
    std::vector<int> parts;
    for (std::size_t i = 0; i < cell.size() && parts.size() < 3;) {
        std::size_t end = i;
        if (isDigit(cell[i])) {
            while (end < cell.size() && isDigit(cell[end]))
                ++end;
            if (end - i > 4) return {};
            int value = 0;
            for (; i < end; ++i)
                value = value * 10 + (cell[i] - '0');
            parts.push_back(value);
        } else if (lower(cell[i]) >= 'a' && lower(cell[i]) <= 'z') {
            while (end < cell.size() && lower(cell[end]) >= 'a' && lower(cell[end]) <= 'z')
                ++end;
            if (const auto month = monthNamed(cell.substr(i, end - i))) parts.push_back(-*month);
            i = end;
        } else {
            ++i;
        }
    }
    return parts;
}

std::optional<Day> dayOf(int year, int month, int day) {
    if (year < 100) year += year < 70 ? 2000 : 1900;
    if (year < 1900 || year > 2200) return std::nullopt;
    return Day::fromYmd(year, month, day);
}

std::optional<Day> digitsOnly(std::string_view cell, DateOrder order) {
    const bool all = std::all_of(cell.begin(), cell.end(), isDigit);
    if (cell.size() != 8 || !all) return std::nullopt;
    const auto part = [&](std::size_t from, std::size_t n) {
        int value = 0;
        for (std::size_t i = from; i < from + n; ++i)
            value = value * 10 + (cell[i] - '0');
        return value;
    };
    switch (order) {
    case DateOrder::yearMonthDay:
        return dayOf(part(0, 4), part(4, 2), part(6, 2));
    case DateOrder::dayMonthYear:
        return dayOf(part(4, 4), part(2, 2), part(0, 2));
    case DateOrder::monthDayYear:
        break;
    }
    return dayOf(part(4, 4), part(0, 2), part(2, 2));
}

std::string_view cellAt(const std::vector<std::string>& row, int column) {
    return column >= 0 && static_cast<std::size_t>(column) < row.size()
               ? std::string_view(row[static_cast<std::size_t>(column)])
               : std::string_view();
}

std::size_t datesIn(const Rows& rows, int column, DateOrder order) {
    std::size_t read = 0;
    for (std::size_t r = 0; r < std::min(rows.size(), lookedAt); ++r)
        if (readStationDate(cellAt(rows[r], column), order)) ++read;
    return read;
}

bool holds(const std::string& words, std::initializer_list<std::string_view> any) {
    return std::any_of(any.begin(), any.end(),
                       [&](std::string_view w) { return words.find(w) != std::string::npos; });
}

struct ColumnFacts {
    double mean = 0;
    std::size_t read = 0;
};

ColumnFacts factsOf(const Rows& rows, int column) {
    ColumnFacts f;
    for (std::size_t r = 0; r < std::min(rows.size(), lookedAt); ++r)
        if (const auto t = readTemperature(cellAt(rows[r], column))) {
            f.mean += *t;
            ++f.read;
        }
    if (f.read > 0) f.mean /= static_cast<double>(f.read);
    return f;
}

void guessTemperatures(const WeatherSheet& sheet, WeatherChoice& choice) {
    std::vector<std::pair<double, int>> figures; // mean and column of what may be temperatures
    for (int c = 0; c < static_cast<int>(sheet.heads.size()); ++c) {
        if (c == choice.date) continue;
        const auto head = lowered(sheet.heads[static_cast<std::size_t>(c)]);
        if (choice.minimum < 0 && holds(head, {"min", "low", "tn"})) choice.minimum = c;
        if (choice.maximum < 0 && holds(head, {"max", "high", "tx"})) choice.maximum = c;
        const auto f = factsOf(sheet.rows, c);
        const bool warm = f.mean > -60 && f.mean < 140;
        if (f.read * 10 >= std::min(sheet.rows.size(), lookedAt) * 8 && f.read > 0 && warm)
            figures.emplace_back(f.mean, c);
    }
    if (choice.minimum >= 0 && choice.maximum >= 0) return;
    choice.minimum = choice.maximum = -1;
    if (figures.size() < 2) return;
    if (figures[0].first <= figures[1].first) {
        choice.minimum = figures[0].second;
        choice.maximum = figures[1].second;
    } else {
        choice.minimum = figures[1].second;
        choice.maximum = figures[0].second;
    }
}

} // namespace

std::optional<double> readTemperature(std::string_view cell) {
    std::string s(trimmed(cell));
    if (s.starts_with("\xE2\x88\x92")) s.replace(0, 3, "-"); // the minus sign of typesetters
    while (!s.empty() && !isDigit(s.back()) && s.back() != '.')
        s.pop_back(); // the unit behind it
    if (s.starts_with('+')) s.erase(0, 1);
    const auto comma = s.find(',');
    if (comma != std::string::npos && s.find('.') == std::string::npos) s[comma] = '.';
    if (!isPlainDecimal(s)) return std::nullopt;
    try {
        const double value = std::stod(s);
        return std::isfinite(value) ? std::optional(value) : std::nullopt;
    } catch (const std::exception&) {
        return std::nullopt;
    }
}

double celsiusOf(double fahrenheit) {
    return std::round((fahrenheit - 32) * 5 / 9 * 100) / 100;
}

std::optional<Day> readStationDate(std::string_view cell, DateOrder order) {
    cell = trimmed(cell);
    // The T before a time of day, not that of OCT.
    const auto t = cell.find('T');
    if (t != std::string_view::npos && t > 0 && t + 1 < cell.size() && isDigit(cell[t - 1]) &&
        isDigit(cell[t + 1]))
        cell = cell.substr(0, t);
    if (const auto day = digitsOnly(cell, order)) return day;
    const auto p = datePartsOf(cell);
    if (p.size() < 3) return std::nullopt;
    if (p[1] < 0 && p[0] >= 0) return p[0] > 31 ? dayOf(p[0], -p[1], p[2]) : dayOf(p[2], -p[1], p[0]);
    if (p[0] < 0) return dayOf(p[2], -p[0], p[1]);
    switch (order) {
    case DateOrder::yearMonthDay:
        return p[0] > 99 ? dayOf(p[0], p[1], p[2]) : std::nullopt;
    case DateOrder::dayMonthYear:
        return p[0] > 31 ? std::nullopt : dayOf(p[2], p[1], p[0]);
    case DateOrder::monthDayYear:
        break;
    }
    return p[0] > 12 ? std::nullopt : dayOf(p[2], p[0], p[1]);
}

WeatherSheet splitWeather(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    WeatherSheet sheet;
    Rows rows;
    std::size_t best = 0;
    for (const char separator : {'\t', ';', ','}) {
        auto cells = cellsOf(text, separator);
        const auto count = alike(cells);
        if (count <= best && !rows.empty()) continue;
        best = count;
        rows = std::move(cells);
        sheet.separator = separator;
    }
    std::size_t width = 0;
    for (const auto& r : rows)
        width = std::max(width, r.size());
    sheet.heads.assign(width, std::string());
    if (!rows.empty()) {
        const bool head = std::none_of(rows.front().begin(), rows.front().end(), [](const auto& c) {
            return readTemperature(c).has_value() && isDigit(c.back());
        });
        if (head && rows.size() > 1) {
            std::copy(rows.front().begin(), rows.front().end(), sheet.heads.begin());
            rows.erase(rows.begin());
            sheet.firstLine = 2;
        }
    }
    sheet.rows = std::move(rows);
    return sheet;
}

WeatherChoice guessWeather(const WeatherSheet& sheet) {
    WeatherChoice choice;
    constexpr std::array orders{DateOrder::yearMonthDay, DateOrder::dayMonthYear, DateOrder::monthDayYear};
    std::size_t most = 0;
    for (int c = 0; c < static_cast<int>(sheet.heads.size()); ++c) {
        std::size_t ways = 0;
        std::size_t best = 0;
        DateOrder order = DateOrder::yearMonthDay;
        for (const auto o : orders) {
            const auto read = datesIn(sheet.rows, c, o);
            if (read > best) {
                best = read;
                order = o;
                ways = 0;
            }
            if (read == best) ++ways;
        }
        if (best <= most) continue;
        most = best;
        choice.date = c;
        choice.order = order;
        choice.orderCertain = ways == 1;
    }
    guessTemperatures(sheet, choice);
    const auto named = [&](int c) {
        const auto head = c < 0 ? std::string() : lowered(sheet.heads[static_cast<std::size_t>(c)]);
        return holds(head, {"fahr", "\u00B0f", "(f)", "_f", " f"});
    };
    if (named(choice.minimum) || named(choice.maximum) || factsOf(sheet.rows, choice.maximum).mean > tooWarm)
        choice.unit = TemperatureUnit::fahrenheit;
    return choice;
}

WeatherReadingResult readWeather(const WeatherSheet& sheet, const WeatherChoice& choice) {
    WeatherReadingResult out;
    std::map<Day, ReadDay> days;
    double sum = 0;
    std::size_t figures = 0;
    for (std::size_t r = 0; r < sheet.rows.size(); ++r) {
        const auto& row = sheet.rows[r];
        const auto day = readStationDate(cellAt(row, choice.date), choice.order);
        if (!day) {
            out.badDates.push_back(r);
            continue;
        }
        const auto low = cellAt(row, choice.minimum);
        const auto high = cellAt(row, choice.maximum);
        if (low.empty() || high.empty()) {
            out.blanks.push_back(r);
            continue;
        }
        auto min = readTemperature(low);
        auto max = readTemperature(high);
        if (!min || !max) {
            out.badFigures.push_back(r);
            continue;
        }
        sum += *max;
        ++figures;
        if (choice.unit == TemperatureUnit::fahrenheit) {
            min = celsiusOf(*min);
            max = celsiusOf(*max);
        }
        if (*min < coldest || *max > warmest || *max < coldest || *min > warmest) {
            out.impossible.push_back(r);
            continue;
        }
        if (*min > *max) {
            out.minAboveMax.push_back(r);
            continue;
        }
        const auto [at, fresh] = days.insert_or_assign(*day, ReadDay{*day, *min, *max, r});
        if (!fresh && (out.doubled.empty() || out.doubled.back() != *day)) out.doubled.push_back(*day);
    }
    out.looksFahrenheit = choice.unit == TemperatureUnit::celsius && figures > 2 &&
                          sum / static_cast<double>(figures) > tooWarm;
    for (const auto& [day, read] : days) {
        if (!out.days.empty() && day - out.days.back().day > 1)
            out.gaps.push_back({out.days.back().day + 1, day - out.days.back().day - 1});
        out.days.push_back(read);
    }
    std::sort(out.doubled.begin(), out.doubled.end());
    out.doubled.erase(std::unique(out.doubled.begin(), out.doubled.end()), out.doubled.end());
    return out;
}

} // namespace withy::exchange
