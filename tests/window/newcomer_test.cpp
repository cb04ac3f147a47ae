// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/kept_paper.h"
#include "tests/window/window_fixture.h"
#include "ui/common/demo_jar.h"
#include "ui/logic/recent_seasons.h"
#include "ui/shell/start.h"

#include <QAction>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QProcess>
#include <QPushButton>
#include <QSet>

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

/// A newcomer's first ten minutes, from the first page to the printed prep sheet. Counted are chords,
/// Enters, clicks and each thing typed; Tab only goes on to what comes next. docs/presses.md has the figures.
class Newcomer : public WindowTest {
protected:
    void start(const QString& path = {}) {
        window_ = openWindow(Day::fromYmd(2027, 8, 1), path);
        window_->door().newSeasons = folder_.path();
        window_->resize(1280, 800);
        window_->show();
        QApplication::setActiveWindow(window_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    }

    void settle() {
        if (window_->view()) window_->bench().waitForPlan();
        for (int i = 0; i < 3; ++i)
            QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    void words(const char* typed) {
        ASSERT_NE(QApplication::focusWidget(), nullptr) << typed;
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(typed));
        settle();
        ++presses_;
    }

    void key(Qt::Key k, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QWidget* to = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        if (!to) to = QApplication::focusWidget();
        QTest::keyClick(to ? to : window_.get(), k, modifiers);
        settle();
        if (k != Qt::Key_Tab && k != Qt::Key_Backtab) ++presses_;
    }

    /// Tab until the control of that name has the keyboard, as a person does who reads what is on.
    void tabTo(const char* name) {
        for (int i = 0; i < 60; ++i) {
            const auto* w = QApplication::focusWidget();
            for (; w; w = w->parentWidget()) {
                if (w->objectName() == QLatin1String(name)) return;
            }
            key(Qt::Key_Tab);
        }
        FAIL() << name << " is not reached by Tab";
    }

    void clickOn(QWidget* w, const char* what) {
        ASSERT_NE(w, nullptr) << what;
        ASSERT_TRUE(w->isVisible()) << what;
        QTest::mouseClick(w, Qt::LeftButton, Qt::NoModifier, w->rect().center());
        settle();
        ++presses_;
    }

    void clickOn(const char* name) {
        QWidget* shown = nullptr;
        for (auto* w : window_->findChildren<QWidget*>(QLatin1String(name)))
            if (w->isVisible()) shown = w;
        clickOn(shown, name);
    }

    void keepAs(const QString& path) {
        tests::keepPaperAs(path);
        presses_ += 2;
    }

    void expectTheSheet(const QString& pdf) {
        ASSERT_EQ(season().bookings.size(), 1u);
        ASSERT_EQ(season().lines.size(), 1u);
        const auto& plan = *window_->bench().plan().bookings.begin()->second;
        EXPECT_EQ(plan.stemsNeeded.value, 24 * 2); // two slots of one stem, by hand
        const auto sheet = tests::pdfWords(pdf);
        EXPECT_THAT(sheet, testing::HasSubstr("Library roof supper"));
        EXPECT_THAT(sheet, testing::HasSubstr("Zinnia"));
        RecordProperty("presses", presses_);
        std::printf("presses: %d\n", presses_);
        EXPECT_LE(presses_, 60);
    }

    int presses_ = 0;
};

} // namespace

