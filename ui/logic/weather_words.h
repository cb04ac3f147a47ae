// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/weather_csv.h"
#include "core/model/season.h"
#include "ui/logic/edits/weather_edits.h"

#include <QStringList>

/// What an import of weather would do, and what is wrong with it.
namespace withy::ui {

/// "365 days from 1 Jan to 31 Dec 2025: 360 new, 5 with other figures." or why there is nothing to take.
QString importSummary(const exchange::WeatherSheet& sheet, const exchange::WeatherChoice& choice,
                      const exchange::WeatherReadingResult& reading, const edits::WeatherImport& import);
/// Each trouble with its mend, worst first; empty when all is well.
QStringList importTroubles(const model::Season& season, const exchange::WeatherSheet& sheet,
                           const exchange::WeatherChoice& choice,
                           const exchange::WeatherReadingResult& reading);
/// Names of the columns for choosing: their heads, or "Column 2".
QStringList columnNames(const exchange::WeatherSheet& sheet);
/// The first rows as they would be read: day, lowest, highest; "?" where one cannot be.
std::vector<QStringList> previewRows(const model::Season& season, const exchange::WeatherSheet& sheet,
                                     const exchange::WeatherChoice& choice, std::size_t most);

/// The bytes of a file as text: UTF-8, or Latin-1 where they are not.
std::string stationText(const QByteArray& bytes);

} // namespace withy::ui
