// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/large_seasons.h"
#include "tests/support/season_text.h"
#include "tests/window/bookings_fixture.h"

#include "ui/bookings/line_up.h"
#include "ui/bookings/quick_line.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>

namespace withy::ui {

namespace {

class BookingsBadInput : public BookingsTest {
protected:
    void retitle(const QString& title) {
        place_->page().editTitle();
        part<QLineEdit>("booking.title")->setText(title); // pasted: the test library types Latin letters only
        press(Qt::Key_Return);
    }
};

bool isEditable(const QWidget* w) {
    if (!w->isVisible() || w->objectName().startsWith(QStringLiteral("qt_"))) return false;
    if (qobject_cast<const QAbstractSpinBox*>(w->parentWidget()) ||
        qobject_cast<const QComboBox*>(w->parentWidget()) ||
        qobject_cast<const QLineEdit*>(w->parentWidget()) ||
        qobject_cast<const QAbstractItemView*>(w->parentWidget()))
        return false;
    return qobject_cast<const QLineEdit*>(w) || qobject_cast<const QAbstractSpinBox*>(w) ||
           qobject_cast<const QComboBox*>(w) || qobject_cast<const QAbstractButton*>(w) ||
           qobject_cast<const QPlainTextEdit*>(w) || qobject_cast<const QAbstractItemView*>(w);
}

} // namespace

TEST_F(BookingsBadInput, ATitleThatCannotBeIsSaidAndPutBack) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    const auto before = exchange::exportSeason(now());
    for (const auto& title : {QString(), QString(201, QLatin1Char('x')), QString(10000, QLatin1Char('y'))}) {
        SCOPED_TRACE(title.size());
        refused_.clear();
        retitle(title);
        EXPECT_FALSE(refused_.isEmpty());
        EXPECT_EQ(part<QLineEdit>("booking.title")->text(), QStringLiteral("Library roof supper"));
    }
    EXPECT_EQ(exchange::exportSeason(now()), before);
}

TEST_F(BookingsBadInput, WordsAreShownAsTyped) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    const QString odd = QString::fromUtf8("<b>Réunion</b> 🌻 عيد & co %1 %n");
    retitle(odd);
    EXPECT_EQ(shown().title, odd.toStdString());
    EXPECT_EQ(part<QLineEdit>("booking.title")->text(), odd);
    const auto row = place_->list().model().rowOf(shown().id);
    EXPECT_EQ(place_->list().model().index(row).data().toString(), odd);
    for (auto* label : host_->findChildren<QLabel*>()) {
        if (label->text().contains(QStringLiteral("Réunion"))) {
            EXPECT_EQ(label->textFormat(), Qt::PlainText);
        }
    }
    trigger("booking.erase");
    EXPECT_TRUE(said_.contains(odd)) << said_.toStdString();
}

TEST_F(BookingsBadInput, EscPutsTheTitleBack) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    place_->page().editTitle();
    typeWords("Something else");
    press(Qt::Key_Escape);
    EXPECT_EQ(part<QLineEdit>("booking.title")->text(), QStringLiteral("Library roof supper"));
    EXPECT_EQ(shown().title, "Library roof supper");
    EXPECT_FALSE(bench_->canUndo());
}

TEST_F(BookingsBadInput, LinesThatCannotBeReadStayWithTheirSentence) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    place_->page().showTab(QStringLiteral("brief"));
    settle();
    for (const char* name : {"brief.tablesLine", "brief.coloursLine"}) {
        SCOPED_TRACE(name);
        auto* field = part<QLineEdit>(name);
        field->setFocus();
        typeWords("<i>nosuch</i> thing");
        press(Qt::Key_Return);
        EXPECT_EQ(field->text(), QStringLiteral("<i>nosuch</i> thing"));
        EXPECT_FALSE(qobject_cast<QuickLine*>(field->parentWidget())->sentence().isEmpty());
        press(Qt::Key_Escape);
        EXPECT_TRUE(field->text().isEmpty());
        EXPECT_TRUE(qobject_cast<QuickLine*>(field->parentWidget())->sentence().isEmpty());
    }
    EXPECT_FALSE(bench_->canUndo());
}

