// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/starting_seasons.h"
#include "ui/logic/workbench.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace withy::ui {

/// A folder for each test, and a season in it.
class LogicTest : public testing::Test {
protected:
    [[nodiscard]] QString at(const char* name) const { return folder.filePath(QString::fromUtf8(name)); }

    /// Lets events run until `holds`; false when that takes more than half a minute.
    template <class Condition>
    static bool eventually(Condition holds) {
        QElapsedTimer since;
        since.start();
        while (!holds()) {
            if (since.elapsed() > 30000) return false;
            QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
        }
        return true;
    }

    [[nodiscard]] std::unique_ptr<Workbench> benchOn(const model::Season& season,
                                                     std::optional<Day> today = std::nullopt,
                                                     const store::OpenOptions& options = {}) const {
        return std::make_unique<Workbench>(
            store::SeasonFile::create(at("a.withy"), season, store::Existing::refuse, options), today);
    }

    QTemporaryDir folder;
};

} // namespace withy::ui
