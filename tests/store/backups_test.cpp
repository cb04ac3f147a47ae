// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backups.h"
#include "core/store/disk.h"
#include "core/store/season_file.h"
#include "tests/store/seasons.h"
#include "tests/store/store_test.h"

#include <QFileInfo>

#include <gmock/gmock.h>

#include <algorithm>

namespace withy::test {

using namespace store;
using Mode = SeasonFile::Mode;

namespace {

QDateTime utc(const char* iso) {
    QDateTime at = QDateTime::fromString(QString::fromLatin1(iso), Qt::ISODate);
    at.setTimeSpec(Qt::UTC);
    return at;
}

std::string words(const std::vector<QDateTime>& stamps) {
    std::string text;
    for (const auto& at : stamps)
        text += at.toUTC().toString(QStringLiteral("yyyy-MM-ddTHH:mm ")).toStdString();
    return text;
}

} // namespace

TEST(Thinning, KeepsTenDaysAndTwelveMonths) {
    struct Row {
        const char* name;
        std::vector<const char*> stamps;
        const char* newest;
        const char* gone; ///< newest first
    };

    for (const Row& row : std::vector<Row>{
             {"nothing there", {}, "2026-06-15T12:00:00", ""},
             {"one alone", {"2026-06-15T12:00:00"}, "2026-06-15T12:00:00", ""},
             {"the newest of a day",
              {"2026-06-15T08:00:00", "2026-06-15T12:00:00", "2026-06-15T10:00:00"},
              "2026-06-15T12:00:00",
              "2026-06-15T10:00 2026-06-15T08:00 "},
             {"the tenth day stays, the eleventh goes",
              {"2026-06-15T12:00:00", "2026-06-06T12:00:00", "2026-06-05T12:00:00"},
              "2026-06-15T12:00:00",
              "2026-06-05T12:00 "},
             {"the newest of an earlier month stays",
              {"2026-06-15T12:00:00", "2026-05-30T12:00:00", "2026-05-29T12:00:00"},
              "2026-06-15T12:00:00",
              "2026-05-29T12:00 "},
             {"a month's newest within the ten days is both",
              {"2026-06-03T12:00:00", "2026-05-31T12:00:00", "2026-05-20T12:00:00"},
              "2026-06-03T12:00:00",
              "2026-05-20T12:00 "},
             {"the twelfth month stays, the thirteenth goes",
              {"2026-06-15T12:00:00", "2025-07-01T12:00:00", "2025-06-30T12:00:00"},
              "2026-06-15T12:00:00",
              "2025-06-30T12:00 "},
             {"over the leap day",
              {"2028-03-01T12:00:00", "2028-02-29T12:00:00", "2028-02-29T09:00:00", "2028-02-20T12:00:00"},
              "2028-03-01T12:00:00",
              "2028-02-29T09:00 2028-02-20T12:00 "},
             {"over the turn of the year",
              {"2027-01-02T12:00:00", "2026-12-31T12:00:00", "2026-12-20T12:00:00", "2026-02-01T12:00:00",
               "2026-01-31T12:00:00"},
              "2027-01-02T12:00:00",
              "2026-12-20T12:00 2026-01-31T12:00 "},
             {"what claims to be later is left alone",
              {"2026-06-15T12:00:00", "2027-01-01T12:00:00", "2027-01-01T11:00:00"},
              "2026-06-15T12:00:00",
              ""},
         }) {
        SCOPED_TRACE(row.name);
        std::vector<QDateTime> stamps;
        for (const char* iso : row.stamps)
            stamps.push_back(utc(iso));
        EXPECT_EQ(words(toThinOut(stamps, utc(row.newest))), row.gone);
    }
}

TEST(Thinning, HourlyForThreeYearsComesToTenDaysAndElevenMonths) {
    std::vector<QDateTime> kept;
    QDateTime at = utc("2024-01-01T00:30:00");
    for (int hour = 0; hour < 3 * 365 * 24; ++hour, at = at.addSecs(3600)) {
        kept.push_back(at);
        for (const auto& gone : toThinOut(kept, at))
            kept.erase(std::find(kept.begin(), kept.end(), gone));
        ASSERT_EQ(kept.back(), at) << "the newest went";
    }
    // 30 December 2026: ten days of December, and the last of each month back to January.
    EXPECT_EQ(kept.size(), 21u);
    EXPECT_EQ(words({kept.front()}), "2026-01-31T23:30 ");
}

class BackupsTest : public StoreTest {
protected:
    Backups backups{folder.filePath(QStringLiteral("kept/backups"))};
    model::Season season = lawfulSeason(6, 3);
};

TEST_F(BackupsTest, AreMadeWhileTheSeasonIsOpenAndListedNewestFirst) {
    auto file = SeasonFile::create(at("spring.withy"), season);
    SeasonFile::create(at("autumn.withy"), lawfulSeason(7, 2)).close();
    const auto first = backups.make(at("spring.withy"), utc("2026-03-14T10:00:00"));
    backups.make(at("autumn.withy"), utc("2026-03-14T11:00:00"));
    file.commit(model::Edit("erase").erase(Id<model::AcceptedFinding>(1)));
    const auto second = backups.make(at("spring.withy"), utc("2026-03-15T10:00:00"));

    const auto all = backups.list(at("spring.withy"));
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].path, second.path);
    EXPECT_EQ(all[1].path, first.path);
    EXPECT_EQ(all[0].at, utc("2026-03-15T10:00:00"));
    EXPECT_EQ(all[0].bytes, QFileInfo(second.path).size());
    EXPECT_EQ(textOf(SeasonFile::open(first.path, Mode::read).season()), textOf(season));
    EXPECT_EQ(textOf(SeasonFile::open(second.path, Mode::read).season()), textOf(file.season()));
    EXPECT_FALSE(QFileInfo(second.path).permissions() & (QFile::ReadGroup | QFile::ReadOther));
    EXPECT_EQ(backups.list(at("autumn.withy")).size(), 1u);
    EXPECT_EQ(backups.list(at("none.withy")).size(), 0u);
}

