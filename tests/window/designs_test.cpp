// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/place_fixture.h"
#include "ui/common/segments.h"
#include "ui/common/stepper.h"
#include "ui/designs/design_editor.h"
#include "ui/designs/designs_place.h"
#include "ui/designs/designs_wall.h"
#include "ui/designs/slot_head.h"
#include "ui/designs/slot_list.h"
#include "ui/designs/wall_layout.h"
#include "ui/logic/edits/design_edits.h"

#include <QAccessible>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

namespace withy::ui {

namespace {

const Id<model::Design> supperJar{1};

} // namespace

class Designs : public PlaceTest {
protected:
    DesignsPlace& place() { return *static_cast<DesignsPlace*>(place_.get()); }

    DesignsWall* wall() { return in<DesignsWall>("designs.wall"); }

    void openBench() {
        openPlace<DesignsPlace>(demoSeason());
        place().open(supperJar);
        QApplication::processEvents();
        ASSERT_TRUE(place().atTheBench());
    }

    SlotHead* head(Id<model::Slot> slot) {
        return in<SlotHead>(QStringLiteral("designs.slot.%1").arg(slot.value).toUtf8().constData());
    }

    std::vector<const model::Slot*> inOrder() { return edits::slotsOf(held(), supperJar); }
};

TEST_F(Designs, TheWallIsWalkedByKeysAndEnterOpens) {
    openPlace<DesignsPlace>(demoSeason());
    ASSERT_TRUE(wall()->hasFocus());
    const auto first = wall()->chosen();
    ASSERT_TRUE(first);
    QTest::keyClick(wall(), Qt::Key_Right);
    EXPECT_NE(wall()->chosen(), first);
    QTest::keyClick(wall(), Qt::Key_Down);
    const auto below = wall()->chosen();
    EXPECT_NE(below, first);
    QTest::keyClick(wall(), Qt::Key_Return);
    EXPECT_TRUE(place().atTheBench());
    EXPECT_EQ(place().chosen(), below);
    QTest::keyClick(in<QWidget>("designs.editor"), Qt::Key_Escape);
    EXPECT_FALSE(place().atTheBench());
    EXPECT_EQ(wall()->chosen(), below) << "back to the same piece";
    EXPECT_FALSE(bench_->canUndo()) << "looking writes nothing";
}

TEST_F(Designs, TheWallIsAListToScreenReaders) {
    openPlace<DesignsPlace>(demoSeason());
    auto* list = QAccessible::queryAccessibleInterface(wall());
    ASSERT_NE(list, nullptr);
    ASSERT_EQ(list->childCount(), static_cast<int>(held().designs.size()));
    EXPECT_EQ(list->child(0)->text(QAccessible::Name),
              QStringLiteral("Supper jar, for tables, 10 stems, £9.50"));
}

TEST_F(Designs, OnlyWhatIsInBloomIsShownWhenAskedFor) {
    openPlace<DesignsPlace>(demoSeason());
    EXPECT_TRUE(in<QLabel>("designs.answer")->text().contains(QStringLiteral("can be made this week")));
    const int all = wall()->model()->rowCount();
    auto* filter = in<Segments>("designs.inBloom");
    ASSERT_TRUE(filter->isVisible());
    filter->findChildren<QPushButton*>().at(1)->click();
    QApplication::processEvents();
    const int now = wall()->model()->rowCount();
    EXPECT_GT(now, 0);
    EXPECT_LT(now, all);
    for (int row = 0; row < now; ++row)
        EXPECT_TRUE(wall()->model()->index(row, 0).data(DesignsModel::InBloomRole).toBool()) << row;
    filter->findChildren<QPushButton*>().at(0)->click();
    QApplication::processEvents();
    EXPECT_EQ(wall()->model()->rowCount(), all);
}

TEST_F(Designs, BareShelvesLeadToTheFirstPiece) {
    openPlace<DesignsPlace>(emptySeason(2027));
    EXPECT_TRUE(in<QPushButton>("designs.first")->isVisible());
    EXPECT_FALSE(wall()->isVisible());
}

TEST_F(Designs, ACountIsOneEditAndUndone) {
    openBench();
    const auto slot = inOrder().front()->id;
    const auto name = QStringLiteral("designs.slot.%1.count").arg(slot.value).toUtf8();
    const auto before = held().slots.find(slot)->count.value;
    type(in<Stepper>(name.constData())->focusProxy(), "7");
    EXPECT_EQ(held().slots.find(slot)->count.value, 7);
    EXPECT_TRUE(edits::inWords(bench_->undoName()).contains(QStringLiteral("in Supper jar")));
    bench_->undo();
    QApplication::processEvents();
    EXPECT_EQ(in<Stepper>(name.constData())->value(), before);
}

TEST_F(Designs, KeysMoveOpenAndTakeOutASlot) {
    openBench();
    const auto first = inOrder()[0]->id, second = inOrder()[1]->id;
    head(second)->setFocus();
    QTest::keyClick(head(second), Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(inOrder()[0]->id, second);
    EXPECT_TRUE(head(second)->hasFocus()) << "the focus goes with it";
    QTest::keyClick(head(second), Qt::Key_Down);
    EXPECT_TRUE(head(first)->hasFocus());
    QTest::keyClick(head(first), Qt::Key_Return);
    EXPECT_TRUE(in<QListWidget>("designs.slot.plants")->isVisible());
    const auto count = inOrder().size();
    QTest::keyClick(head(first), Qt::Key_Delete);
    EXPECT_EQ(inOrder().size(), count - 1);
    bench_->undo();
    EXPECT_EQ(inOrder().size(), count);
}

TEST_F(Designs, PlantsAreOrderedByKeys) {
    openBench();
    const auto slot = inOrder().front()->id;
    QTest::mouseClick(head(slot), Qt::LeftButton);
    auto* plants = in<QListWidget>("designs.slot.plants");
    ASSERT_GE(plants->count(), 2);
    const auto best = edits::plantsOf(held(), slot).front()->id;
    plants->setFocus();
    plants->setCurrentRow(0);
    QTest::keyClick(plants, Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(edits::plantsOf(held(), slot)[1]->id, best);
}

TEST_F(Designs, ATypedPlantIsASlotAndAnUnknownOneIsSaid) {
    openBench();
    const auto before = inOrder().size();
    auto* entry = in<QLineEdit>("designs.addPlantSlot");
    type(entry, "no such plant");
    EXPECT_EQ(inOrder().size(), before);
    EXPECT_TRUE(refused_.contains(QStringLiteral("no such plant")));
    type(entry, "Feverfew, white");
    EXPECT_EQ(inOrder().size(), before + 1);
}

TEST_F(Designs, WhoUsesItIsSaidBeforeItGoes) {
    openBench();
    press("designs.erase");
    EXPECT_NE(held().designs.find(supperJar), nullptr);
    ASSERT_TRUE(in<QWidget>("designs.erase.bar")->isVisible());
    press("designs.erase.leave");
    EXPECT_FALSE(in<QWidget>("designs.erase.bar")->isVisible());
    press("designs.erase");
    press("designs.erase.both");
    EXPECT_EQ(held().designs.find(supperJar), nullptr);
    EXPECT_FALSE(place().atTheBench());
}

TEST(WallLayout, PiecesStayApartAndOnTheirShelves) {
    std::vector<WallItem> items;
    for (int i = 0; i < 40; ++i)
        items.push_back({i / 15, QRectF(-40, -200 - 5 * i, 80 + i, 200 + 5 * i), 60});
    for (const int width : {300, 900, 1800}) {
        WallMeasures m;
        m.width = width;
        const auto layout = layOut(items, m);
        ASSERT_EQ(layout.cells.size(), items.size());
        for (std::size_t i = 0; i < items.size(); ++i) {
            const QRect box = layout.cells[i].box;
            EXPECT_GE(box.left(), m.head);
            EXPECT_LE(box.right(), m.width);
            EXPECT_LE(items[i].boundsMm.height() * layout.cells[i].scale, m.drawing + 0.5);
            for (std::size_t j = 0; j < i; ++j)
                EXPECT_FALSE(box.intersects(layout.cells[j].box)) << i << " and " << j << " at " << width;
        }
    }
    EXPECT_TRUE(layOut({}, {}).cells.empty());
}

} // namespace withy::ui
