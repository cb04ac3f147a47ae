// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/season_text.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/design_words.h"
#include "ui/logic/models/designs_model.h"

#include <QAbstractItemModelTester>

namespace withy::ui {

namespace {

const Id<model::Design> supperJar{1};

Id<model::Slot> slotCalled(const model::Season& season, Id<model::Design> design, const std::string& label) {
    for (const auto* slot : edits::slotsOf(season, design)) {
        if (slot->label == label) return slot->id;
    }
    ADD_FAILURE() << label;
    return {};
}

std::vector<std::string> labels(const model::Season& season, Id<model::Design> design) {
    std::vector<std::string> all;
    for (const auto* slot : edits::slotsOf(season, design))
        all.push_back(slot->label);
    return all;
}

} // namespace

class DesignEdits : public LogicTest {
protected:
    void SetUp() override { bench_ = benchOn(demoSeason()); }

    void take(const model::Edit& edit) { ASSERT_EQ(bench_->apply(edit), QString()); }

    const model::Season& season() { return bench_->season(); }

    QString undoWords() { return edits::inWords(bench_->undoName()); }

    std::unique_ptr<Workbench> bench_;
};

TEST_F(DesignEdits, CountsAreUndoneWithTheirNumbers) {
    const auto round = slotCalled(season(), supperJar, "Round");
    take(edits::setSlotCount(season(), round, 5));
    EXPECT_EQ(undoWords(), QStringLiteral("2 more of Round in Supper jar"));
    EXPECT_EQ(stemsOf(season(), supperJar), 12);
    take(edits::setSlotCount(season(), round, 4));
    EXPECT_EQ(undoWords(), QStringLiteral("1 fewer of Round in Supper jar"));
    bench_->undo();
    bench_->undo();
    EXPECT_EQ(stemsOf(season(), supperJar), 10);
}

TEST_F(DesignEdits, SlotsMoveAsFarAsTheyGo) {
    const auto spike = slotCalled(season(), supperJar, "Spike");
    take(edits::moveSlot(season(), spike, -2));
    EXPECT_EQ(labels(season(), supperJar),
              (std::vector<std::string>{"Leaf", "Airy", "Spike", "Face", "Round"}));
    take(edits::moveSlot(season(), spike, -9));
    EXPECT_EQ(labels(season(), supperJar).front(), "Spike");
    EXPECT_TRUE(edits::moveSlot(season(), spike, -1).empty()) << "already first";
}

TEST_F(DesignEdits, PlantsOfASlotStandInTheOrderGiven) {
    const auto round = slotCalled(season(), supperJar, "Round");
    const auto plants = edits::plantsOf(season(), round);
    ASSERT_GE(plants.size(), 2U);
    const auto first = plants[0]->id, second = plants[1]->id;
    take(edits::orderSlotPlants(season(), round, {second, first}));
    EXPECT_EQ(edits::plantsOf(season(), round)[0]->id, second);
    EXPECT_EQ(edits::plantsOf(season(), round).size(), plants.size()) << "those not named are kept";
    EXPECT_TRUE(edits::orderSlotPlants(season(), round, {second, first}).empty()) << "nothing changes";
    take(edits::eraseSlotPlant(season(), second));
    EXPECT_EQ(edits::plantsOf(season(), round)[0]->id, first);
}

TEST_F(DesignEdits, APlantIsInASlotOnce) {
    const auto round = slotCalled(season(), supperJar, "Round");
    const auto there = edits::plantsOf(season(), round).front()->plant;
    EXPECT_TRUE(edits::addSlotPlant(season(), round, there).empty());
    const auto before = edits::plantsOf(season(), round).size();
    take(edits::addSlotPlant(season(), round, Id<model::Plant>(1)));
    EXPECT_EQ(edits::plantsOf(season(), round).size(), before + 1);
    EXPECT_EQ(edits::plantsOf(season(), round).back()->plant, Id<model::Plant>(1)) << "last choice";
}

TEST_F(DesignEdits, ANewSlotIsCalledAfterItsPurposeAndFreeOfTheOthers) {
    Id<model::Slot> made;
    take(edits::addSlotFor(season(), supperJar, model::Purpose::focal, made));
    EXPECT_EQ(season().slots.find(made)->label, "Face 2");
    EXPECT_EQ(season().slots.find(made)->tier, model::Tier::middle);
    EXPECT_EQ(labels(season(), supperJar).back(), "Face 2") << "last in making order";
    take(edits::addSlotWith(season(), supperJar,
                            edits::plantsOf(season(), slotCalled(season(), supperJar, "Leaf"))[0]->plant,
                            made));
    EXPECT_EQ(season().slots.find(made)->purpose, model::Purpose::foliage);
}

TEST_F(DesignEdits, ACopyIsWholeButForItsTrial) {
    Id<model::Design> made;
    take(edits::duplicateDesign(season(), supperJar, made));
    const auto& copy = *season().designs.find(made);
    EXPECT_EQ(copy.name, "Supper jar 2");
    EXPECT_FALSE(copy.trialCount || copy.trialDate);
    EXPECT_EQ(copy.price, season().designs.find(supperJar)->price);
    EXPECT_EQ(labels(season(), made), labels(season(), supperJar));
    for (const auto* slot : edits::slotsOf(season(), made)) {
        const auto old = edits::plantsOf(season(), slotCalled(season(), supperJar, slot->label));
        const auto now = edits::plantsOf(season(), slot->id);
        ASSERT_EQ(now.size(), old.size());
        for (std::size_t i = 0; i < now.size(); ++i)
            EXPECT_EQ(now[i]->plant, old[i]->plant);
    }
    EXPECT_EQ(undoWords(), QStringLiteral("copy of Supper jar"));
    bench_->undo();
    EXPECT_EQ(season().designs.find(made), nullptr);
}

TEST_F(DesignEdits, WhatABookingUsesGoesOnlyWithItsLines) {
    const QString words = stillUsedWords(season(), supperJar);
    EXPECT_TRUE(words.contains(QStringLiteral("Library roof supper"))) << words.toStdString();
    EXPECT_NE(bench_->apply(edits::eraseDesign(season(), supperJar)), QString());
    EXPECT_NE(season().designs.find(supperJar), nullptr);
    const auto before = exchange::exportSeason(season());
    take(edits::eraseDesignAndLines(season(), supperJar));
    EXPECT_EQ(season().designs.find(supperJar), nullptr);
    EXPECT_TRUE(edits::usesOf(season(), supperJar).empty());
    EXPECT_EQ(bench_->undo(), QString());
    EXPECT_EQ(exchange::exportSeason(season()), before) << "all of it comes back";
}

TEST_F(DesignEdits, EveryKindOfNewDesignIsTaken) {
    for (std::size_t kind = 0; kind < model::Words<model::PieceKind>::list.size(); ++kind) {
        SCOPED_TRACE(model::Words<model::PieceKind>::list[kind]);
        Id<model::Design> made;
        take(edits::newDesignOf(season(), "Trial", static_cast<model::PieceKind>(kind), std::nullopt, made));
        const auto& d = *season().designs.find(made);
        EXPECT_LE(d.heightLow, d.heightMiddle);
        EXPECT_LE(d.heightMiddle, d.heightTall);
    }
    Id<model::Design> made;
    take(edits::newDesignInNewJar(season(), "Trial", "Tall jar", made));
    EXPECT_EQ(season().containers.find(*season().designs.find(made)->container)->name, "Tall jar");
}

// 24 jars of 10 stems: 240, as in the brief of the supper.
TEST_F(DesignEdits, TheBookingsLineSaysTheProduct) {
    const auto uses = edits::usesOf(season(), supperJar);
    ASSERT_FALSE(uses.empty());
    edits::DesignUse use = uses.front();
    use.pieces = 24;
    use.title = "Library roof supper";
    EXPECT_EQ(useWords(use, 10), QStringLiteral("× 24 for Library roof supper = 240"));
}

TEST_F(DesignEdits, FiguresCarryTheirWorkings) {
    bench_->waitForPlan();
    for (const auto& d : season().designs) {
        SCOPED_TRACE(d.name);
        for (const auto& f : designFigures(season(), bench_->plan(), d.id)) {
            SCOPED_TRACE(f.label.toStdString());
            EXPECT_FALSE(f.figure.isEmpty());
            EXPECT_FALSE(f.working.empty());
            EXPECT_FALSE(f.means.isEmpty());
        }
        const auto stems = stemsFigure(season(), d.id);
        EXPECT_EQ(stems.working.back().value, static_cast<double>(stemsOf(season(), d.id)));
    }
    EXPECT_TRUE(designFigures(season(), {}, supperJar).empty()) << "no plan yet";
    EXPECT_TRUE(designFigures(season(), bench_->plan(), Id<model::Design>(9999)).empty());
}

TEST_F(DesignEdits, TheWallListsByShelfAndFinds) {
    DesignsModel wall(*bench_);
    const QAbstractItemModelTester tester(&wall, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(wall.rowCount(), static_cast<int>(season().designs.size()));
    int group = 0;
    for (int row = 0; row < wall.rowCount(); ++row) {
        const int now = wall.index(row).data(DesignsModel::GroupRole).toInt();
        EXPECT_GE(now, group);
        group = now;
    }
    wall.setGroup(DesignGroup::large);
    EXPECT_EQ(wall.rowOf(supperJar), -1);
    wall.setGroup(std::nullopt);
    wall.setWords(QStringLiteral("sUPPer"));
    ASSERT_EQ(wall.rowCount(), 1);
    EXPECT_EQ(wall.index(0).data(Qt::AccessibleTextRole).toString(),
              QStringLiteral("Supper jar, for tables, 10 stems, £9.50"));
    wall.setWords(QStringLiteral("no such thing"));
    EXPECT_EQ(wall.rowCount(), 0);
    EXPECT_EQ(wall.total(), static_cast<int>(season().designs.size()));
}

TEST_F(DesignEdits, NamesAreShownAsTyped) {
    Id<model::Design> made;
    const std::string name = "<b>50 %1</b> & \xd7\xa9\xd7\x9c\xd7\x95\xd7\x9d %n";
    take(edits::newDesignOf(season(), name, model::PieceKind::table, std::nullopt, made));
    EXPECT_EQ(undoWords(), QStringLiteral("new design ") + text(name));
    Id<model::Line> line;
    take(edits::addPieces(season(), Id<model::Booking>(1), made, 2, line));
    EXPECT_TRUE(stillUsedWords(season(), made).startsWith(text(name)));
}

} // namespace withy::ui
