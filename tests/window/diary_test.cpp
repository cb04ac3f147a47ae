// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/place_fixture.h"
#include "ui/common/figure.h"
#include "ui/common/run_up_timeline.h"
#include "ui/diary/diary_place.h"
#include "ui/diary/week_page.h"

#include <QClipboard>
#include <QPushButton>
#include <QTableView>

namespace withy::ui {

class Diary : public PlaceTest {};

TEST_F(Diary, TheWeekListsEveryBookingsStepsUnderTheirDay) {
    openPlace<DiaryPlace>(demoSeason());
    auto* view = in<QTableView>("diary.week.steps");
    auto* page = bare_->findChild<WeekPage*>();
    EXPECT_EQ(page->monday(), *Day::fromYmd(2027, 9, 6)) << "the week of today";
    ASSERT_GT(view->model()->rowCount(), 7);
    EXPECT_EQ(view->model()->index(0, 0).data().toString().toStdString(), "Mon 6 Sep");
    EXPECT_TRUE(view->model()->index(0, 1).data().toString().startsWith(QStringLiteral("sun up 0")));
    EXPECT_TRUE(answer().contains(QStringLiteral("of work for"))) << answer().toStdString();
    auto* drawn = in<RunUpTimeline>("diary.week.timeline");
    ASSERT_EQ(drawn->board().days.size(), 7u);
    EXPECT_TRUE(drawn->board().days[0].isToday);
    press("diary.week.later_button");
    EXPECT_EQ(page->monday(), *Day::fromYmd(2027, 9, 13));
    press("diary.week.earlier_button");
    EXPECT_EQ(page->monday(), *Day::fromYmd(2027, 9, 6));
}

TEST_F(Diary, TheWeeksSumOpensAndLeadsToTheBookings) {
    openPlace<DiaryPlace>(demoSeason());
    auto* work = in<FigureButton>("diary.week.work");
    ASSERT_TRUE(work->isVisible());
    EXPECT_TRUE(answer().startsWith(work->text())) << answer().toStdString();
    work->setFocus();
    QTest::keyClick(work, Qt::Key_Return);
    QApplication::processEvents();
    WorkingPanel* open = nullptr;
    for (auto* panel : bare_->findChildren<WorkingPanel*>())
        if (panel->isVisible()) open = panel;
    ASSERT_NE(open, nullptr);
    ASSERT_FALSE(open->leads().empty());
    QTest::keyClick(open->leads().front(), Qt::Key_Space);
    ASSERT_TRUE(led_);
    EXPECT_EQ(led_->table, model::TableKind::bookings);
}

TEST_F(Diary, TheChosenStepsAreCopied) {
    openPlace<DiaryPlace>(demoSeason());
    auto* view = in<QTableView>("diary.week.steps");
    const auto rows = copiedFrom(*view);
    ASSERT_EQ(rows.size(), 3);
    EXPECT_EQ(rows[1].section(QLatin1Char('\t'), 1, 1), view->model()->index(1, 1).data().toString());
    EXPECT_FALSE(said_.isEmpty());
}

TEST_F(Diary, EnterLeadsFromAStepToItsBooking) {
    openPlace<DiaryPlace>(demoSeason());
    auto* view = in<QTableView>("diary.week.steps");
    for (int row = 0; row < view->model()->rowCount(); ++row) {
        const auto booking = view->model()->index(row, 1).data(WeekStepsModel::BookingRole);
        if (!booking.isValid()) continue;
        view->setFocus();
        view->setCurrentIndex(view->model()->index(row, 1));
        QTest::keyClick(view, Qt::Key_Return);
        ASSERT_TRUE(led_);
        EXPECT_EQ(led_->table, model::TableKind::bookings);
        EXPECT_EQ(led_->id, booking.toLongLong());
        return;
    }
    FAIL() << "no step in the week of the demo season";
}

TEST_F(Diary, BusyHoursTypedInShowInTheWeek) {
    openPlace<DiaryPlace>(emptySeason(2027));
    show("page.diary.busy");
    auto* table = in<RecordTable>("diary.busy.table");
    typeInto(table, 0, "label", QStringLiteral("dentist"));
    if (held().busyHours.empty()) FAIL() << refused_.toStdString();
    typeInto(table, 0, "to", QStringLiteral("10 sep 2027, 9:00")); // the end first: it may not be before
    typeInto(table, 0, "from", QStringLiteral("10 sep 2027, 8:00"));
    const auto& busy = *held().busyHours.begin();
    EXPECT_EQ(busy.from.iso(), "2027-09-10T08:00");
    show("page.diary.week");
    auto* view = in<QTableView>("diary.week.steps");
    bool seen = false;
    for (int row = 0; row < view->model()->rowCount(); ++row)
        seen = seen || view->model()->index(row, 1).data().toString() == QStringLiteral("dentist");
    EXPECT_TRUE(seen);
}

TEST_F(Diary, AnEndBeforeItsStartIsRefused) {
    openPlace<DiaryPlace>(demoSeason());
    show("page.diary.busy");
    auto* table = in<RecordTable>("diary.busy.table");
    const auto before = held().busyHours.begin()->to;
    typeInto(table, table->records().rowOf(held().busyHours.begin()->id.value), "to",
             QStringLiteral("1 mar 2027, 0:00"));
    EXPECT_EQ(held().busyHours.begin()->to, before);
    typeInto(table, table->records().rowOf(held().busyHours.begin()->id.value), "to",
             QStringLiteral("when I am back"));
    EXPECT_EQ(held().busyHours.begin()->to, before);
}

TEST_F(Diary, ARoundHasItsTallyAndBlanksStayBlank) {
    openPlace<DiaryPlace>(demoSeason());
    show("page.diary.rounds");
    auto* rounds = in<RecordTable>("diary.rounds.table");
    auto* tally = in<RecordTable>("diary.rounds.tally");
    ASSERT_TRUE(rounds->chosenId());
    const int row = tally->records().rowCount() - 1;
    ASSERT_TRUE(tally->records().isAddRow(row));
    std::int64_t patch = 0;
    for (const auto& p : held().patches) {
        bool used = false;
        for (const auto& t : held().tallies)
            used = used || (t.round.value == *rounds->chosenId() && t.patch == p.id);
        if (!used) patch = p.id.value;
    }
    const auto before = held().tallies.size();
    typeInto(tally, row, "patch",
             QString::fromStdString(held().patches.find(Id<model::Patch>(patch))->label));
    ASSERT_EQ(held().tallies.size(), before + 1) << refused_.toStdString();
    const auto made = held().tallies.nextId().value - 1;
    const auto* t = held().tallies.find(Id<model::Tally>(made));
    EXPECT_EQ(t->round.value, *rounds->chosenId());
    EXPECT_FALSE(t->cut || t->thrownAway);
}

} // namespace withy::ui
