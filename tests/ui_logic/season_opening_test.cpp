// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/season_text.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits.h"
#include "ui/logic/season_opening.h"

#include <QDir>
#include <QFile>

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

using Offer = OpenOutcome::Offer;

const QDateTime now(QDate(2027, 6, 1), QTime(9, 30), Qt::UTC);

void write(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
}

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

/// As when a disk loses some sectors: the pages between are nonsense.
void damage(const QString& path) {
    QByteArray bytes = bytesOf(path);
    ASSERT_GT(bytes.size(), 60000);
    bytes.replace(8192, 40000, QByteArray(40000, 'x'));
    write(path, bytes);
}

} // namespace

class SeasonOpening : public LogicTest {
protected:
    [[nodiscard]] QString backups() const { return at("backups"); }

    [[nodiscard]] OpenOutcome open() const { return openSeason(at("a.withy"), backups(), now); }

    /// a.withy with the demo season in it, a backup of it, and one more edit that is in no backup.
    void makeSeasonWithBackup() {
        const auto bench = benchOn(demoSeason());
        store::Backups(backups()).make(at("a.withy"), now.addDays(-1));
        inBackup_ = exchange::exportSeason(bench->season());
        const auto line = bench->season().lines.begin()->id;
        ASSERT_EQ(bench->apply(edits::setPieces(bench->season(), line, 444)), QString());
    }

    std::string inBackup_;
};

TEST_F(SeasonOpening, ASoundFileOpensForWritingWithoutAWord) {
    makeSeasonWithBackup();
    const auto out = open();
    ASSERT_TRUE(out.file);
    EXPECT_EQ(out.file->mode(), store::SeasonFile::Mode::write);
    EXPECT_EQ(out.sentence, QString());
    EXPECT_EQ(out.offer, Offer::none);
}

TEST_F(SeasonOpening, OneOpenElsewhereSaysByWhomAndMayBeRead) {
    const auto bench = benchOn(demoSeason());
    const auto out = open();
    EXPECT_FALSE(out.file);
    EXPECT_EQ(out.offer, Offer::read);
    const auto process = QStringLiteral("process %1").arg(QCoreApplication::applicationPid());
    EXPECT_TRUE(out.sentence.contains(process)) << out.sentence.toStdString();
    auto read = readSeason(at("a.withy"), backups());
    ASSERT_TRUE(read.file);
    EXPECT_FALSE(Workbench(std::move(*read.file)).canWrite());
}

TEST_F(SeasonOpening, ADamagedOneOffersTheNewestSoundBackupAndIsLeftAsItIs) {
    makeSeasonWithBackup();
    damage(at("a.withy"));
    const auto damaged = bytesOf(at("a.withy"));
    const auto out = open();
    EXPECT_FALSE(out.file);
    EXPECT_EQ(out.offer, Offer::restoreBackup);
    ASSERT_TRUE(out.backup);
    EXPECT_EQ(out.backup->at, now.addDays(-1));
    EXPECT_TRUE(out.sentence.contains(QStringLiteral("damaged"))) << out.sentence.toStdString();
    EXPECT_TRUE(out.sentence.contains(whenMade(*out.backup))) << out.sentence.toStdString();
    EXPECT_EQ(bytesOf(at("a.withy")), damaged);

    auto back = restoreSeason(at("a.withy"), *out.backup, backups(), now);
    ASSERT_TRUE(back.file) << back.sentence.toStdString();
    EXPECT_EQ(exchange::exportSeason(back.file->season()), inBackup_);
    const auto aside = QDir(folder.path()).entryList({QStringLiteral("*set aside*")});
    ASSERT_EQ(aside.size(), 1);
    EXPECT_TRUE(back.sentence.contains(aside.front())) << back.sentence.toStdString();
    EXPECT_EQ(bytesOf(folder.filePath(aside.front())), damaged);
    Workbench bench(std::move(*back.file)); // and work goes on in it
    const auto line = bench.season().lines.begin()->id;
    EXPECT_EQ(bench.apply(edits::setPieces(bench.season(), line, 12)), QString());
}

TEST_F(SeasonOpening, ADamagedBackupIsPassedOver) {
    makeSeasonWithBackup();
    damage(store::Backups(backups()).make(at("a.withy"), now).path);
    damage(at("a.withy"));
    const auto out = open();
    ASSERT_TRUE(out.backup);
    EXPECT_EQ(out.backup->at, now.addDays(-1));
}

