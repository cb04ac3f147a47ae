// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/answers/walk_answers.h"
#include "ui/logic/edits/walk_edits.h"
#include "ui/logic/models/walk_entry_model.h"

namespace withy::ui {

namespace {

using edits::WalkCount;

const Day walked = model::sample::day(2027, 9, 6);

model::Season afterWalk(const model::Season& season, const model::Edit& edit) {
    auto applied = model::apply(season, edit);
    EXPECT_TRUE(applied.ok());
    return applied.ok() ? applied->season : season;
}

Id<model::Patch> firstPatch(const model::Season& season) {
    return season.patches.begin()->id;
}

} // namespace

TEST(WalkEdits, ACountMakesTheWalkAndTheLastBlankTakesItAway) {
    auto season = demoSeason();
    const auto patch = firstPatch(season);
    const auto before = season.walks.size();
    ASSERT_EQ(edits::walkOf(season, patch, walked), nullptr);
    season = afterWalk(season, edits::setWalkCount(season, walked, patch, WalkCount::readyNow, Stems(40)));
    season = afterWalk(season, edits::setWalkCount(season, walked, patch, WalkCount::withinWeek, Stems(0)));
    EXPECT_EQ(season.walks.size(), before + 1);
    const auto* walk = edits::walkOf(season, patch, walked);
    ASSERT_NE(walk, nullptr);
    EXPECT_EQ(walk->readyNow, Stems(40));
    EXPECT_EQ(walk->withinThreeDays, std::nullopt) << "what was not counted stays not known";
    EXPECT_EQ(walk->withinWeek, Stems(0)) << "a nought is a count";
    season = afterWalk(season, edits::setWalkCount(season, walked, patch, WalkCount::readyNow, std::nullopt));
    season =
        afterWalk(season, edits::setWalkCount(season, walked, patch, WalkCount::withinWeek, std::nullopt));
    EXPECT_EQ(season.walks.size(), before);
    EXPECT_TRUE(edits::setWalkCount(season, walked, patch, WalkCount::readyNow, std::nullopt).empty());
    EXPECT_TRUE(
        edits::setWalkCount(season, walked, Id<model::Patch>(9999), WalkCount::readyNow, Stems(1)).empty())
        << "a patch that is not there";
}

TEST(WalkEdits, CountsAsTheyAreTyped) {
    struct Case {
        const char* typed;
        std::optional<std::int64_t> stems;
        bool ok;
    };

    const auto season = demoSeason();
    const Case cases[] = {{"40", 40, true},   {"4+30+6", 40, true},    {" 4 + 30 + 6 ", 40, true},
                          {"", {}, true},     {"0", 0, true},          {"=", 12, true},
                          {"-3", {}, false},  {"4+", {}, false},       {"lots", {}, false},
                          {"2.5", {}, false}, {"99999999", {}, false}, {"4+x", {}, false}};
    for (const auto& c : cases) {
        SCOPED_TRACE(c.typed);
        const auto read =
            edits::readCount(season, WalkCount::readyNow, QString::fromUtf8(c.typed), Stems(12));
        EXPECT_EQ(read.ok(), c.ok) << read.sentence.toStdString();
        EXPECT_EQ(read.stems ? std::optional(read.stems->value) : std::nullopt, c.stems);
    }
    EXPECT_FALSE(edits::readCount(season, WalkCount::readyNow, QStringLiteral("=")).ok())
        << "there is no earlier figure to take";
}

TEST(WalkAnswers, AThousandTimesTheExpectationIsSaidAndTaken) {
    model::Walk walk;
    walk.readyNow = Stems(50000);
    walk.withinThreeDays = Stems(9);
    walk.withinWeek = Stems(4);
    WalkExpectation expected;
    expected.likely = {50, 10, 20};
    EXPECT_FALSE(countCaution(walk, WalkCount::readyNow, expected).isEmpty());
    EXPECT_TRUE(countCaution(walk, WalkCount::withinThreeDays, expected).isEmpty());
    EXPECT_FALSE(countCaution(walk, WalkCount::withinWeek, expected).isEmpty())
        << "fewer than within three days";
    walk.readyNow = Stems(70);
    EXPECT_TRUE(countCaution(walk, WalkCount::readyNow, expected).isEmpty());
    const auto season = demoSeason();
    const auto huge = model::apply(
        season, edits::setWalkCount(season, walked, firstPatch(season), WalkCount::readyNow, Stems(50000)));
    EXPECT_TRUE(huge.ok());
}

TEST(WalkAnswers, DaysOutOfTheSeasonAndNotYetCome) {
    const auto season = demoSeason();
    EXPECT_TRUE(walkDayRefusal(season, walked).isEmpty());
    EXPECT_FALSE(walkDayRefusal(season, model::sample::day(2031, 1, 3)).isEmpty());
    EXPECT_FALSE(walkDayCaution(walked + 1, walked).isEmpty());
    EXPECT_TRUE(walkDayCaution(walked, walked).isEmpty());
}

class WalkEntryTest : public LogicTest {
protected:
    void open(const model::Season& season) {
        bench = benchOn(season, walked);
        bench->waitForPlan();
        sheet = std::make_unique<WalkEntryModel>(*bench, walked);
        sheet->askExpected();
        ASSERT_TRUE(eventually([&] { return sheet->knowsExpected(); }));
    }

