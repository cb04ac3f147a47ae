// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/booking_tabs_fixture.h"
#include "ui/bookings/tabs/run_up_tab.h"
#include "ui/common/figure.h"
#include "ui/common/run_up_desk.h"
#include "ui/common/run_up_timeline.h"
#include "ui/common/text_label.h"
#include "ui/logic/edits/run_up_edits.h"
#include "ui/logic/models/week_steps.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>

namespace withy::ui {

namespace {

class RunUpPage : public TabTest {
protected:
    void SetUp() override { openBench(demoSeason()); }

    void open(QSize size = {1000, 900}) {
        showTab<RunUpTab>(size);
        desk_ = holder_->findChild<RunUpDesk*>();
        ASSERT_TRUE(desk_);
        timeline_ = desk_->timeline();
    }

    const plan::RunUpStep& stepOf(plan::StepKind kind) {
        const auto& steps = bench_->plan().runUp->steps;
        for (const auto& s : steps)
            if (s.key.step == kind && s.bookings == std::vector{supper}) return s;
        throw std::runtime_error("no such step");
    }

    std::size_t indexOf(plan::StepKind kind) {
        return static_cast<std::size_t>(&stepOf(kind) - bench_->plan().runUp->steps.data());
    }

    /// As the arrow keys do.
    void goTo(plan::StepKind kind) {
        timeline_->setFocus();
        const auto wanted = indexOf(kind);
        for (int i = 0; i < 200 && timeline_->chosen() != wanted; ++i)
            QTest::keyClick(timeline_, Qt::Key_Down);
        ASSERT_EQ(timeline_->chosen(), wanted);
    }

    void press(const char* name) {
        auto* button = part<QPushButton>(QString::fromUtf8(name));
        ASSERT_TRUE(button && button->isEnabled()) << name;
        button->click();
        settle();
    }

