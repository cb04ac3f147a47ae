// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/import_season.h"

namespace withy::tests {

using namespace model;

namespace {

Plant plantOf(std::int64_t id, const char* name) {
    Plant plant;
    plant.id = Id<Plant>(id);
    plant.name = name;
    return plant;
}

} // namespace

Season importSeason(const char* currency) {
    Season s;
    Settings settings;
    settings.seasonName = "This year";
    settings.firstDay = *Day::parse("2026-03-01");
    settings.lastDay = *Day::parse("2026-10-31");
    settings.zoneRule = "GMT0BST,M3.5.0/1:00,M10.5.0/2:00";
    settings.currency = currency;
    s.settings.put(settings);
    s.plants.put(plantOf(1, "Zinnia, coral"));
    s.plants.put(plantOf(2, "Dill"));
    s.plants.put(plantOf(7, "Dill"));
    Booking booking;
    booking.id = Id<Booking>(4);
    booking.title = "Library supper";
    booking.eventStart = *LocalTime::parse("2026-07-04T18:00");
    booking.eventEnd = *LocalTime::parse("2026-07-04T23:00");
    booking.budget = Money{12050};
    s.bookings.put(booking);
    return s;
}

} // namespace withy::tests
