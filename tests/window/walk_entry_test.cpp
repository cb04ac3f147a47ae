// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/place_fixture.h"
#include "ui/garden/garden_place.h"
#include "ui/garden/walk_entry_page.h"
#include "ui/garden/walk_entry_table.h"
#include "ui/logic/edits/walk_edits.h"
#include "ui/logic/models/walk_entry_model.h"

namespace withy::ui {

class WalkEntry : public PlaceTest {
protected:
    void begin(const model::Season& season = demoSeason()) {
        openPlace<GardenPlace>(season);
        show("garden.walk");
        table_ = in<WalkEntryTable>("garden.walk_entry.table");
        page_ = in<WalkEntryPage>("garden.walk_entry");
        if (page_->sheet().rowCount() == 0) return;
        ASSERT_TRUE(QTest::qWaitFor([this] { return page_->sheet().knowsExpected(); }));
        settle();
    }

    /// The row of the sheet that is shown as the n-th, from nought.
    [[nodiscard]] int row(int shown) const {
        for (int r = 0; r < page_->sheet().rowCount(); ++r)
            if (!table_->isRowHidden(r) && shown-- == 0) return r;
        return -1;
    }

    [[nodiscard]] int lastRow() const {
        int last = page_->sheet().rowCount() - 1;
        while (last > 0 && table_->isRowHidden(last))
            --last;
        return last;
    }

    void key(int key, const char* words = "") {
        auto* at = QApplication::focusWidget();
        ASSERT_EQ(at->objectName().toStdString(), "garden.walk_entry.cell");
        QTest::keyClicks(at, QString::fromUtf8(words));
        QTest::keyClick(at, static_cast<Qt::Key>(key));
        QApplication::processEvents();
    }

    const model::Walk* walk(int shown) { return walkAt(row(shown)); }

    const model::Walk* walkAt(int row) {
        return edits::walkOf(held(), page_->sheet().patchAt(row), page_->sheet().day());
    }