TEST_F(Newcomer, TheFirstTenMinutesByKeyboardAlone) {
    start();
    words("Wren Bank");
    tabTo("first.near");
    words("Shropshire, England");
    key(Qt::Key_Return);
    tabTo("first.plant");
    for (const char* plant : {"Zinnia", "Cosmos", "Ninebark"}) {
        words(plant);
        key(Qt::Key_Return);
    }
    tabTo("first.begin");
    key(Qt::Key_Space);
    ASSERT_NE(window_->view(), nullptr) << window_->findChild<QLabel*>("first.trouble")->text().toStdString();
    ASSERT_FALSE(season().patches.empty());

    key(Qt::Key_2, Qt::ControlModifier);
    key(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    key(Qt::Key_J); // a new jar
    ASSERT_EQ(season().designs.size(), 1u);
    for (const char* plant : {"Zinnia", "Ninebark"}) {
        tabTo("designs.addPlantSlot");
        words(plant);
        key(Qt::Key_Return);
    }
    ASSERT_EQ(season().slots.size(), 2u);

    key(Qt::Key_1, Qt::ControlModifier);
    key(Qt::Key_N, Qt::ControlModifier);
    words("Library roof supper");
    key(Qt::Key_Return);
    words("11 sep 18:30");
    key(Qt::Key_Tab);
    key(Qt::Key_2, Qt::AltModifier);
    words("24 new design");
    key(Qt::Key_Return);
    key(Qt::Key_7, Qt::AltModifier);
    key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    const QString pdf = folder_.filePath(QStringLiteral("keys.pdf"));
    keepAs(pdf);
    expectTheSheet(pdf);
}

TEST_F(Newcomer, TheFirstTenMinutesByMouse) {
    start();
    clickOn("first.place");
    words("Wren Bank");
    clickOn("first.latitude");
    words("52.5 N");
    clickOn("first.longitude");
    words("2.5 W");
    clickOn("first.plant");
    for (const char* plant : {"Zinnia", "Cosmos", "Ninebark"}) {
        words(plant);
        key(Qt::Key_Return);
    }
    clickOn("first.begin");
    ASSERT_NE(window_->view(), nullptr) << window_->notices().sentence().toStdString();

    clickOn("rail.1");
    clickOn("designs.new");
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    auto* jar = menu->findChild<QAction*>(QStringLiteral("designs.new.jar"));
    ASSERT_NE(jar, nullptr);
    QTest::mouseClick(menu, Qt::LeftButton, Qt::NoModifier, menu->actionGeometry(jar).center());
    ++presses_;
    settle();
    ASSERT_EQ(season().designs.size(), 1u);
    for (const char* plant : {"Zinnia", "Ninebark"}) {
        clickOn("designs.addPlantSlot");
        words(plant);
        key(Qt::Key_Return);
    }
    ASSERT_EQ(season().slots.size(), 2u);

    clickOn("rail.0");
    clickOn("bookings.nothing.new");
    words("Library roof supper");
    key(Qt::Key_Return);
    words("11 sep 18:30");
    key(Qt::Key_Return);
    const auto tab = [&](int index) {
        clickOn(
            window_->findChild<QWidget*>(QStringLiteral("booking.tabs"))->findChildren<QPushButton*>()[index],
            "tab");
    };
    tab(1);
    clickOn("pieces.add");
    words("24 new design");
    clickOn("pieces.addNow");
    tab(6);
    clickOn("paper.pdfButton");
    const QString pdf = folder_.filePath(QStringLiteral("mouse.pdf"));
    keepAs(pdf);
    expectTheSheet(pdf);
}

TEST_F(Newcomer, TheFirstPageIsPaintedBeforeTheDemosJarIsDrawn) {
    window_ = std::make_unique<MainWindow>(Day::fromYmd(2027, 8, 1));
    window_->resize(1280, 800);
    window_->show();
    auto* jar = window_->findChild<DemoJar*>(QStringLiteral("first.jar"));
    ASSERT_NE(jar, nullptr);
    const auto colours = [jar] {
        const QImage drawn = jar->grab().toImage();
        QSet<QRgb> seen;
        for (int y = 0; y < drawn.height(); ++y)
            for (int x = 0; x < drawn.width(); ++x)
                seen.insert(drawn.pixel(x, y));
        return seen.size();
    };
    EXPECT_LE(colours(), 50);
    EXPECT_TRUE(QTest::qWaitFor([&] { return colours() > 50; }, 20000)) << "flowers, not a bare line";
}

/// resources/demo/README.md: the garden's present is 1 June 2027. The clock of this window says 1 August.
TEST_F(Newcomer, TheDemoIsLookedAtOnItsOwnDayHoweverItIsOpened) {
    const auto theirs = Day::fromYmd(2027, 6, 1);
    const auto says = [this] { return window_->findChild<QLabel*>(QStringLiteral("kept"))->text(); };
    start();
    window_->door().openDemo();
    settle();
    ASSERT_NE(window_->view(), nullptr);
    EXPECT_EQ(window_->bench().today(), theirs);
    EXPECT_TRUE(says().contains(QStringLiteral("demo, as if Tue 1 Jun 2027"))) << says().toStdString();
    const QString path = window_->bench().path();
    window_.reset(); // which lets the file go
    QSettings kept;
    start(RecentSeasons(kept).last());
    settle();
    ASSERT_NE(window_->view(), nullptr);
    EXPECT_EQ(window_->bench().path(), path);
    EXPECT_EQ(window_->bench().today(), theirs);
    auto own = window_->bench().season().theSettings();
    own.placeName = "My own field";
    ASSERT_TRUE(window_->bench().take(model::Edit("mine").put(own)));
    EXPECT_FALSE(says().contains(QStringLiteral("demo"))) << says().toStdString();
    window_.reset();
    start();
    window_->door().open(path);
    settle();
    EXPECT_EQ(window_->bench().today(), Day::fromYmd(2027, 8, 1))
        << "a season of one's own goes by the clock";
    window_.reset();
    QFile::remove(path);
}

TEST_F(Newcomer, APlantIsTakenOutWithDelete) {
    start();
    auto* plant = find<QLineEdit>("first.plant");
    auto* grows = find<QListWidget>("first.grows");
    tabTo("first.plant");
    for (const char* name : {"Zinnia", "Cosmos"}) {
        words(name);
        key(Qt::Key_Return);
    }
    ASSERT_EQ(grows->count(), 2);
    grows->setFocus();
    grows->setCurrentRow(0);
    QTest::keyClick(grows, Qt::Key_Delete);
    ASSERT_EQ(grows->count(), 1);
    EXPECT_TRUE(grows->item(0)->text().startsWith(QStringLiteral("Cosmos")));
    QTest::keyClick(grows, Qt::Key_Delete);
    EXPECT_EQ(grows->count(), 0);
    EXPECT_TRUE(plant->hasFocus());
}

} // namespace withy::ui
