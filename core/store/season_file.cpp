// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/season_file.h"

#include "core/store/backups.h"
#include "core/store/connection.h"
#include "core/store/file_check.h"
#include "core/store/read_season.h"
#include "core/store/record_io.h"
#include "core/store/upgrade.h"

#include <QFile>
#include <QFileInfo>

#include <cassert>
#include <utility>

namespace withy::store {

namespace {

void mustBeWritable(const QString& path, const Doing& doing) {
    QFile file(path);
    if (file.open(QIODevice::ReadWrite | QIODevice::ExistingOnly)) return;
    const bool forbidden =
        file.error() == QFileDevice::PermissionsError || file.error() == QFileDevice::OpenError;
    doing.fail(forbidden ? StoreFault::readOnly : StoreFault::cannotWrite, file.errorString().toStdString());
}

/// Lets SQLite take back what a writer that died had half done.
void recover(const QString& path, const Doing& doing) {
    Connection connection(path, Connection::Access::write, doing);
    connection.value(QStringLiteral("SELECT count(*) FROM sqlite_schema"));
}

void copyBefore(const QString& path, int version, const OpenOptions& options, const Doing& doing) {
    if (options.beforeUpgrade) {
        Backups(options.beforeUpgrade->folder, options.versions).make(path, options.beforeUpgrade->at);
        return;
    }
    const QString copy = freePath(path, QStringLiteral("version %1").arg(version));
    copyVerified(path, copy, options.versions, doing);
}

/// Brings a file of an earlier version up to date, after a copy.
void upgradeFile(const QString& path, const OpenOptions& options, const Doing& opening) {
    const int version = checkFile(path, options.versions, opening);
    if (version == options.versions.latest()) return;
    const Doing doing{Attempt::upgrade, path};
    copyBefore(path, version, options, doing);
    Connection connection(path, Connection::Access::write, doing);
    upgrade(connection, options.versions, version);
}

/// A new file with everything in it, whole and checked before it gets its name.
void writeFresh(const QString& target, const model::Season& season, Existing existing,
                const OpenOptions& options, const Doing& doing) {
    FileBeside fresh(target, doing);
    {
        Connection connection(fresh.path(), Connection::Access::write, doing);
        if (options.mostPages > 0)
            connection.exec(QStringLiteral("PRAGMA max_page_count=%1").arg(options.mostPages));
        Transaction whole(connection, Transaction::Kind::write);
        options.versions.run(connection, 0);
        RecordWriter(connection).putAll(season);
        whole.commit();
    }
    checkFile(fresh.path(), options.versions, doing);
    fresh.publish(existing);
}

void mustBeNew(const QString& path, Existing existing, const Doing& doing) {
    const QFileInfo info(path);
    if (info.isDir()) doing.fail(StoreFault::isDirectory, "a folder has this name");
    if (info.exists() && existing == Existing::refuse)
        doing.fail(StoreFault::alreadyThere, "a file has this name");
}

} // namespace

struct SeasonFile::Held {
    QString path;
    Mode mode = Mode::read;
    model::Season season;
    FileIdentity identity;
    std::unique_ptr<WriteLock> lock; // let go of last, hence before the connection
    std::unique_ptr<Connection> connection;
    std::unique_ptr<RecordWriter> writer;
    qlonglong dataVersion = 0;

    void connect(const OpenOptions& options, const Doing& doing);

