// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/starting_seasons.h"

#include "core/exchange/table_csv.h"
#include "core/model/schema.h"
#include "ui/logic/wording.h"

#include <QFile>

#include <stdexcept>

namespace withy::ui {

namespace {

std::string read(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    return file.readAll().toStdString();
}

/// All tables of a compiled-in folder as one edit: importing them one by one would refuse the first
/// record that points at a later table.
model::Season load(model::Season season, const QString& folder) {
    model::Edit all("season.load");
    model::Season names = season; // only to look up names and ids while reading
    for (const auto& table : model::allTables()) {
        const auto csv =
            read(folder + QLatin1Char('/') +
                 QString::fromUtf8(table.name.data(), static_cast<qsizetype>(table.name.size())) +
                 QStringLiteral(".csv"));
        if (csv.empty()) continue;
        const auto edit = exchange::importTable(names, table.kind, csv);
        if (!edit.ok()) throw std::runtime_error(sentences(edit.error()).toStdString());
        for (const auto& record : edit->puts()) {
            all.put(record);
            model::putRecord(names, record);
        }
    }
    auto applied = model::apply(season, all);
    if (!applied.ok()) throw std::runtime_error(sentences(applied.error()).toStdString());
    return std::move(applied).value().season;
}

} // namespace

model::Season emptySeason(int year) {
    model::Settings s;
    s.seasonName = "Season " + std::to_string(year);
    s.firstDay = *Day::fromYmd(year, 3, 1);
    s.lastDay = *Day::fromYmd(year, 10, 31);
    s.latitude = 52.5;
    s.longitude = -1.5;
    s.zoneRule = "GMT0BST,M3.5.0/1:00,M10.5.0/2:00";
    return model::apply(model::Season{}, model::Edit("season.new").put(s)).value().season;
}

model::Season seasonWithPlants(const model::Settings& settings) {
    auto begun = model::apply(emptySeason(settings.firstDay.year()), model::Edit("season.new").put(settings));
    if (!begun.ok()) throw std::runtime_error(sentences(begun.error()).toStdString());
    return load(std::move(begun).value().season, QStringLiteral(":/withy/plants"));
}

model::Season demoSeason() {
    return load(model::Season{}, QStringLiteral(":/withy/demo"));
}

std::optional<Day> demoDay(const model::Season& season) {
    // As in resources/demo/settings.csv: an invented place, which nobody's season shares by chance.
    const auto& s = season.theSettings();
    const bool demo = s.placeName == "Wren Bank" && s.latitude == 52.4 && s.longitude == -2.7 &&
                      s.firstDay == Day::fromYmd(2027, 3, 1);
    return demo ? Day::fromYmd(2027, 6, 1) : std::nullopt;
}

} // namespace withy::ui
