// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/bookings_fixture.h"
#include "ui/bookings/cutting/cutting_day.h"
#include "ui/bookings/cutting/tally_panel.h"
#include "ui/bookings/cutting/tally_row_view.h"
#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/logic/models/cutting_goals.h"

#include <QLineEdit>
#include <QMenu>
#include <QPushButton>

#include <gmock/gmock.h>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr Id<model::Booking> supperCut{1};

/// The supper's cutting day in the bookings' place, opened as a person does.
class CuttingDayTest : public BookingsTest {
protected:
    void openDay(QSize size = {1188, 640}) {
        openPlace(demoSeason(), Day::parse("2027-09-10"), size); // the last day of its cutting
        place_->choose(supperCut);
        trigger("booking.cutting");
        ASSERT_TRUE(place_->atTheCuttingDay());
        before_ = now();
    }

    [[nodiscard]] TallyPanel& panel() { return place_->cuttingDayPage().tally(); }

    [[nodiscard]] TallyRowView& row(std::size_t i) { return *panel().rows().at(i); }

    [[nodiscard]] QPushButton* key(std::size_t i, const char* name) {
        return row(i).findChild<QPushButton*>(QString::fromUtf8(name));
    }

    [[nodiscard]] std::optional<std::int64_t> cut(std::size_t i) { return row(i).row().cut; }

    [[nodiscard]] bool asBefore() const {
        if (now().rounds.size() != before_.rounds.size()) return false;
        if (now().roundBookings.size() != before_.roundBookings.size()) return false;
        if (now().tallies.size() != before_.tallies.size()) return false;
        return std::all_of(before_.tallies.begin(), before_.tallies.end(), [this](const auto& t) {
            const auto* other = now().tallies.find(t.id);
            return other && other->cut == t.cut && other->thrownAway == t.thrownAway;
        });
    }

    void undoAll() {
        while (bench_->canUndo())
            ASSERT_EQ(bench_->undo().toStdString(), "");
        settle();
    }

    model::Season before_;
};

} // namespace

TEST_F(CuttingDayTest, EachPressIsKeptAndUndoneByItself) {
    openDay();
    ASSERT_GT(panel().rows().size(), 4U);
    for (std::size_t i = 0; i < panel().rows().size(); ++i)
        EXPECT_EQ(cut(i), std::nullopt) << "blank, not nought";
    clickOn(key(0, "tally.more"));
    clickOn(key(0, "tally.ten"));
    clickOn(key(0, "tally.less"));
    EXPECT_EQ(cut(0), 10);
    EXPECT_EQ(row(0).count().text(), QStringLiteral("10"));
    EXPECT_EQ(now().tallies.size(), before_.tallies.size() + 1);
    EXPECT_EQ(bench_->undo(), QString());
    settle();
    EXPECT_EQ(cut(0), 11);
    undoAll();
    EXPECT_EQ(cut(0), std::nullopt);
    EXPECT_TRUE(asBefore());
}

TEST_F(CuttingDayTest, ByNumberKeysAloneTheWholeListIsTallied) {
    openDay();
    const auto rows = panel().rows().size();
    presses_ = 0;
    for (std::size_t i = 0; i < rows; ++i) {
        ASSERT_EQ(QApplication::focusWidget(), &row(i).count()) << i;
        typeWords(i == 1 ? "12+10+8" : "40");
        press(Qt::Key_Return);
    }
    EXPECT_EQ(presses_, static_cast<int>(2 * rows)) << "two presses a plant";
    for (std::size_t i = 0; i < rows; ++i)
        EXPECT_EQ(cut(i), i == 1 ? 30 : 40) << i;
    press(Qt::Key_Up);
    EXPECT_EQ(QApplication::focusWidget(), &row(rows - 2).count());
    undoAll();
    EXPECT_TRUE(asBefore());
}