TEST_F(BackupsTest, OfTheSameMomentDoNotOverwriteEachOther) {
    SeasonFile::create(at("spring.withy"), season).close();
    const auto first = backups.make(at("spring.withy"), utc("2026-03-14T10:00:00"));
    const auto second = backups.make(at("spring.withy"), utc("2026-03-14T10:00:00"));
    EXPECT_NE(first.path, second.path);
    EXPECT_TRUE(QFileInfo::exists(second.path));
}

TEST_F(BackupsTest, AreThinnedOnceTheNewOneIsSound) {
    SeasonFile::create(at("spring.withy"), season).close();
    for (int day = 1; day <= 20; ++day)
        backups.make(at("spring.withy"), utc("2026-03-01T10:00:00").addDays(day));
    EXPECT_EQ(backups.list(at("spring.withy")).size(), 10u);

    QFile::remove(at("spring.withy"));
    write("spring.withy", "spoilt");
    EXPECT_FAULT(backups.make(at("spring.withy"), utc("2026-09-01T10:00:00")), notASeason);
    EXPECT_EQ(backups.list(at("spring.withy")).size(), 10u) << "a failed backup must not cost the old ones";
}

TEST_F(BackupsTest, ADamagedSeasonIsNotBackedUp) {
    SeasonFile::create(at("spring.withy"), season).close();
    const auto bytes = bytesOf(at("spring.withy"));
    write("spring.withy", bytes.left(bytes.size() / 2));
    EXPECT_FAULT(backups.make(at("spring.withy"), utc("2026-09-01T10:00:00")), damaged);
    EXPECT_FAULT(backups.make(at("none.withy"), utc("2026-09-01T10:00:00")), notThere);
    EXPECT_TRUE(QDir(at("kept/backups")).isEmpty(QDir::Files | QDir::Hidden));
}

