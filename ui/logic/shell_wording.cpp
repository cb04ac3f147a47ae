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
    return Words::tr("It is kept in %1, and so is every change, at once.")
        .arg(QDir::toNativeSeparators(path));
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

QString seasonWords(const model::Season& season) {
    const auto& s = season.theSettings();
    return s.placeName.empty() ? text(s.seasonName)
                               : Words::tr("%1, %2").arg(text(s.seasonName), text(s.placeName));
}

QString clockWords(QTime time) {
    return time.toString(QStringLiteral("HH:mm"));
}

} // namespace withy::ui
