// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/recent_seasons.h"
#include "ui/logic/translations.h"
#include "ui/paint/icons.h"
#include "ui/shell/main_window.h"
#include "ui/shell/start.h"

#include <QApplication>
#include <QDate>
#include <QSettings>

namespace {

/// The one asked for, or else the last one; empty when there is neither.
QString seasonToOpen(const QStringList& words) {
    QSettings kept;
    return words.isEmpty() ? withy::ui::RecentSeasons(kept).last() : words.front();
}

} // namespace

int main(int argc, char** argv) {
    QApplication qt(argc, argv);
    QApplication::setApplicationName(QStringLiteral("withy"));
    QApplication::setApplicationDisplayName(QStringLiteral("Withy"));
    QApplication::setDesktopFileName(QStringLiteral("withy"));
    QApplication::setWindowIcon(withy::ui::applicationIcon());
    withy::ui::installTranslations(qt, QLocale::system());
    auto words = QApplication::arguments().mid(1);
    const bool demo = words.removeAll(QStringLiteral("--demo")) > 0;
    const QDate now = QDate::currentDate();
    const auto window = withy::ui::openWindow(withy::Day::fromYmd(now.year(), now.month(), now.day()),
                                              demo ? QString() : seasonToOpen(words));
    if (demo) window->door().openDemo();
    window->show();
    return QApplication::exec();
}
