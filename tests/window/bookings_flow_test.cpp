// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/bookings_fixture.h"

#include "ui/bookings/moved_line.h"
#include "ui/common/stepper.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/models/finding_list.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>

namespace withy::ui {

namespace {

class BookingsFlow : public BookingsTest {
protected:
    /// Two designs to order, and nothing booked.
    static model::Season withDesigns() {
        auto s = seasonWithPlants(emptySeason(2027).theSettings());
        const auto put = [&s](const model::Edit& edit) { s = model::apply(s, edit).value().season; };
        const auto plant = s.plants.begin()->id;
        Id<model::Design> design;
        Id<model::Slot> slot;
        put(edits::newDesignInNewJar(s, "Supper jar", "Honey jar", design));
        put(edits::addSlotWith(s, design, plant, slot));
        put(edits::setSlotCount(s, slot, 10));
        put(edits::newDesignOf(s, "Door pedestal", model::PieceKind::pedestal, std::nullopt, design));
        put(edits::addSlotWith(s, design, plant, slot));
        put(edits::setSlotCount(s, slot, 30));
        return s;
    }
};

} // namespace

// Chords, clicks, Enters and each thing typed count one; Tab only goes on to what comes next.
TEST_F(BookingsFlow, BookTheSupperByKeyboardInAtMostTwentyPresses) {
    openPlace(withDesigns());
    presses_ = 0;
    press(Qt::Key_N, Qt::ControlModifier);
    typeWords("Library roof supper");
    press(Qt::Key_Return);
    typeWords("11 sep 18:30");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    typeWords("22:30");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    typeWords("Marrowby Library Friends");
    press(Qt::Key_Return, Qt::ControlModifier);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    typeWords("Marrowby Village Hall");
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_T, Qt::ControlModifier | Qt::ShiftModifier);
    typeWords("12 trestles of 8");
    press(Qt::Key_Return);
    press(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    typeWords("teal 60, salmon 40");
    press(Qt::Key_Return);
    press(Qt::Key_2, Qt::AltModifier);
    typeWords("24 supper jar on trestles");
    press(Qt::Key_Return);
    typeWords("1 door pedestal");
    press(Qt::Key_Return);
    RecordProperty("presses", presses_);
    EXPECT_LE(presses_, 20);
    ASSERT_EQ(now().bookings.size(), 1u);
    EXPECT_EQ(shown().title, "Library roof supper");
    EXPECT_EQ(shown().eventStart.iso(), "2027-09-11T18:30");
    EXPECT_EQ(shown().eventEnd.iso(), "2027-09-11T22:30");
    ASSERT_TRUE(shown().client && shown().venue);
    EXPECT_EQ(now().clients.find(*shown().client)->name, "Marrowby Library Friends");
    EXPECT_EQ(now().venues.find(*shown().venue)->name, "Marrowby Village Hall");
    ASSERT_EQ(now().venueTables.size(), 1u);
    EXPECT_EQ(now().venueTables.begin()->howMany, 12);
    EXPECT_EQ(now().venueTables.begin()->covers, 8);
    EXPECT_EQ(now().bookingColours.size(), 2u);
    ASSERT_EQ(now().lines.size(), 2u);
    ASSERT_EQ(now().placements.size(), 1u);
    EXPECT_EQ(now().placements.begin()->perTable, 2);
    const auto& plan = *bench_->plan().bookings.at(shown().id);
    EXPECT_EQ(plan.stemsNeeded.value, 24 * 10 + 30); // by hand
}

TEST_F(BookingsFlow, BookTheSupperByMouse) {
    openPlace(withDesigns());
    clickOn(part<QPushButton>("bookings.nothing.new"));
    typeWords("Library roof supper");
    clickOn(part("pieces.add")->isVisible() ? part("pieces.add")
                                            : part("booking.tabs")->findChildren<QPushButton*>()[1]);
    auto* field = part<QLineEdit>("pieces.add");
    clickOn(field);
    typeWords("24 supper jar");
    clickOn(part("pieces.addNow"));
    ASSERT_EQ(now().lines.size(), 1u);
    EXPECT_EQ(now().lines.begin()->pieces.value, 24);
    EXPECT_EQ(shown().title, "Library roof supper") << "leaving the title keeps it";
    EXPECT_TRUE(field->text().isEmpty());
}

TEST_F(BookingsFlow, OneNumberAndALineSaysWhatMoved) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    place_->page().showTab(QStringLiteral("pieces"));
    settle();
    presses_ = 0;
    const auto toMendNow = [this] { return toMend(now(), bench_->plan(), Id<model::Booking>(1)); };
    const int before = toMendNow();
    auto* pieces = part<Stepper>("pieces.1.pieces");
    pieces->setFocus();
    ++presses_; // the click into it
    QTest::keySequence(QApplication::focusWidget(), QKeySequence::SelectAll);
    typeWords("30");
    press(Qt::Key_Return);
    EXPECT_LE(presses_, 3);
    EXPECT_EQ(now().lines.find(Id<model::Line>(1))->pieces.value, 30);
    const QString moved = part<QLabel>("booking.moved")->text();
    EXPECT_TRUE(moved.startsWith(QStringLiteral("24 to 30 jars: "))) << moved.toStdString();
    EXPECT_TRUE(moved.contains(QStringLiteral("stems more")));
    EXPECT_EQ(moved.contains(QStringLiteral("more to mend")), toMendNow() > before) << moved.toStdString();
    EXPECT_EQ(moved.contains(QStringLiteral("mended")), toMendNow() < before) << moved.toStdString();
    clickOn(part("booking.moved.undo"));
    EXPECT_EQ(now().lines.find(Id<model::Line>(1))->pieces.value, 24);
}

