// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/fonts.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/translations.h"
#include "ui/logic/workbench.h"
#include "ui/shell/main_window.h"
#include "ui/shell/season_view.h"

#include <QApplication>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QThreadPool>

#include <gtest/gtest.h>

namespace withy::ui {

/// Any warning of Qt's that nobody expected fails the test.
inline void failOnWarning(QtMsgType type, const QMessageLogContext&, const QString& words) {
    if (type == QtDebugMsg || type == QtInfoMsg) return;
    // What the offscreen platform says of itself, and of a machine without a login session.
    if (words.startsWith(QStringLiteral("This plugin does not support"))) return;
    if (words.contains(QStringLiteral("XDG_RUNTIME_DIR"))) return;
    ADD_FAILURE() << "Qt says: " << words.toStdString();
}

/// A window on a fresh file, on the offscreen platform.
class WindowTest : public testing::Test {
protected:
    static void SetUpTestSuite() {
        if (qApp) return;
        qputenv("QT_QPA_PLATFORM", "offscreen");
        static int argc = 1;
        static char name[] = "window_tests";
        static char* argv[] = {name, nullptr};
        new QApplication(argc, argv); // lives as long as the process
        // Nothing of the person who runs the tests is read or written, nor of another test that runs beside.
        static QTemporaryDir home;
        qputenv("HOME", home.path().toLocal8Bit());
        QStandardPaths::setTestModeEnabled(true);
        QSettings::setDefaultFormat(QSettings::IniFormat);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, home.path());
        QApplication::setOrganizationName(QStringLiteral("withy-tests"));
        QApplication::setApplicationName(QStringLiteral("withy-tests"));
        loadFonts();
        installTranslations(*qApp, QLocale::c());
        qInstallMessageHandler(failOnWarning);
    }

    /// A process ends by taking its tables apart: nobody may still be reading them.
    static void TearDownTestSuite() { QThreadPool::globalInstance()->waitForDone(); }

    void open(const model::Season& season, std::optional<Day> today = std::nullopt) {
        auto file = store::SeasonFile::create(folder_.filePath(QStringLiteral("a.withy")), season);
        window_ = std::make_unique<MainWindow>(today);
        window_->show();
        window_->showSeason(std::make_unique<Workbench>(std::move(file), today));
        window_->view()->makeAll();
        window_->bench().waitForPlan();
        QApplication::setActiveWindow(window_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    }

    template <class W>
    W* find(const char* name) {
        auto* found = window_->findChild<W*>(QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }

    /// As a person does: select what stands there, type over it, Enter.
    static void type(QWidget* field, const char* words) {
        field->setFocus();
        QTest::keySequence(field, QKeySequence::SelectAll);
        QTest::keyClicks(field, QString::fromUtf8(words));
        QTest::keyClick(field, Qt::Key_Return);
        QApplication::processEvents();
    }

    void click(const char* name) {
        QTest::mouseClick(find<QWidget>(name), Qt::LeftButton);
        QApplication::processEvents();
    }

    const model::Season& season() { return window_->bench().season(); }

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
};

} // namespace withy::ui