    RunUpDesk* desk_ = nullptr;
    RunUpTimeline* timeline_ = nullptr;
};

} // namespace

TEST_F(RunUpPage, SaysWhetherItFitsAndListsTheStepsByTime) {
    open();
    const auto answer = part<AnswerLabel>(QStringLiteral("runUp.answer"))->plainWords();
    EXPECT_TRUE(answer.contains(QStringLiteral("Make up from"))) << answer.toStdString();
    auto* list = desk_->list();
    auto* steps = desk_->steps();
    ASSERT_GT(steps->rowCount(), 10);
    LocalTime before;
    for (int row = 0; row < steps->rowCount(); ++row) {
        if (steps->isHead(row)) continue;
        EXPECT_LE(before, steps->stepAt(row)->from);
        before = steps->stepAt(row)->from;
    }
    EXPECT_FALSE(list->accessibleName().isEmpty());
    EXPECT_FALSE(timeline_->accessibleName().isEmpty());
}

TEST_F(RunUpPage, ArrowKeysMoveAStepAndItStaysAndOneUndoTakesItBack) {
    open();
    goTo(plan::StepKind::fillWater);
    EXPECT_FALSE(timeline_->accessibleDescription().isEmpty());
    const auto key = stepOf(plan::StepKind::fillWater).key;
    const auto from = stepOf(plan::StepKind::fillWater).from;
    for (int i = 0; i < 6; ++i)
        QTest::keyClick(timeline_, Qt::Key_Left);
    EXPECT_TRUE(bench_->season().stepMarks.empty()) << "several presses are one move";
    QTest::keyClick(timeline_, Qt::Key_Down); // going on settles it
    settle();
    const auto* mark = edits::markOf(bench_->season(), key);
    ASSERT_TRUE(mark);
    EXPECT_EQ(*mark->pinned, toFive(from - Minutes(30)));
    EXPECT_EQ(stepOf(plan::StepKind::fillWater).from, *mark->pinned);
    EXPECT_EQ(bench_->undo().toStdString(), "");
    EXPECT_TRUE(bench_->season().stepMarks.empty());
}

TEST_F(RunUpPage, TheMouseDragsAStep) {
    open();
    const auto i = indexOf(plan::StepKind::washContainers);
    const auto key = stepOf(plan::StepKind::washContainers).key;
    const auto from = stepOf(plan::StepKind::washContainers).from;
    const auto at = timeline_->rectOf(i).center();
    QTest::mousePress(timeline_, Qt::LeftButton, {}, at);
    QTest::mouseMove(timeline_, at - QPoint(40, 0));
    QTest::mouseMove(timeline_, at - QPoint(60, 0));
    QTest::mouseRelease(timeline_, Qt::LeftButton, {}, at - QPoint(60, 0));
    settle();
    const auto* mark = edits::markOf(bench_->season(), key);
    ASSERT_TRUE(mark);
    EXPECT_LT(*mark->pinned, from);
    EXPECT_EQ(mark->pinned->minute % 5, 0);
    QTest::keyClick(timeline_, Qt::Key_Delete);
    settle();
    EXPECT_TRUE(bench_->season().stepMarks.empty()) << "Delete lets it go";
}

TEST_F(RunUpPage, SpaceTicksOffAndTheMinutesAreTypedIn) {
    open();
    goTo(plan::StepKind::sort);
    const auto key = stepOf(plan::StepKind::sort).key;
    QTest::keyClick(timeline_, Qt::Key_Space);
    settle();
    ASSERT_TRUE(edits::markOf(bench_->season(), key));
    EXPECT_TRUE(edits::markOf(bench_->season(), key)->done);
    auto* took = part<QSpinBox>(QStringLiteral("runUp.took"));
    ASSERT_TRUE(took->isEnabled()) << "what was chosen is chosen still";
    took->setFocus();
    took->selectAll();
    QTest::keyClicks(took, QStringLiteral("25"));
    QTest::keyClick(took, Qt::Key_Return);
    settle();
    EXPECT_EQ(edits::markOf(bench_->season(), key)->minutes->value, 25);
    press("runUp.tick_button");
    EXPECT_FALSE(edits::markOf(bench_->season(), key));
}

TEST_F(RunUpPage, AStepIsGivenToAHelper) {
    open();
    goTo(plan::StepKind::sort);
    const auto key = stepOf(plan::StepKind::sort).key;
    auto* who = part<QComboBox>(QStringLiteral("runUp.who"));
    ASSERT_GE(who->count(), 3);
    who->setFocus();
    who->setCurrentIndex(2);
    Q_EMIT who->activated(2);
    settle();
    ASSERT_TRUE(edits::markOf(bench_->season(), key));
    EXPECT_TRUE(edits::markOf(bench_->season(), key)->helper);
}

TEST_F(RunUpPage, MinutesOpenTheirWorkingAndLeadToTheDesign) {
    open();
    const auto& steps = bench_->plan().runUp->steps;
    for (std::size_t i = 0; i < steps.size(); ++i)
        if (steps[i].key.step == plan::StepKind::make && steps[i].bookings == std::vector{supper} &&
            steps[i].count == 24) {
            timeline_->choose(i);
            Q_EMIT timeline_->chose(i);
        }
    settle();
    auto* making = holder_->findChild<FigureButton*>();
    ASSERT_TRUE(making && making->isVisible());
    EXPECT_EQ(making->text(), QStringLiteral("144 min")); // 24 at 6 minutes
    making->setFocus();
    QTest::keyClick(making, Qt::Key_Return);
    auto* lead = holder_->findChild<WorkingPanel*>()->lead();
    ASSERT_NE(lead, nullptr);
    QTest::keyClick(lead, Qt::Key_Space);
    ASSERT_TRUE(led_);
    EXPECT_EQ(led_->table, model::TableKind::designs);
}

/// Issue 6, "must show" 5: in a window of 1280 x 800 nothing of two days lies beyond the page's sides.
TEST_F(RunUpPage, TwoDaysNeedNoSidewaysScroll) {
    open({1190, 640}); // what the rail and the strip leave of 1280 x 800
    EXPECT_GE(timeline_->board().days.size(), 2u);
    EXPECT_LE(timeline_->mapTo(holder_.get(), QPoint(timeline_->width(), 0)).x(), holder_->width());
    for (std::size_t i = 0; i < bench_->plan().runUp->steps.size(); ++i) {
        const auto rect = timeline_->rectOf(i);
        if (rect.isEmpty()) continue;
        EXPECT_GE(rect.left(), 0);
        EXPECT_LE(rect.right(), timeline_->width());
    }
    picture("run_up.png");
}

/// Minutes that are being typed are not lost when a new plan comes, wherever their row stands by then.
TEST_F(RunUpPage, HalfTypedMinutesOutliveANewPlan) {
    open();
    goTo(plan::StepKind::make);
    press("runUp.tick_button");
    auto* list = desk_->list();
    auto* steps = desk_->steps();
    const int row = steps->rowOf(*timeline_->chosen());
    ASSERT_GE(row, 0);
    const auto index = steps->index(row, WeekStepsModel::tookColumn);
    ASSERT_TRUE(steps->flags(index) & Qt::ItemIsEditable);
    list->setFocus();
    list->setCurrentIndex(index);
    list->edit(index);
    auto* editor = list->viewport()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    QTest::keyClicks(editor, QStringLiteral("4"));
    // A name changes nothing of the rows; a step that is let go or kept, and a busy hour, move them.
    auto booking = *bench_->season().bookings.find(supper);
    booking.title = "Another supper";
    EXPECT_TRUE(bench_->apply(model::Edit("t").put(booking)).isEmpty());
    settle();
    ASSERT_EQ(list->viewport()->findChild<QLineEdit*>(), editor);
    EXPECT_EQ(editor->text(), QStringLiteral("4"));
    QTest::keyClicks(editor, QStringLiteral("5"));
    QTest::keyClick(editor, Qt::Key_Return);
    settle();
    const auto* mark = edits::markOf(bench_->season(), stepOf(plan::StepKind::make).key);
    ASSERT_TRUE(mark && mark->minutes);
    EXPECT_EQ(mark->minutes->value, 45);
}

} // namespace withy::ui