TEST_F(BookingsFlow, NextYearsSupperInOneStroke) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    press(Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_NE(shown().id, Id<model::Booking>(1));
    EXPECT_EQ(shown().title, "Library roof supper");
    EXPECT_EQ(shown().standing, model::Standing::enquiry);
    EXPECT_FALSE(said_.isEmpty());
    EXPECT_EQ(bench_->undo(), QString());
    settle();
    EXPECT_TRUE(now().bookings.find(*place_->chosen())) << "something that is there is shown";
}

TEST_F(BookingsFlow, ErasingGoesToTheNextAndComesBackWithUndo) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    const auto before = now().bookings.size();
    trigger("booking.erase");
    EXPECT_EQ(now().bookings.size(), before - 1);
    EXPECT_NE(shown().id, Id<model::Booking>(1));
    EXPECT_TRUE(said_.contains(QStringLiteral("Library roof supper")));
    EXPECT_EQ(bench_->undo(), QString());
    EXPECT_EQ(now().bookings.size(), before);
}

TEST_F(BookingsFlow, StandingByItsCommandsAndHoldAsksUntilWhen) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    trigger("booking.mark.settled");
    EXPECT_EQ(shown().standing, model::Standing::settled);
    trigger("booking.hold");
    EXPECT_EQ(shown().standing, model::Standing::held);
    EXPECT_TRUE(shown().heldUntil.has_value());
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_TRUE(part("booking.held_until")->isAncestorOf(QApplication::focusWidget()));
}

TEST_F(BookingsFlow, TheListIsWalkedWithTheArrowsAndFoundByTyping) {
    openPlace(demoSeason());
    trigger("booking.find");
    typeWords("library roof");
    press(Qt::Key_Down);
    EXPECT_EQ(shown().title, "Library roof supper");
    QTest::keyClick(part("bookings.list"), Qt::Key_F, Qt::ControlModifier);
    press(Qt::Key_Escape);
    EXPECT_TRUE(part<QLineEdit>("bookings.find")->text().isEmpty());
    const auto first = shown().id;
    trigger("booking.next");
    EXPECT_NE(shown().id, first);
    trigger("booking.previous");
    EXPECT_EQ(shown().id, first);
    part("bookings.list")->setFocus();
    press(Qt::Key_Down);
    EXPECT_NE(shown().id, first);
}

TEST_F(BookingsFlow, TabsByTheirKeys) {
    openPlace(demoSeason());
    for (int i = 0; i < place_->page().tabCount(); ++i) {
        press(static_cast<Qt::Key>(Qt::Key_1 + i), Qt::AltModifier);
        EXPECT_EQ(place_->page().currentTab(), i);
    }
    press(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(place_->page().currentTab(), 0) << "round the end";
    press(Qt::Key_PageUp, Qt::ControlModifier);
    EXPECT_EQ(place_->page().currentTab(), place_->page().tabCount() - 1);
}

TEST_F(BookingsFlow, AQuestionIsAnsweredInPlaceAndTheSentenceFollows) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    place_->page().showTab(QStringLiteral("brief"));
    settle();
    const QString before = part<QLabel>("brief.answer")->text();
    auto q = *now().questions.find(Id<model::Question>(1));
    q.answer = "Miss Dunn";
    EXPECT_EQ(bench_->apply(model::Edit("x").put(q)), QString());
    settle();
    EXPECT_NE(part<QLabel>("brief.answer")->text(), before);
}

TEST_F(BookingsFlow, ItLeadsToWhateverBelongsToABooking) {
    openPlace(demoSeason());
    EXPECT_TRUE(place_->goTo({model::TableKind::lines, 1}));
    EXPECT_EQ(shown().id, Id<model::Booking>(1));
    EXPECT_EQ(place_->page().currentTab(), 1);
    EXPECT_TRUE(place_->goTo({model::TableKind::questions, 1}));
    EXPECT_EQ(place_->page().currentTab(), 0);
    EXPECT_TRUE(place_->goTo({model::TableKind::bookings, 2}));
    EXPECT_EQ(shown().id, Id<model::Booking>(2));
    EXPECT_FALSE(place_->goTo({model::TableKind::plants, 1}));
    EXPECT_FALSE(place_->goTo({model::TableKind::bookings, 9999}));
}

} // namespace withy::ui
