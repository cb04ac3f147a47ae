// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/translations.h"

#include "ui/logic/english_plurals.h"

#include <QCoreApplication>
#include <QTranslator>

namespace withy::ui {

void installTranslations(QCoreApplication& app, const QLocale& locale) {
    installEnglishPlurals();
    auto* words = new QTranslator(&app);
    if (words->load(locale, QStringLiteral("withy"), QStringLiteral("_"),
                    QStringLiteral(":/withy/translations")))
        QCoreApplication::installTranslator(words);
    else
        delete words;
}

} // namespace withy::ui