    [[nodiscard]] qlonglong versionOfData() const {
        return connection->value(QStringLiteral("PRAGMA data_version")).toLongLong();
    }
};

void SeasonFile::Held::connect(const OpenOptions& options, const Doing& doing) {
    identity = identityOf(path, doing);
    connection = std::make_unique<Connection>(path, Connection::Access::write, doing);
    {
        const Transaction snapshot(*connection, Transaction::Kind::read); // what is checked is what is read
        if (checkStructure(*connection, options.versions) < options.versions.latest())
            doing.fail(StoreFault::changedByAnother, "an earlier version has taken its place");
        season = readLawful(*connection);
        dataVersion = versionOfData();
    }
    if (connection->value(QStringLiteral("PRAGMA journal_mode")).toString() != QLatin1String("delete"))
        connection->value(QStringLiteral("PRAGMA journal_mode=DELETE"));
    if (options.mostPages > 0)
        connection->exec(QStringLiteral("PRAGMA max_page_count=%1").arg(options.mostPages));
    writer = std::make_unique<RecordWriter>(*connection);
}

SeasonFile::SeasonFile(std::unique_ptr<Held> held) : held_(std::move(held)) {}

SeasonFile::SeasonFile(SeasonFile&&) noexcept = default;
SeasonFile& SeasonFile::operator=(SeasonFile&&) noexcept = default;
SeasonFile::~SeasonFile() = default;

SeasonFile SeasonFile::create(const QString& path, const model::Season& initial, Existing existing,
                              const OpenOptions& options) {
    auto held = std::make_unique<Held>();
    held->path = truePath(path);
    held->mode = Mode::write;
    const Doing doing{Attempt::create, held->path};
    mustBeNew(held->path, existing, doing);
    if (!QFileInfo(QFileInfo(held->path).path()).isDir()) doing.fail(StoreFault::notThere, "no such folder");
    mustBeLawful(initial, doing);
    held->lock = std::make_unique<WriteLock>(held->path, doing);
    removeLeftParts(QFileInfo(held->path).path());
    writeFresh(held->path, initial, existing, options, doing);
    held->connect(options, doing);
    return SeasonFile(std::move(held));
}

SeasonFile SeasonFile::open(const QString& path, Mode mode, const OpenOptions& options) {
    auto held = std::make_unique<Held>();
    held->path = truePath(path);
    held->mode = mode;
    const Doing doing{mode == Mode::write ? Attempt::openToWrite : Attempt::openToRead, held->path};
    const FileHeader header = inspectHeader(held->path, options.versions.latest(), doing);
    if (mode == Mode::read) {
        held->season = readSnapshot(held->path, options.versions, doing);
        return SeasonFile(std::move(held));
    }
    held->lock = std::make_unique<WriteLock>(held->path, doing);
    removeLeftParts(QFileInfo(held->path).path());
    mustBeWritable(held->path, doing);
    if (header.interrupted) recover(held->path, doing);
    if (header.interrupted || header.version < options.versions.latest())
        upgradeFile(held->path, options, doing);
    held->connect(options, doing);
    return SeasonFile(std::move(held));
}

const QString& SeasonFile::path() const {
    return held_->path;
}

SeasonFile::Mode SeasonFile::mode() const {
    return held_->mode;
}

const model::Season& SeasonFile::season() const {
    return held_->season;
}

void SeasonFile::commit(const model::Edit& done) {
    const Doing doing{Attempt::commit, held_->path};
    if (held_->mode == Mode::read) doing.fail(StoreFault::readOnly, "opened for reading");
    assert(held_->connection); // not after close()
    if (done.empty()) return;
    if (identityOf(held_->path, doing) != held_->identity)
        doing.fail(StoreFault::changedByAnother, "another file has taken its place");
    held_->connection->now(Attempt::commit);
    Transaction whole(*held_->connection, Transaction::Kind::write);
    if (held_->versionOfData() != held_->dataVersion)
        doing.fail(StoreFault::changedByAnother, "data_version differs");
    for (const auto& ref : done.erases())
        held_->writer->erase(ref);
    for (const auto& record : done.puts())
        held_->writer->put(record);
    whole.commit();
    for (const auto& ref : done.erases())
        model::eraseRecord(held_->season, ref.table, ref.id);
    for (const auto& record : done.puts())
        model::putRecord(held_->season, record);
}

void SeasonFile::saveCopy(const QString& path, Existing existing) const {
    const QString target = truePath(path);
    const Doing doing{Attempt::saveCopy, target};
    mustBeNew(target, target == held_->path ? Existing::refuse : existing, doing);
    if (!QFileInfo(QFileInfo(target).path()).isDir()) doing.fail(StoreFault::notThere, "no such folder");
    const WriteLock lock(target, doing);
    writeFresh(target, held_->season, existing, {}, doing);
}

void SeasonFile::moveTo(QThread& thread) {
    if (held_->connection) held_->connection->moveTo(thread);
}

void SeasonFile::close() {
    held_->writer.reset();
    held_->connection.reset();
    held_->lock.reset();
}

} // namespace withy::store
