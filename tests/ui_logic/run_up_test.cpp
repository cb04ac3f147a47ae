// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits/run_up_edits.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/run_up_board.h"
#include "ui/logic/models/run_up_rows.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/wording.h"

#include <QSignalSpy>

#include <set>

namespace withy::ui {

namespace {

constexpr Id<model::Booking> laidSupper{1};

class RunUpPages : public LogicTest {
protected:
    void SetUp() override {
        bench_ = benchOn(demoSeason(), Day::fromYmd(2027, 9, 6));
        bench_->waitForPlan();
    }

    const plan::RunUpStep* stepOf(plan::StepKind kind) {
        for (const auto& s : bench_->plan().runUp->steps)
            if (s.key.step == kind && s.bookings == std::vector{laidSupper}) return &s;
        return nullptr;
    }

    std::unique_ptr<Workbench> bench_;
};

} // namespace

TEST_F(RunUpPages, AStepIsKeptGivenTickedOffAndLetGoAgainEachInOneEdit) {
    const auto key = stepOf(plan::StepKind::sort)->key;
    const auto at = *LocalTime::parse("2027-09-10T15:00");
    ASSERT_TRUE(bench_->take(edits::keepStepAt(bench_->season(), key, at)));
    bench_->waitForPlan();
    EXPECT_EQ(stepOf(plan::StepKind::sort)->from, at);
    EXPECT_EQ(edits::inWords(bench_->undoName()).toStdString(), "Sorting kept at 15:00");
    ASSERT_TRUE(bench_->take(edits::giveStepTo(bench_->season(), key, plan::Worker{Id<model::Helper>(1)})));
    ASSERT_TRUE(bench_->take(edits::tickStepOff(bench_->season(), key, at + Minutes(40), Minutes(33))));
    bench_->waitForPlan();
    const auto* mark = edits::markOf(bench_->season(), key);
    ASSERT_TRUE(mark);
    EXPECT_EQ(mark->helper, Id<model::Helper>(1));
    EXPECT_EQ(stepOf(plan::StepKind::sort)->took->value, 33);
    EXPECT_EQ(stepOf(plan::StepKind::sort)->to, at + Minutes(40));
    ASSERT_TRUE(bench_->take(edits::takeTickBack(bench_->season(), key)));
    ASSERT_TRUE(bench_->take(edits::giveStepTo(bench_->season(), key, std::nullopt)));
    ASSERT_TRUE(bench_->take(edits::letStepGo(bench_->season(), key)));
    EXPECT_TRUE(bench_->season().stepMarks.empty()) << "a mark that says nothing is taken out";
    for (int i = 0; i < 6; ++i)
        EXPECT_EQ(bench_->undo().toStdString(), "");
    EXPECT_TRUE(bench_->season().stepMarks.empty());
}

TEST_F(RunUpPages, TheListTicksOffWithMinutes) {
    WeekStepsModel model;
    model.setBench(bench_.get());
    model.show(stepsOfBooking(bench_->season(), bench_->plan(), laidSupper));
    int row = 0;
    while (model.isHead(row) || !model.stepAt(row)->key || model.stepAt(row)->nobody)
        ++row;
    const auto key = *model.stepAt(row)->key;
    const auto tick = model.index(row, WeekStepsModel::doneColumn);
    EXPECT_EQ(tick.data(Qt::CheckStateRole).toInt(), Qt::Unchecked);
    EXPECT_FALSE(model.flags(model.index(row, WeekStepsModel::tookColumn)) & Qt::ItemIsEditable);
    ASSERT_TRUE(model.setData(tick, Qt::Checked, Qt::CheckStateRole));
    ASSERT_TRUE(edits::markOf(bench_->season(), key));
    bench_->waitForPlan();
    model.show(stepsOfBooking(bench_->season(), bench_->plan(), laidSupper));
    row = 0;
    while (!model.stepAt(row) || model.stepAt(row)->key != key)
        ++row;
    EXPECT_EQ(model.index(row, WeekStepsModel::doneColumn).data(Qt::CheckStateRole).toInt(), Qt::Checked);
    ASSERT_TRUE(
        model.setData(model.index(row, WeekStepsModel::tookColumn), QStringLiteral("25"), Qt::EditRole));
    EXPECT_EQ(edits::markOf(bench_->season(), key)->minutes->value, 25);
    QSignalSpy refused(&model, &WeekStepsModel::refused);
    const auto type = [&](const char* words) {
        return model.setData(model.index(row, WeekStepsModel::tookColumn), QString::fromUtf8(words),
                             Qt::EditRole);
    };
    EXPECT_FALSE(type("long"));
    ASSERT_EQ(refused.count(), 1);
    EXPECT_TRUE(refused[0][0].toString().contains(QStringLiteral("“long” is not a number")));
    EXPECT_FALSE(type("-5"));
    EXPECT_EQ(refused.count(), 2);
    EXPECT_EQ(edits::markOf(bench_->season(), key)->minutes->value, 25);
    // As the column beside it writes it, and as people do; what is shown is read back as it was.
    for (const auto& [words, minutes] :
         {std::pair{"1 h 20", 80}, {"1:20", 80}, {"2 h", 120}, {"45 min", 45}, {"45", 45}, {"1 h 05", 65}}) {
        SCOPED_TRACE(words);
        ASSERT_TRUE(type(words));
        EXPECT_EQ(edits::markOf(bench_->season(), key)->minutes->value, minutes);
        bench_->waitForPlan();
        model.show(stepsOfBooking(bench_->season(), bench_->plan(), laidSupper));
        for (row = 0; !model.stepAt(row) || model.stepAt(row)->key != key;)
            ++row;
        const auto took = model.index(row, WeekStepsModel::tookColumn);
        EXPECT_EQ(took.data().toString(), workWords(Minutes(minutes)));
        ASSERT_TRUE(type(took.data(Qt::EditRole).toString().toUtf8().constData()));
        EXPECT_EQ(edits::markOf(bench_->season(), key)->minutes->value, minutes);
    }
    ASSERT_TRUE(type("")); // nobody looked at the clock after all
    EXPECT_FALSE(edits::markOf(bench_->season(), key)->minutes);
    EXPECT_EQ(refused.count(), 2);
}

TEST(RunUpTimes, ShowToFiveMinutesAndTicksAreNotAhead) {
    EXPECT_EQ(toFive(*LocalTime::parse("2027-09-10T14:33")).clock(), "14:35");
    EXPECT_EQ(toFive(*LocalTime::parse("2027-09-10T14:32")).clock(), "14:30");
    EXPECT_EQ(toFive(*LocalTime::parse("2027-09-10T23:58")).iso(), "2027-09-11T00:00");
    const auto end = *LocalTime::parse("2027-09-10T14:00");
    EXPECT_EQ(tickTime(end, std::nullopt), end);
    EXPECT_EQ(tickTime(end, end - Minutes(90)), end - Minutes(90));
    EXPECT_EQ(tickTime(end, end + Minutes(90)), end);
}

TEST_F(RunUpPages, AWeekOfMoreBookingsThanLettersNamesEach) {
    std::vector<Id<model::Booking>> many;
    for (std::int64_t i = 1; i <= 60; ++i)
        many.emplace_back(i);
    const auto letters = bookingLetters(bench_->season(), many);
    ASSERT_EQ(letters.size(), many.size());
    std::set<QString> distinct;
    for (const auto& [id, letter] : letters)
        distinct.insert(letter);
    EXPECT_EQ(distinct.size(), many.size());
}

TEST_F(RunUpPages, TheBoardHasALaneForEachPairOfHands) {
    const auto board = bookingBoard(bench_->season(), bench_->plan(), laidSupper, bench_->today());
    ASSERT_GE(board.days.size(), 2u);
    bool guests = false, cut = false, thread = false, busy = false;
    for (const auto& day : board.days) {
        ASSERT_FALSE(day.lanes.empty());
        EXPECT_FALSE(day.lanes[0].worker.helper);
        for (const auto& lane : day.lanes) {
            for (const auto& box : lane.boxes) {
                EXPECT_LE(box.from, box.to);
                EXPECT_GE(box.from, (LocalTime{day.day, 0}));
                EXPECT_LE(box.to, (LocalTime{day.day + 1, 0}));
                EXPECT_FALSE(box.spoken.isEmpty());
                guests = guests || box.look == BoardLook::fixed;
                cut = cut || box.look == BoardLook::round;
                thread = thread || box.look == BoardLook::thread;
                busy = busy || (box.look == BoardLook::busy && box.name.contains(QStringLiteral("Dentist")));
            }
        }
    }
    EXPECT_TRUE(guests && cut && thread && busy);
    EXPECT_LE(board.firstHour, 6);
    EXPECT_GE(board.lastHour, 20);
    const auto week = weekBoard(bench_->season(), bench_->plan(), *Day::fromYmd(2027, 9, 6), bench_->today());
    ASSERT_EQ(week.days.size(), 7u);
    EXPECT_TRUE(week.days[0].isToday);
}

/// The season's people, busy for good: it is said by how much, and in the list of what asks for the grower.
TEST_F(RunUpPages, WhatDoesNotFitIsSaid) {
    auto line = *bench_->season().lines.find(Id<model::Line>(1));
    line.pieces = Pieces(400);
    ASSERT_TRUE(bench_->take(model::Edit("many").put(line)));
    bench_->waitForPlan();
    const auto words = plainWords(runUpAnswer(bench_->season(), bench_->plan(), line.booking));
    EXPECT_TRUE(words.startsWith(QStringLiteral("It does not fit: "))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("too much"))) << words.toStdString();
    bool listed = false;
    for (const auto& f : findingsOfSeason(bench_->season(), bench_->plan()))
        listed = listed || f.finding.code == plan::FindingCode::workTooMuch;
    EXPECT_TRUE(listed);
    for (const auto& f : bench_->plan().runUp->findings)
        EXPECT_FALSE(sentence(f, model::UnitSystem::metric).isEmpty()) << static_cast<int>(f.code);
}

/// Every code of the run-up has a sentence with its mend, whatever its parts are.
TEST(RunUpFindings, EachHasItsSentence) {
    using plan::FindingCode;
    for (const auto code :
         {FindingCode::busyCoversDays, FindingCode::helperWithoutHours, FindingCode::dropBeforeVenueOpens,
          FindingCode::collectAfterVenueCloses, FindingCode::stepLongerThanGap, FindingCode::nobodyForStep,
          FindingCode::dropsAtOneTime, FindingCode::workTooMuch, FindingCode::pinInBusyHours,
          FindingCode::pinsAtOneTime, FindingCode::pinOutOfOrder, FindingCode::pinOutsideWindow,
          FindingCode::clocksChange, FindingCode::workInTheNight, FindingCode::coolStoreFull}) {
        plan::Finding f{code, plan::Severity::warning, {}, {"make", "2027-09-10T08:00", "pack"}, {75, 30}};
        const auto words = sentence(f, model::UnitSystem::metric);
        EXPECT_GT(words.size(), 30) << findingWord(code);
        EXPECT_FALSE(words.contains(QLatin1Char('%'))) << words.toStdString();
        EXPECT_FALSE(findingWord(code).empty());
    }
}

} // namespace withy::ui
