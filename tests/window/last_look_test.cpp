// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/window_fixture.h"
#include "ui/bookings/booking_list.h"
#include "ui/bookings/booking_page.h"
#include "ui/bookings/bookings_place.h"
#include "ui/common/field_edit.h"
#include "ui/logic/models/booking_list_model.h"
#include "ui/logic/season_looks.h"
#include "ui/shell/notice_bar.h"

#include <QDir>
#include <QPushButton>

namespace withy::ui {

namespace {

/// A season that is opened again stands where it was left.
class LastLook : public WindowTest {
protected:
    static constexpr int garden = 2; ///< Ctrl+3

    [[nodiscard]] QString inFolder(const char* name) const {
        return folder_.filePath(QString::fromUtf8(name));
    }

    BookingsPlace& bookings() { return *window_->findChild<BookingsPlace*>(); }

    void openAgain(const QString& path) {
        window_.reset();
        window_ = std::make_unique<MainWindow>(Day::fromYmd(2027, 9, 6));
        window_->show();
        window_->door().open(path);
        ASSERT_NE(window_->view(), nullptr);
    }

    void settle() {
        window_->bench().waitForPlan();
        for (int i = 0; i < 3; ++i)
            QApplication::processEvents();
    }
};

} // namespace

TEST_F(LastLook, PlaceBookingTabAndOrderAreFoundAgain) {
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    const QString path = window_->bench().path();
    const QString first = bookings().page().currentTabId();
    const auto chosenFirst = bookings().chosen();
    bookings().list().model().setSort(BookingSort::name);
    const auto other = bookings().list().model().neighbour(chosenFirst, 1);
    ASSERT_TRUE(other);
    bookings().choose(*other);
    bookings().page().showTab(QStringLiteral("stems"));
    window_->view()->showPlace(garden);
    ASSERT_NE(window_->view()->current(), &bookings());
    openAgain(path);
    EXPECT_EQ(window_->view()->current(), &bookings()) << "the first picture waits for no other place";
    EXPECT_EQ(bookings().chosen(), other);
    EXPECT_EQ(bookings().list().model().choice().sort, BookingSort::name);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window_->view()->current() != &bookings(); }, 10000));
    window_->view()->makeAll();
    settle();
    window_->view()->showPlace(0);
    EXPECT_EQ(bookings().page().currentTabId(), QStringLiteral("stems"));
    EXPECT_EQ(bookings().chosen(), other);
    EXPECT_NE(first, QStringLiteral("stems"));
    // Left at the bookings it opens at the bookings.
    openAgain(path);
    settle();
    EXPECT_EQ(window_->view()->current(), &bookings());
}

TEST_F(LastLook, WhoGoesSomewhereFirstIsNotSentAway) {
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    const QString path = window_->bench().path();
    window_->view()->showPlace(garden);
    openAgain(path);
    window_->view()->showPlace(1);
    const auto* there = window_->view()->current();
    settle();
    QTest::qWait(50);
    EXPECT_EQ(window_->view()->current(), there);
}

TEST_F(LastLook, UnknownWordsAreNothing) {
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    const QString path = window_->bench().path();
    const auto tab = bookings().page().currentTabId();
    const auto chosen = bookings().chosen();
    window_.reset();
    {
        QSettings kept;
        SeasonLooks(kept).keep(path, {QStringLiteral("go.moon"), Id<model::Booking>(987654321),
                                      QStringLiteral("soup"), QStringLiteral("by the moon")});
    }
    openAgain(path);
    window_->view()->makeAll();
    settle();
    EXPECT_EQ(window_->view()->current(), &bookings());
    EXPECT_EQ(bookings().chosen(), chosen);
    EXPECT_EQ(bookings().page().currentTabId(), tab);
    EXPECT_EQ(bookings().list().model().choice().sort, BookingSort::date);
}

namespace {

/// Seasons that are made for the grower: the demo, and the first of one's own.
class MadeSeasons : public LastLook {
protected:
    void SetUp() override {
        demos_.removeRecursively();
        window_ = std::make_unique<MainWindow>(Day::fromYmd(2027, 8, 1));
        window_->door().newSeasons = folder_.path();
        window_->show();
    }

