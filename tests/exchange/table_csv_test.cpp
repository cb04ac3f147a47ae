// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_csv.h"

#include "core/model/edit.h"
#include "tests/exchange/import_season.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace withy::exchange {
namespace {

using namespace model;
using testing::ElementsAre;
using testing::IsEmpty;

using tests::importSeason;

Season imported(const Season& s, TableKind kind, std::string_view csv) {
    const auto edit = importInto(s, kind, csv);
    EXPECT_TRUE(edit.ok()) << "problem " << static_cast<int>(edit.error().front().code) << " of "
                           << edit.error().front().field;
    if (!edit) return s;
    return apply(s, *edit)->season;
}

TEST(TableCsv, ExportsCellsAsTheyAreTyped) {
    Season s;
    s.settings.put(importSeason().theSettings());
    Venue venue;
    venue.id = Id<Venue>(3);
    venue.name = "Hall, the \"old\" one";
    venue.travel = Minutes(25);
    venue.distanceKm = 100000;
    venue.notes = "=SUM(A1)\n@door";
    s.venues.put(venue);
    EXPECT_EQ(exportTable(s, TableKind::venues),
              "id,name,address,door,key_holder,travel,distance_km,in_from,out_by,water,stairs,parking,"
              "fixing_rule,flame_rule,who_moves,notes\r\n"
              "3,\"Hall, the \"\"old\"\" one\",,,,25,100000,,,,,,,,,\"=SUM(A1)\n@door\"\r\n");
}

TEST(TableCsv, ExportsMoneyInTheCurrencysDecimals) {
    const std::pair<const char*, const char*> cases[] = {
        {"GBP", ",120.50,"}, {"JPY", ",12050,"}, {"BHD", ",12.050,"}};
    for (const auto& [currency, cell] : cases)
        EXPECT_THAT(exportTable(importSeason(currency), TableKind::bookings), testing::HasSubstr(cell))
            << currency;
}

TEST(TableCsv, TakesColumnsInAnyOrderAndGivesIds) {
    const auto s = imported(importSeason(), TableKind::plants,
                            "stem_length_min,NAME,id\n300,Scabious,\n,Cosmos,8\n,Larkspur,");
    EXPECT_EQ(s.plants.find(Id<Plant>(8))->name, "Cosmos");
    EXPECT_EQ(s.plants.find(Id<Plant>(9))->name, "Scabious") << "8 was taken within the file";
    EXPECT_EQ(s.plants.find(Id<Plant>(9))->stemLengthMin, Millimetres(300));
    EXPECT_EQ(s.plants.find(Id<Plant>(10))->name, "Larkspur");
    EXPECT_EQ(s.plants.size(), 6u);
}

TEST(TableCsv, NamesTheEdit) {
    const auto edit = importTable(importSeason(), TableKind::plants, "name\nCosmos\nScabious\n");
    ASSERT_TRUE(edit.ok());
    EXPECT_EQ(edit->name().key, "import");
    EXPECT_THAT(edit->name().args, ElementsAre("plant", "2"));
    EXPECT_THAT(importTable(importSeason(), TableKind::plants, "name\n")->puts(), IsEmpty());
}

TEST(TableCsv, LeavesWhatHasNoColumn) {
    const auto s = imported(importSeason(), TableKind::bookings, "id,notes\r\n4,ring the bell\r\n");
    const Booking& b = *s.bookings.find(Id<Booking>(4));
    EXPECT_EQ(b.title, "Library supper");
    EXPECT_EQ(b.budget, Money{12050});
    EXPECT_EQ(b.notes, "ring the bell");
}

TEST(TableCsv, BlankCellsBlankOrTakeTheDefault) {
    const auto s = imported(importSeason(), TableKind::bookings, "id,budget,kind,gift_share\r\n4,,,\r\n");
    const Booking& b = *s.bookings.find(Id<Booking>(4));
    EXPECT_EQ(b.budget, std::nullopt);
    EXPECT_EQ(b.kind, BookingKind::other);
    const auto jar = imported(importSeason(), TableKind::containers,
                              "name,inner_rim,inner_depth,returnable,owned\r\nJar,70,120,,\r\n");
    EXPECT_TRUE(jar.containers.begin()->returnable);
    EXPECT_EQ(jar.containers.begin()->owned, std::nullopt);
}

TEST(TableCsv, ReferencesByNumberOrName) {
    for (const char* plant : {"1", " 1 ", "\"Zinnia, coral\"", "\"ZINNIA, Coral \""}) {
        SCOPED_TRACE(plant);
        const auto s = imported(importSeason(), TableKind::patches,
                                "plant,label\n" + std::string(plant) + ",Long bed\n");
        ASSERT_EQ(s.patches.size(), 1u);
        EXPECT_EQ(s.patches.begin()->plant, Id<Plant>(1));
    }
}

TEST(TableCsv, KeepsFormulaSignsAsTyped) {
    const auto s = imported(importSeason(), TableKind::clients, "name,note\n=1+1,@home\n+44,-\n");
    EXPECT_EQ(s.clients.find(Id<Client>(1))->name, "=1+1");
    EXPECT_EQ(s.clients.find(Id<Client>(1))->note, "@home");
    EXPECT_THAT(exportTable(s, TableKind::clients),
                testing::HasSubstr("1,=1+1,,,@home,no\r\n2,+44,,,-,no\r\n"));
}

TEST(TableCsv, SettingsAreOneRecordInTheirOwnCurrency) {
    const char* csv = "season_name,first_day,last_day,zone_rule,labour_rate,currency\n"
                      "Next,2027-03-01,2027-10-31,UTC0,12.345,BHD\n";
    const auto s = imported(Season{}, TableKind::settings, csv);
    EXPECT_EQ(s.settings.size(), 1u);
    EXPECT_EQ(s.theSettings().labourRate, Money{12345});
}

} // namespace
} // namespace withy::exchange
