// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/season_opening.h"

#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>
#include <QStandardPaths>

namespace withy::ui {

namespace {

using store::SeasonFile;
using store::StoreFault;
using Offer = OpenOutcome::Offer;

struct SeasonOpeningSay {
    Q_DECLARE_TR_FUNCTIONS(SeasonOpening)
};

Offer offerFor(StoreFault fault) {
    switch (fault) {
    case StoreFault::lockedBy:
    case StoreFault::readOnly:
    case StoreFault::cannotWrite:
    case StoreFault::diskFull:
        return Offer::read;
    case StoreFault::notThere:
    case StoreFault::empty:
    case StoreFault::notASeason:
    case StoreFault::damaged:
    case StoreFault::dataAtFault:
        return Offer::restoreBackup;
    default: // a later version is sound, and a folder is no season
        return Offer::none;
    }
}

/// Looks for a backup where one would help, and says what was found.
void offerBackup(const store::StoreError& e, const QString& path, const QString& folder, OpenOutcome& out) {
    out.backup = store::Backups(folder).newestSound(path);
    if (!out.backup) {
        out.offer = Offer::none;
        if (e.fault == StoreFault::damaged)
            out.sentence =
                SeasonOpeningSay::tr("%1 is damaged and was left as it is. No sound backup of it was found.")
                    .arg(path);
        return;
    }
    const QString when = whenMade(*out.backup);
    out.sentence += QLatin1Char(' ');
    out.sentence +=
        e.fault == StoreFault::damaged
            ? SeasonOpeningSay::tr("It is of %1.").arg(when)
            : SeasonOpeningSay::tr("There is a sound backup of it, of %1, that can be put back.").arg(when);
}

OpenOutcome refusal(const store::StoreError& e, const QString& path, const QString& folder,
                    SeasonFile::Mode mode) {
    OpenOutcome out;
    out.sentence = sentence(e);
    out.offer = offerFor(e.fault);
    if (out.offer == Offer::restoreBackup) offerBackup(e, path, folder, out);
    if (out.offer == Offer::read && mode == SeasonFile::Mode::read) out.offer = Offer::none;
    return out;
}

} // namespace

QString usualBackupsFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/backups");
}

OpenOutcome openSeason(const QString& path, const QString& backupsFolder, const QDateTime& now) {
    OpenOutcome out;
    try {
        store::OpenOptions options;
        options.beforeUpgrade = store::BackupPlace{backupsFolder, now};
        out.file = SeasonFile::open(path, SeasonFile::Mode::write, options);
        return out;
    } catch (const store::StoreError& e) {
        return refusal(e, path, backupsFolder, SeasonFile::Mode::write);
    }
}

OpenOutcome readSeason(const QString& path, const QString& backupsFolder) {
    OpenOutcome out;
    try {
        out.file = SeasonFile::open(path, SeasonFile::Mode::read);
        return out;
    } catch (const store::StoreError& e) {
        return refusal(e, path, backupsFolder, SeasonFile::Mode::read);
    }
}

OpenOutcome beginSeason(const QString& path, const model::Season& season, store::Existing existing) {
    OpenOutcome out;
    try {
        out.file = SeasonFile::create(path, season, existing);
    } catch (const store::StoreError& e) {
        out.sentence = sentence(e);
    }
    return out;
}

OpenOutcome restoreSeason(const QString& path, const store::Backup& backup, const QString& backupsFolder,
                          const QDateTime& now) {
    store::Restored restored;
    try {
        restored = store::Backups(backupsFolder).restore(backup, path, now);
    } catch (const store::StoreError& e) {
        OpenOutcome out;
        out.sentence = sentence(e);
        return out;
    }
    OpenOutcome out = openSeason(restored.path, backupsFolder, now);
    if (!out.file) return out;
    out.sentence = SeasonOpeningSay::tr("This is the backup of %1.").arg(whenMade(backup));
    if (!restored.setAside.isEmpty())
        out.sentence += QLatin1Char(' ') +
                        SeasonOpeningSay::tr("What was there before is kept as %1.").arg(restored.setAside);
    return out;
}

QString whenMade(const store::Backup& backup) {
    const QDateTime at = backup.at.toLocalTime();
    const QDate d = at.date();
    const auto day = Day::fromYmd(d.year(), d.month(), d.day());
    return (day ? longDay(*day) : d.toString(Qt::ISODate)) + at.toString(QStringLiteral(", HH:mm"));
}

} // namespace withy::ui
