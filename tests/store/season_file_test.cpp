// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/schema.h"
#include "core/store/record_io.h"
#include "core/store/season_file.h"
#include "tests/store/seasons.h"
#include "tests/store/store_test.h"

#include <QFile>
#include <QFileInfo>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace withy::test {

using namespace store;
using Mode = SeasonFile::Mode;

namespace {

/// Every record of it, in file order.
model::Edit wholeSeason(const model::Season& season) {
    model::Edit edit("season.whole");
    for (const auto& info : model::allTables())
        model::forEachRecord(season, info.kind, [&](std::int64_t id, const void*) {
            edit.put(*model::findRecord(season, info.kind, id));
        });
    return edit;
}

/// As the file holds it, the model's rules left aside.
model::Season rawSeason(const QString& path, Problems& problems) {
    Connection connection(path, Connection::Access::read, {Attempt::openToRead, path});
    return readSeason(connection, problems);
}

void writeRaw(const QString& path, const model::Season& season) {
    Connection connection(path, Connection::Access::write, {Attempt::create, path});
    Transaction whole(connection, Transaction::Kind::write);
    SchemaVersions::shipped().run(connection, 0);
    RecordWriter(connection).putAll(season);
    whole.commit();
}

model::Edit clientEdit(std::int64_t id, const std::string& name) {
    model::Client client;
    client.id = Id<model::Client>(id);
    client.name = name;
    return model::Edit("client.add").put(client);
}

} // namespace

class SeasonFileTest : public StoreTest {};

TEST_F(SeasonFileTest, AnyValueThatFitsComesBackToTheBit) {
    for (unsigned seed = 1; seed <= 5; ++seed) {
        SCOPED_TRACE(seed);
        const QString path = at("wild.withy");
        const auto season = wildSeason(seed, 12);
        writeRaw(path, season);
        Problems problems;
        EXPECT_EQ(textOf(rawSeason(path, problems)), textOf(season));
        EXPECT_TRUE(problems.empty());
        QFile::remove(path);
    }
}

TEST_F(SeasonFileTest, EveryTableFilledComesBackToTheBit) {
    const auto season = lawfulSeason(7, 4);
    for (const auto& table : model::allTables())
        ASSERT_GT(model::sizeOf(season, table.kind), 0u) << table.name;
    {
        const auto made = SeasonFile::create(at("spring.withy"), season);
        EXPECT_EQ(textOf(made.season()), textOf(season));
    }
    for (const Mode mode : {Mode::read, Mode::write}) {
        const auto file = SeasonFile::open(at("spring.withy"), mode);
        EXPECT_EQ(textOf(file.season()), textOf(season));
        EXPECT_EQ(file.mode(), mode);
    }
}

TEST_F(SeasonFileTest, IsMarkedPrivateAndAlone) {
    const auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(1, 2));
    const auto permissions = QFileInfo(at("spring.withy")).permissions();
    EXPECT_TRUE(permissions & QFile::ReadOwner);
    EXPECT_TRUE(permissions & QFile::WriteOwner);
    EXPECT_FALSE(permissions & (QFile::ReadGroup | QFile::WriteGroup | QFile::ReadOther | QFile::WriteOther |
                                QFile::ExeOwner));
    EXPECT_EQ(filesHere(),
              QStringList({QStringLiteral("spring.withy"), QStringLiteral("spring.withy.lock")}));
    // Offsets 60 and 68 of https://www.sqlite.org/fileformat2.html
    const QByteArray bytes = bytesOf(at("spring.withy"));
    EXPECT_EQ(bytes.mid(68, 4), QByteArray("With"));
    EXPECT_EQ(bytes.mid(60, 4), QByteArray("\0\0\0\1", 4));
}

TEST_F(SeasonFileTest, RandomEditsAndTheirInversesAreKept) {
    const auto start = lawfulSeason(3, 2);
    auto file = SeasonFile::create(at("spring.withy"), start);
    auto season = file.season();
    std::vector<model::Edit> inverses;
    for (unsigned seed = 10; seed < 30; ++seed) {
        auto applied = model::apply(season, wholeSeason(lawfulSeason(seed, 2)));
        ASSERT_TRUE(applied.ok());
        file.commit(applied->done);
        season = applied->season;
        inverses.push_back(applied->inverse);
        EXPECT_EQ(textOf(file.season()), textOf(season));
        EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::read).season()), textOf(season));
    }
    for (auto inverse = inverses.rbegin(); inverse != inverses.rend(); ++inverse) {
        auto applied = model::apply(season, *inverse);
        ASSERT_TRUE(applied.ok());
        file.commit(applied->done);
        season = applied->season;
    }
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::read).season()), textOf(start));
}