    void TearDown() override {
        window_.reset();
        demos_.removeRecursively();
    }

    [[nodiscard]] int files() {
        return static_cast<int>(demos_.entryList({QStringLiteral("*.withy")}).size());
    }

    void rename(const char* place) {
        auto settings = season().theSettings();
        settings.seasonName = place;
        ASSERT_TRUE(window_->bench().take(model::Edit("settings.change").put(settings)));
    }

    QDir demos_{QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)};
};

} // namespace

TEST_F(MadeSeasons, TheDemoIsOpenedAsItWasLeftAndBegunAfreshOnWish) {
    window_->door().openDemo();
    ASSERT_NE(window_->view(), nullptr);
    const QString path = window_->bench().path();
    const auto fresh = season().theSettings().seasonName;
    EXPECT_EQ(files(), 1);
    rename("Tried out");
    window_->door().openDemo(); // open here already
    EXPECT_EQ(window_->bench().path(), path);
    EXPECT_EQ(season().theSettings().seasonName, "Tried out");
    window_.reset();
    window_ = std::make_unique<MainWindow>(Day::fromYmd(2027, 8, 1));
    window_->show();
    window_->door().openDemo();
    ASSERT_NE(window_->view(), nullptr);
    EXPECT_EQ(window_->bench().path(), path);
    EXPECT_EQ(season().theSettings().seasonName, "Tried out");
    EXPECT_EQ(files(), 1);
    EXPECT_TRUE(window_->notices().sentence().contains(QStringLiteral("as it was left")))
        << window_->notices().sentence().toStdString();
    auto* afresh = find<QPushButton>("notice.way");
    ASSERT_TRUE(afresh->isVisible());
    QTest::mouseClick(afresh, Qt::LeftButton);
    ASSERT_NE(window_->view(), nullptr);
    EXPECT_EQ(window_->bench().path(), path);
    EXPECT_EQ(season().theSettings().seasonName, fresh);
    EXPECT_EQ(files(), 1);
    rename("Tried again");
    EXPECT_EQ(window_->bench().undo(), QString());
}

TEST_F(MadeSeasons, NothingIsWrittenForASeasonThatIsNotOpened) {
    window_->showSeason(std::make_unique<Workbench>(
        store::SeasonFile::create(inFolder("mine.withy"), demoSeason()), Day::fromYmd(2027, 9, 6)));
    window_->view()->makeAll();
    window_->bench().waitForPlan();
    const QString mine = window_->bench().path();
    auto* budget = find<FieldEdit>("booking.budget");
    ASSERT_TRUE(budget->id());
    budget->setTyped(QStringLiteral("about ninety")); // no sum of money: asked to stay once
    window_->door().openDemo();
    EXPECT_EQ(window_->bench().path(), mine);
    EXPECT_EQ(files(), 0);
    find<FieldEdit>("booking.budget")->setTyped(QStringLiteral("90"));
    ASSERT_TRUE(find<FieldEdit>("booking.budget")->commit());
    find<FieldEdit>("booking.budget")->setTyped(QStringLiteral("about ninety"));
    auto answers = proposedAnswers(QLocale::c(), QDate(2027, 1, 1));
    answers.place = QStringLiteral("Second bank");
    answers.latitude = QStringLiteral("52.4 N");
    answers.longitude = QStringLiteral("2.7 W");
    window_->notices().clear();
    window_->door().begin(answers);
    EXPECT_EQ(window_->bench().path(), mine);
    EXPECT_EQ(QDir(folder_.path()).entryList({QStringLiteral("Second*")}).size(), 0);
    EXPECT_FALSE(window_->notices().sentence().contains(QStringLiteral("Second bank")));
    window_->door().begin(answers); // asked once is enough
    EXPECT_NE(window_->bench().path(), mine);
    EXPECT_TRUE(window_->notices().sentence().contains(QStringLiteral("Second bank")))
        << window_->notices().sentence().toStdString();
}

} // namespace withy::ui
