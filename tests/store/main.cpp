// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/store/kill_child.h"
#include "tests/store/schema_text.h"

#include <QCoreApplication>

#include <gtest/gtest.h>

#include <cstdlib>
#include <iostream>

namespace {

/// A warning of Qt's that nobody expected is a failure.
void onMessage(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtDebugMsg || type == QtInfoMsg) return;
    ADD_FAILURE() << "Qt says: " << text.toStdString();
}

} // namespace

int main(int argc, char** argv) {
    if (argc == 2 && std::string(argv[1]) == "--schema") {
        std::cout << withy::test::schemaText();
        return 0;
    }
    testing::InitGoogleTest(&argc, argv);
    const QCoreApplication application(argc, argv);
    qInstallMessageHandler(onMessage);
    if (argc == 4 && std::string(argv[1]) == "--edit-until-killed")
        return withy::test::editUntilKilled(QString::fromLocal8Bit(argv[2]),
                                            std::strtoul(argv[3], nullptr, 10));
    if (argc == 3 && std::string(argv[1]) == "--hold-part")
        return withy::test::holdPart(QString::fromLocal8Bit(argv[2]));
    return RUN_ALL_TESTS();
}
