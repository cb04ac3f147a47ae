// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fonts.h"
#include "ui/logic/season_opening.h"
#include "ui/logic/translations.h"
#include "ui/paint/icons.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QDate>

int main(int argc, char** argv) {
    QApplication qt(argc, argv);
    QApplication::setApplicationName(QStringLiteral("withy"));
    QApplication::setApplicationDisplayName(QStringLiteral("Withy"));
    QApplication::setDesktopFileName(QStringLiteral("withy"));
    withy::ui::readyToOpen();
    withy::ui::loadFonts();
    QApplication::setWindowIcon(withy::ui::applicationIcon());
    withy::ui::installTranslations(qt, QLocale::system());
    auto words = QApplication::arguments().mid(1);
    const bool demo = words.removeAll(QStringLiteral("--demo")) > 0;
    const QDate now = QDate::currentDate();
    withy::ui::MainWindow window(withy::Day::fromYmd(now.year(), now.month(), now.day()));
    if (demo)
        window.door().openDemo();
    else if (!words.isEmpty())
        window.door().open(words.front());
    else
        window.openLast();
    window.show();
    return QApplication::exec();
}
