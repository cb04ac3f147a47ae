// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"

#include <QString>

#include <cstdint>
#include <exception>
#include <string>

/// The season file and its backups: everything of ours that touches the disk.
namespace withy::store {

/// What the outside world refused. ui/logic words each with its mend.
enum class StoreFault {
    notThere,         ///< no such file, or it went away while open
    isDirectory,      ///< a folder
    empty,            ///< a file of no bytes
    notASeason,       ///< SQLite of another program, not SQLite at all, or no regular file
    damaged,          ///< a season once, but cut short, overwritten, or its tables were altered
    dataAtFault,      ///< sound as a file, but its records break the model's rules; see problems
    laterVersion,     ///< written by a later Withy; see version. The file was not touched
    readOnly,         ///< may be read but not written (file, folder or disk); offer reading
    lockedBy,         ///< open for writing elsewhere; see owner. Offer reading
    diskFull,         ///< no room; nothing of this edit was kept
    cannotRead,       ///< the system refuses to read it (rights, a failing disk)
    cannotWrite,      ///< the system refuses to write it for another reason
    changedByAnother, ///< changed or replaced on disk since it was opened; open it anew
    alreadyThere,     ///< would overwrite a file without being told to
};

/// What was being done.
enum class Attempt { create, openToWrite, openToRead, commit, saveCopy, upgrade, backUp, restore };

/// Who holds a season open for writing; nought and empty when not known.
struct LockOwner {
    std::int64_t process = 0;
    QString host;
    QString program;
};

/// The one exception of the store. Caught once per action of the user.
class StoreError : public std::exception {
public:
    StoreError(StoreFault f, Attempt a, QString p, std::string t);

    [[nodiscard]] const char* what() const noexcept override { return technical.c_str(); }

    StoreFault fault;
    Attempt attempted;
    QString path;
    std::string technical;    ///< for the log, never for the screen
    std::int64_t version = 0; ///< laterVersion: the file's
    LockOwner owner;          ///< lockedBy
    Problems problems;        ///< dataAtFault
};

/// Words for logs and tests: "notThere", "laterVersion".
const char* wordOf(StoreFault fault);

/// What is being done to which file; passed down so that every error can say so.
struct Doing {
    Attempt attempt;
    QString path;

    [[noreturn]] void fail(StoreFault fault, const std::string& technical) const;
    /// Reading the file failed, rather than writing it.
    [[nodiscard]] bool reads() const;
};

} // namespace withy::store
