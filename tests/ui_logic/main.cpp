// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fonts.h"

#include "ui/logic/english_plurals.h"

#include <QGuiApplication>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // Nothing of the person's who runs the tests is touched, nor of another test that runs beside.
    const QTemporaryDir home;
    qputenv("HOME", home.path().toLocal8Bit());
    QStandardPaths::setTestModeEnabled(true);
    QGuiApplication qt(argc, argv);
    withy::ui::loadFonts();
    withy::ui::installEnglishPlurals(); // what people read, whichever test runs alone
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
