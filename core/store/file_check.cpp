// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/file_check.h"

#include "core/store/disk.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

namespace withy::store {

namespace {

const QByteArray magic("SQLite format 3\0", 16);
constexpr qsizetype headerSize = 100;

quint32 numberAt(const QByteArray& header, qsizetype at) {
    return qFromBigEndian<quint32>(header.constData() + at);
}

void checkKindOfFile(const QFileInfo& info, const Doing& doing) {
    if (!info.exists()) doing.fail(StoreFault::notThere, "no such file");
    if (info.isDir()) doing.fail(StoreFault::isDirectory, "a folder");
    if (!info.isFile()) doing.fail(StoreFault::notASeason, "no regular file");
    if (info.size() == 0) doing.fail(StoreFault::empty, "no bytes");
}

QByteArray readHeader(const QString& path, const Doing& doing) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) doing.fail(StoreFault::cannotRead, file.errorString().toStdString());
    const QByteArray header = file.read(headerSize);
    if (header.isEmpty()) doing.fail(StoreFault::cannotRead, file.errorString().toStdString());
    if (!header.startsWith(magic) && !magic.startsWith(header))
        doing.fail(StoreFault::notASeason, "not SQLite");
    if (header.size() < headerSize) doing.fail(StoreFault::damaged, "cut short within the header");
    return header;
}

/// The size in pages is only to be believed when the last writer kept it up (offsets 24 and 92).
void checkLength(const QByteArray& header, qint64 size, const Doing& doing) {
    const quint32 stored = qFromBigEndian<quint16>(header.constData() + 16);
    const qint64 pageSize = stored == 1 ? 65536 : stored;
    const qint64 pages = numberAt(header, 28);
    if (numberAt(header, 24) == numberAt(header, 92) && pages * pageSize > size)
        doing.fail(StoreFault::damaged,
                   "cut short: " + std::to_string(size) + " bytes of " + std::to_string(pages * pageSize));
}

void checkVersion(int version, int latest, const Doing& doing) {
    if (version < 1) doing.fail(StoreFault::damaged, "version " + std::to_string(version));
    if (version <= latest) return;
    StoreError error(StoreFault::laterVersion, doing.attempt, doing.path,
                     "laterVersion: " + std::to_string(version) + ", known to " + std::to_string(latest));
    error.version = version;
    throw error;
}

void checkTables(Connection& connection, const SchemaVersions& versions, int version) {
    const auto found = schemaOf(connection);
    if (versions.asWritten(found)) return;
    const auto expected = versions.expected(version);
    if (found == expected) return;
    std::string text = "tables differ:";
    for (const auto& object : found) {
        if (std::find(expected.begin(), expected.end(), object) == expected.end())
            text += " has " + object.name.toStdString();
    }
    for (const auto& object : expected) {
        if (std::find(found.begin(), found.end(), object) == found.end())
            text += " lacks " + object.name.toStdString();
    }
    connection.doing().fail(StoreFault::damaged, text);
}

void checkPages(Connection& connection) {
    const auto complaints = connection.rows(QStringLiteral("PRAGMA quick_check(20)"));
    if (complaints.size() == 1 && complaints[0][0].toString() == QLatin1String("ok")) return;
    std::string text = "quick_check:";
    for (const auto& row : complaints)
        text += " " + row[0].toString().toStdString() + ";";
    connection.doing().fail(StoreFault::damaged, text);
}

void checkReferences(Connection& connection) {
    const auto dangling = connection.rows(QStringLiteral("PRAGMA foreign_key_check"));
    if (dangling.empty()) return;
    std::string text = "references that lead nowhere:";
    for (std::size_t i = 0; i < dangling.size() && i < 20; ++i)
        text += " " + dangling[i][0].toString().toStdString() + " " + dangling[i][1].toString().toStdString();
    connection.doing().fail(StoreFault::damaged, text);
}

} // namespace

FileHeader inspectHeader(const QString& path, int latestVersion, const Doing& doing) {
    const QFileInfo info(path);
    checkKindOfFile(info, doing);
    const QByteArray header = readHeader(path, doing);
    if (numberAt(header, 68) != static_cast<quint32>(applicationId))
        doing.fail(StoreFault::notASeason, "application id " + std::to_string(numberAt(header, 68)));
    FileHeader result;
    result.version = static_cast<int>(numberAt(header, 60));
    result.interrupted = QFileInfo(path + QStringLiteral("-journal")).size() > 0;
    checkVersion(result.version, latestVersion, doing);
    if (!result.interrupted) checkLength(header, info.size(), doing);
    return result;
}

int checkStructure(Connection& connection, const SchemaVersions& versions) {
    const int version = connection.value(QStringLiteral("PRAGMA user_version")).toInt();
    checkVersion(version, versions.latest(), connection.doing());
    checkTables(connection, versions, version); // first: the rest may run what a schema holds
    checkPages(connection);
    checkReferences(connection);
    return version;
}

int checkFile(const QString& path, const SchemaVersions& versions, const Doing& doing) {
    Connection connection(path, Connection::Access::read, doing);
    const Transaction whole(connection, Transaction::Kind::read);
    return checkStructure(connection, versions);
}

void copyVerified(const QString& from, const QString& to, const SchemaVersions& versions,
                  const Doing& doing) {
    FileBeside copy(to, doing);
    {
        Connection connection(from, Connection::Access::read, doing);
        QString target = copy.path();
        target.replace(QLatin1Char('\''), QLatin1String("''"));
        connection.exec(QStringLiteral("VACUUM INTO '%1'").arg(target));
    }
    inspectHeader(copy.path(), versions.latest(), doing);
    checkFile(copy.path(), versions, doing);
    copy.publish(Existing::refuse);
}

} // namespace withy::store
