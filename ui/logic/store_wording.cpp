// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>
#include <QSysInfo>

#include <exception>

namespace withy::ui {

namespace {

class StoreWordingSay {
    Q_DECLARE_TR_FUNCTIONS(StoreError)

public:
    static QString unforeseen(const char* what) {
        return tr("Something went wrong while this was worked out (%1). The season is as you left it.")
            .arg(QString::fromUtf8(what));
    }

    static QString of(const store::StoreError& e) {
        const QString special = whileDoing(e);
        return special.isEmpty() ? ofFault(e) : special;
    }

private:
    /// What the fault means depends on what was being done; empty where it does not.
    static QString whileDoing(const store::StoreError& e) {
        using store::Attempt;
        using store::StoreFault;
        const bool noRoom = e.fault == StoreFault::diskFull;
        const bool noDisk = e.fault == StoreFault::cannotWrite || e.fault == StoreFault::readOnly;
        switch (e.attempted) {
        case Attempt::commit:
            if (e.fault == StoreFault::notThere)
                return tr("%1 is no longer there, so the last change was not kept. Put its disk back, or "
                          "save a copy elsewhere.")
                    .arg(e.path);
            if (e.fault == StoreFault::cannotWrite)
                return tr("%1 cannot be written any more, so the last change was not kept. Check the disk, "
                          "or save a copy elsewhere.")
                    .arg(e.path);
            // It is open here, for writing: somebody only looks into it just now.
            if (e.fault == StoreFault::lockedBy)
                return tr("Another program is reading %1, so the last change was not kept. Make it again.")
                    .arg(e.path);
            return {};
        case Attempt::create:
        case Attempt::saveCopy:
            return noRoom ? tr("The disk is full, so %1 was not written. Make room, or choose another disk.")
                                .arg(e.path)
                          : QString();
        case Attempt::backUp:
            if (noRoom)
                return tr("The disk is full, so no backup of %1 was made. The season itself is kept; make "
                          "room soon.")
                    .arg(e.path);
            if (e.fault == StoreFault::lockedBy)
                return tr("No backup of %1 was made: another program is using it. The season itself is kept.")
                    .arg(e.path);
            return noDisk ? tr("No backup of %1 was made: the backups folder cannot be written. The season "
                               "itself is kept.")
                                .arg(e.path)
                          : QString();
        case Attempt::restore:
            return noRoom ? tr("The disk is full, so the backup was not put back. Nothing was changed; make "
                               "room and do it again.")
                          : QString();
        default:
            return noRoom ? tr("The disk is full, so %1 could not be opened. Make room and open it again.")
                                .arg(e.path)
                          : QString();
        }
    }

    static QString whereOpen(const store::LockOwner& owner) {
        if (!owner.host.isEmpty() && owner.host != QSysInfo::machineHostName())
            return tr("on the computer %1").arg(owner.host);
        return owner.process > 0 ? tr("in another window (process %1)").arg(owner.process)
                                 : tr("in another window");
    }

    static QString ofFault(const store::StoreError& e) {
        using store::StoreFault;
        switch (e.fault) {
        case StoreFault::notThere:
            return tr("There is no file %1. Check the name and the folder.").arg(e.path);
        case StoreFault::isDirectory:
            return tr("%1 is a folder. Choose a season file in it.").arg(e.path);
        case StoreFault::empty:
            return tr("%1 is empty. Open a backup, or begin a new season.").arg(e.path);
        case StoreFault::notASeason:
            return tr("%1 is not a Withy season. Choose a file that ends in .withy.").arg(e.path);
        case StoreFault::damaged:
            return tr("%1 is damaged and was left as it is. Restore the newest sound backup.").arg(e.path);
        case StoreFault::dataAtFault:
            return tr("%1 holds records that cannot be right, and was left as it is.").arg(e.path) +
                   QLatin1Char('\n') + sentences(e.problems);
        case StoreFault::laterVersion:
            return tr("%1 was written by a later Withy (file version %2) and was left as it is. Bring Withy "
                      "up to date to open it.")
                .arg(e.path, QString::number(e.version));
        case StoreFault::readOnly:
            return tr("%1 may be read but not written. Open it for reading, or save a copy elsewhere.")
                .arg(e.path);
        case StoreFault::lockedBy:
            return tr("%1 is open %2. Close it there, or open it here for reading.")
                .arg(e.path, whereOpen(e.owner));
        case StoreFault::diskFull:
            return tr("The disk is full. The last change to %1 was not kept; make room and do it again.")
                .arg(e.path);
        case StoreFault::cannotRead:
            return tr("%1 cannot be read. Check its rights and the disk.").arg(e.path);
        case StoreFault::cannotWrite:
            return tr("%1 cannot be written. Check its rights and the disk.").arg(e.path);
        case StoreFault::changedByAnother:
            return tr("%1 was changed by another program. Open it again; the last change was not kept.")
                .arg(e.path);
        case StoreFault::alreadyThere:
            return tr("%1 is there already. Choose another name.").arg(e.path);
        }
        return e.path;
    }
};

} // namespace

QString caughtWords() {
    try {
        throw;
    } catch (const store::StoreError& e) {
        return sentence(e);
    } catch (const std::exception& e) {
        return StoreWordingSay::unforeseen(e.what());
    } catch (...) {
        return StoreWordingSay::unforeseen("?");
    }
}

QString sentence(const store::StoreError& error) {
    return StoreWordingSay::of(error);
}

} // namespace withy::ui
