// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/window_fixture.h"
#include "ui/common/field_edit.h"
#include "ui/shell/notice_bar.h"

#include <QDir>
#include <QFile>

#include <ctime>

namespace withy::ui {

namespace {

/// From one season to another: what cannot be kept, and what goes wrong on the way, is not passed over.
class Leaving : public WindowTest {
protected:
    std::unique_ptr<Workbench> another() {
        const QString path = folder_.filePath(QStringLiteral("b%1.withy").arg(++others_));
        return std::make_unique<Workbench>(store::SeasonFile::create(path, emptySeason(2028)), std::nullopt);
    }

    /// No sum of money.
    void typeWhatCannotBeKept() {
        auto* budget = find<FieldEdit>("booking.budget");
        ASSERT_TRUE(budget->id());
        budget->setTyped(QStringLiteral("about ninety"));
    }

    int others_ = 0;
};

} // namespace

TEST_F(Leaving, AsksToStayOnceForWordsThatCannotBeKept) {
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    const QString path = window_->bench().path();
    typeWhatCannotBeKept();
    window_->showSeason(another());
    ASSERT_EQ(window_->bench().path(), path);
    EXPECT_EQ(find<FieldEdit>("booking.budget")->typed(), QStringLiteral("about ninety"));
    EXPECT_FALSE(find<FieldEdit>("booking.budget")->sentence().isEmpty());
    window_->showWelcome();
    EXPECT_EQ(window_->windowTitle(), QStringLiteral("Withy")) << "asked once is enough";
    window_->showSeason(another());
    EXPECT_NE(window_->bench().path(), path);
}

TEST_F(Leaving, AsksAgainOnceSomethingWasKept) {
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    typeWhatCannotBeKept();
    EXPECT_FALSE(window_->close());
    find<FieldEdit>("booking.budget")->setTyped(QStringLiteral("90"));
    ASSERT_TRUE(find<FieldEdit>("booking.budget")->commit());
    typeWhatCannotBeKept();
    EXPECT_FALSE(window_->close());
    EXPECT_TRUE(window_->close());
}

TEST_F(Leaving, SaysThatTheLastBackupFailed) {
    const QString backups = usualBackupsFolder();
    QFile::remove(backups); // of a run that was broken off
    QDir(backups).removeRecursively();
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    auto* keeper = window_->view()->backups();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !keeper->list().empty(); }, 30000));
    keeper->leave(); // the file is there before its writer is done
    ASSERT_TRUE(QDir(backups).removeRecursively());
    QFile inTheWay(backups);
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    auto settings = season().theSettings();
    settings.placeName = "Another bank";
    ASSERT_TRUE(window_->bench().take(model::Edit("t").put(settings)));
    window_->notices().clear();
    window_->showSeason(another());
    EXPECT_FALSE(window_->notices().sentence().isEmpty());
    window_.reset();
    inTheWay.remove();
}

TEST_F(Leaving, WhatABackupReplacesIsNamedByTheClockOnTheWall) {
    const QByteArray zone = qgetenv("TZ");
    qputenv("TZ", "FIVE-5"); // five hours ahead of universal time
    ::tzset();
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    auto* keeper = window_->view()->backups();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !keeper->list().empty(); }, 30000));
    const auto backup = keeper->list().front();
    const auto before = QDateTime::currentDateTime().addSecs(-1);
    window_->restore(backup);
    const auto after = QDateTime::currentDateTime();
    const auto aside = QDir(folder_.path()).entryList({QStringLiteral("a (set aside *).withy")});
    ASSERT_EQ(aside.size(), 1);
    const auto when = QDateTime::fromString(aside.front().mid(13, 19), QStringLiteral("yyyy-MM-dd HH.mm.ss"));
    EXPECT_TRUE(before <= when && when <= after) << aside.front().toStdString();
    window_.reset();
    zone.isNull() ? qunsetenv("TZ") : qputenv("TZ", zone);
    ::tzset();
}

} // namespace withy::ui
