// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <QLockFile>
#include <QString>

#include <memory>
#include <vector>

class QTemporaryFile;

/// Files around the season: made private, made whole, never over another by accident.
namespace withy::store {

enum class Existing {
    refuse,  ///< a file already there is an error
    replace, ///< it is replaced, in one step
};

/// A new empty file beside `target`, readable by its owner only; gone again unless published. While it
/// lives it bears a lock of the system's, which dies with the program: see removeLeftParts.
class FileBeside {
public:
    FileBeside(const QString& target, Doing doing);
    ~FileBeside();
    FileBeside(const FileBeside&) = delete;
    FileBeside& operator=(const FileBeside&) = delete;

    [[nodiscard]] const QString& path() const { return path_; }

    /// Forces it to the disk and gives it the target's name.
    void publish(Existing existing);

private:
    QString target_;
    QString path_;
    Doing doing_;
    std::unique_ptr<QTemporaryFile> held_; ///< bears the lock
};

/// Takes away what a FileBeside in this folder left behind when its program was killed: only files so
/// named, of this user, that no living program holds. Best effort; says nothing.
void removeLeftParts(const QString& folder);

/// The right to write a season: `<file>.lock` beside it. A lock left by a program that died, even by
/// kill -9, does not count. Throws lockedBy or readOnly.
class WriteLock {
public:
    WriteLock(const QString& season, const Doing& doing);

private:
    std::unique_ptr<QLockFile> lock_;
};

/// Which file a path leads to, so that a file replaced behind our back is noticed.
struct FileIdentity {
    quint64 device = 0;
    quint64 number = 0;
    friend bool operator==(const FileIdentity&, const FileIdentity&) = default;
};

/// Throws notThere.
FileIdentity identityOf(const QString& path, const Doing& doing);

/// The absolute path without links; for a file that is not there yet, of its folder.
QString truePath(const QString& path);

/// A path like "spring (2).withy" that no file has, made from "spring.withy" and a remark.
QString freePath(const QString& path, const QString& remark);

/// Files SQLite keeps beside a database. Left beside another database of the same name they would be
/// taken for its own and spoil it.
std::vector<QString> sideFilesOf(const QString& path);

/// Gives `from` and the side files it has the name `to`, all or none. Throws.
void moveWithSideFiles(const QString& from, const QString& to, const Doing& doing);

/// Copies bytes, readable by the owner only. Precondition: `to` is empty or not there.
void copyBytes(const QString& from, const QString& to, const Doing& doing);

} // namespace withy::store
