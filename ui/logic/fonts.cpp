// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fonts.h"

#include <QDirIterator>
#include <QFontDatabase>

namespace withy::ui {

void loadFonts() {
    QDirIterator files(QStringLiteral(":/withy/fonts"), {QStringLiteral("*.ttf")}, QDir::Files,
                       QDirIterator::Subdirectories);
    while (files.hasNext())
        QFontDatabase::addApplicationFont(files.next());
}

} // namespace withy::ui
