// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/weather_words.h"

#include "core/garden/warmth.h"
#include "core/plan/forecast_plan_weather.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"

#include <QCoreApplication>
#include <QStringDecoder>

namespace withy::ui {

namespace {

struct Weather {
    Q_DECLARE_TR_FUNCTIONS(Weather)
};

constexpr std::size_t mostNamed = 3;

/// "row 4, row 9 and 3 more".
QString rowsNamed(const exchange::WeatherSheet& sheet, const std::vector<std::size_t>& rows) {
    QStringList words;
    for (std::size_t i = 0; i < std::min(rows.size(), mostNamed); ++i)
        words << Weather::tr("row %1").arg(rows[i] + sheet.firstLine);
    if (rows.size() > mostNamed) words << Weather::tr("%n more", nullptr, asCount(rows.size() - mostNamed));
    return words.join(QStringLiteral(", "));
}

QString daysNamed(const std::vector<Day>& days) {
    QStringList words;
    for (std::size_t i = 0; i < std::min(days.size(), mostNamed); ++i)
        words << longDay(days[i]);
    if (days.size() > mostNamed) words << Weather::tr("%n more", nullptr, asCount(days.size() - mostNamed));
    return words.join(QStringLiteral(", "));
}

QString gapsNamed(const std::vector<exchange::DayGap>& gaps) {
    QStringList words;
    for (std::size_t i = 0; i < std::min(gaps.size(), mostNamed); ++i)
        words << (gaps[i].days == 1 ? longDay(gaps[i].first)
                                    : Weather::tr("%1 and %n more day(s)", nullptr, gaps[i].days - 1)
                                          .arg(longDay(gaps[i].first)));
    if (gaps.size() > mostNamed)
        words << Weather::tr("%n more gap(s)", nullptr, asCount(gaps.size() - mostNamed));
    return words.join(QStringLiteral("; "));
}

bool looksFahrenheit(const model::Season& season, const exchange::WeatherChoice& choice,
                     const exchange::WeatherReadingResult& reading) {
    if (choice.unit != exchange::TemperatureUnit::celsius) return false;
    if (reading.looksFahrenheit) return true;
    const plan::GardenWeather weather(season);
    const auto& normals = weather.normals();
    if (!normals) return false;
    std::vector<garden::WeatherDay> days;
    for (const auto& d : reading.days)
        days.push_back({d.day, {d.minimum, d.maximum}, garden::TemperatureKind::measured});
    return garden::readsLikeFahrenheit(*normals, days);
}

int outsideSeason(const model::Season& season, const exchange::WeatherReadingResult& reading) {
    int outside = 0;
    const auto& s = season.theSettings();
    for (const auto& d : reading.days)
        outside += d.day < s.firstDay || s.lastDay < d.day ? 1 : 0;
    return outside;
}

} // namespace

QString importSummary(const exchange::WeatherSheet& sheet, const exchange::WeatherChoice& choice,
                      const exchange::WeatherReadingResult& reading, const edits::WeatherImport& import) {
    if (sheet.rows.empty())
        return Weather::tr("There are no rows in it. Choose another file, or copy the rows again.");
    if (choice.date < 0 || choice.minimum < 0 || choice.maximum < 0)
        return Weather::tr("Say which column holds the date, which the lowest and which the highest.");
    if (choice.minimum == choice.maximum || choice.date == choice.minimum || choice.date == choice.maximum)
        return Weather::tr(
            "One column is chosen twice. The date, the lowest and the highest each have their own.");
    if (reading.days.empty())
        return Weather::tr("No row can be read so. Try another order of the date, or other columns.");
    const QString range = Weather::tr("%n day(s) from %1 to %2", nullptr, asCount(reading.days.size()))
                              .arg(longDay(reading.days.front().day), longDay(reading.days.back().day));
    if (import.added == 0 && import.changed == 0) return Weather::tr("%1: all are there already.").arg(range);
    QStringList parts;
    if (import.added > 0) parts << Weather::tr("%n new", nullptr, import.added);
    if (import.changed > 0) parts << Weather::tr("%n with other figures than now", nullptr, import.changed);
    if (import.same > 0) parts << Weather::tr("%n as they are", nullptr, import.same);
    return Weather::tr("%1: %2.").arg(range, parts.join(QStringLiteral(", ")));
}

QStringList importTroubles(const model::Season& season, const exchange::WeatherSheet& sheet,
                           const exchange::WeatherChoice& choice,
                           const exchange::WeatherReadingResult& reading) {
    QStringList out;
    if (looksFahrenheit(season, choice, reading))
        out << Weather::tr("These read like Fahrenheit. Choose °F, unless the place is that hot.");
    if (!reading.minAboveMax.empty())
        out << Weather::tr(
                   "%n row(s) (has|have) the lowest above the highest and (is|are) left out: %1. Are the two "
                   "columns the right way round?",
                   nullptr, asCount(reading.minAboveMax.size()))
                   .arg(rowsNamed(sheet, reading.minAboveMax));
    if (!reading.impossible.empty())
        out << Weather::tr("%n row(s) beyond %2 (is|are) left out: %1. Check the unit.", nullptr,
                           asCount(reading.impossible.size()))
                   .arg(rowsNamed(sheet, reading.impossible),
                        Weather::tr("%1 to %2")
                            .arg(temperatureFigure(-60, season).replace(QLatin1Char('-'), QChar(0x2212)),
                                 temperatureWords(60, season)));
    if (!reading.badDates.empty())
        out << Weather::tr(
                   "%n row(s) without a date that can be read: %1. Check the order of day, month and year.",
                   nullptr, asCount(reading.badDates.size()))
                   .arg(rowsNamed(sheet, reading.badDates));
    if (!reading.badFigures.empty())
        out << Weather::tr("%n row(s) with something that is no temperature: %1.", nullptr,
                           asCount(reading.badFigures.size()))
                   .arg(rowsNamed(sheet, reading.badFigures));
    if (!reading.blanks.empty())
        out << Weather::tr("%n row(s) (lacks|lack) the lowest or the highest and (stays|stay) unknown: %1.",
                           nullptr, asCount(reading.blanks.size()))
                   .arg(rowsNamed(sheet, reading.blanks));
    if (!reading.doubled.empty())
        out << Weather::tr("%n day(s) (is|are) there more than once; the last row stands: %1.", nullptr,
                           asCount(reading.doubled.size()))
                   .arg(daysNamed(reading.doubled));
    if (!reading.gaps.empty())
        out << Weather::tr("Missing in between: %1. A usual year stands in for them.")
                   .arg(gapsNamed(reading.gaps));
    if (const int outside = outsideSeason(season, reading);
        outside > 0 && asCount(reading.days.size()) == outside)
        out << Weather::tr(
            "None of these days is in the season, so they move no forecast of it. Past years teach "
            "when plants flower.");
    return out;
}

QStringList columnNames(const exchange::WeatherSheet& sheet) {
    QStringList names;
    for (std::size_t c = 0; c < sheet.heads.size(); ++c)
        names << (sheet.heads[c].empty() ? Weather::tr("Column %1").arg(c + 1)
                                         : text(sheet.heads[c]).left(60));
    return names;
}

std::vector<QStringList> previewRows(const model::Season& season, const exchange::WeatherSheet& sheet,
                                     const exchange::WeatherChoice& choice, std::size_t most) {
    std::vector<QStringList> rows;
    const auto cell = [](const std::vector<std::string>& row, int column) {
        return column >= 0 && static_cast<std::size_t>(column) < row.size()
                   ? row[static_cast<std::size_t>(column)]
                   : std::string();
    };
    const auto degrees = [&](const std::string& words) {
        auto t = exchange::readTemperature(words);
        if (!t) return QStringLiteral("?");
        if (choice.unit == exchange::TemperatureUnit::fahrenheit) t = exchange::celsiusOf(*t);
        return temperatureWords(*t, season, 1);
    };
    for (std::size_t r = 0; r < std::min(most, sheet.rows.size()); ++r) {
        const auto day = exchange::readStationDate(cell(sheet.rows[r], choice.date), choice.order);
        rows.push_back({day ? longDay(*day) : QStringLiteral("?"),
                        degrees(cell(sheet.rows[r], choice.minimum)),
                        degrees(cell(sheet.rows[r], choice.maximum))});
    }
    return rows;
}

std::string stationText(const QByteArray& bytes) {
    QStringDecoder utf8Reader(QStringDecoder::Utf8);
    const QString read = utf8Reader(bytes);
    return utf8(utf8Reader.hasError() ? QString::fromLatin1(bytes) : read);
}

} // namespace withy::ui