    WalkEntryTable* table_ = nullptr;
    WalkEntryPage* page_ = nullptr;
};

TEST_F(WalkEntry, AWholeWalkByKeyboardAlone) {
    begin();
    key(Qt::Key_Return, "40"); // ready now
    key(Qt::Key_Return, "4");  // in three days
    key(Qt::Key_Return, "10"); // in a week, and on to the next patch
    key(Qt::Key_Tab, "12");
    key(Qt::Key_Tab); // a blank is passed over
    key(Qt::Key_Tab, "7");
    key(Qt::Key_Down, "30"); // down: the same count of the next patch
    key(Qt::Key_Up, "5+6");
    EXPECT_EQ(walk(0)->readyNow, Stems(40));
    EXPECT_EQ(walk(0)->withinThreeDays, Stems(4));
    EXPECT_EQ(walk(0)->withinWeek, Stems(10));
    EXPECT_EQ(walk(1)->readyNow, Stems(12));
    EXPECT_EQ(walk(1)->withinThreeDays, std::nullopt) << "blank stays blank";
    EXPECT_EQ(walk(1)->withinWeek, Stems(7));
    EXPECT_EQ(walk(2)->readyNow, Stems(30));
    EXPECT_EQ(walk(3)->readyNow, Stems(11));
    EXPECT_TRUE(answer().contains(QStringLiteral("93 ready now"))) << answer().toStdString();
    EXPECT_TRUE(bench_->undo().isEmpty());
    EXPECT_EQ(walk(3), nullptr) << "one figure, one step";
    EXPECT_EQ(walk(2)->readyNow, Stems(30));
}

/// The rows are what the page is for: beside a few lines of words they have all its height.
TEST_F(WalkEntry, TheTableTakesThePagesHeight) {
    begin();
    bare_->resize(1188, 800);
    QApplication::processEvents();
    EXPECT_GT(table_->height(), page_->height() * 6 / 10);
}

TEST_F(WalkEntry, ArrowsMoveAndEscPutsBack) {
    begin();
    key(Qt::Key_Return, "40");
    EXPECT_EQ(table_->currentIndex().column(), WalkEntryModel::ThreeDaysColumn);
    key(Qt::Key_Left);
    EXPECT_EQ(table_->currentIndex().column(), WalkEntryModel::ReadyColumn);
    key(Qt::Key_Escape, "999");
    EXPECT_EQ(table_->cell().text().toStdString(), "40");
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    EXPECT_EQ(table_->currentIndex().column(), WalkEntryModel::RemarkColumn);
    key(Qt::Key_Return, "mildew at the far end");
    EXPECT_EQ(walk(0)->remark, "mildew at the far end");
    EXPECT_EQ(table_->currentIndex().row(), row(1));
}

TEST_F(WalkEntry, TheSheetIsLeftByTabAtItsEnds) {
    begin();
    table_->openCell(lastRow(), WalkEntryModel::WeekColumn);
    key(Qt::Key_Tab, "3");
    EXPECT_NE(QApplication::focusWidget()->objectName().toStdString(), "garden.walk_entry.cell");
    EXPECT_EQ(walkAt(lastRow())->withinWeek, Stems(3));
    table_->openCell(row(0), WalkEntryModel::ReadyColumn);
    key(Qt::Key_Backtab);
    EXPECT_EQ(QApplication::focusWidget()->objectName().toStdString(), "garden.walk_entry.date");
}

TEST_F(WalkEntry, BadCountsStayWithTheirSentenceAndHugeOnesAreTaken) {
    begin();
    key(Qt::Key_Return, "-4");
    EXPECT_FALSE(refused_.isEmpty());
    EXPECT_EQ(walk(0), nullptr);
    EXPECT_EQ(page_->sheet().index(row(0), WalkEntryModel::ReadyColumn).data().toString().toStdString(),
              "-4");
    key(Qt::Key_Left);
    key(Qt::Key_Return, "90000");
    EXPECT_EQ(walk(0)->readyNow, Stems(90000));
    const auto known = [this] { return page_->sheet().knowsExpected(); };
    ASSERT_TRUE(QTest::qWaitFor(known));
    key(Qt::Key_Left);
    auto* says = in<QLabel>("garden.walk_entry.says");
    EXPECT_TRUE(says->text().contains(QStringLiteral("90,000"))) << says->text().toStdString();
}

TEST_F(WalkEntry, AnotherDayIsTypedAndOneOutOfTheSeasonIsNot) {
    begin();
    key(Qt::Key_Return, "40");
    auto* date = in<QLineEdit>("garden.walk_entry.date");
    type(date, "3 sep");
    EXPECT_EQ(page_->sheet().day(), *Day::fromYmd(2027, 9, 3));
    for (int r = 0; r < page_->sheet().rowCount(); ++r)
        EXPECT_TRUE(page_->sheet().index(r, WalkEntryModel::ReadyColumn).data().toString() !=
                    QStringLiteral("40"));
    type(date, "3 jan 2031");
    EXPECT_EQ(page_->sheet().day(), *Day::fromYmd(2027, 9, 3));
    EXPECT_FALSE(in<QLabel>("garden.walk_entry.day_says")->text().isEmpty());
    type(date, "whenever");
    EXPECT_EQ(page_->sheet().day(), *Day::fromYmd(2027, 9, 3));
    type(date, "6 sep");
    EXPECT_EQ(page_->sheet().day(), *Day::fromYmd(2027, 9, 6));
}

TEST_F(WalkEntry, WhatIsNotInBloomIsFoldedAndCanStillBeWritten) {
    begin();
    auto& sheet = page_->sheet();
    ASSERT_GT(sheet.restingRows(), 0);
    ASSERT_LT(sheet.restingRows(), sheet.rowCount());
    EXPECT_EQ(table_->currentIndex().row(), row(0)) << "one begins at the first that is in bloom";
    int hidden = 0;
    for (int r = 0; r < sheet.rowCount(); ++r) {
        hidden += table_->isRowHidden(r) ? 1 : 0;
        if (table_->isRowHidden(r)) {
            EXPECT_TRUE(sheet.isResting(r)) << r;
        }
    }
    EXPECT_EQ(hidden, sheet.restingRows());
    auto* fold = in<QPushButton>("garden.walk_entry.fold");
    EXPECT_TRUE(fold->text().contains(QString::number(hidden))) << fold->text().toStdString();
    EXPECT_NE(fold->focusPolicy() & Qt::TabFocus, 0);
    fold->setFocus();
    QTest::keyClick(fold, Qt::Key_Space);
    int resting = 0;
    while (!sheet.isResting(resting))
        ++resting;
    EXPECT_FALSE(table_->isRowHidden(resting));
    table_->openCell(resting, WalkEntryModel::ReadyColumn);
    key(Qt::Key_Return, "3");
    EXPECT_EQ(walkAt(resting)->readyNow, Stems(3));
    QTest::keyClick(fold, Qt::Key_Space);
    EXPECT_FALSE(table_->isRowHidden(resting)) << "what was found there is not folded away again";
    EXPECT_EQ(sheet.restingRows(), hidden - 1);
}

TEST_F(WalkEntry, AGardenWithoutPatchesIsNoTrap) {
    begin(emptySeason(2027));
    EXPECT_EQ(page_->sheet().rowCount(), 0);
    EXPECT_TRUE(answer().contains(QStringLiteral("no patch"))) << answer().toStdString();
}

} // namespace withy::ui