    bool type(int row, int column, const char* words) {
        return sheet->setData(sheet->index(row, column), QString::fromUtf8(words));
    }

    QString answer() { return plainWords(sheet->answer()); }

    int countedRows() {
        int counted = 0;
        for (int r = 0; r < sheet->rowCount(); ++r)
            counted += sheet->index(r, 0).data(WalkEntryModel::CountedRole).toBool() ? 1 : 0;
        return counted;
    }

    std::unique_ptr<Workbench> bench;
    std::unique_ptr<WalkEntryModel> sheet;
};

TEST_F(WalkEntryTest, TheSheetRunsInWalkingOrderAndKeepsBlanksBlank) {
    open(demoSeason());
    EXPECT_EQ(sheet->rowCount(), static_cast<int>(bench->season().patches.size()));
    const int first = sheet->firstBlankRow(); // the first patch that is in bloom
    ASSERT_GE(first, 0);
    EXPECT_FALSE(sheet->isResting(first));
    for (int r = 0; r < first; ++r)
        EXPECT_TRUE(sheet->isResting(r)) << r;
    for (int r = 0; r < sheet->rowCount(); ++r)
        for (int c = WalkEntryModel::ReadyColumn; c <= WalkEntryModel::WeekColumn; ++c)
            EXPECT_TRUE(sheet->index(r, c).data().toString().isEmpty());
    EXPECT_TRUE(answer().contains(QStringLiteral("nothing counted yet"))) << answer().toStdString();
    EXPECT_TRUE(type(0, WalkEntryModel::ReadyColumn, "40"));
    EXPECT_TRUE(type(1, WalkEntryModel::RemarkColumn, "mildew at the far end"));
    EXPECT_EQ(countedRows(), 1);
    EXPECT_TRUE(answer().contains(QStringLiteral("40 ready now"))) << answer().toStdString();
    EXPECT_TRUE(bench->undo().isEmpty());
    EXPECT_TRUE(bench->undo().isEmpty());
    EXPECT_EQ(countedRows(), 0) << "each figure is a step of its own";
}

TEST_F(WalkEntryTest, WhatCannotBeTakenStaysWithItsSentence) {
    open(demoSeason());
    const auto at = sheet->index(0, WalkEntryModel::ReadyColumn);
    EXPECT_FALSE(type(0, WalkEntryModel::ReadyColumn, "lots"));
    EXPECT_EQ(at.data().toString().toStdString(), "lots");
    EXPECT_FALSE(at.data(WalkEntryModel::SentenceRole).toString().isEmpty());
    EXPECT_FALSE(bench->canUndo());
    EXPECT_TRUE(type(0, WalkEntryModel::ReadyColumn, "4"));
    EXPECT_TRUE(at.data(WalkEntryModel::SentenceRole).toString().isEmpty());
}

// Must show 5 of the garden: half the expected count lowers the forecast, and what was expected before the
// walk does not move while it is typed.
TEST_F(WalkEntryTest, HalfTheExpectationLowersTheForecastAndNotWhatWasExpected) {
    open(demoSeason());
    int row = 0;
    while (row < sheet->rowCount() && sheet->index(row, WalkEntryModel::ReadyColumn)
                                              .data(WalkEntryModel::ExpectedRole)
                                              .toString()
                                              .remove(QLatin1Char(','))
                                              .toInt() < 20)
        ++row;
    ASSERT_LT(row, sheet->rowCount()) << "some patch is in flower on that day";
    const auto patch = sheet->patchAt(row);
    const auto expected = *sheet->expected().at(patch).likely[0];
    const auto before = likelyThisWeek(bench->plan(), patch, walked);
    ASSERT_TRUE(before);
    ASSERT_TRUE(type(row, WalkEntryModel::ReadyColumn, std::to_string(expected / 2).c_str()));
    bench->waitForPlan();
    const auto now = likelyThisWeek(bench->plan(), patch, walked);
    ASSERT_TRUE(now);
    EXPECT_LT(*now, *before);
    EXPECT_EQ(*sheet->expected().at(patch).likely[0], expected);
}

TEST_F(WalkEntryTest, NoPatchIsSaid) {
    open(emptySeason(2027));
    EXPECT_EQ(sheet->rowCount(), 0);
    EXPECT_TRUE(answer().contains(QStringLiteral("no patch"))) << answer().toStdString();
}

} // namespace withy::ui
