// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/recent_seasons.h"

#include "core/store/disk.h"

#include <QFileInfo>

namespace withy::ui {

namespace {

const auto key = QStringLiteral("recentSeasons");

} // namespace

QStringList RecentSeasons::paths() const {
    QStringList all = settings_.value(key).toStringList();
    all.removeAll(QString());
    all.removeDuplicates();
    return all.mid(0, most);
}

void RecentSeasons::keep(const QStringList& paths) {
    settings_.setValue(key, paths.mid(0, most));
}

void RecentSeasons::add(const QString& path) {
    const QString whole = store::truePath(path);
    QStringList all = paths();
    all.removeAll(whole);
    all.prepend(whole);
    keep(all);
}

QStringList RecentSeasons::there() const {
    QStringList all = paths();
    all.removeIf([](const QString& path) { return !QFileInfo(path).isFile(); });
    return all;
}

} // namespace withy::ui
