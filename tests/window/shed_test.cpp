// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/place_fixture.h"
#include "ui/common/blocked_notice.h"
#include "ui/common/figure.h"
#include "ui/common/record_form.h"
#include "ui/shed/shed_place.h"

namespace withy::ui {

class Shed : public PlaceTest {};

TEST_F(Shed, AContainersVolumeFollowsItsSizes) {
    openPlace<ShedPlace>(emptySeason(2027));
    show("page.shed.containers");
    auto* table = in<RecordTable>("shed.containers.table");
    typeInto(table, 0, "name", QStringLiteral("Test cylinder"));
    typeInto(table, 0, "inner_rim", QStringLiteral("100"));
    typeInto(table, 0, "inner_depth", QStringLiteral("200 mm"));
    ASSERT_EQ(held().containers.size(), 1u);
    table->choose(1);
    QApplication::processEvents();
    // pi / 4 x 100^2 x 200 = 1,570,796 cubic millimetres
    EXPECT_EQ(in<FigureButton>("shed.containers.volume")->text().toStdString(), "1,571 ml");
    press("shed.containers.volume");
    EXPECT_TRUE(bare_->findChild<WorkingPanel*>()->isVisible()) << "the figure opens its working";
    auto* depth = in<RecordForm>("shed.containers.form")->field("inner_depth");
    depth->control()->setFocus();
    depth->setTyped(QStringLiteral("10 cm"));
    QTest::keyClick(depth->control(), Qt::Key_Return);
    EXPECT_EQ(in<FigureButton>("shed.containers.volume")->text().toStdString(), "785 ml");
}

TEST_F(Shed, RibbonsHaveReelsAndEndsWithATotal) {
    openPlace<ShedPlace>(emptySeason(2027));
    show("page.shed.ribbons");
    auto* table = in<RecordTable>("shed.ribbons.table");
    typeInto(table, 0, "name", QStringLiteral("Moss"));
    typeInto(table, 0, "width", QStringLiteral("15"));
    ASSERT_EQ(held().ribbons.size(), 1u);
    table->choose(1);
    QApplication::processEvents();
    auto* lengths = in<RecordTable>("shed.ribbons.ribbon_length");
    typeInto(lengths, 0, "length", QStringLiteral("9.4 m"));
    typeInto(lengths, 1, "length", QStringLiteral("2.1"));
    ASSERT_EQ(held().ribbonLengths.size(), 2u);
    EXPECT_EQ(held().ribbonLengths.begin()->ribbon.value, 1);
    EXPECT_TRUE(answer().startsWith(QStringLiteral("11.50 m of 1 ribbon"))) << answer().toStdString();
}

TEST_F(Shed, AContainerInUseIsNotTakenOutAndItIsSaidByWhom) {
    openPlace<ShedPlace>(demoSeason());
    show("page.shed.containers");
    std::int64_t used = 0;
    for (const auto& d : held().designs) {
        if (d.container) used = d.container->value;
    }
    auto* table = in<RecordTable>("shed.containers.table");
    table->choose(used);
    const auto before = held().containers.size();
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_EQ(held().containers.size(), before);
    bool said = false;
    for (auto* n : bare_->findChildren<BlockedNotice*>())
        said = said || (n->isVisible() && !n->sentence().isEmpty());
    EXPECT_TRUE(said);
}

TEST_F(Shed, BadCountsAreRefusedInTheirCell) {
    openPlace<ShedPlace>(demoSeason());
    show("page.shed.sundries");
    auto* table = in<RecordTable>("shed.sundries.table");
    const auto before = held().sundries.find(Id<model::Sundry>(*table->records().idAt(0)))->onHand;
    for (const char* bad : {"a few", "-4", "99999999999"}) {
        SCOPED_TRACE(bad);
        typeInto(table, 0, "on_hand", QString::fromUtf8(bad));
        EXPECT_EQ(held().sundries.find(Id<model::Sundry>(*table->records().idAt(0)))->onHand, before);
    }
    EXPECT_FALSE(bench_->canUndo());
}

TEST_F(Shed, EveryPageIsReachedAndHasItsRows) {
    openPlace<ShedPlace>(demoSeason());
    show("page.shed.containers");
    for (const char* page : {"containers", "ribbons", "mixes", "sundries", "holders", "vehicles"}) {
        SCOPED_TRACE(page);
        show((std::string("page.shed.") + page).c_str());
        auto* table = in<RecordTable>((std::string("shed.") + page + ".table").c_str());
        ASSERT_TRUE(table->isVisible());
        EXPECT_GT(table->records().rowCount(), 1);
        EXPECT_FALSE(answer().isEmpty());
    }
}

} // namespace withy::ui