TEST_F(SeasonFileTest, ErasesGoEvenWithThoseThatRefer) {
    auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(3, 3));
    model::Edit all("all.erase");
    for (const auto& table : model::allTables()) {
        if (table.kind == model::TableKind::settings) continue;
        model::forEachRecord(file.season(), table.kind, [&](std::int64_t id, const void*) {
            all.erase(model::Ref{table.kind, id});
        });
    }
    file.commit(all); // parents first: references are judged at the end
    const auto left = SeasonFile::open(at("spring.withy"), Mode::read);
    EXPECT_EQ(left.season().plants.size(), 0u);
    EXPECT_EQ(left.season().settings.size(), 1u);
}

TEST_F(SeasonFileTest, AnEditThatLeavesAReferenceDanglingIsRefusedWhole) {
    auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(3, 3));
    const auto before = textOf(file.season());
    model::Edit edit = clientEdit(50, "Someone");
    model::Question question;
    question.id = Id<model::Question>(60);
    question.booking = Id<model::Booking>(999);
    question.text = "Which door?";
    edit.put(question);
    EXPECT_FAULT(file.commit(edit), cannotWrite);
    EXPECT_EQ(textOf(file.season()), before);
    file.commit(clientEdit(50, "Someone")); // the file is still of use
    EXPECT_EQ(SeasonFile::open(at("spring.withy"), Mode::read).season().questions.find(question.id), nullptr);
}

TEST_F(SeasonFileTest, ASecondWriterIsToldWhoAndMayRead) {
    auto first = SeasonFile::create(at("spring.withy"), lawfulSeason(3, 3));
    try {
        SeasonFile::open(at("spring.withy"), Mode::write);
        FAIL() << "two writers";
    } catch (const StoreError& error) {
        EXPECT_EQ(error.fault, StoreFault::lockedBy);
        EXPECT_EQ(error.attempted, Attempt::openToWrite);
        EXPECT_EQ(error.owner.process, QCoreApplication::applicationPid());
    }
    auto reader = SeasonFile::open(at("spring.withy"), Mode::read);
    first.commit(clientEdit(50, "Someone")); // a reader is in nobody's way
    EXPECT_EQ(reader.season().clients.find(Id<model::Client>(50)), nullptr);
    EXPECT_FAULT(reader.commit(clientEdit(51, "Nobody")), readOnly);
    first.close();
    first.close();
    EXPECT_NE(SeasonFile::open(at("spring.withy"), Mode::write).season().clients.find(Id<model::Client>(50)),
              nullptr);
}

TEST_F(SeasonFileTest, ChangedByAnotherProgramIsNoticedBeforeWriting) {
    auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(3, 3));
    file.commit(clientEdit(50, "Someone"));
    {
        Connection other(at("spring.withy"), Connection::Access::write,
                         {Attempt::commit, at("spring.withy")});
        other.exec(QStringLiteral("UPDATE client SET name='Other' WHERE id=50"));
    }
    EXPECT_FAULT(file.commit(clientEdit(51, "Lost")), changedByAnother);
    const auto now = SeasonFile::open(at("spring.withy"), Mode::read);
    EXPECT_EQ(now.season().clients.find(Id<model::Client>(50))->name, "Other");
    EXPECT_EQ(now.season().clients.find(Id<model::Client>(51)), nullptr);
}

TEST_F(SeasonFileTest, AFileTakenAwayOrReplacedIsNoticedBeforeWriting) {
    auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(3, 3));
    ASSERT_TRUE(QFile::rename(at("spring.withy"), at("moved.withy")));
    EXPECT_FAULT(file.commit(clientEdit(50, "Lost")), notThere);
    ASSERT_TRUE(QFile::copy(at("moved.withy"), at("spring.withy")));
    EXPECT_FAULT(file.commit(clientEdit(50, "Lost")), changedByAnother);
    ASSERT_TRUE(QFile::remove(at("spring.withy")) && QFile::rename(at("moved.withy"), at("spring.withy")));
    file.commit(clientEdit(50, "Someone"));
}

TEST_F(SeasonFileTest, AnotherProgramHoldingTheDatabaseIsALock) {
    auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(3, 3));
    Connection other(at("spring.withy"), Connection::Access::write, {Attempt::commit, at("spring.withy")});
    {
        const Transaction held(other, Transaction::Kind::write);
        EXPECT_FAULT(file.commit(clientEdit(50, "Later")), lockedBy);
    }
    file.commit(clientEdit(50, "Now"));
}

TEST_F(SeasonFileTest, ASeasonThatBreaksTheRulesIsNotMadeIntoAFile) {
    EXPECT_FAULT(SeasonFile::create(at("spring.withy"), wildSeason(1, 2)), dataAtFault);
    EXPECT_FAULT(SeasonFile::create(at("spring.withy"), model::Season()), dataAtFault);
    EXPECT_EQ(filesHere(), QStringList());
}

