// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/booking_tabs_fixture.h"
#include "ui/bookings/tabs/kit_tab.h"
#include "ui/common/figure.h"
#include "ui/common/scene_view.h"
#include "ui/common/segments.h"
#include "ui/common/stepper.h"
#include "ui/shed/ribbon_day_view.h"
#include "ui/shed/shelf_row_view.h"
#include "ui/shed/shelves_page.h"

#include <QComboBox>
#include <QLineEdit>
#include <QRadioButton>

namespace withy::ui {

class Shelves : public TabTest {
protected:
    void SetUp() override {
        TabTest::SetUp();
        openBench(demoSeason());
    }

    ShelvesPage& page() {
        holder_ = std::make_unique<QWidget>();
        auto* all = new QVBoxLayout(holder_.get());
        auto* page = new ShelvesPage(*bench_);
        all->addWidget(page);
        holder_->resize(1100, 700);
        holder_->show();
        settle();
        return *page;
    }
};

TEST_F(Shelves, TheFirstRowIsWhatRunsShortAndItsFigureOpens) {
    page();
    const auto rows = holder_->findChildren<ShelfRowView*>();
    ASSERT_FALSE(rows.empty());
    EXPECT_TRUE(rows.front()->row().asks);
    const auto shortOn = [&](const ShelfRowView* view) {
        for (const auto& item : bench_->plan().shed->kit)
            if (item.item == view->row().item && item.firstShort) return item.firstShort->day;
        return bench_->season().theSettings().lastDay;
    };
    for (const auto* row : rows)
        EXPECT_LE(shortOn(rows.front()), shortOn(row)) << row->row().name.toStdString();
    QTest::keyClick(rows.front()->figure(), Qt::Key_Return);
    EXPECT_TRUE(rows.front()->findChild<WorkingPanel*>()->isVisible());
    EXPECT_TRUE(rows.front()->accessibleName().contains(QStringLiteral("2 short")));
}

TEST_F(Shelves, RibbonWrittenBackIsOnePressAndOneUndo) {
    page();
    auto* view = holder_->findChild<RibbonDayView*>();
    auto* days = part<QComboBox>(QStringLiteral("shed.ribbon.day"));
    ASSERT_GT(days->count(), 1);
    days->setCurrentIndex(0);
    view->refresh();
    const int before = days->count();
    std::int64_t length = 0, after = 0;
    for (const auto& l : bench_->season().ribbonLengths)
        length += l.length.value;
    ASSERT_TRUE(view->writeBack()->isVisible());
    QTest::keyClick(view->writeBack(), Qt::Key_Space);
    settle();
    for (const auto& l : bench_->season().ribbonLengths)
        after += l.length.value;
    EXPECT_LT(after, length);
    EXPECT_EQ(days->count(), before - 1);
    EXPECT_TRUE(bench_->undo().isEmpty());
    settle();
    EXPECT_EQ(days->count(), before);
}

TEST_F(Shelves, ReturnsAreCountedInThreePresses) {
    auto season = demoSeason();
    auto booking = *season.bookings.find(supper);
    booking.standing = model::Standing::delivered;
    season.bookings.put(booking);
    openBench(season);
    showTab<KitTab>();
    auto* all = part<QPushButton>(QStringLiteral("kit.return.1.all"));
    ASSERT_TRUE(all->isVisible());
    QTest::keyClick(all, Qt::Key_Space); // one
    settle();
    auto* broken = part<Stepper>(QStringLiteral("kit.return.1.broken"));
    auto* field = broken->findChild<QLineEdit*>();
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("2")); // two
    QTest::keyClick(field, Qt::Key_Return);       // three
    settle();
    const model::Return* record = nullptr;
    for (const auto& r : bench_->season().returns)
        if (r.booking == supper && r.container.value == 1) record = &r;
    ASSERT_NE(record, nullptr);
    EXPECT_EQ(record->out, 24);
    EXPECT_EQ(record->back, 22);
    EXPECT_EQ(record->broken, 2);
    EXPECT_TRUE(refused_.isEmpty()) << refused_.toStdString();
}

TEST_F(Shelves, TheTablePlanShowsEachKindByItsChoice) {
    showTab<KitTab>({1100, 700});
    auto* pages = part<Segments>(QStringLiteral("kit.pages"));
    pages->findChildren<QPushButton*>().at(1)->click();
    settle();
    auto* hall = part<SceneView>(QStringLiteral("tables.hall"));
    EXPECT_TRUE(hall->isVisible());
    EXPECT_TRUE(hall->accessibleDescription().contains(QStringLiteral("Trestle 12")));
    auto* near = part<SceneView>(QStringLiteral("tables.near"));
    const QString trestle = near->accessibleDescription();
    const auto kinds = holder_->findChildren<QRadioButton*>();
    ASSERT_GT(kinds.size(), 1);
    QTest::keyClick(kinds.front(), Qt::Key_Down);
    kinds.at(1)->click();
    settle();
    EXPECT_NE(near->accessibleDescription(), trestle);
}

TEST_F(Shelves, PackingDrawsTheTraysAndSaysTheWater) {
    showTab<KitTab>({1100, 700});
    part<Segments>(QStringLiteral("kit.pages"))->findChildren<QPushButton*>().at(2)->click();
    settle();
    auto* trays = part<SceneView>(QStringLiteral("packing.trays"));
    EXPECT_TRUE(trays->isVisible());
    EXPECT_TRUE(trays->accessibleDescription().contains(QStringLiteral("Tray 1 holds")));
    auto* carry = part<FigureButton>(QStringLiteral("packing.carry"));
    EXPECT_TRUE(carry->text().contains(QStringLiteral("litres")));
    QTest::keyClick(carry, Qt::Key_Return);
    EXPECT_FALSE(carry->facts().working.empty());
}

} // namespace withy::ui
