// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_csv.h"

#include "core/model/schema.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace withy::exchange {
namespace {

using namespace model;
using testing::ElementsAre;
using testing::IsEmpty;

Plant plantOf(std::int64_t id, const char* name) {
    Plant plant;
    plant.id = Id<Plant>(id);
    plant.name = name;
    return plant;
}

/// Settings, three plants (two of one name), a booking.
Season season(const char* currency = "GBP") {
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

Season imported(const Season& s, TableKind kind, std::string_view csv) {
    const auto edit = importInto(s, kind, csv);
    EXPECT_TRUE(edit.ok()) << "problem " << static_cast<int>(edit.error().front().code) << " of "
                           << edit.error().front().field;
    if (!edit) return s;
    return apply(s, *edit)->season;
}

TEST(TableCsv, ExportsCellsAsTheyAreTyped) {
    Season s;
    s.settings.put(season().theSettings());
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
        EXPECT_THAT(exportTable(season(currency), TableKind::bookings), testing::HasSubstr(cell)) << currency;
}

TEST(TableCsv, TakesColumnsInAnyOrderAndGivesIds) {
    const auto s = imported(season(), TableKind::plants,
                            "stem_length_min,NAME,id\n300,Scabious,\n,Cosmos,8\n,Larkspur,");
    EXPECT_EQ(s.plants.find(Id<Plant>(8))->name, "Cosmos");
    EXPECT_EQ(s.plants.find(Id<Plant>(9))->name, "Scabious") << "8 was taken within the file";
    EXPECT_EQ(s.plants.find(Id<Plant>(9))->stemLengthMin, Millimetres(300));
    EXPECT_EQ(s.plants.find(Id<Plant>(10))->name, "Larkspur");
    EXPECT_EQ(s.plants.size(), 6u);
}

TEST(TableCsv, NamesTheEdit) {
    const auto edit = importTable(season(), TableKind::plants, "name\nCosmos\nScabious\n");
    ASSERT_TRUE(edit.ok());
    EXPECT_EQ(edit->name().key, "import");
    EXPECT_THAT(edit->name().args, ElementsAre("plant", "2"));
    EXPECT_THAT(importTable(season(), TableKind::plants, "name\n")->puts(), IsEmpty());
}

TEST(TableCsv, LeavesWhatHasNoColumn) {
    const auto s = imported(season(), TableKind::bookings, "id,notes\r\n4,ring the bell\r\n");
    const Booking& b = *s.bookings.find(Id<Booking>(4));
    EXPECT_EQ(b.title, "Library supper");
    EXPECT_EQ(b.budget, Money{12050});
    EXPECT_EQ(b.notes, "ring the bell");
}

TEST(TableCsv, BlankCellsBlankOrTakeTheDefault) {
    const auto s = imported(season(), TableKind::bookings, "id,budget,kind,gift_share\r\n4,,,\r\n");
    const Booking& b = *s.bookings.find(Id<Booking>(4));
    EXPECT_EQ(b.budget, std::nullopt);
    EXPECT_EQ(b.kind, BookingKind::other);
    const auto jar = imported(season(), TableKind::containers,
                              "name,inner_rim,inner_depth,returnable,owned\r\nJar,70,120,,\r\n");
    EXPECT_TRUE(jar.containers.begin()->returnable);
    EXPECT_EQ(jar.containers.begin()->owned, std::nullopt);
}

TEST(TableCsv, ReferencesByNumberOrName) {
    for (const char* plant : {"1", " 1 ", "\"Zinnia, coral\"", "\"ZINNIA, Coral \""}) {
        SCOPED_TRACE(plant);
        const auto s =
            imported(season(), TableKind::patches, "plant,label\n" + std::string(plant) + ",Long bed\n");
        ASSERT_EQ(s.patches.size(), 1u);
        EXPECT_EQ(s.patches.begin()->plant, Id<Plant>(1));
    }
}

TEST(TableCsv, KeepsFormulaSignsAsTyped) {
    const auto s = imported(season(), TableKind::clients, "name,note\n=1+1,@home\n+44,-\n");
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

struct Bad {
    const char* name;
    TableKind kind;
    std::string csv;
    ProblemCode code;
    int line;
    int column;
    std::string field;
    std::string value;
    std::vector<std::string> details;
};

const std::string patchColumns = "plant,label\n";
const std::string bookingColumns = "title,event_start,event_end,budget\n";

const std::vector<Bad> badFiles{
    // As a whole
    {"empty", TableKind::plants, "", ProblemCode::emptyFile, 0, 0, "", "", {}},
    {"semicolons",
     TableKind::plants,
     "id;name\n1;Dill\n",
     ProblemCode::wrongSeparator,
     1,
     1,
     "",
     "",
     {"semicolon"}},
    {"mark and semicolons",
     TableKind::plants,
     "\xEF\xBB\xBFid;name\n",
     ProblemCode::wrongSeparator,
     1,
     1,
     "",
     "",
     {"semicolon"}},
    {"ragged", TableKind::plants, "id,name\n1\n", ProblemCode::raggedRow, 2, 2, "", "", {"2", "1"}},
    {"unclosed", TableKind::plants, "id,name\n1,\"Dill\n", ProblemCode::badQuote, 2, 2, "", "Dill\n", {}},
    // Columns
    {"unknown column",
     TableKind::ribbonMixes,
     "name,hue\nx,y\n",
     ProblemCode::unknownColumn,
     1,
     2,
     "",
     "hue",
     {"id", "name", "not_two_alike_side_by_side"}},
    {"column without a name",
     TableKind::ribbonMixes,
     "name,\nx,\n",
     ProblemCode::unknownColumn,
     1,
     2,
     "",
     "",
     {"id", "name", "not_two_alike_side_by_side"}},
    {"repeated column",
     TableKind::clients,
     "name,note,Note\nx,,\n",
     ProblemCode::repeatedColumn,
     1,
     3,
     "note",
     "Note",
     {"2"}},
    {"repeated id",
     TableKind::clients,
     "id,name,id\n1,x,2\n",
     ProblemCode::repeatedColumn,
     1,
     3,
     "id",
     "id",
     {"1"}},
    {"missing column",
     TableKind::patches,
     "label\nLong bed\n",
     ProblemCode::missingColumn,
     1,
     0,
     "plant",
     "",
     {}},
    {"missing for a new id",
     TableKind::bookings,
     "id,event_start,event_end\n5,2026-07-04T18:00,2026-07-04T19:00\n",
     ProblemCode::missingColumn,
     1,
     0,
     "title",
     "",
     {}},
    // Ids
    {"negative id", TableKind::plants, "id,name\n-1,x\n", ProblemCode::badId, 2, 1, "id", "-1", {}},
    {"nought id", TableKind::plants, "id,name\n0,x\n", ProblemCode::badId, 2, 1, "id", "0", {}},
    {"absurd id",
     TableKind::plants,
     "id,name\n99999999999999999999,x\n",
     ProblemCode::badId,
     2,
     1,
     "id",
     "99999999999999999999",
     {}},
    {"same id twice",
     TableKind::plants,
     "id,name\n5,x\n6,y\n5,z\n",
     ProblemCode::duplicate,
     4,
     1,
     "id",
     "5",
     {"5", "2"}},
    {"settings not 1", TableKind::settings, "id,season_name\n2,x\n", ProblemCode::badId, 2, 1, "id", "2", {}},
    {"settings twice",
     TableKind::settings,
     "season_name\nx\ny\n",
     ProblemCode::duplicate,
     3,
     0,
     "id",
     "",
     {"1", "2"}},
    // Cells
    {"required text", TableKind::plants, "name,notes\n,x\n", ProblemCode::required, 2, 1, "name", "", {}},
    {"blank currency",
     TableKind::settings,
     "currency,terms\n,x\n",
     ProblemCode::required,
     2,
     1,
     "currency",
     "",
     {}},
    {"required reference",
     TableKind::patches,
     patchColumns + ",x\n",
     ProblemCode::required,
     2,
     1,
     "plant",
     "",
     {}},
    {"required time",
     TableKind::bookings,
     bookingColumns + "x,2026-07-04T18:00, ,\n",
     ProblemCode::required,
     2,
     3,
     "event_end",
     " ",
     {}},
    {"unknown id",
     TableKind::patches,
     patchColumns + "99,x\n",
     ProblemCode::unknownRecord,
     2,
     1,
     "plant",
     "99",
     {"plant"}},
    {"id of nought",
     TableKind::patches,
     patchColumns + "0,x\n",
     ProblemCode::unknownRecord,
     2,
     1,
     "plant",
     "0",
     {"plant"}},
    {"unknown name",
     TableKind::patches,
     patchColumns + "Lovage,x\n",
     ProblemCode::unknownRecord,
     2,
     1,
     "plant",
     "Lovage",
     {"plant"}},
    {"name borne twice",
     TableKind::patches,
     patchColumns + "dill,x\n",
     ProblemCode::ambiguousName,
     2,
     1,
     "plant",
     "dill",
     {"plant", "2", "7"}},
    {"no word",
     TableKind::plants,
     "name,method\nx,dig\n",
     ProblemCode::notAWord,
     2,
     2,
     "method",
     "dig",
     {"cut", "pull"}},
    {"no yes or no", TableKind::plants, "name,focal\nx,1\n", ProblemCode::notYesNo, 2, 2, "focal", "1", {}},
    {"decimal comma",
     TableKind::plants,
     "name,q10\nx,\"2,5\"\n",
     ProblemCode::notANumber,
     2,
     2,
     "q10",
     "2,5",
     {"2.5"}},
    {"fraction of a stem",
     TableKind::plants,
     "name,bunch\nx,2.5\n",
     ProblemCode::notWhole,
     2,
     2,
     "bunch",
     "2.5",
     {}},
    {"fraction of a penny",
     TableKind::bookings,
     bookingColumns + "x,2026-07-04T18:00,2026-07-04T19:00,1.005\n",
     ProblemCode::notWhole,
     2,
     4,
     "budget",
     "1.005",
     {"2"}},
    {"slashed day",
     TableKind::patches,
     "plant,label,first_cut\n1,x,1/6/2026\n",
     ProblemCode::notADate,
     2,
     3,
     "first_cut",
     "1/6/2026",
     {}},
    {"leap day of a common year",
     TableKind::patches,
     "plant,label,first_cut\n1,x,2026-02-29\n",
     ProblemCode::notADate,
     2,
     3,
     "first_cut",
     "2026-02-29",
     {}},
    {"time without a clock",
     TableKind::bookings,
     bookingColumns + "x,2026-07-04,2026-07-04T19:00,\n",
     ProblemCode::notATime,
     2,
     2,
     "event_start",
     "2026-07-04",
     {}},
    {"colour by name",
     TableKind::plants,
     "name,colour_1\nx,lilac\n",
     ProblemCode::notAColour,
     2,
     2,
     "colour_1",
     "lilac",
     {}},
    // Judged by the rules of the model, and still by line and column
    {"negative count",
     TableKind::patches,
     "plant,label,plants\n1,x,5\n1,y,-5\n",
     ProblemCode::belowLeast,
     3,
     3,
     "plants",
     "-5",
     {"0", ""}},
    {"absurd length",
     TableKind::plants,
     "name,stem_length_min\nx,99999\n",
     ProblemCode::aboveMost,
     2,
     2,
     "stem_length_min",
     "99999",
     {"5000", "mm"}},
    {"absurd amount",
     TableKind::bookings,
     bookingColumns + "x,2026-07-04T18:00,2026-07-04T19:00,1000000000.01\n",
     ProblemCode::aboveMost,
     2,
     4,
     "budget",
     "1000000000.01",
     {"1000000000.00", ""}},
    {"over-long",
     TableKind::plants,
     "id,name\n,ok\n,\"" + std::string(201, 'x') + "\"\n",
     ProblemCode::tooLong,
     3,
     2,
     "name",
     std::string(200, 'x') + "\u2026",
     {"200", "201"}},
    {"control character",
     TableKind::plants,
     "name,notes\nx,\a\n",
     ProblemCode::notText,
     2,
     2,
     "notes",
     "\a",
     {}},
    {"end before start",
     TableKind::bookings,
     bookingColumns + "\"x\ny\",2026-07-04T18:00,2026-07-04T17:00,\n",
     ProblemCode::endBeforeStart,
     3,
     3,
     "event_end",
     "2026-07-04T17:00",
     {"2026-07-04T18:00"}},
    {"outside the season",
     TableKind::bookings,
     bookingColumns + "x,2025-07-04 18:00,2025-07-04 19:00,\n",
     ProblemCode::outsideSeason,
     2,
     2,
     "event_start",
     "2025-07-04 18:00",
     {"2026-03-01", "2026-10-31"}},
    {"in a column that is not there",
     TableKind::bookings,
     "id,standing\n4,Held\n",
     ProblemCode::holdWithoutEnd,
     2,
     0,
     "held_until",
     "",
     {}},
    {"skipped hour",
     TableKind::bookings,
     bookingColumns + "x,2026-03-29 01:30,2026-03-29 19:00,\n",
     ProblemCode::skippedHour,
     2,
     2,
     "event_start",
     "2026-03-29 01:30",
     {}},
    {"no such currency",
     TableKind::settings,
     "currency,terms\nZZ,x\n",
     ProblemCode::badCurrency,
     2,
     1,
     "currency",
     "ZZ",
     {}},
};

TEST(TableCsv, SaysWhatIsWrongAndWhere) {
    for (const auto& c : badFiles) {
        SCOPED_TRACE(c.name);
        const auto edit = importInto(season(), c.kind, c.csv);
        ASSERT_FALSE(edit.ok());
        ASSERT_EQ(edit.error().size(), 1u);
        const Problem& p = edit.error().front();
        EXPECT_EQ(p.code, c.code);
        EXPECT_EQ(p.table, tableInfo(c.kind).name);
        EXPECT_EQ(p.field, c.field);
        EXPECT_EQ(p.value, c.value);
        EXPECT_EQ(p.details, c.details);
        EXPECT_EQ(p.line, c.line);
        EXPECT_EQ(p.column, c.column);
    }
}

TEST(TableCsv, ListsEverythingAtOnce) {
    const auto edit =
        importInto(season(), TableKind::patches,
                   "plant,label,first_cut,plants\nnone,,soon,x\n1,ok,2026-06-01,3\n2,ok,,1.5\n");
    ASSERT_FALSE(edit.ok());
    std::vector<std::pair<int, int>> places;
    for (const auto& p : edit.error())
        places.emplace_back(p.line, p.column);
    using P = std::pair<int, int>;
    EXPECT_THAT(places, testing::UnorderedElementsAre(P(2, 1), P(2, 2), P(2, 3), P(2, 4), P(4, 4)));
}

TEST(TableCsv, ChangedSettingsThatStrandABookingAreRefused) {
    const auto edit = importInto(season(), TableKind::settings, "last_day\n2026-05-31\n");
    ASSERT_FALSE(edit.ok());
    EXPECT_EQ(edit.error().front().code, ProblemCode::outsideSeason);
    EXPECT_EQ(edit.error().front().table, "booking");
    EXPECT_EQ(edit.error().front().line, 0) << "the booking is in no line of this file";
}

TEST(TableCsv, AmountsPastSixtyFourBitsAreRefusedInEveryCurrency) {
    for (const char* currency : {"GBP", "JPY", "BHD", "CLF"}) {
        SCOPED_TRACE(currency);
        const auto edit = importInto(
            season(currency), TableKind::payments,
            "booking,date,amount\n4,2026-06-01,999999999999999\n4,2026-06-01,-99999999999999999999\n");
        ASSERT_FALSE(edit.ok());
        ASSERT_EQ(edit.error().size(), 2u);
        EXPECT_EQ(edit.error()[0].code, ProblemCode::aboveMost);
        EXPECT_EQ(edit.error()[1].code, ProblemCode::belowLeast);
    }
}

} // namespace
} // namespace withy::exchange
