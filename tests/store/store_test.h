// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace withy::test {

/// A folder of its own for each test.
class StoreTest : public testing::Test {
protected:
    [[nodiscard]] QString at(const char* name) const {
        return folder.path() + QLatin1Char('/') + QString::fromUtf8(name);
    }

    void write(const char* name, const QByteArray& bytes) const {
        QFile file(at(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }

    static QByteArray bytesOf(const QString& path) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
        return file.readAll();
    }

    [[nodiscard]] QStringList filesHere() const {
        return QDir(folder.path()).entryList(QDir::Files | QDir::Hidden, QDir::Name);
    }

    QTemporaryDir folder;
};

/// Runs `action` and gives the word of the fault it threw; "none" when it threw none.
template <class Action>
std::string faultOf(Action action) {
    try {
        action();
        return "none";
    } catch (const store::StoreError& error) {
        EXPECT_FALSE(error.technical.empty());
        EXPECT_FALSE(error.path.isEmpty());
        return wordOf(error.fault);
    }
}

#define EXPECT_FAULT(action, wanted) EXPECT_EQ(faultOf([&] { (void)(action); }), #wanted)

} // namespace withy::test
