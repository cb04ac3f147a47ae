// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>

class QCoreApplication;

namespace withy::ui {

/// English plurals always, and the words of the locale's language where they are compiled in.
void installTranslations(QCoreApplication& app, const QLocale& locale);

} // namespace withy::ui
