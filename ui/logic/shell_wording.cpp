// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shell_wording.h"

#include "ui/logic/edits.h"
#include "ui/logic/format.h"

#include <QCoreApplication>
#include <QDir>

namespace withy::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Shell)
};

} // namespace

QString keptInWords(const QString& path) {
    return Words::tr("It is kept in %1, and so is every change, at once.").arg(QDir::toNativeSeparators(path));
}

QString copyKeptInWords(const QString& path) {
    return Words::tr("A copy is kept in %1.").arg(QDir::toNativeSeparators(path));
}

QString undoneWords(const model::EditName& name) {
    return Words::tr("Put back: %1.").arg(edits::inWords(name));
}

QString redoneWords(const model::EditName& name) {
    return Words::tr("Done again: %1.").arg(edits::inWords(name));
}

QString restoredWords(const store::Backup& backup) {
    return Words::tr("This is the copy of %1. What was there before is kept beside it.").arg(momentWords(backup.at));
}

QString backupFailedWords(const QString& why) {
    return Words::tr("No backup was made: %1 Your season is safe as it stands.").arg(why);
}

QString momentWords(const QDateTime& at) {
    const auto local = at.toLocalTime();
    const auto date = local.date();
    const auto day = Day::fromYmd(date.year(), date.month(), date.day()).value_or(Day{});
    return Words::tr("%1 on %2").arg(local.time().toString(QStringLiteral("HH:mm")), longDay(day));
}

} // namespace withy::ui
