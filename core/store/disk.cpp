// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/disk.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSysInfo>
#include <QTemporaryFile>
#include <QThread>

#include <cerrno>
#include <csignal>
#include <filesystem>
#include <utility>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace withy::store {

namespace {

const auto partName = QStringLiteral(".withy-part");

const auto sideSuffixes = {QLatin1String("-journal"), QLatin1String("-wal"), QLatin1String("-shm")};

StoreFault faultOf(QFileDevice::FileError error) {
    switch (error) {
    case QFileDevice::PermissionsError:
        return StoreFault::readOnly;
    case QFileDevice::ResourceError:
        return StoreFault::diskFull;
    default:
        return StoreFault::cannotWrite;
    }
}

/// The path still leads to the file that is open.
bool isStill(int fd, const QString& path) {
    struct stat open {
    }, named{};

    return ::fstat(fd, &open) == 0 && ::stat(QFile::encodeName(path).constData(), &named) == 0 &&
           open.st_dev == named.st_dev && open.st_ino == named.st_ino;
}

bool isOurs(int fd) {
    struct stat status {};

    return ::fstat(fd, &status) == 0 && S_ISREG(status.st_mode) && status.st_uid == ::geteuid();
}

/// Forces a file or folder to the disk.
void sync(const QString& path, const Doing& doing) {
    const int fd = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    const bool done = fd >= 0 && ::fsync(fd) == 0;
    if (fd >= 0) ::close(fd);
    if (!done) doing.fail(StoreFault::cannotWrite, "fsync " + path.toStdString());
}

void replaceFile(const QString& from, const QString& to, const Doing& doing) {
    std::error_code error;
    std::filesystem::rename(QFile::encodeName(from).toStdString(), QFile::encodeName(to).toStdString(),
                            error);
    if (error) doing.fail(StoreFault::cannotWrite, "rename: " + error.message());
}

void renameFile(const QString& from, const QString& to, const Doing& doing) {
    QFile file(from);
    if (file.rename(to)) return;
    const bool taken = QFileInfo::exists(to);
    doing.fail(taken ? StoreFault::alreadyThere : faultOf(file.error()), file.errorString().toStdString());
}

/// Takes away a lock file in which no owner is written and which no living program has locked: its maker
/// was killed before it wrote its name.
void takeAwayNameless(const QString& path) {
    const int fd = ::open(QFile::encodeName(path).constData(), O_WRONLY | O_CLOEXEC | O_NOFOLLOW);
    if (fd < 0) return;
    if (::flock(fd, LOCK_EX | LOCK_NB) == 0 && isStill(fd, path)) QFile::remove(path);
    ::close(fd);
}

enum class Owner { living, gone, nameless };

/// Who holds it. A program on another machine counts as living: we cannot ask.
Owner ownerOf(const QLockFile& lock) {
    qint64 process = 0;
    QString host;
    if (!lock.getLockInfo(&process, &host, nullptr)) return Owner::nameless;
    const bool isGone = ::kill(static_cast<pid_t>(process), 0) != 0 && errno == ESRCH;
    return isGone && host == QSysInfo::machineHostName() ? Owner::gone : Owner::living;
}

/// As tryLock(0), with a moment's patience for a program that is just writing its name. QLockFile takes
/// a lock of a program that is gone by holding a second one meanwhile; either may be left nameless.
bool lockNow(QLockFile& lock) {
    const auto isLeft = [&lock] {
        return lock.error() == QLockFile::LockFailedError && ownerOf(lock) != Owner::living;
    };
    for (int wait = 0; wait < 10; ++wait) {
        if (lock.tryLock(0)) return true;
        if (!isLeft()) return false;
        QThread::msleep(10);
    }
    for (const QString& path : {lock.fileName() + QStringLiteral(".rmlock"), lock.fileName()})
        if (ownerOf(QLockFile(path)) == Owner::nameless) takeAwayNameless(path);
    return lock.tryLock(0);
}

} // namespace

FileBeside::FileBeside(const QString& target, Doing doing) : target_(target), doing_(std::move(doing)) {
    const QFileInfo info(target_);
    if (!info.dir().exists()) doing_.fail(StoreFault::notThere, "no such folder");
    do { // once more when another program took it for a left one before it was locked
        // Short, so that a name as long as the system allows still has a neighbour; Qt adds six letters.
        held_ = std::make_unique<QTemporaryFile>(info.dir().filePath(partName));
        held_->setAutoRemove(false);
        if (!held_->open()) doing_.fail(faultOf(held_->error()), held_->errorString().toStdString());
        path_ = held_->fileName();
    } while (::flock(held_->handle(), LOCK_EX) == 0 && !isStill(held_->handle(), path_));
}

FileBeside::~FileBeside() {
    if (path_.isEmpty()) return;
    QFile::remove(path_);
    for (const auto& side : sideFilesOf(path_))
        QFile::remove(side);
}

