// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backups.h"

#include "core/store/disk.h"
#include "core/store/file_check.h"
#include "core/store/season_file.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <set>
#include <utility>

namespace withy::store {

namespace {

const auto stampFormat = QStringLiteral("yyyyMMdd'T'HHmmsszzz'Z'");

/// "spring-3fa9c1d2-", the same for the same path on every run.
QString prefixOf(const QString& season) {
    const QString path = truePath(season);
    const auto mark = QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha256).toHex().left(8);
    // Cut, so that name, mark and stamp stay within the 255 bytes file systems allow.
    QString name = QFileInfo(path).completeBaseName().left(40);
    if (name.endsWith(QChar(0xfffd)) || (!name.isEmpty() && name.back().isHighSurrogate())) name.chop(1);
    return name + QLatin1Char('-') + QString::fromLatin1(mark) + QLatin1Char('-');
}

std::optional<Backup> read(const QFileInfo& file, const QString& prefix) {
    if (!file.fileName().startsWith(prefix) || file.suffix() != QLatin1String("withy")) return std::nullopt;
    QDateTime at = QDateTime::fromString(file.completeBaseName().mid(prefix.size()), stampFormat);
    if (!at.isValid()) return std::nullopt;
    at.setTimeSpec(Qt::UTC);
    return Backup{file.filePath(), at, file.size()};
}

void makeFolder(const QString& folder, const Doing& doing) {
    if (QDir(folder).exists()) return;
    if (!QDir().mkpath(folder)) doing.fail(StoreFault::cannotWrite, "mkpath " + folder.toStdString());
    QFile::setPermissions(folder, QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner);
}

int monthOf(const QDateTime& at) {
    return at.date().year() * 12 + at.date().month();
}

} // namespace

std::vector<QDateTime> toThinOut(const std::vector<QDateTime>& stamps, const QDateTime& newest) {
    std::vector<QDateTime> newestFirst = stamps;
    std::sort(newestFirst.begin(), newestFirst.end(), std::greater<>());
    const QDateTime last = newest.toUTC();
    std::set<QDate> days;
    std::set<int> months;
    std::vector<QDateTime> gone;
    for (const auto& stamp : newestFirst) {
        const QDateTime at = stamp.toUTC();
        if (at > last) continue;
        const bool ofDay = at.date().daysTo(last.date()) < 10 && days.insert(at.date()).second;
        const bool ofMonth = monthOf(last) - monthOf(at) < 12 && months.insert(monthOf(at)).second;
        if (!ofDay && !ofMonth) gone.push_back(stamp);
    }
    return gone;
}

Backups::Backups(QString folder, const SchemaVersions& versions)
    : folder_(std::move(folder)), versions_(versions) {}

Backup Backups::make(const QString& season, const QDateTime& at) const {
    const Doing doing{Attempt::backUp, truePath(season)};
    inspectHeader(doing.path, versions_.latest(), doing);
    makeFolder(folder_, doing);
    removeLeftParts(folder_);
    Backup made;
    made.at = at.toUTC();
    const auto pathAt = [&] {
        return QDir(folder_).filePath(prefixOf(season) + made.at.toString(stampFormat) +
                                      QStringLiteral(".withy"));
    };
    while (QFileInfo::exists(pathAt()))
        made.at = made.at.addMSecs(1);
    made.path = pathAt();
    copyVerified(doing.path, made.path, versions_, doing);
    made.bytes = QFileInfo(made.path).size();

    const auto all = list(season);
    std::vector<QDateTime> stamps;
    for (const auto& backup : all)
        stamps.push_back(backup.at);
    const auto gone = toThinOut(stamps, made.at);
    for (const auto& backup : all) {
        if (std::find(gone.begin(), gone.end(), backup.at) != gone.end()) QFile::remove(backup.path);
    }
    return made;
}

std::vector<Backup> Backups::list(const QString& season) const {
    const QString prefix = prefixOf(season);
    std::vector<Backup> all;
    for (const auto& file : QDir(folder_).entryInfoList(QDir::Files)) {
        if (auto backup = read(file, prefix)) all.push_back(*std::move(backup));
    }
    std::sort(all.begin(), all.end(), [](const Backup& a, const Backup& b) { return a.at > b.at; });
    return all;
}

std::optional<Backup> Backups::newestSound(const QString& season) const {
    OpenOptions options{.beforeUpgrade = std::nullopt, .versions = versions_};
    for (const auto& backup : list(season)) {
        try {
            SeasonFile::open(backup.path, SeasonFile::Mode::read, options);
            return backup;
        } catch (const StoreError&) {
            continue; // the next older one may be sound
        }
    }
    return std::nullopt;
}

namespace {

/// What was set aside comes back where nothing took its place; the first trouble is what is told.
void putBack(const Restored& result, const Doing& doing) {
    if (result.setAside.isEmpty() || QFileInfo::exists(result.path)) return;
    try {
        moveWithSideFiles(result.setAside, result.path, doing);
    } catch (const StoreError&) {
        return; // it lies whole under the name it was set aside by
    }
}

} // namespace

Restored Backups::restore(const Backup& backup, const QString& path, const QDateTime& at) const {
    Restored result{truePath(path), {}};
    const Doing doing{Attempt::restore, result.path};
    OpenOptions options{.beforeUpgrade = std::nullopt, .versions = versions_};
    SeasonFile::open(backup.path, SeasonFile::Mode::read, options);
    if (QFileInfo(result.path).isDir()) doing.fail(StoreFault::isDirectory, "a folder has this name");
    const WriteLock lock(result.path, doing);
    FileBeside copy(result.path, doing);
    copyBytes(backup.path, copy.path(), doing);
    if (QFileInfo::exists(result.path)) {
        const QString when = at.toString(QStringLiteral("yyyy-MM-dd HH.mm.ss"));
        result.setAside = freePath(result.path, QStringLiteral("set aside ") + when);
        moveWithSideFiles(result.path, result.setAside, doing);
    }
    try {
        copy.publish(Existing::refuse);
    } catch (const StoreError&) {
        putBack(result, doing);
        throw;
    }
    return result;
}

} // namespace withy::store