TEST_F(BookingsBadInput, APieceNobodyDrewIsSaid) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    place_->page().showTab(QStringLiteral("pieces"));
    settle();
    auto* field = part<QLineEdit>("pieces.add");
    field->setFocus();
    typeWords("3 no such design");
    press(Qt::Key_Return);
    EXPECT_FALSE(refused_.isEmpty());
    EXPECT_EQ(field->text(), QStringLiteral("3 no such design"));
    EXPECT_FALSE(bench_->canUndo());
}

TEST_F(BookingsBadInput, NothingIsWrittenByLooking) {
    openPlace(demoSeason());
    const auto before = exchange::exportSeason(now());
    std::vector<Id<model::Booking>> all;
    for (const auto& b : now().bookings)
        all.push_back(b.id);
    for (const auto id : all) {
        place_->choose(id);
        for (int t = 0; t < place_->page().tabCount(); ++t)
            place_->page().showTab(t);
        settle();
    }
    EXPECT_FALSE(bench_->canUndo());
    EXPECT_EQ(exchange::exportSeason(now()), before);
}

TEST_F(BookingsBadInput, AnEmptySeasonSaysHowToBegin) {
    openPlace(emptySeason(2027));
    EXPECT_TRUE(part<QLabel>("bookings.nothing")->text().startsWith(QStringLiteral("Nothing booked yet.")));
    EXPECT_TRUE(part("bookings.nothing.new")->isVisible());
    int asked = 0;
    QObject::connect(place_, &BookingsPlace::demoAsked, place_, [&] { ++asked; });
    clickOn(part("bookings.nothing.demo"));
    EXPECT_EQ(asked, 1);
    for (const char* id :
         {"booking.duplicate", "booking.erase", "booking.hold", "booking.next", "booking.mark.booked"})
        trigger(id); // with nothing to do it to
    EXPECT_TRUE(now().bookings.empty());
}

TEST_F(BookingsBadInput, TwoHundredBookingsAreFoundIn) {
    const auto season = seasonWithBookings(200);
    openPlace(season, Day::parse("2027-06-01"));
    auto& model = place_->list().model();
    model.setFind(QStringLiteral("library roof"));
    int found = 0;
    for (const auto& b : season.bookings) {
        const bool named =
            QString::fromStdString(b.title).contains(QStringLiteral("library roof"), Qt::CaseInsensitive);
        EXPECT_EQ(model.rowOf(b.id) >= 0, named) << b.title;
        found += named;
    }
    EXPECT_GT(found, 5);
}

TEST_F(BookingsBadInput, ANarrowWindowFoldsTheListAndStillFinds) {
    openPlace(demoSeason(), Day::parse("2027-09-06"), {560, 520});
    EXPECT_TRUE(part("bookings.findNarrow")->isVisible()); // the list has no room for words
    trigger("booking.find");
    EXPECT_FALSE(place_->page().isVisible());
    EXPECT_TRUE(part("bookings.find")->isVisible());
    typeWords("library roof");
    press(Qt::Key_Return);
    EXPECT_TRUE(place_->page().isVisible());
    EXPECT_TRUE(part("bookings.findNarrow")->isVisible()); // the list has no room for words
    EXPECT_EQ(shown().title, "Library roof supper");
}

TEST_F(BookingsBadInput, EveryControlHasANameAndTakesFocus) {
    openPlace(demoSeason());
    place_->choose(Id<model::Booking>(1));
    int seen = 0;
    for (const char* tab : {"brief", "pieces"}) {
        place_->page().showTab(QString::fromLatin1(tab));
        settle();
        for (auto* w : host_->findChildren<QWidget*>()) {
            if (!isEditable(w)) continue;
            ++seen;
            auto* face = QAccessible::queryAccessibleInterface(w);
            const auto where = std::string(w->metaObject()->className()) + " " +
                               w->objectName().toStdString() + " in " +
                               w->parentWidget()->objectName().toStdString();
            ASSERT_NE(face, nullptr) << where;
            EXPECT_FALSE(face->text(QAccessible::Name).isEmpty()) << where;
            // The signs of a stepper do what its field does with the arrow keys.
            if (w->property("look").toString() != QStringLiteral("step")) {
                EXPECT_NE(w->focusPolicy(), Qt::NoFocus) << where;
            }
        }
    }
    EXPECT_GT(seen, 60);
}

} // namespace withy::ui