TEST_F(SeasonOpening, WhatCannotBeOpenedIsSaidPlainly) {
    makeSeasonWithBackup();
    const QByteArray sound = bytesOf(at("a.withy"));
    QByteArray later = sound;
    later.replace(60, 4, QByteArray("\x00\x00\x03\xe7", 4)); // user_version 999, sqlite.org/fileformat2.html
    QByteArray other = sound;
    other.replace(68, 4, "abcd"); // application_id
    QDir(folder.path()).mkdir(QStringLiteral("folder"));

    struct Row {
        const char* name;
        std::optional<QByteArray> bytes;
        const char* says;
        Offer withBackup;
    };

    for (const Row& row : {Row{"later.withy", later, "later Withy (file version 999)", Offer::none},
                           Row{"other.withy", other, "not a Withy season", Offer::restoreBackup},
                           Row{"text.withy", "Dear all,\n", "not a Withy season", Offer::restoreBackup},
                           Row{"empty.withy", "", "is empty", Offer::restoreBackup},
                           Row{"folder", std::nullopt, "is a folder", Offer::none},
                           Row{"gone.withy", std::nullopt, "no file", Offer::restoreBackup},
                           Row{"cut.withy", sound.left(50000), "damaged", Offer::restoreBackup}}) {
        SCOPED_TRACE(row.name);
        if (row.bytes) write(at(row.name), *row.bytes);
        const auto alone = openSeason(at(row.name), backups(), now);
        EXPECT_FALSE(alone.file);
        EXPECT_TRUE(alone.sentence.contains(QString::fromUtf8(row.says))) << alone.sentence.toStdString();
        EXPECT_EQ(alone.offer, Offer::none) << "there is no backup of this one";
        if (!QFile::exists(at(row.name))) write(at(row.name), sound);
        if (row.bytes || row.withBackup != Offer::none) { // the same again, with a backup made in good days
            write(at(row.name), sound);
            const auto kept = store::Backups(backups()).make(at(row.name), now);
            QFile::remove(at(row.name));
            if (row.bytes) write(at(row.name), *row.bytes);
            const auto out = openSeason(at(row.name), backups(), now);
            EXPECT_EQ(out.offer, row.withBackup);
            EXPECT_EQ(out.backup.has_value(), row.withBackup == Offer::restoreBackup);
        }
    }
}

TEST_F(SeasonOpening, BeginningNeverWritesOverAFile) {
    auto first = beginSeason(at("new.withy"), demoSeason());
    ASSERT_TRUE(first.file);
    first.file->close();
    const auto bytes = bytesOf(at("new.withy"));
    const auto second = beginSeason(at("new.withy"), emptySeason(2027));
    EXPECT_FALSE(second.file);
    EXPECT_TRUE(second.sentence.contains(QStringLiteral("there already"))) << second.sentence.toStdString();
    EXPECT_EQ(bytesOf(at("new.withy")), bytes);
}

TEST_F(SeasonOpening, ASeasonInUseIsNotRestoredOver) {
    const auto bench = benchOn(demoSeason());
    const auto backup = store::Backups(backups()).make(at("a.withy"), now);
    const auto out = restoreSeason(at("a.withy"), backup, backups(), now);
    EXPECT_FALSE(out.file);
    EXPECT_TRUE(out.sentence.contains(QStringLiteral("another window"))) << out.sentence.toStdString();
    const auto line = bench->season().lines.begin()->id;
    EXPECT_EQ(bench->apply(edits::setPieces(bench->season(), line, 12)), QString());
}

TEST_F(SeasonOpening, AFileThatGoesAwayWhileOpenIsSaidAndNothingChanges) {
    const auto bench = benchOn(demoSeason());
    const auto before = exchange::exportSeason(bench->season());
    ASSERT_TRUE(QFile::remove(at("a.withy")));
    const auto line = bench->season().lines.begin()->id;
    const QString said = bench->apply(edits::setPieces(bench->season(), line, 12));
    EXPECT_TRUE(said.contains(QStringLiteral("no longer there"))) << said.toStdString();
    EXPECT_EQ(exchange::exportSeason(bench->season()), before);
    EXPECT_EQ(bench->saveCopy(at("copy.withy")), QString()); // what is in memory can be kept
    EXPECT_EQ(exchange::exportSeason(readSeason(at("copy.withy"), backups()).file->season()), before);
}

} // namespace withy::ui