TEST_F(CuttingDayTest, WhatIsRefusedIsSaidAndStaysToBeMended) {
    openDay();
    typeWords("lots");
    press(Qt::Key_Return);
    EXPECT_EQ(row(0).count().text(), QStringLiteral("lots"));
    EXPECT_THAT(refused_.toStdString(), testing::HasSubstr("no count of stems"));
    EXPECT_TRUE(part<TextLabel>(QStringLiteral("tally.says"))->isVisible());
    place_->cuttingDayPage().tally().rows().front()->take();
    press(Qt::Key_Escape);
    EXPECT_EQ(row(0).count().text(), QString()) << "Esc puts back what stood there";
    EXPECT_TRUE(place_->atTheCuttingDay());
    EXPECT_TRUE(asBefore());
    clickOn(key(0, "tally.less"));
    EXPECT_THAT(refused_.toStdString(), testing::HasSubstr("Nothing is counted yet"));
    EXPECT_EQ(cut(0), std::nullopt);
}

TEST_F(CuttingDayTest, EscGoesBackAndKeepsWhatWasTyped) {
    openDay();
    typeWords("25");
    clickOn(part<QPushButton>(QStringLiteral("cutting.back")));
    EXPECT_FALSE(place_->atTheCuttingDay());
    trigger("booking.cutting");
    EXPECT_EQ(cut(0), 25);
    press(Qt::Key_Escape);
    EXPECT_FALSE(place_->atTheCuttingDay());
}

TEST_F(CuttingDayTest, ThrownAwayIsCountedWithTheSameKeys) {
    openDay();
    typeWords("20");
    press(Qt::Key_Return);
    row(0).take();
    clickOn(part<QPushButton>(QStringLiteral("tally.threw_away")));
    clickOn(key(0, "tally.more"));
    clickOn(key(0, "tally.more"));
    EXPECT_EQ(row(0).row().thrownAway, 2);
    EXPECT_EQ(cut(0), 20);
    row(0).take();
    press(Qt::Key_Escape);
    EXPECT_FALSE(part<QPushButton>(QStringLiteral("tally.threw_away"))->isChecked());
    EXPECT_TRUE(place_->atTheCuttingDay()) << "the first Esc only ends the throwing away";
    EXPECT_EQ(row(0).count().text(), QStringLiteral("20"));
}

TEST_F(CuttingDayTest, AFoundPlantJoinsInTwoPresses) {
    openDay();
    const auto rows = panel().rows().size();
    auto* found = part<QPushButton>(QStringLiteral("tally.found"));
    presses_ = 0;
    Q_EMIT found->menu()->aboutToShow(); // the first press
    ++presses_;
    ASSERT_FALSE(found->menu()->actions().isEmpty());
    found->menu()->actions().front()->trigger();
    ++presses_;
    settle();
    EXPECT_EQ(presses_, 2);
    ASSERT_EQ(panel().rows().size(), rows + 1);
    auto* focus = QApplication::focusWidget();
    ASSERT_NE(focus, nullptr);
    EXPECT_EQ(focus->objectName(), QStringLiteral("tally.count")) << "ready for its number";
    typeWords("12");
    press(Qt::Key_Return);
    int unplanned = 0;
    for (const auto* view : panel().rows()) {
        if (view->row().planned) continue;
        ++unplanned;
        EXPECT_EQ(view->row().cut, 12);
    }
    EXPECT_EQ(unplanned, 1);
    undoAll();
    EXPECT_EQ(panel().rows().size(), rows);
    EXPECT_TRUE(asBefore());
}

TEST_F(CuttingDayTest, KeysAreLargeAndRowsHoldThem) {
    openDay();
    ASSERT_FALSE(panel().rows().empty());
    for (const auto* view : panel().rows()) {
        EXPECT_GE(view->height(), 102);
        for (const auto* k : view->findChildren<QPushButton*>())
            if (k->isVisible() && k->property("look") == QStringLiteral("tally")) {
                EXPECT_EQ(k->height(), 74) << k->objectName().toStdString();
                EXPECT_GE(k->width(), 48) << k->objectName().toStdString();
            }
    }
}

