// SPDX-License-Identifier: GPL-3.0-or-later
// Every edit survives a kill -9 right after it was reported done.
#include "core/store/season_file.h"
#include "tests/store/kill_child.h"
#include "tests/store/seasons.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QProcess>
#include <QTemporaryDir>
#include <QThread>

#include <gtest/gtest.h>

#include <random>

namespace withy::test {

using store::SeasonFile;

namespace {

/// Runs the editing child, kills it at a random moment and gives the last edit it reported; nought
/// when it reported none.
int lastReportedBeforeKill(const QString& path, std::mt19937& random) {
    QProcess child;
    child.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    child.start(QCoreApplication::applicationFilePath(),
                {QStringLiteral("--edit-until-killed"), path, QStringLiteral("0")});
    EXPECT_TRUE(child.waitForStarted());
    const bool whileStarting = random() % 5 == 0;
    if (!whileStarting) {
        EXPECT_TRUE(child.waitForReadyRead(30000));
    }
    QThread::usleep(random() % (whileStarting ? 60000 : 25000));
    EXPECT_EQ(child.state(), QProcess::Running) << "it is to be killed, not to end";
    child.kill();
    EXPECT_TRUE(child.waitForFinished());
    EXPECT_EQ(child.exitStatus(), QProcess::CrashExit);
    const QByteArray said = child.readAllStandardOutput();
    const auto end = said.lastIndexOf('\n');
    if (end < 0) return 0;
    return said.left(end).split('\n').last().toInt();
}

model::Season replay(model::Season season, int from, int to) {
    for (int k = from; k <= to; ++k) {
        auto applied = model::apply(season, editNumber(season, k));
        EXPECT_TRUE(applied.ok());
        season = applied->season;
    }
    return season;
}

} // namespace

TEST(Kill, WhileAnotherProgramWritesItIsNamedAndReadersReadOn) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("spring.withy"));
    SeasonFile::create(path, lawfulSeason(1, 2)).close();
    QProcess child;
    child.start(QCoreApplication::applicationFilePath(),
                {QStringLiteral("--edit-until-killed"), path, QStringLiteral("30")});
    ASSERT_TRUE(child.waitForReadyRead(30000));
    try {
        SeasonFile::open(path, SeasonFile::Mode::write);
        FAIL() << "two writers";
    } catch (const store::StoreError& error) {
        EXPECT_EQ(error.fault, store::StoreFault::lockedBy);
        EXPECT_EQ(error.owner.process, child.processId());
    }
    int last = 0;
    for (int reading = 0; reading < 20; ++reading) {
        const auto file = SeasonFile::open(path, SeasonFile::Mode::read);
        EXPECT_GE(lastEdit(file.season()), last);
        last = lastEdit(file.season());
    }
    EXPECT_GT(last, 0);
    EXPECT_EQ(child.state(), QProcess::Running) << "readers stopped the writer";
    child.kill();
    EXPECT_TRUE(child.waitForFinished());
    EXPECT_EQ(SeasonFile::open(path, SeasonFile::Mode::write).mode(), SeasonFile::Mode::write);
}

TEST(Kill, EveryReportedEditIsThereAfterTwoHundredKills) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("spring.withy"));
    model::Season expected = lawfulSeason(1, 2);
    SeasonFile::create(path, expected);
    std::mt19937 random(20260314);
    int edits = lastEdit(expected);
    int withReports = 0;
    for (int kill = 1; kill <= 200; ++kill) {
        SCOPED_TRACE("kill " + std::to_string(kill));
        const int reported = lastReportedBeforeKill(path, random);
        if (reported > 0) ++withReports;
        // By turns the next to come is a reader, who may not mend, and a writer, who may.
        const auto mode = kill % 2 == 0 ? SeasonFile::Mode::read : SeasonFile::Mode::write;
        const auto file = SeasonFile::open(path, mode);
        const int held = lastEdit(file.season());
        ASSERT_GE(held, std::max(reported, edits)) << "a reported edit is lost";
        // At most one more: it was on the disk when the kill came before its report.
        if (reported > 0) {
            ASSERT_LE(held, reported + 1);
        }
        expected = replay(expected, edits + 1, held);
        ASSERT_EQ(textOf(file.season()), textOf(expected));
        edits = held;
    }
    EXPECT_GT(withReports, 100);
    EXPECT_GT(edits, 200);
    RecordProperty("edits", edits);
}

} // namespace withy::test