TEST_F(SeasonFileTest, ALockWhoseMakerWasKilledBeforeItSignedDoesNotCount) {
    SeasonFile::create(at("spring.withy"), lawfulSeason(3, 3)).close();
    write("spring.withy.lock", {});
    const int maker = ::open(QFile::encodeName(at("spring.withy.lock")).constData(), O_WRONLY);
    ASSERT_EQ(::flock(maker, LOCK_EX | LOCK_NB), 0);
    EXPECT_FAULT(SeasonFile::open(at("spring.withy"), Mode::write), lockedBy) << "its maker lives";
    ::close(maker);
    EXPECT_EQ(SeasonFile::open(at("spring.withy"), Mode::write).mode(), Mode::write);
    write("spring.withy.lock", "999999999\nsomeone\n" + QSysInfo::machineHostName().toUtf8() + "\n");
    write("spring.withy.lock.rmlock", {}); // killed while taking over a dead program's lock
    EXPECT_EQ(SeasonFile::open(at("spring.withy"), Mode::write).mode(), Mode::write);
}

TEST_F(SeasonFileTest, NothingIsEverOverwrittenUntold) {
    write("spring.withy", "precious");
    EXPECT_FAULT(SeasonFile::create(at("spring.withy"), lawfulSeason(1, 2)), alreadyThere);
    const auto other = SeasonFile::create(at("other.withy"), lawfulSeason(1, 2));
    EXPECT_FAULT(other.saveCopy(at("spring.withy")), alreadyThere);
    EXPECT_EQ(bytesOf(at("spring.withy")), QByteArray("precious"));
    EXPECT_FAULT(other.saveCopy(at("other.withy"), Existing::replace), alreadyThere) << "the file itself";
    EXPECT_FAULT(SeasonFile::create(at("other.withy"), lawfulSeason(1, 2), Existing::replace), lockedBy);
    EXPECT_FAULT(SeasonFile::create(at("."), lawfulSeason(1, 2)), isDirectory);
    EXPECT_FAULT(other.saveCopy(at("no/such/folder.withy")), notThere);
    other.saveCopy(at("spring.withy"), Existing::replace);
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::read).season()), textOf(other.season()));
    EXPECT_EQ(filesHere(), QStringList({QStringLiteral("other.withy"), QStringLiteral("other.withy.lock"),
                                        QStringLiteral("spring.withy")}));
}

TEST_F(SeasonFileTest, ACopyIsASeasonOfItsOwn) {
    auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(3, 3));
    file.commit(clientEdit(50, "Someone"));
    file.saveCopy(at("copy.withy"));
    file.commit(clientEdit(51, "Later"));
    auto copy = SeasonFile::open(at("copy.withy"), Mode::write);
    EXPECT_NE(copy.season().clients.find(Id<model::Client>(50)), nullptr);
    EXPECT_EQ(copy.season().clients.find(Id<model::Client>(51)), nullptr);
    SeasonFile::open(at("copy.withy"), Mode::read).saveCopy(at("copy of copy.withy"));
    EXPECT_EQ(textOf(SeasonFile::open(at("copy of copy.withy"), Mode::read).season()), textOf(copy.season()));
}

TEST_F(SeasonFileTest, OddNamesAreNames) {
    for (const char* name : {"it's \"odd\"; %20 #?.withy", "Ringelblume 💐.withy", "no suffix", "-.withy",
                             ":memory:", "file:x?mode=memory"}) {
        SCOPED_TRACE(name);
        const QString path = at(name);
        auto file = SeasonFile::create(path, lawfulSeason(1, 2));
        file.commit(clientEdit(50, "Someone"));
        file.saveCopy(path + QStringLiteral(".copy"));
        file.close();
        EXPECT_TRUE(QFileInfo::exists(path));
        EXPECT_NE(SeasonFile::open(path, Mode::read).season().clients.find(Id<model::Client>(50)), nullptr);
    }
}

TEST_F(SeasonFileTest, ALinkLeadsToTheFileAndItsLock) {
    const auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(1, 2));
    ASSERT_TRUE(QFile::link(at("spring.withy"), at("link.withy")));
    EXPECT_FAULT(SeasonFile::open(at("link.withy"), Mode::write), lockedBy);
    EXPECT_EQ(SeasonFile::open(at("link.withy"), Mode::read).path(), file.path());
}

TEST_F(SeasonFileTest, AJournalLeftByAnotherFileOfTheNameIsNotPlayedBack) {
    write("spring.withy-journal", "not ours");
    const auto season = lawfulSeason(1, 2);
    SeasonFile::create(at("spring.withy"), season).close();
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::write).season()), textOf(season));
    EXPECT_EQ(bytesOf(at("spring (left over).withy-journal")), QByteArray("not ours"));
}

} // namespace withy::test