TEST_F(CuttingDayTest, EveryRowHasTheSameKeysBySize) {
    openDay();
    ASSERT_FALSE(panel().rows().empty());
    for (const auto* row : panel().rows()) {
        std::vector<std::pair<int, int>> keys; // where, and how much
        for (const auto* key : row->findChildren<QPushButton*>()) {
            bool isNumber = false;
            const int by = key->text().toInt(&isNumber); // "+5"; the one alone is "+"
            if (key->isVisible() && isNumber && by > 0) keys.emplace_back(key->x(), by);
        }
        std::sort(keys.begin(), keys.end());
        ASSERT_EQ(keys.size(), 2u);
        EXPECT_LT(keys[0].second, keys[1].second);
    }
}

TEST_F(CuttingDayTest, APanelBesideSharesTheWidthAndTakesTurnsWhereItIsNarrow) {
    openDay();
    auto& page = place_->cuttingDayPage();
    auto* beside = new TextLabel(TypeRole::text, QStringLiteral("shares"));
    page.setBeside(beside);
    settle();
    EXPECT_TRUE(beside->isVisible());
    EXPECT_TRUE(panel().isVisible());
    EXPECT_LE(panel().geometry().right(), beside->geometry().left());
    CuttingDay narrow(*bench_);
    auto* other = new TextLabel(TypeRole::text, QStringLiteral("shares"));
    narrow.setBeside(other);
    narrow.show(supperCut);
    narrow.resize(900, 640);
    narrow.show();
    settle();
    EXPECT_TRUE(narrow.tally().isVisible());
    EXPECT_FALSE(other->isVisible()) << narrow.width();
    narrow.findChild<Segments*>(QStringLiteral("cutting.sides"))->findChildren<QPushButton*>()[1]->click();
    settle();
    EXPECT_FALSE(narrow.tally().isVisible());
    EXPECT_TRUE(other->isVisible());
}

TEST_F(CuttingDayTest, ItFollowsTheChosenBookingAndGoesWithIt) {
    openDay();
    EXPECT_THAT(part<TextLabel>(QStringLiteral("cutting.facts"))->text().toStdString(),
                testing::HasSubstr("Library roof supper"));
    clickOn(key(0, "tally.ten"));
    const auto day = panel().day();
    clickOn(part<QPushButton>(QStringLiteral("cutting.earlier")));
    EXPECT_EQ(panel().day(), day - 1);
    EXPECT_EQ(cut(0), 10) << "the whole cutting is shown";
    clickOn(key(0, "tally.less"));
    EXPECT_THAT(refused_.toStdString(), testing::HasSubstr("another day"));
    place_->choose(Id<model::Booking>(2));
    settle();
    EXPECT_EQ(place_->cuttingDayPage().booking(), Id<model::Booking>(2));
}

TEST_F(CuttingDayTest, OpensFromTheStemsOfTheBooking) {
    openPlace(demoSeason(), Day::parse("2027-09-06"));
    place_->choose(supperCut);
    place_->page().showTab(QStringLiteral("stems"));
    settle();
    clickOn(part<QPushButton>(QStringLiteral("stems.cutting_day")));
    EXPECT_TRUE(place_->atTheCuttingDay());
}

TEST_F(CuttingDayTest, ABookingWithNothingToCutSaysWhatWouldHelp) {
    auto season = emptySeason(2027);
    model::Booking booking;
    booking.id = supperCut;
    booking.title = "Nothing yet";
    booking.eventStart = LocalTime{*Day::fromYmd(2027, 9, 11), 18 * 60};
    booking.eventEnd = booking.eventStart;
    season = model::apply(season, model::Edit("t").put(booking))->season;
    openPlace(season);
    place_->choose(supperCut);
    trigger("booking.cutting");
    EXPECT_THAT(part<AnswerLabel>(QStringLiteral("tally.answer"))->plainWords().toStdString(),
                testing::HasSubstr("Nothing to cut is known of yet"));
    press(Qt::Key_Escape);
    EXPECT_FALSE(place_->atTheCuttingDay());
}

} // namespace withy::ui
