// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/held_file.h"
#include "tests/window/window_fixture.h"
#include "ui/shell/notice_bar.h"

#include <QDeadlineTimer>

#include <chrono>

namespace withy::ui {

namespace {

/// Counts what is painted.
class Pane : public QWidget {
public:
    using QWidget::QWidget;
    int painted = 0;

protected:
    void paintEvent(QPaintEvent*) override { ++painted; }
};

class HeldFramesTest : public WindowTest {
protected:
    void SetUp() override {
        open(demoSeason(), Day::fromYmd(2027, 9, 6));
        window_->bench().setPatience(std::chrono::milliseconds(0));
        pane_.resize(40, 40);
        pane_.show();
        ASSERT_TRUE(QTest::qWaitFor([this] { return pane_.painted > 0; }, 30000));
        settle();
        pane_.painted = 0;
    }

    static void settle() {
        for (QDeadlineTimer soon(200); !soon.hasExpired();)
            QApplication::processEvents(QEventLoop::AllEvents, 10);
    }

    void edit() {
        auto settings = season().theSettings();
        settings.placeName = "Alder Reach";
        ASSERT_TRUE(window_->bench().take(model::Edit("settings.change").put(settings)));
    }

    Pane pane_;
};

} // namespace

TEST_F(HeldFramesTest, NothingIsPaintedBeforeItIsInTheFile) {
    HeldFile held(window_->bench().path());
    ASSERT_TRUE(held.isHeld());
    edit();
    pane_.update();
    pane_.repaint(); // even for who cannot wait
    settle();
    EXPECT_EQ(pane_.painted, 0);
    held.letGo();
    EXPECT_TRUE(QTest::qWaitFor([this] { return pane_.painted > 0; }, 30000));
    EXPECT_FALSE(window_->bench().isWriting());
}

TEST_F(HeldFramesTest, APointerSaysThatItTakesLong) {
    HeldFile held(window_->bench().path());
    edit();
    EXPECT_TRUE(QTest::qWaitFor([] { return QApplication::overrideCursor() != nullptr; }, 30000));
    held.letGo();
    EXPECT_TRUE(QTest::qWaitFor([] { return QApplication::overrideCursor() == nullptr; }, 30000));
}

TEST_F(HeldFramesTest, WhatCouldNotBeWrittenIsSaidAndNotShown) {
    const auto before = season().theSettings().placeName;
    {
        const HeldFile held(window_->bench().path());
        edit();
        ASSERT_TRUE(QTest::qWaitFor([this] { return !window_->bench().isWriting(); }, 30000));
    }
    EXPECT_EQ(season().theSettings().placeName, before);
    EXPECT_TRUE(window_->notices().sentence().contains(QStringLiteral("Redo brings it again")))
        << window_->notices().sentence().toStdString();
    EXPECT_TRUE(window_->actions().find(QStringLiteral("edit.redo"))->isEnabled());
}

TEST_F(HeldFramesTest, LeavingWaitsForTheFileAndStaysOnceIfItCannotBeWritten) {
    const HeldFile held(window_->bench().path());
    edit();
    EXPECT_FALSE(window_->close());
    EXPECT_FALSE(window_->notices().sentence().isEmpty());
    EXPECT_TRUE(window_->close());
}

} // namespace withy::ui
