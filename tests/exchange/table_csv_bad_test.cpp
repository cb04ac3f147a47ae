// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_csv.h"
#include "core/model/schema.h"
#include "tests/exchange/import_season.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace withy::exchange {
namespace {

using namespace model;

using tests::importSeason;

struct BadTable {
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

const std::vector<BadTable> badFiles{
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

TEST(TableCsvProblems, SaysWhatIsWrongAndWhere) {
    for (const auto& c : badFiles) {
        SCOPED_TRACE(c.name);
        const auto edit = importInto(importSeason(), c.kind, c.csv);
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

TEST(TableCsvProblems, ListsEverythingAtOnce) {
    const auto edit =
        importInto(importSeason(), TableKind::patches,
                   "plant,label,first_cut,plants\nnone,,soon,x\n1,ok,2026-06-01,3\n2,ok,,1.5\n");
    ASSERT_FALSE(edit.ok());
    std::vector<std::pair<int, int>> places;
    for (const auto& p : edit.error())
        places.emplace_back(p.line, p.column);
    using P = std::pair<int, int>;
    EXPECT_THAT(places, testing::UnorderedElementsAre(P(2, 1), P(2, 2), P(2, 3), P(2, 4), P(4, 4)));
}

TEST(TableCsvProblems, ChangedSettingsThatStrandABookingAreRefused) {
    const auto edit = importInto(importSeason(), TableKind::settings, "last_day\n2026-05-31\n");
    ASSERT_FALSE(edit.ok());
    EXPECT_EQ(edit.error().front().code, ProblemCode::outsideSeason);
    EXPECT_EQ(edit.error().front().table, "booking");
    EXPECT_EQ(edit.error().front().line, 0) << "the booking is in no line of this file";
}

TEST(TableCsvProblems, AmountsPastSixtyFourBitsAreRefusedInEveryCurrency) {
    for (const char* currency : {"GBP", "JPY", "BHD", "CLF"}) {
        SCOPED_TRACE(currency);
        const auto edit = importInto(
            importSeason(currency), TableKind::payments,
            "booking,date,amount\n4,2026-06-01,999999999999999\n4,2026-06-01,-99999999999999999999\n");
        ASSERT_FALSE(edit.ok());
        ASSERT_EQ(edit.error().size(), 2u);
        EXPECT_EQ(edit.error()[0].code, ProblemCode::aboveMost);
        EXPECT_EQ(edit.error()[1].code, ProblemCode::belowLeast);
    }
}

} // namespace
} // namespace withy::exchange
