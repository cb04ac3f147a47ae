// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shell_wording.h"

#include "ui/logic/edits.h"
#include "ui/logic/format.h"
#include "ui/logic/starting_seasons.h"

#include <QCoreApplication>
#include <QDir>

namespace withy::ui {

namespace {

struct ShellWordingSay {
    Q_DECLARE_TR_FUNCTIONS(Shell)
};

} // namespace

QString keptInWords(const QString& path) {
    return ShellWordingSay::tr("It is kept in %1, and so is every change, at once.")
        .arg(QDir::toNativeSeparators(path));
}

QString copyKeptInWords(const QString& path) {
    return ShellWordingSay::tr("A copy is kept in %1.").arg(QDir::toNativeSeparators(path));
}

QString undoneWords(const model::EditName& name) {
    return ShellWordingSay::tr("Put back: %1.").arg(edits::inWords(name));
}

QString redoneWords(const model::EditName& name) {
    return ShellWordingSay::tr("Done again: %1.").arg(edits::inWords(name));
}

QString seasonWords(const model::Season& season) {
    const auto& s = season.theSettings();
    return s.placeName.empty() ? text(s.seasonName)
                               : ShellWordingSay::tr("%1, %2").arg(text(s.seasonName), text(s.placeName));
}

QString keptWords(const model::Season& season, bool canWrite, QTime at, std::optional<Day> today) {
    QString which = seasonWords(season);
    if (today && demoDay(season))
        which = ShellWordingSay::tr("%1: demo, as if %2 %3")
                    .arg(which, shortDay(*today), QString::number(today->year()));
    if (!canWrite) return ShellWordingSay::tr("%1    For reading only").arg(which);
    return at.isValid()
               ? ShellWordingSay::tr("%1    Kept at %2").arg(which, clockOf(at.hour() * 60 + at.minute()))
               : which;
}

} // namespace withy::ui
