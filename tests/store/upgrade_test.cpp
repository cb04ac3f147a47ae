// SPDX-License-Identifier: GPL-3.0-or-later
// Only version 1 exists; a made-up version 2 tries the way there.
#include "core/store/backups.h"
#include "core/store/season_file.h"
#include "tests/store/seasons.h"
#include "tests/store/store_test.h"

#include <QFileInfo>

namespace withy::test {

using namespace store;
using Mode = SeasonFile::Mode;

namespace {

SchemaVersions withStep(const char* sql) {
    auto steps = SchemaVersions::shippedMigrations();
    steps.push_back({2, QString::fromUtf8(sql)});
    return SchemaVersions(steps);
}

const char* const addTable = "CREATE TABLE moon (id INTEGER PRIMARY KEY, phase TEXT NOT NULL) STRICT;\n"
                             "INSERT INTO moon (phase) VALUES ('half; waxing');\n";

} // namespace

class UpgradeTest : public StoreTest {
protected:
    void SetUp() override { SeasonFile::create(at("spring.withy"), season); }

    int versionOf(const char* name) {
        return static_cast<unsigned char>(bytesOf(at(name))[63]); // offset 60, big-endian
    }

    model::Season season = lawfulSeason(4, 3);
};

TEST_F(UpgradeTest, RunsAfterABackupBesideTheFile) {
    const auto versions = withStep(addTable);
    const OpenOptions options{.beforeUpgrade = std::nullopt, .versions = versions};
    {
        const auto file = SeasonFile::open(at("spring.withy"), Mode::write, options);
        EXPECT_EQ(textOf(file.season()), textOf(season));
    }
    EXPECT_EQ(versionOf("spring.withy"), 2);
    EXPECT_EQ(versionOf("spring (version 1).withy"), 1);
    EXPECT_EQ(textOf(SeasonFile::open(at("spring (version 1).withy"), Mode::read).season()), textOf(season));
    Connection connection(at("spring.withy"), Connection::Access::read,
                          {Attempt::openToRead, at("spring.withy")});
    EXPECT_EQ(connection.value(QStringLiteral("SELECT phase FROM moon")).toString(),
              QStringLiteral("half; waxing"));
    // Not a second time.
    EXPECT_FAULT(SeasonFile::open(at("spring.withy"), Mode::write, options), none);
    EXPECT_FALSE(QFileInfo::exists(at("spring (version 1 2).withy")));
    // And the program of today, meeting tomorrow's file, leaves it alone.
    EXPECT_FAULT(SeasonFile::open(at("spring.withy"), Mode::write), laterVersion);
}

TEST_F(UpgradeTest, RunsAfterABackupInTheFolderGiven) {
    const auto versions = withStep(addTable);
    const QDateTime when(QDate(2026, 3, 14), QTime(10, 0), Qt::UTC);
    const OpenOptions options{.beforeUpgrade = BackupPlace{at("backups"), when}, .versions = versions};
    SeasonFile::open(at("spring.withy"), Mode::write, options).close();
    const auto backups = Backups(at("backups"), versions).list(at("spring.withy"));
    ASSERT_EQ(backups.size(), 1u);
    EXPECT_EQ(backups[0].at, when);
    EXPECT_EQ(textOf(SeasonFile::open(backups[0].path, Mode::read).season()), textOf(season));
}

TEST_F(UpgradeTest, ReadingLeavesTheFileAsItIs) {
    const auto versions = withStep(addTable);
    const OpenOptions options{.beforeUpgrade = std::nullopt, .versions = versions};
    const auto before = bytesOf(at("spring.withy"));
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::read, options).season()), textOf(season));
    EXPECT_TRUE(bytesOf(at("spring.withy")) == before);
    EXPECT_EQ(filesHere(), QStringList({QStringLiteral("spring.withy")}));
}

TEST_F(UpgradeTest, AStepThatRebuildsATableKeepsWhatRefersToIt) {
    const auto versions =
        withStep("CREATE TABLE new_client (\"id\" INTEGER PRIMARY KEY, \"name\" TEXT NOT NULL,"
                 " \"contact\" TEXT NOT NULL, \"address\" TEXT NOT NULL, \"note\" TEXT NOT NULL,"
                 " \"consent_to_keep\" INTEGER NOT NULL) STRICT;"
                 "INSERT INTO new_client SELECT * FROM client;"
                 "DROP TABLE client; ALTER TABLE new_client RENAME TO client;");
    const OpenOptions options{.beforeUpgrade = std::nullopt, .versions = versions};
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::write, options).season()), textOf(season));
    EXPECT_EQ(versionOf("spring.withy"), 2);
}

TEST_F(UpgradeTest, AStepThatFailsChangesNothing) {
    struct Row {
        const char* sql;
        const char* why;
    };

    for (const Row& row : {
             Row{"DELETE FROM plant;", "references lead nowhere"},
             Row{"CREATE TABLE moon (id INTEGER PRIMARY KEY); INSERT INTO moon SELECT 1 FROM client;",
                 "same key twice"},
         }) {
        SCOPED_TRACE(row.why);
        const auto versions = withStep(row.sql);
        const OpenOptions options{.beforeUpgrade = std::nullopt, .versions = versions};
        const auto before = bytesOf(at("spring.withy"));
        EXPECT_NE(faultOf([&] { SeasonFile::open(at("spring.withy"), Mode::write, options); }), "none");
        EXPECT_TRUE(bytesOf(at("spring.withy")) == before);
        EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::write).season()), textOf(season));
    }
}

} // namespace withy::test
