// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/read_season.h"

#include "core/model/edit.h"
#include "core/store/disk.h"
#include "core/store/file_check.h"
#include "core/store/record_io.h"
#include "core/store/upgrade.h"

#include <QFileInfo>
#include <QTemporaryDir>
#include <QThread>

#include <optional>

namespace withy::store {

namespace {

void failIfAny(Problems problems, const Doing& doing) {
    if (problems.empty()) return;
    StoreError error(StoreFault::dataAtFault, doing.attempt, doing.path,
                     "dataAtFault: " + std::to_string(problems.size()) + " problems");
    error.problems = std::move(problems);
    throw error;
}

/// Nothing when it is of an earlier version.
std::optional<model::Season> readInPlace(const QString& path, const SchemaVersions& versions,
                                         const Doing& doing) {
    Connection connection(path, Connection::Access::read, doing);
    const Transaction snapshot(connection, Transaction::Kind::read);
    if (checkStructure(connection, versions) < versions.latest()) return std::nullopt;
    return readLawful(connection);
}

/// To a reader SQLite says "read-only" when it would have to play a dead writer's journal back. The
/// moment at which a living writer takes its journal away can look the same; asked again it sees
/// better, while a copy taken amid writing would be torn.
std::optional<model::Season> readWhenQuiet(const QString& path, const SchemaVersions& versions,
                                           const Doing& doing) {
    for (int again = 0; again < 10; ++again) {
        try {
            return readInPlace(path, versions, doing);
        } catch (const StoreError& error) {
            if (error.fault != StoreFault::readOnly) throw;
            QThread::msleep(10);
        }
    }
    return std::nullopt;
}

model::Season readFromCopy(const QString& path, const SchemaVersions& versions, const Doing& doing) {
    const QTemporaryDir folder;
    if (!folder.isValid()) doing.fail(StoreFault::cannotRead, folder.errorString().toStdString());
    const QString copy = folder.filePath(QStringLiteral("season"));
    copyBytes(path, copy, doing);
    const QString journal = QStringLiteral("-journal");
    if (QFileInfo::exists(path + journal)) copyBytes(path + journal, copy + journal, doing);
    Connection connection(copy, Connection::Access::write, doing);
    const int version = checkStructure(connection, versions);
    if (version < versions.latest()) upgrade(connection, versions, version);
    return readLawful(connection);
}

} // namespace

void mustBeLawful(const model::Season& season, const Doing& doing) {
    failIfAny(model::check(season), doing);
}

model::Season readLawful(Connection& connection) {
    Problems unreadable;
    model::Season season = readSeason(connection, unreadable);
    failIfAny(std::move(unreadable), connection.doing());
    mustBeLawful(season, connection.doing());
    return season;
}

model::Season readSnapshot(const QString& path, const SchemaVersions& versions, const Doing& doing) {
    auto season = readWhenQuiet(path, versions, doing);
    return season ? *std::move(season) : readFromCopy(path, versions, doing);
}

} // namespace withy::store
