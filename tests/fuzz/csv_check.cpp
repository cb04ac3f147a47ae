// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/csv_check.h"

#include "core/exchange/csv.h"
#include "core/exchange/table_csv.h"
#include "core/model/schema.h"
#include "tests/exchange/write_rows.h"

namespace withy::fuzz {

namespace {

using namespace model;

/// Enough of a season for references by id and by name, one name borne twice.
Season smallSeason() {
    Season season;
    Settings settings;
    settings.seasonName = "Small";
    settings.firstDay = *Day::parse("2026-03-01");
    settings.lastDay = *Day::parse("2026-10-31");
    settings.zoneRule = "GMT0BST,M3.5.0/1:00,M10.5.0/2:00";
    season.settings.put(settings);
    for (const auto& [id, name] : {std::pair{1, "Zinnia, coral"}, {2, "Dill"}, {3, "Dill"}}) {
        Plant plant;
        plant.id = Id<Plant>(id);
        plant.name = name;
        season.plants.put(plant);
    }
    Booking booking;
    booking.id = Id<Booking>(4);
    booking.title = "Supper";
    booking.eventStart = *LocalTime::parse("2026-07-04T18:00");
    booking.eventEnd = *LocalTime::parse("2026-07-04T23:00");
    season.bookings.put(booking);
    return season;
}

bool sameFields(const exchange::CsvRows& a, const exchange::CsvRows& b) {
    const auto sameText = [](const exchange::CsvField& x, const exchange::CsvField& y) {
        return x.text == y.text && x.column == y.column;
    };
    const auto sameRow = [&](const exchange::CsvRow& x, const exchange::CsvRow& y) {
        return std::equal(x.fields.begin(), x.fields.end(), y.fields.begin(), y.fields.end(), sameText);
    };
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), sameRow);
}

/// No complaint may point past the end of the text.
bool placesHold(const Problems& problems, std::string_view bytes) {
    const auto breaks =
        std::count_if(bytes.begin(), bytes.end(), [](char c) { return c == '\r' || c == '\n'; });
    return !problems.empty() && std::all_of(problems.begin(), problems.end(), [&](const Problem& p) {
        return p.line >= 0 && p.line <= breaks + 1 && p.column >= 0;
    });
}

std::string brokenByReading(std::string_view bytes) {
    const auto rows = exchange::parseCsv(bytes);
    if (!rows) return placesHold(rows.error(), bytes) ? "" : "a complaint without a place in the text";
    if (rows->empty()) return "read, but not even a header";
    const std::string written = exchange::tests::writeRows(*rows);
    const auto again = exchange::parseCsv(written);
    if (!again || !sameFields(*rows, *again)) return "written and read again, the fields differ";
    return exchange::tests::writeRows(*again) == written ? "" : "written twice, the bytes differ";
}

std::string brokenByImport(const Season& season, TableKind kind, std::string_view bytes) {
    const auto edit = exchange::importInto(season, kind, bytes);
    if (!edit)
        return placesHold(edit.error(), bytes) ? "" : "an import complains without a place in the text";
    const auto applied = apply(season, *edit);
    if (!applied) return "an import was accepted, but does not apply";
    const std::string exported = exchange::exportTable(applied->season, kind);
    const auto again = exchange::importInto(applied->season, kind, exported);
    if (!again) return "what was imported and exported is refused";
    const auto twice = apply(applied->season, *again);
    return twice && twice->done.empty() ? "" : "what was imported and exported reads back differently";
}

} // namespace

std::string brokenCsvPromise(std::string_view bytes) {
    static const Season season = smallSeason();
    if (auto broken = brokenByReading(bytes); !broken.empty()) return broken;
    for (const auto kind : {TableKind::settings, TableKind::plants, TableKind::patches, TableKind::bookings,
                            TableKind::payments, TableKind::busyHours}) {
        const std::string broken = brokenByImport(season, kind, bytes);
        if (!broken.empty()) return std::string(tableInfo(kind).name) + ": " + broken;
    }
    return {};
}

} // namespace withy::fuzz
