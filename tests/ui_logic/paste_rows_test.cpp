// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"
#include "tests/support/season_text.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"

#include <gmock/gmock.h>

/// Rows as spreadsheets put them on the clipboard: tab-separated, cells with tabs, breaks or quotes quoted.
namespace withy::ui {

namespace {

using model::Season;
using model::TableKind;
using testing::HasSubstr;

const std::vector<std::string> patchColumns{"plant", "label", "expected_stems", "first_cut"};

Season onePlant() {
    auto season = model::sample::season();
    season.plants.put(model::sample::plant(1, "Zinnia, coral"));
    return season;
}

std::string refusal(const char* tsv) {
    const auto reading =
        edits::pasteRows(onePlant(), TableKind::patches, patchColumns, {}, QString::fromUtf8(tsv));
    EXPECT_FALSE(reading.edit);
    return reading.sentence.toStdString();
}

} // namespace

TEST(PasteRows, RowsBecomeRecordsAsOneStep) {
    const auto season = onePlant();
    const auto reading = edits::pasteRows(season, TableKind::patches, patchColumns, {},
                                          QStringLiteral("Zinnia, coral\tTunnel side\t120\t1 jul\r\n"
                                                         "zinnia, coral\t\"Low \"\"field\"\"\"\t\t\r\n"));
    ASSERT_TRUE(reading.edit) << reading.sentence.toStdString();
    EXPECT_EQ(reading.made.size(), 2u);
    EXPECT_EQ(edits::inWords(reading.edit->name()).toStdString(), "2 patches pasted");
    const auto applied = model::apply(season, *reading.edit);
    ASSERT_TRUE(applied.ok());
    const auto& patches = applied->season.patches;
    EXPECT_EQ(patches.find(Id<model::Patch>(2))->label, "Low \"field\"");
    EXPECT_FALSE(patches.find(Id<model::Patch>(2))->expectedStems);
    EXPECT_EQ(patches.find(Id<model::Patch>(1))->firstCut, Day::fromYmd(2027, 7, 1));
    EXPECT_EQ(patches.find(Id<model::Patch>(2))->place, 1); // after the other on the walk
    const auto back = model::apply(applied->season, applied->inverse);
    EXPECT_EQ(exchange::exportSeason(back.value().season), exchange::exportSeason(season));
}

TEST(PasteRows, AHeadRowSaysWhichColumnIsWhich) {
    const auto reading = edits::pasteRows(onePlant(), TableKind::patches, patchColumns, {},
                                          QStringLiteral("Patch\tPlant\nHedge end\tZinnia, coral\n"));
    ASSERT_TRUE(reading.edit) << reading.sentence.toStdString();
    const auto season = model::apply(onePlant(), *reading.edit).value().season;
    EXPECT_EQ(season.patches.begin()->label, "Hedge end");
}

TEST(PasteRows, AllOrNoneWithRowAndColumn) {
    EXPECT_EQ(refusal("Zinnia, coral\tA\t12\t\nZinnia, coral\tB\tdozens\t\n"),
              "Row 2, Expected stems: “dozens” is not a number. Write it as 5.");
    EXPECT_THAT(refusal("Rose\tA\n"), HasSubstr("Row 1, Plant: There is no plant called “Rose”"));
    EXPECT_THAT(refusal("Zinnia, coral\t\n"), HasSubstr("Row 1, Patch: This may not be blank"));
    EXPECT_EQ(refusal("a\tb\tc\td\te\n"),
              "Row 1 has 5 cells and this list has 4 columns. Copy as many, or add a "
              "row of heads.");
    EXPECT_THAT(refusal(""), HasSubstr("There is nothing to paste"));
    EXPECT_THAT(refusal("Patch\tPlant\n"), HasSubstr("There is nothing to paste"));
    const auto order =
        edits::pasteRows(onePlant(), TableKind::patches, {"plant", "label", "first_cut", "last_cut"}, {},
                         QStringLiteral("Zinnia, coral\tA\t1 aug\t1 jul\n"));
    EXPECT_THAT(order.sentence.toStdString(), HasSubstr("Row 1: Last cut: "));
}

TEST(PasteRows, TheWrongTableIsSaid) {
    EXPECT_EQ(refusal("Booking\tDate\tKind\tAmount\nSupper\t1 jul\tdeposit\t50\n"),
              "These rows are payments, and this is a list of patches. Paste them there.");
    EXPECT_EQ(refusal("inner_rim\tinner_depth\n75\t100\n"),
              "These rows are containers, and this is a list of patches. Paste them there.");
}

TEST(PasteRows, CellsSurviveTheClipboard) {
    const std::vector<QStringList> rows{{QStringLiteral("a\tb"), QStringLiteral("two\nlines")},
                                        {QStringLiteral("\"quoted\""), QStringLiteral("plain \"inside\"")},
                                        {QStringLiteral("🌻"), QStringLiteral("عيد")}};
    EXPECT_EQ(edits::splitTsv(edits::joinTsv(rows)), rows);
}

} // namespace withy::ui
