// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/backups.h"
#include "core/store/season_file.h"

#include <QString>

#include <optional>

/// Opening, beginning and restoring a season: what came of it, and what to offer when it did not go.
namespace withy::ui {

struct OpenOutcome {
    enum class Offer {
        none,
        read,          ///< it cannot be written, but readSeason() may do
        restoreBackup, ///< restoreSeason() with `backup`
    };

    std::optional<store::SeasonFile> file;
    QString sentence; ///< why not, or with a file what is worth knowing; often empty
    Offer offer = Offer::none;
    std::optional<store::Backup> backup; ///< the newest sound one, with Offer::restoreBackup
};

/// Beside the user's data, for every season of theirs.
QString usualBackupsFolder();

/// For writing. The copy made before a file of an earlier version is brought up to date goes to the
/// backups too, and bears the time `now`.
OpenOutcome openSeason(const QString& path, const QString& backupsFolder, const QDateTime& now);
/// A snapshot for reading only; never hindered by whoever has it open for writing.
OpenOutcome readSeason(const QString& path, const QString& backupsFolder);
/// A new file, open for writing; never over one that is there.
OpenOutcome beginSeason(const QString& path, const model::Season& season,
                        store::Existing existing = store::Existing::refuse);
/// Puts the backup in the season's place and opens it for writing; what was there is set aside, and the
/// sentence says under which name. The season must not be open any more, here or elsewhere.
OpenOutcome restoreSeason(const QString& path, const store::Backup& backup, const QString& backupsFolder,
                          const QDateTime& now);

/// "Saturday 14 March 2026, 17:15", in the time of this computer.
QString whenMade(const store::Backup& backup);

} // namespace withy::ui
