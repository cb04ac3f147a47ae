// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QProcess>
#include <QTest>

#include <gtest/gtest.h>

#include <string>

/// A paper kept by hand, and what it says.
namespace withy::ui::tests {

/// Types the path into the dialog that asks for it; two presses.
inline void keepPaperAs(const QString& path) {
    QFileDialog* dialog = nullptr;
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            for (auto* w : QApplication::topLevelWidgets())
                if (auto* d = qobject_cast<QFileDialog*>(w); d && d->isVisible()) dialog = d;
            return dialog != nullptr;
        },
        5000));
    auto* field = dialog->findChild<QLineEdit*>();
    field->setText(path);
    QTest::keyClick(field, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(path); }, 5000));
}

/// The words of a PDF, read by poppler.
inline std::string pdfWords(const QString& pdf) {
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")});
    EXPECT_TRUE(reader.waitForFinished());
    return reader.readAllStandardOutput().simplified().toStdString();
}

} // namespace withy::ui::tests
