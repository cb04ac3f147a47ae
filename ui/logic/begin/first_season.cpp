// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/begin/first_season.h"

#include "core/base/money.h"
#include "core/base/zone.h"
#include "core/model/edit.h"
#include "ui/logic/begin/known_places.h"
#include "ui/logic/format.h"
#include "ui/logic/plant_catalogue.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace withy::ui {

namespace {

struct FirstSeasonSay {
    Q_DECLARE_TR_FUNCTIONS(FirstSeason)
};

std::optional<Day> dayIn(const QDate& date) {
    return Day::fromYmd(date.year(), date.month(), date.day());
}

Day dayOf(const QDate& date) {
    return dayIn(date).value_or(Day{});
}

/// The question of the first page that a field of the settings comes from.
QString questionOf(const std::string& field) {
    if (field == "latitude" || field == "longitude" || field == "currency") return text(field);
    if (field == "first_day") return QStringLiteral("first");
    return field == "last_day" ? QStringLiteral("last") : QStringLiteral("place");
}

/// The countries where the printer holds Letter; elsewhere it is A4.
bool printsOnLetter(QLocale::Country country) {
    using enum QLocale::Country;
    return country == UnitedStates || country == Canada || country == Mexico || country == Philippines;
}

} // namespace

FirstAnswers proposedAnswers(const QLocale& locale, QDate today) {
    FirstAnswers a;
    std::tie(a.first, a.last) = proposedDates(52, today);
    a.units = locale.measurementSystem() == QLocale::ImperialUSSystem ? model::UnitSystem::imperial
                                                                      : model::UnitSystem::metric;
    const QString code = locale.currencySymbol(QLocale::CurrencyIsoCode);
    a.currency = minorDigits(utf8(code)) ? code : QStringLiteral("GBP");
    a.paper = printsOnLetter(locale.country()) ? model::PaperSize::letter : model::PaperSize::a4;
    return a;
}

std::pair<QDate, QDate> proposedDates(double latitude, QDate today) {
    // From autumn on one plans the year to come; below the equator the year turns in winter too.
    const int year = today.year();
    if (latitude >= 0) {
        const int next = today.month() >= 10 ? year + 1 : year;
        return {QDate(next, 3, 1), QDate(next, 10, 31)};
    }
    const int start = today.month() >= 5 ? year : year - 1;
    return {QDate(start, 9, 1), QDate(start + 1, 4, 30)};
}

std::optional<double> readDegrees(const QString& typed, char positive, char negative, double most) {
    static const QRegularExpression form(
        QStringLiteral("^\\s*([+-]?\\d+(?:[.,]\\d+)?)\\s*°?\\s*([a-z]*)\\s*$"),
        QRegularExpression::CaseInsensitiveOption);
    const auto match = form.match(typed);
    if (!match.hasMatch()) return std::nullopt;
    double degrees = match.captured(1).replace(QLatin1Char(','), QLatin1Char('.')).toDouble();
    const QString side = match.captured(2).toLower();
    if (!side.isEmpty()) {
        const QChar letter = side.front();
        if (letter != QLatin1Char(positive) && letter != QLatin1Char(negative)) return std::nullopt;
        if (degrees < 0) return std::nullopt;
        if (letter == QLatin1Char(negative)) degrees = -degrees;
    }
    if (std::abs(degrees) > most) return std::nullopt;
    return degrees;
}

