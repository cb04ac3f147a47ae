// SPDX-License-Identifier: GPL-3.0-or-later
// What a program leaves beside a season when it is killed while it makes one.
#include "core/store/backups.h"
#include "core/store/disk.h"
#include "core/store/season_file.h"
#include "tests/store/seasons.h"
#include "tests/store/store_test.h"

#include <QProcess>

namespace withy::test {

using namespace store;
using Mode = SeasonFile::Mode;

class LeftParts : public StoreTest {
protected:
    /// The name of a part whose program was killed with -9.
    QString leftByAKill() {
        QProcess child;
        child.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--hold-part"), at("b.withy")});
        EXPECT_TRUE(child.waitForReadyRead(30000));
        const QString path = QFile::decodeName(child.readLine().trimmed());
        SeasonFile::open(at("a.withy"), Mode::write).close();
        EXPECT_TRUE(QFile::exists(path)) << "its program still lives";
        child.kill();
        EXPECT_TRUE(child.waitForFinished());
        return path;
    }

    void SetUp() override { SeasonFile::create(at("a.withy"), lawfulSeason(1, 2)).close(); }
};

TEST_F(LeftParts, AreTakenAwayAtTheNextOpening) {
    const QString part = leftByAKill();
    ASSERT_TRUE(QFile::exists(part)) << part.toStdString();
    QFile journal(part + QStringLiteral("-journal"));
    ASSERT_TRUE(journal.open(QIODevice::WriteOnly));
    journal.close();
    SeasonFile::open(at("a.withy"), Mode::read);
    EXPECT_TRUE(QFile::exists(part)) << "who only reads changes nothing";
    SeasonFile::open(at("a.withy"), Mode::write);
    EXPECT_FALSE(QFile::exists(part));
    EXPECT_FALSE(journal.exists());
}

TEST_F(LeftParts, AreTakenAwayFromTheBackupsFolderToo) {
    write(".withy-part.aBcD12", "half a copy");
    Backups(folder.path()).make(at("a.withy"), QDateTime(QDate(2027, 6, 1), QTime(9, 0), Qt::UTC));
    EXPECT_FALSE(QFile::exists(at(".withy-part.aBcD12")));
}

TEST_F(LeftParts, FilesOfOtherNamesAndThoseInUseStay) {
    const QStringList others{QStringLiteral(".withy-part"), QStringLiteral(".withy-part.toolong"),
                             QStringLiteral("x.withy-part.aBcD12"), QStringLiteral("withy-part.aBcD12")};
    for (const auto& name : others)
        write(name.toUtf8().constData(), "someone's");
    ASSERT_TRUE(QFile::link(at("a.withy"), at(".withy-part.aBcD12")));
    const FileBeside ours(at("c.withy"), {Attempt::create, at("c.withy")});
    SeasonFile::open(at("a.withy"), Mode::write);
    for (const auto& name : others)
        EXPECT_TRUE(filesHere().contains(name)) << name.toStdString();
    EXPECT_TRUE(QFileInfo(at(".withy-part.aBcD12")).isSymLink());
    EXPECT_TRUE(QFile::exists(ours.path()));
    EXPECT_TRUE(QFile::exists(at("a.withy")));
}

} // namespace withy::test
