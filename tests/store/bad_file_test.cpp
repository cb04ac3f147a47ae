// SPDX-License-Identifier: GPL-3.0-or-later
// A season file that is no season, or no longer one: said plainly, and left as it is.
#include "core/store/season_file.h"
#include "tests/store/seasons.h"
#include "tests/store/store_test.h"

#include "core/store/connection.h"

#include <random>

#include <sys/stat.h>
#include <unistd.h>

namespace withy::test {

using namespace store;
using Mode = SeasonFile::Mode;

class BadFileTest : public StoreTest {
protected:
    /// The bytes of a sound season, closed.
    QByteArray sound() {
        if (!sound_.isEmpty()) return sound_;
        SeasonFile::create(at("sound"), lawfulSeason(5, 3)).close();
        sound_ = bytesOf(at("sound"));
        QFile::remove(at("sound"));
        return sound_;
    }

    /// A sound season changed by SQL of another program's.
    void soundButFor(const std::vector<const char*>& statements) {
        write("bad.withy", sound());
        Connection connection(at("bad.withy"), Connection::Access::write, {Attempt::commit, at("bad.withy")});
        connection.exec(QStringLiteral("PRAGMA foreign_keys=OFF"));
        for (const char* sql : statements)
            connection.exec(QString::fromUtf8(sql));
    }

    /// Both ways of opening give this fault, name the path, and change nothing.
    void refusedUntouched(const std::string& fault) {
        const QByteArray before = bytesOf(at("bad.withy"));
        const QStringList beside = filesHere();
        for (const Mode mode : {Mode::read, Mode::write})
            EXPECT_EQ(faultOf([&] { SeasonFile::open(at("bad.withy"), mode); }), fault);
        EXPECT_TRUE(bytesOf(at("bad.withy")) == before) << "the file was written to";
        EXPECT_EQ(filesHere(), beside);
    }

    QByteArray sound_;
};

TEST_F(BadFileTest, NotThere) {
    for (const Mode mode : {Mode::read, Mode::write}) {
        EXPECT_FAULT(SeasonFile::open(at("none.withy"), mode), notThere);
        EXPECT_FAULT(SeasonFile::open(at("no/folder/none.withy"), mode), notThere);
        EXPECT_FAULT(SeasonFile::open(QString(), mode), isDirectory);
    }
    EXPECT_EQ(filesHere(), QStringList());
}

TEST_F(BadFileTest, ADirectory) {
    ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("bad.withy")));
    for (const Mode mode : {Mode::read, Mode::write})
        EXPECT_FAULT(SeasonFile::open(at("bad.withy"), mode), isDirectory);
}

TEST_F(BadFileTest, NoRegularFile) {
    ASSERT_EQ(::mkfifo(at("bad.withy").toLocal8Bit().constData(), 0600), 0);
    for (const Mode mode : {Mode::read, Mode::write})
        EXPECT_FAULT(SeasonFile::open(at("bad.withy"), mode), notASeason);
}

TEST_F(BadFileTest, Empty) {
    write("bad.withy", {});
    refusedUntouched("empty");
}

TEST_F(BadFileTest, RandomBytes) {
    std::mt19937 random(1);
    for (const int size : {1, 15, 16, 99, 100, 101, 4096, 70000}) {
        SCOPED_TRACE(size);
        QByteArray bytes(size, '\0');
        for (char& c : bytes)
            c = static_cast<char>(random());
        write("bad.withy", bytes);
        refusedUntouched("notASeason");
    }
}

TEST_F(BadFileTest, TextOfAnotherProgram) {
    write("bad.withy", "name,colour\nZinnia,coral\n");
    refusedUntouched("notASeason");
}

TEST_F(BadFileTest, DatabaseOfAnotherProgram) {
    {
        Connection other(at("bad.withy"), Connection::Access::write, {Attempt::create, at("bad.withy")});
        other.exec(QStringLiteral("CREATE TABLE bookmarks (url TEXT)"));
    }
    refusedUntouched("notASeason");
}

TEST_F(BadFileTest, CutShort) {
    for (const qsizetype size :
         {qsizetype(1), qsizetype(16), qsizetype(99), qsizetype(100), qsizetype(4095), qsizetype(4096),
          sound().size() / 2, sound().size() - 4096, sound().size() - 1}) {
        SCOPED_TRACE(size);
        write("bad.withy", sound().left(size));
        refusedUntouched("damaged");
    }
}

