// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <QDate>
#include <QLocale>
#include <QString>

#include <optional>
#include <string>
#include <utility>
#include <vector>

/// A season out of the few answers of the first page.
namespace withy::ui {

/// As they stand in the fields; nothing here has been judged.
struct FirstAnswers {
    QString place;
    QString latitude;  ///< "52.4", "52.4 N", "52.4° north", "-33.9"
    QString longitude; ///< "2.7 W"
    std::string zoneRule;
    QDate first;
    QDate last;
    model::UnitSystem units = model::UnitSystem::metric;
    QString currency; ///< ISO 4217
    model::PaperSize paper = model::PaperSize::a4;
    std::vector<std::string> grows; ///< names of plants of the catalogue, each becomes a patch
};

/// What the computer's own settings let us guess, for the season that begins next or now.
FirstAnswers proposedAnswers(const QLocale& locale, QDate today);

/// The months to cut in at this latitude, from the season that begins next or has begun.
std::pair<QDate, QDate> proposedDates(double latitude, QDate today);

/// Degrees of a typed latitude or longitude; nothing when it is none. Letters or words for north,
/// south, east and west are taken, and a comma for the point.
std::optional<double> readDegrees(const QString& typed, char positive, char negative, double most);

/// The first thing that is wrong, by field name, in one sentence with its mend; empty when all is well.
struct FirstTrouble {
    QString field; ///< "latitude"
    QString sentence;
};

std::optional<FirstTrouble> troubleWith(const FirstAnswers& answers);

/// The settings the answers make. Precondition: no trouble with them.
model::Settings settingsOf(const FirstAnswers& answers);
/// The whole season: settings, the plant catalogue and a patch for each plant grown, in the order given.
model::Season firstSeason(const FirstAnswers& answers);

/// "Wren Bank 2027.withy", with only such letters as every disk takes.
QString proposedFileName(const FirstAnswers& answers);
/// The names of the catalogue, for typing ahead.
QStringList catalogueNames();

} // namespace withy::ui
