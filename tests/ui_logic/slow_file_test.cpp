// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/held_file.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits.h"

#include <chrono>

namespace withy::ui {

namespace {

using std::chrono::milliseconds;

/// A file that cannot be written for a while. SQLite's own wait for it is two seconds long.
class SlowFile : public LogicTest {
protected:
    void SetUp() override {
        bench = benchOn(demoSeason());
        bench->setPatience(milliseconds(0));
        QObject::connect(bench.get(), &Workbench::written, [this] { ++written; });
        QObject::connect(bench.get(), &Workbench::takenBack, [this](const QString& why, bool again) {
            said << why;
            redo = again;
        });
        QObject::connect(bench.get(), &Workbench::refused, [this](const QString& why) { said << why; });
    }

    [[nodiscard]] std::string name() const { return bench->season().theSettings().placeName; }

    bool call(const char* place) {
        auto settings = bench->season().theSettings();
        settings.placeName = place;
        return bench->take(model::Edit("settings.change").put(settings));
    }

    [[nodiscard]] std::string nameInFile() const {
        return store::SeasonFile::open(bench->path(), store::SeasonFile::Mode::read)
            .season()
            .theSettings()
            .placeName;
    }

    bool settled() {
        return eventually([this] { return !bench->isWriting(); });
    }

    std::unique_ptr<Workbench> bench;
    int written = 0;
    QStringList said;
    std::optional<bool> redo; ///< what takenBack() promised
};

} // namespace

TEST_F(SlowFile, AnEditDoesNotWaitForItAndTellsWhenItIsThere) {
    HeldFile held(bench->path());
    ASSERT_TRUE(held.isHeld());
    const auto before = name();
    EXPECT_TRUE(call("Alder Reach"));
    EXPECT_EQ(name(), "Alder Reach");
    EXPECT_TRUE(bench->isWriting());
    EXPECT_EQ(nameInFile(), before);
    held.letGo();
    ASSERT_TRUE(settled());
    EXPECT_EQ(written, 1);
    EXPECT_EQ(nameInFile(), "Alder Reach");
    EXPECT_TRUE(said.isEmpty()) << said.join('|').toStdString();
}

TEST_F(SlowFile, WhatCouldNotBeWrittenIsTakenBackAndRedoBringsItAgain) {
    const auto before = name();
    {
        const HeldFile held(bench->path());
        ASSERT_TRUE(held.isHeld());
        EXPECT_TRUE(call("Alder Reach"));
        EXPECT_TRUE(call("Birch Reach"));
        ASSERT_TRUE(settled());
    }
    EXPECT_EQ(name(), before);
    EXPECT_EQ(said.size(), 1);
    EXPECT_TRUE(
        said.join(' ').contains(QStringLiteral("2 changes were not in the file yet and are taken back; "
                                               "Redo brings them again.")))
        << said.join('|').toStdString();
    EXPECT_FALSE(bench->canUndo());
    EXPECT_EQ(bench->redo(), QString());
    EXPECT_EQ(name(), "Alder Reach");
    EXPECT_EQ(bench->redo(), QString());
    ASSERT_TRUE(settled());
    EXPECT_FALSE(bench->canRedo());
    EXPECT_EQ(nameInFile(), "Birch Reach");
    EXPECT_EQ(bench->undo(), QString());
    EXPECT_EQ(name(), "Alder Reach");
}

TEST_F(SlowFile, AnUndoneEditIsDoneAgainWhenItsUndoCouldNotBeWritten) {
    ASSERT_TRUE(call("Alder Reach"));
    ASSERT_TRUE(bench->waitForFile());
    {
        const HeldFile held(bench->path());
        EXPECT_EQ(bench->undo(), QString());
        EXPECT_TRUE(call("Birch Reach"));
        EXPECT_EQ(bench->undo(), QString());
        EXPECT_EQ(bench->redo(), QString());
        ASSERT_TRUE(settled());
    }
    EXPECT_EQ(name(), "Alder Reach");
    EXPECT_EQ(nameInFile(), "Alder Reach");
    EXPECT_TRUE(bench->canUndo());
    EXPECT_EQ(bench->redo(), QString());
    EXPECT_EQ(name(), "Birch Reach");
    EXPECT_EQ(bench->undo(), QString());
    EXPECT_EQ(bench->undo(), QString());
    EXPECT_NE(name(), "Alder Reach");
    EXPECT_FALSE(bench->canUndo());
}

TEST_F(SlowFile, NothingIsPromisedOfRedoWhenAnUndoCouldNotBeWritten) {
    ASSERT_TRUE(call("Alder Reach"));
    ASSERT_TRUE(bench->waitForFile());
    {
        const HeldFile held(bench->path());
        EXPECT_EQ(bench->undo(), QString());
        ASSERT_TRUE(settled());
    }
    EXPECT_EQ(name(), "Alder Reach");
    EXPECT_EQ(redo, false);
    EXPECT_FALSE(bench->canRedo());
    EXPECT_TRUE(bench->canUndo());
    EXPECT_TRUE(
        said.join(' ').endsWith(QStringLiteral("1 change was not in the file yet and is taken back.")))
        << said.join('|').toStdString();
}

TEST_F(SlowFile, WhoWaitsIsToldAtOnceThatItFails) {
    bench->setPatience(std::nullopt);
    const HeldFile held(bench->path());
    const auto before = name();
    EXPECT_FALSE(call("Alder Reach"));
    EXPECT_EQ(name(), before);
    EXPECT_FALSE(bench->canUndo());
    EXPECT_FALSE(bench->canRedo());
    ASSERT_EQ(said.size(), 1);
    // It is open here, and for writing: nothing is to be closed elsewhere.
    EXPECT_TRUE(said[0].contains(QStringLiteral("Another program is reading"))) << said[0].toStdString();
    EXPECT_TRUE(said[0].contains(QStringLiteral("Make it again"))) << said[0].toStdString();
    EXPECT_FALSE(said[0].contains(QStringLiteral("another window"))) << said[0].toStdString();
    EXPECT_EQ(written, 0);
}

TEST_F(SlowFile, WaitingForItSaysWhetherAllIsThere) {
    HeldFile held(bench->path());
    ASSERT_TRUE(call("Alder Reach"));
    EXPECT_FALSE(bench->waitForFile());
    EXPECT_EQ(said.size(), 1);
    held.letGo();
    EXPECT_TRUE(bench->waitForFile());
    ASSERT_TRUE(call("Birch Reach"));
    EXPECT_TRUE(bench->waitForFile());
    EXPECT_EQ(nameInFile(), "Birch Reach");
}

TEST_F(SlowFile, ALaterEditThatWaitsHearsOfTheEarlierOne) {
    const HeldFile held(bench->path());
    const auto before = name();
    ASSERT_TRUE(call("Alder Reach"));
    bench->setPatience(std::nullopt);
    EXPECT_FALSE(call("Birch Reach"));
    EXPECT_EQ(name(), before);
    EXPECT_FALSE(bench->isWriting());
}

TEST_F(SlowFile, WhatWaitsIsWrittenBeforeTheBenchGoes) {
    const auto path = bench->path();
    {
        HeldFile held(path);
        ASSERT_TRUE(call("Alder Reach"));
        held.letGo();
    }
    bench.reset();
    EXPECT_EQ(store::SeasonFile::open(path, store::SeasonFile::Mode::read).season().theSettings().placeName,
              "Alder Reach");
}

} // namespace withy::ui