TEST_F(BackupsTest, TheNewestSoundOneIsFound) {
    SeasonFile::create(at("spring.withy"), season).close();
    EXPECT_FALSE(backups.newestSound(at("spring.withy")).has_value());
    const auto first = backups.make(at("spring.withy"), utc("2026-03-14T10:00:00"));
    const auto second = backups.make(at("spring.withy"), utc("2026-03-15T10:00:00"));
    EXPECT_EQ(backups.newestSound(at("spring.withy"))->path, second.path);
    QFile spoilt(second.path);
    ASSERT_TRUE(spoilt.resize(5000));
    EXPECT_EQ(backups.newestSound(at("spring.withy"))->path, first.path);
}

TEST_F(BackupsTest, RestoringKeepsWhatWasThere) {
    SeasonFile::create(at("spring.withy"), season).close();
    const auto backup = backups.make(at("spring.withy"), utc("2026-03-14T10:00:00"));
    write("spring.withy", "spoilt");
    write("spring.withy-journal", "left by the crash that spoilt it");

    const auto when = utc("2026-03-14T17:15:00");
    const auto restored = backups.restore(backup, at("spring.withy"), when);
    EXPECT_EQ(restored.setAside, at("spring (set aside 2026-03-14 17.15.00).withy"));
    EXPECT_EQ(bytesOf(restored.setAside), QByteArray("spoilt"));
    EXPECT_EQ(bytesOf(restored.setAside + QStringLiteral("-journal")),
              QByteArray("left by the crash that spoilt it"));
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::write).season()), textOf(season));
    EXPECT_TRUE(QFileInfo::exists(backup.path));

    const auto again = backups.restore(backup, at("spring.withy"), when);
    EXPECT_EQ(again.setAside, at("spring (set aside 2026-03-14 17.15.00 2).withy"));
    const auto elsewhere = backups.restore(backup, at("new.withy"), when);
    EXPECT_EQ(elsewhere.setAside, QString());
    EXPECT_EQ(textOf(SeasonFile::open(at("new.withy"), Mode::read).season()), textOf(season));
}

TEST_F(BackupsTest, ARestoreThatCannotBeDoneChangesNothing) {
    auto file = SeasonFile::create(at("spring.withy"), season);
    auto backup = backups.make(at("spring.withy"), utc("2026-03-14T10:00:00"));
    const auto when = utc("2026-03-14T17:15:00");
    EXPECT_FAULT(backups.restore(backup, at("spring.withy"), when), lockedBy);
    file.close();
    ASSERT_TRUE(QFile(backup.path).resize(5000));
    const auto before = bytesOf(at("spring.withy"));
    EXPECT_FAULT(backups.restore(backup, at("spring.withy"), when), damaged);
    EXPECT_TRUE(bytesOf(at("spring.withy")) == before);
    EXPECT_EQ(filesHere(), QStringList({QStringLiteral("spring.withy")}));
}

TEST_F(BackupsTest, AFileAndItsJournalAreMovedTogetherOrNotAtAll) {
    const Doing doing{Attempt::restore, at("a.withy")};
    write("a.withy", "database");
    write("a.withy-journal", "its journal");
    write("taken.withy", "another");
    EXPECT_FAULT((moveWithSideFiles(at("a.withy"), at("taken.withy"), doing), 0), alreadyThere);
    write("b.withy-journal", "of another");
    EXPECT_FAULT((moveWithSideFiles(at("a.withy"), at("b.withy"), doing), 0), alreadyThere);
    EXPECT_EQ(bytesOf(at("a.withy")), QByteArray("database"));
    EXPECT_EQ(bytesOf(at("a.withy-journal")), QByteArray("its journal"));
    EXPECT_EQ(filesHere(), (QStringList{QStringLiteral("a.withy"), QStringLiteral("a.withy-journal"),
                                        QStringLiteral("b.withy-journal"), QStringLiteral("taken.withy")}));
}

} // namespace withy::test
