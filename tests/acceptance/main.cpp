// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/english_plurals.h"
#include "ui/logic/fonts.h"

#include <QGuiApplication>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication qt(argc, argv);
    withy::ui::loadFonts();
    withy::ui::installEnglishPlurals();
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