TEST_F(BadFileTest, BytesOverwritten) {
    // Wherever 4 KiB are lost the file is either refused, or (an unused stretch) still sound.
    std::mt19937 random(2);
    int refused = 0;
    for (int n = 0; n < 150; ++n) {
        SCOPED_TRACE(n);
        QByteArray bytes = sound();
        const auto where = 100 + static_cast<qsizetype>(random() % static_cast<unsigned>(bytes.size() - 100));
        const auto length =
            std::min<qsizetype>(1 + static_cast<qsizetype>(random() % 4096), bytes.size() - where);
        for (qsizetype i = where; i < where + length; ++i)
            bytes[i] = static_cast<char>(random());
        write("bad.withy", bytes);
        const std::string fault = faultOf([&] { SeasonFile::open(at("bad.withy"), Mode::write); });
        EXPECT_TRUE(fault == "damaged" || fault == "dataAtFault" || fault == "none") << fault;
        refused += fault != "none";
        EXPECT_TRUE(bytesOf(at("bad.withy")) == bytes) << "the file was written to";
    }
    EXPECT_GT(refused, 100);
}

TEST_F(BadFileTest, ALaterVersion) {
    soundButFor({"PRAGMA user_version=3", "CREATE TABLE moon (id INTEGER PRIMARY KEY) STRICT"});
    refusedUntouched("laterVersion");
    try {
        SeasonFile::open(at("bad.withy"), Mode::write);
    } catch (const StoreError& error) {
        EXPECT_EQ(error.version, 3);
    }
}

TEST_F(BadFileTest, AVersionThatNeverWas) {
    soundButFor({"PRAGMA user_version=0"});
    refusedUntouched("damaged");
    soundButFor({"PRAGMA user_version=-1"});
    refusedUntouched("damaged");
}

TEST_F(BadFileTest, TablesAltered) {
    for (const char* sql : {
             "CREATE TABLE extra (id INTEGER PRIMARY KEY)",
             "DROP TABLE client",
             "ALTER TABLE client ADD COLUMN moon TEXT",
             "ALTER TABLE client RENAME COLUMN note TO remark",
             "CREATE TRIGGER t AFTER UPDATE ON client BEGIN DELETE FROM plant; END",
             "CREATE VIEW v AS SELECT * FROM client",
             "CREATE INDEX i ON client (name)",
         }) {
        SCOPED_TRACE(sql);
        soundButFor({sql});
        refusedUntouched("damaged");
    }
}

TEST_F(BadFileTest, StatisticsOfAnotherToolDoNoHarm) {
    soundButFor({"ANALYZE"});
    EXPECT_FAULT(SeasonFile::open(at("bad.withy"), Mode::read), none);
    EXPECT_FAULT(SeasonFile::open(at("bad.withy"), Mode::write), none);
}

TEST_F(BadFileTest, AnotherJournalModeIsPutRightOnceTheFileIsFoundSound) {
    soundButFor({});
    {
        Connection other(at("bad.withy"), Connection::Access::write, {Attempt::commit, at("bad.withy")});
        EXPECT_EQ(other.value(QStringLiteral("PRAGMA journal_mode=WAL")).toString(), QStringLiteral("wal"));
    }
    EXPECT_FAULT(SeasonFile::open(at("bad.withy"), Mode::read), none);
    SeasonFile::open(at("bad.withy"), Mode::write).close();
    EXPECT_EQ(bytesOf(at("bad.withy")).mid(18, 2), QByteArray("\1\1", 2))
        << "rollback journal, fileformat2 1.3";
    EXPECT_EQ(filesHere(), QStringList({QStringLiteral("bad.withy")}));
}

TEST_F(BadFileTest, ReferencesThatLeadNowhere) {
    soundButFor({"UPDATE question SET booking=12345 WHERE id=1"});
    refusedUntouched("damaged");
}

