// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/schema_versions.h"
#include "core/store/store_error.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

namespace withy::store {

struct Backup {
    QString path;
    QDateTime at; ///< universal time, from its name
    qint64 bytes = 0;
};

struct Restored {
    QString path;
    QString setAside; ///< where what was there is now; empty when nothing was there
};

/// Which of these backups may go, given the newest: kept are the newest of each of the 10 days and of
/// each of the 12 months that end with `newest`, and whatever claims to be later. Days and months are
/// those of universal time.
std::vector<QDateTime> toThinOut(const std::vector<QDateTime>& stamps, const QDateTime& newest);

/// Copies of season files in a folder of their own, beside the user's data; the caller says which.
/// A backup is named after the file it is of (its name, and a mark made of its path) and its time:
/// "spring-3fa9c1d2-20260314T171500250Z.withy". Throws StoreError. Any thread; needs no SeasonFile,
/// and a season open for writing may be backed up meanwhile.
class Backups {
public:
    explicit Backups(QString folder, const SchemaVersions& versions = SchemaVersions::shipped());

    /// Makes the folder if need be, copies, checks the copy and then thins the older ones.
    Backup make(const QString& season, const QDateTime& at) const;
    /// Newest first. The season need not be there any more.
    [[nodiscard]] std::vector<Backup> list(const QString& season) const;
    /// The newest one that opens without complaint.
    [[nodiscard]] std::optional<Backup> newestSound(const QString& season) const;
    /// Puts a copy of a sound backup at `path`. What was there is kept, renamed to
    /// "spring (set aside 2026-03-14 17.15.00).withy" by `at`, in its own zone; back in its place when the
    /// copy cannot be put there. Throws lockedBy while it is open.
    Restored restore(const Backup& backup, const QString& path, const QDateTime& at) const;

private:
    QString folder_;
    const SchemaVersions& versions_;
};

} // namespace withy::store
