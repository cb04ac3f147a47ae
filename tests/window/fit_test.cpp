// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/ninety_stock.h"
#include "tests/window/place_fixture.h"
#include "ui/common/stepper.h"
#include "ui/fit/fit_place.h"
#include "ui/garden/garden_place.h"

#include <QAction>
#include <QClipboard>
#include <QPushButton>
#include <QTableView>

namespace withy::ui {

namespace {

model::Season oneSupper(std::int64_t stems) {
    const auto both = tests::ninetyInStore(stems);
    return tests::applied(both, edits::eraseBooking(both, tests::askedSupper));
}

class FitPage : public PlaceTest {
protected:
    void answered() {
        static_cast<FitPlace*>(place_.get())->waitForAnswer();
        QApplication::processEvents();
    }

    [[nodiscard]] QString said(const char* name) { return in<AnswerLabel>(name)->plainWords(); }

    void askFor(const char* when, const char* what) {
        type(in<QLineEdit>("fit.when"), when);
        type(in<QLineEdit>("fit.what"), what);
        answered();
    }
};

} // namespace

TEST_F(FitPage, AnswersWhileTheTelephoneIsHeldAndHoldsTheDate) {
    openPlace<FitPlace>(oneSupper(150));
    EXPECT_EQ(QApplication::focusWidget(), in<QLineEdit>("fit.when"));
    askFor("11 sep 18:30", "30 supper jar");
    // 150 in store, 90 promised, three a jar: twenty by hand.
    EXPECT_EQ(said("fit.answer"), QStringLiteral("20 of Supper jar, yes. All 30, no."));
    in<Stepper>("fit.line.0.count")->setFocus();
    type(in<Stepper>("fit.line.0.count")->findChild<QLineEdit*>(), "20");
    answered();
    EXPECT_FALSE(said("fit.answer").contains(QStringLiteral("no"))) << said("fit.answer").toStdString();
    in<QPushButton>("fit.hold")->click();
    QApplication::processEvents();
    ASSERT_EQ(held().bookings.size(), 2u);
    ASSERT_TRUE(led_);
    const auto& made = *held().bookings.find(Id<model::Booking>(led_->id));
    EXPECT_EQ(made.standing, model::Standing::held);
    EXPECT_EQ(made.heldUntil, Day::fromYmd(2027, 9, 11));
    EXPECT_TRUE(bench_->undo().isEmpty());
    EXPECT_EQ(held().bookings.size(), 1u);
    EXPECT_TRUE(in<QLineEdit>("fit.when")->text().isEmpty()) << "ready for the next caller";
}

TEST_F(FitPage, FaultsStandAtTheirFieldAndChangeNothing) {
    openPlace<FitPlace>(oneSupper(150));
    askFor("never", "16 tables of nothing we grow");
    EXPECT_TRUE(in<QLineEdit>("fit.when")->accessibleDescription().startsWith(QStringLiteral("When: ")));
    EXPECT_TRUE(in<QLineEdit>("fit.what")->accessibleDescription().startsWith(QStringLiteral("What: ")));
    type(in<QLineEdit>("fit.guests"), "half past");
    EXPECT_TRUE(
        in<QLineEdit>("fit.guests")->accessibleDescription().startsWith(QStringLiteral("Guests from: ")));
    EXPECT_EQ(held().bookings.size(), 1u);
    EXPECT_FALSE(bench_->canUndo());
}

TEST_F(FitPage, WhatIsTypedIsTakenOnLeavingTheFieldToo) {
    openPlace<FitPlace>(oneSupper(150));
    type(in<QLineEdit>("fit.when"), "11 sep 18:30");
    auto* what = in<QLineEdit>("fit.what");
    what->setFocus();
    QTest::keyClicks(what, QStringLiteral("20 supper jar"));
    QTest::keyClick(what, Qt::Key_Tab);
    answered();
    EXPECT_TRUE(what->text().isEmpty());
    EXPECT_TRUE(said("fit.answer").contains(QStringLiteral("20"))) << said("fit.answer").toStdString();
}

TEST_F(FitPage, OneKeyFromAnywhereAndEscBack) {
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    auto& view = *window_->view();
    view.showPlace(2);
    auto* action = window_->actions().find(QStringLiteral("fit.check"));
    ASSERT_NE(action, nullptr);
    EXPECT_EQ(action->shortcut(), QKeySequence(Qt::Key_F9));
    QTest::keyClick(window_.get(), Qt::Key_F9);
    QApplication::processEvents();
    auto* fit = qobject_cast<FitPlace*>(view.current());
    ASSERT_NE(fit, nullptr);
    ASSERT_EQ(QApplication::focusWidget(), find<QLineEdit>("fit.when"));
    type(find<QLineEdit>("fit.when"), "25 sep 12:30");
    type(find<QLineEdit>("fit.what"), "16 tables of 2 supper jar");
    fit->waitForAnswer();
    QApplication::processEvents();
    EXPECT_FALSE(find<AnswerLabel>("fit.answer")->plainWords().isEmpty());
    const QString folder = qEnvironmentVariable("WITHY_PICTURES");
    if (!folder.isEmpty()) window_->grab().save(folder + QStringLiteral("/fit-check.png"));
    QTest::keyClick(find<QLineEdit>("fit.when"), Qt::Key_Escape);
    QApplication::processEvents();
    EXPECT_EQ(view.current()->helpPage(), QStringLiteral("garden"));
}

/// The telephone, by keyboard alone; chords, Enters and each thing typed count, Tab does not.
TEST_F(FitPage, FromAnyPageToAHeldDateInSixPresses) {
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    const auto before = season().bookings.size();
    int presses = 0;
    const auto key = [&](Qt::Key k) {
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : window_.get(), k);
        QApplication::processEvents();
        ++presses;
    };
    const auto words = [&](const char* typed) {
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(typed));
        ++presses;
    };
    key(Qt::Key_F9);
    words("25 sep 12:30");
    key(Qt::Key_Return);
    while (QApplication::focusWidget() != find<QLineEdit>("fit.what")) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        ASSERT_NE(QApplication::focusWidget(), find<QLineEdit>("fit.when")) << "came round";
    }
    words("16 tables of supper jar");
    key(Qt::Key_Return);
    qobject_cast<FitPlace*>(window_->view()->current())->waitForAnswer();
    for (int tabs = 0; tabs < 40 && QApplication::focusWidget() != find<QPushButton>("fit.hold"); ++tabs)
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    key(Qt::Key_Space);
    EXPECT_EQ(presses, 6);
    ASSERT_EQ(season().bookings.size(), before + 1);
    const auto& held = *std::max_element(season().bookings.begin(), season().bookings.end(),
                                         [](const auto& a, const auto& b) { return a.id < b.id; });
    EXPECT_EQ(held.standing, model::Standing::held);
    EXPECT_EQ(held.heldUntil, Day::fromYmd(2027, 9, 13));
    EXPECT_EQ(window_->view()->current()->helpPage(), QStringLiteral("bookings"));
}

class FreePageTest : public PlaceTest {};

TEST_F(FreePageTest, TellsACellInFullAndCopiesAll) {
    openPlace<GardenPlace>(tests::ninetyInStore(120));
    show("page.garden.free");
    auto* table = in<QTableView>("garden.free.table");
    ASSERT_GT(table->model()->rowCount(), 0);
    table->setFocus();
    QModelIndex filled;
    for (int row = 0; row < table->model()->rowCount(); ++row)
        for (int column = 0; column < table->model()->columnCount(); ++column)
            if (const auto at = table->model()->index(row, column); !filled.isValid() && at.data().isValid())
                filled = at;
    ASSERT_TRUE(filled.isValid());
    table->setCurrentIndex(filled);
    EXPECT_TRUE(in<QLabel>("garden.free.told")->text().contains(QStringLiteral("Cautious: ")));
    QTest::keySequence(table, QKeySequence::Copy);
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith(QStringLiteral("Plant\tWeek from\tLevel")));
    QTest::keyClick(table, Qt::Key_Return);
    ASSERT_TRUE(led_);
    EXPECT_EQ(led_->table, model::TableKind::plants);
}

} // namespace withy::ui