TEST_F(BadFileTest, RecordsThatBreakTheRules) {
    struct Row {
        const char* sql;
        ProblemCode code;
        const char* field;
    };

    for (const Row& row : {
             Row{"UPDATE booking SET event_end='2026-02-30T10:00' WHERE id=1", ProblemCode::notATime,
                 "event_end"},
             Row{"UPDATE settings SET last_day='soon'", ProblemCode::notADate, "last_day"},
             Row{"UPDATE booking SET standing='dreamt' WHERE id=1", ProblemCode::notAWord, "standing"},
             Row{"UPDATE ribbon SET colour='beige' WHERE id=1", ProblemCode::notAColour, "colour"},
             Row{"UPDATE line SET pieces=-1 WHERE id=1", ProblemCode::belowLeast, "pieces"},
             Row{"UPDATE client SET name='' WHERE id=1", ProblemCode::required, "name"},
             Row{"UPDATE client SET name=char(0) WHERE id=1", ProblemCode::notText, "name"},
             Row{"UPDATE client SET note=CAST(x'c328' AS TEXT) WHERE id=1", ProblemCode::notText, "note"},
             Row{"UPDATE settings SET latitude=9e999", ProblemCode::notANumber, "latitude"},
             Row{"UPDATE settings SET currency='gbp'", ProblemCode::badCurrency, "currency"},
         }) {
        SCOPED_TRACE(row.sql);
        soundButFor({row.sql});
        refusedUntouched("dataAtFault");
        try {
            SeasonFile::open(at("bad.withy"), Mode::read);
        } catch (const StoreError& error) {
            ASSERT_FALSE(error.problems.empty());
            EXPECT_EQ(error.problems[0].code, row.code);
            EXPECT_EQ(error.problems[0].field, row.field);
        }
    }
}

TEST_F(BadFileTest, NoSettings) {
    soundButFor({"DELETE FROM settings"});
    refusedUntouched("dataAtFault");
}

/// Drops the rights of root for a while: for root nothing is read-only.
class WithoutRights {
public:
    explicit WithoutRights(bool needed) : dropped_(needed && ::geteuid() == 0) {
        if (dropped_) {
            EXPECT_EQ(::seteuid(65534), 0);
        }
    }

    ~WithoutRights() {
        if (dropped_) {
            EXPECT_EQ(::seteuid(0), 0);
        }
    }

private:
    bool dropped_;
};

TEST_F(BadFileTest, AFileThatMayNotBeWritten) {
    write("bad.withy", sound());
    ASSERT_EQ(::chmod(folder.path().toLocal8Bit().constData(), 0777), 0);
    ASSERT_EQ(::chmod(at("bad.withy").toLocal8Bit().constData(), 0444), 0);
    const WithoutRights without(true);
    EXPECT_FAULT(SeasonFile::open(at("bad.withy"), Mode::write), readOnly);
    EXPECT_FAULT(SeasonFile::open(at("bad.withy"), Mode::read), none);
    EXPECT_EQ(filesHere(), QStringList({QStringLiteral("bad.withy")}));
}

TEST_F(BadFileTest, AFolderThatMayNotBeWritten) {
    write("bad.withy", sound());
    ASSERT_EQ(::chmod(at("bad.withy").toLocal8Bit().constData(), 0666), 0);
    ASSERT_EQ(::chmod(folder.path().toLocal8Bit().constData(), 0555), 0);
    {
        const WithoutRights without(true);
        EXPECT_FAULT(SeasonFile::open(at("bad.withy"), Mode::write), readOnly);
        EXPECT_FAULT(SeasonFile::create(at("new.withy"), lawfulSeason(1, 2)), readOnly);
        const auto file = SeasonFile::open(at("bad.withy"), Mode::read);
        EXPECT_FAULT(file.saveCopy(at("copy.withy")), readOnly);
    }
    ASSERT_EQ(::chmod(folder.path().toLocal8Bit().constData(), 0700), 0);
}

TEST_F(BadFileTest, AFileThatMayNotBeRead) {
    write("bad.withy", sound());
    ASSERT_EQ(::chmod(folder.path().toLocal8Bit().constData(), 0777), 0);
    ASSERT_EQ(::chmod(at("bad.withy").toLocal8Bit().constData(), 0), 0);
    const WithoutRights without(true);
    for (const Mode mode : {Mode::read, Mode::write})
        EXPECT_FAULT(SeasonFile::open(at("bad.withy"), mode), cannotRead);
}

} // namespace withy::test