void removeLeftParts(const QString& folder) {
    const auto names = QDir(folder).entryList({partName + QStringLiteral(".??????")},
                                              QDir::Files | QDir::Hidden | QDir::NoSymLinks);
    for (const auto& name : names) {
        const QString path = QDir(folder).filePath(name);
        const int fd = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW);
        if (fd < 0) continue;
        if (isOurs(fd) && ::flock(fd, LOCK_EX | LOCK_NB) == 0 && isStill(fd, path)) {
            QFile::remove(path);
            for (const auto& side : sideFilesOf(path))
                QFile::remove(side);
        }
        ::close(fd);
    }
}

void FileBeside::publish(Existing existing) {
    sync(path_, doing_);
    if (QFileInfo(target_).isDir()) doing_.fail(StoreFault::isDirectory, "a folder has this name");
    if (existing == Existing::refuse && QFileInfo::exists(target_))
        doing_.fail(StoreFault::alreadyThere, "a file has this name");
    for (const auto& side : sideFilesOf(target_))
        renameFile(side, freePath(side, QStringLiteral("left over")), doing_);
    if (existing == Existing::replace)
        replaceFile(path_, target_, doing_);
    else
        renameFile(path_, target_, doing_);
    path_.clear();
    sync(QFileInfo(target_).path(), doing_);
}

WriteLock::WriteLock(const QString& season, const Doing& doing)
    : lock_(std::make_unique<QLockFile>(season + QStringLiteral(".lock"))) {
    lock_->setStaleLockTime(0); // never by age: a season may be open all day
    if (lockNow(*lock_)) return;
    switch (lock_->error()) {
    case QLockFile::LockFailedError: {
        StoreError error(StoreFault::lockedBy, doing.attempt, doing.path, "lockedBy: lock file held");
        qint64 process = 0;
        lock_->getLockInfo(&process, &error.owner.host, &error.owner.program);
        error.owner.process = process;
        throw error;
    }
    case QLockFile::PermissionError:
        doing.fail(StoreFault::readOnly, "no right to make the lock file");
    default:
        doing.fail(StoreFault::cannotWrite, "the lock file could not be made");
    }
}

FileIdentity identityOf(const QString& path, const Doing& doing) {
    struct stat status {};

    if (::stat(QFile::encodeName(path).constData(), &status) != 0)
        doing.fail(StoreFault::notThere, "stat failed");
    return {static_cast<quint64>(status.st_dev), static_cast<quint64>(status.st_ino)};
}

QString truePath(const QString& path) {
    const QFileInfo info(path);
    if (const QString canonical = info.canonicalFilePath(); !canonical.isEmpty()) return canonical;
    const QString folder = QFileInfo(info.absolutePath()).canonicalFilePath();
    return (folder.isEmpty() ? info.absolutePath() : folder) + QLatin1Char('/') + info.fileName();
}

QString freePath(const QString& path, const QString& remark) {
    const QFileInfo info(path);
    const QString stem = info.dir().filePath(info.completeBaseName()) + QStringLiteral(" (") + remark;
    const QString suffix = info.suffix().isEmpty() ? QString() : QLatin1Char('.') + info.suffix();
    QString free = stem + QLatin1Char(')') + suffix;
    for (int n = 2; QFileInfo::exists(free); ++n)
        free = stem + QStringLiteral(" %1)").arg(n) + suffix;
    return free;
}

std::vector<QString> sideFilesOf(const QString& path) {
    std::vector<QString> all;
    for (const auto suffix : sideSuffixes) {
        if (QFileInfo::exists(path + suffix)) all.push_back(path + suffix);
    }
    return all;
}

void moveWithSideFiles(const QString& from, const QString& to, const Doing& doing) {
    const auto sides = sideFilesOf(from);
    renameFile(from, to, doing);
    std::vector<std::pair<QString, QString>> moved{{from, to}};
    try {
        for (const auto& side : sides) {
            const QString there = to + side.mid(from.size());
            renameFile(side, there, doing);
            moved.emplace_back(side, there);
        }
    } catch (const StoreError&) {
        for (const auto& [was, is] : moved)
            QFile::rename(is, was); // a database and its journal stay together
        throw;
    }
}

void copyBytes(const QString& from, const QString& to, const Doing& doing) {
    QFile source(from);
    QFile target(to);
    if (!source.open(QIODevice::ReadOnly))
        doing.fail(StoreFault::cannotRead, source.errorString().toStdString());
    if (!target.open(QIODevice::WriteOnly))
        doing.fail(faultOf(target.error()), target.errorString().toStdString());
    target.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    const QByteArray bytes = source.readAll();
    if (bytes.size() != source.size()) doing.fail(StoreFault::cannotRead, source.errorString().toStdString());
    if (target.write(bytes) != bytes.size() || !target.flush())
        doing.fail(faultOf(target.error()), target.errorString().toStdString());
}

} // namespace withy::store
