// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"
#include "core/store/disk.h"
#include "core/store/schema_versions.h"
#include "core/store/store_error.h"

#include <QDateTime>
#include <QString>

#include <memory>
#include <optional>

class QThread;

namespace withy::store {

/// Where a backup goes and the time it is to bear (the store asks no clock).
struct BackupPlace {
    QString folder;
    QDateTime at;
};

struct OpenOptions {
    /// Where the copy goes that is made before a file of an earlier version is brought up to date;
    /// without one it goes beside the file, as "spring (version 1).withy".
    std::optional<BackupPlace> beforeUpgrade;
    /// The schema to go by; tests add versions of their own.
    const SchemaVersions& versions = SchemaVersions::shipped();
    /// The file may not grow beyond so many pages of 4096 bytes; 0: no limit. Tests fill the disk with it.
    int mostPages = 0;
};

/// One season in one SQLite file (extension .withy, STRICT tables, one column per field).
/// Every function throws StoreError and nothing else when the outside world says no; what it was to
/// change is then as before. Belongs to the thread that made it, unless moved. Needs a QCoreApplication, for
/// the QSQLITE plugin.
class SeasonFile {
public:
    enum class Mode {
        read,  ///< a snapshot: the file is let go of once it is read
        write, ///< the only writer, by `<file>.lock`; others may read
    };

    /// A new file holding `initial`, readable by its owner only, open for writing.
    static SeasonFile create(const QString& path, const model::Season& initial,
                             Existing existing = Existing::refuse, const OpenOptions& options = {});
    /// Checks the file in full, then reads it. A file of an earlier version is brought up to date:
    /// in place after a backup when writing, on a temporary copy when only reading.
    static SeasonFile open(const QString& path, Mode mode, const OpenOptions& options = {});

    SeasonFile(SeasonFile&&) noexcept;
    SeasonFile& operator=(SeasonFile&&) noexcept;
    ~SeasonFile();

    [[nodiscard]] const QString& path() const; ///< absolute, without links
    [[nodiscard]] Mode mode() const;
    /// As the file holds it: as read, then with every commit.
    [[nodiscard]] const model::Season& season() const;

    /// Stores an edit that apply() has accepted (Applied::done), in one transaction. On return it is
    /// on the disk. Throws readOnly when opened for reading, changedByAnother, diskFull ...
    void commit(const model::Edit& done);
    /// Writes season() to another file; this one stays the one in use.
    void saveCopy(const QString& path, Existing existing = Existing::refuse) const;
    /// From now on it belongs to that thread alone. To be called by the one it belonged to.
    void moveTo(QThread& thread);
    /// Lets go of the file and its lock; only path(), mode() and season() may be called afterwards.
    void close();

private:
    struct Held;
    explicit SeasonFile(std::unique_ptr<Held> held);
    std::unique_ptr<Held> held_;
};

} // namespace withy::store