std::optional<FirstTrouble> troubleWith(const FirstAnswers& a) {
    if (a.place.size() > 200)
        return FirstTrouble{QStringLiteral("place"),
                            FirstSeasonSay::tr("That name is too long. Keep it to 200 letters.")};
    if (!readDegrees(a.latitude, 'n', 's', 90))
        return FirstTrouble{
            QStringLiteral("latitude"),
            FirstSeasonSay::tr("Latitude: give degrees from 90 south to 90 north, like 52.4 N.")};
    if (!readDegrees(a.longitude, 'e', 'w', 180))
        return FirstTrouble{
            QStringLiteral("longitude"),
            FirstSeasonSay::tr("Longitude: give degrees from 180 west to 180 east, like 2.7 W.")};
    if (!dayIn(a.first) || !dayIn(a.last))
        return FirstTrouble{QStringLiteral("first"), FirstSeasonSay::tr("Give a first and a last day.")};
    if (a.last <= a.first)
        return FirstTrouble{QStringLiteral("last"),
                            FirstSeasonSay::tr("The last day is not after the first. Give a later one.")};
    if (a.first.daysTo(a.last) > 366)
        return FirstTrouble{
            QStringLiteral("last"),
            FirstSeasonSay::tr("A season is one growing year. Give a last day within a year of the first.")};
    if (!minorDigits(utf8(a.currency.trimmed().toUpper())))
        return FirstTrouble{
            QStringLiteral("currency"),
            FirstSeasonSay::tr("Give the three letters of a currency, like GBP, EUR or USD.")};
    if (!a.zoneRule.empty() && !Zone::fromPosix(a.zoneRule))
        return FirstTrouble{QStringLiteral("place"),
                            FirstSeasonSay::tr("The clock of that place cannot be read. Choose another.")};
    // Whatever else a season's settings may not hold: an odd letter that came along with a pasted name.
    const auto judged =
        model::apply(emptySeason(a.first.year()), model::Edit("season.new").put(settingsOf(a)));
    if (!judged.ok())
        return FirstTrouble{questionOf(judged.error().front().field), sentences(judged.error())};
    return std::nullopt;
}

model::Settings settingsOf(const FirstAnswers& a) {
    auto s = emptySeason(a.first.year()).theSettings();
    s.firstDay = dayOf(a.first);
    s.lastDay = dayOf(a.last);
    s.seasonName = utf8(FirstSeasonSay::tr("Season %1").arg(s.lastDay.year()));
    s.placeName = utf8(a.place.trimmed());
    s.latitude = readDegrees(a.latitude, 'n', 's', 90).value_or(0);
    s.longitude = readDegrees(a.longitude, 'e', 'w', 180).value_or(0);
    s.zoneRule = a.zoneRule.empty() ? nearestPlace(s.latitude, s.longitude)->zoneRule : a.zoneRule;
    s.units = a.units;
    s.currency = utf8(a.currency.trimmed().toUpper());
    s.paper = a.paper;
    return s;
}

model::Season firstSeason(const FirstAnswers& a) {
    auto season = seasonWithPlants(settingsOf(a));
    model::Edit patches("season.new");
    auto id = season.patches.nextId();
    for (std::size_t i = 0; i < a.grows.size(); ++i) {
        const auto plant = std::find_if(season.plants.begin(), season.plants.end(),
                                        [&](const auto& p) { return p.name == a.grows[i]; });
        if (plant == season.plants.end()) continue;
        model::Patch patch;
        patch.id = id;
        patch.plant = plant->id;
        patch.label = plant->name;
        patch.place = static_cast<std::int64_t>(i) + 1;
        patches.put(patch);
        id = Id<model::Patch>(id.value + 1);
    }
    return model::apply(season, patches).value().season;
}

QString proposedFileName(const FirstAnswers& a) {
    QString name = a.place.trimmed().isEmpty() ? FirstSeasonSay::tr("Season") : a.place.trimmed();
    static const QRegularExpression odd(QStringLiteral("[^\\p{L}\\p{N} '_-]"));
    name = name.remove(odd).left(60).trimmed();
    if (name.isEmpty()) name = QStringLiteral("Season");
    return QStringLiteral("%1 %2.withy").arg(name).arg(a.last.year());
}

QStringList catalogueNames() {
    QStringList names;
    for (const auto& plant : plantCatalogue().plants)
        names << text(plant.name);
    names.sort(Qt::CaseInsensitive);
    return names;
}

} // namespace withy::ui
