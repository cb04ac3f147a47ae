// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/booking_tabs_fixture.h"
#include "ui/bookings/cutting/job_note_form.h"
#include "ui/bookings/tabs/kit_tab.h"
#include "ui/common/figure.h"
#include "ui/common/scene_view.h"
#include "ui/common/segments.h"
#include "ui/common/stepper.h"
#include "ui/shed/ribbon_day_view.h"
#include "ui/shed/shelf_row_view.h"
#include "ui/shed/shelves_page.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>

#include <set>

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

TEST_F(Shelves, EveryShelfIsOnTheOnePage) {
    page();
    std::set<model::TableKind> kinds;
    for (const auto* row : holder_->findChildren<ShelfRowView*>())
        kinds.insert(row->row().item.table);
    EXPECT_TRUE(kinds.contains(model::TableKind::containers));
    EXPECT_TRUE(kinds.contains(model::TableKind::holders));
    EXPECT_TRUE(kinds.contains(model::TableKind::sundries));
    EXPECT_TRUE(holder_->findChildren<Segments*>().isEmpty()) << "no second row of the same names";
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

/// A page that is left and come back to stands as it was made: its workings are shut.
TEST_F(Shelves, AWorkingIsShutWhenItsPageIsLeft) {
    page();
    auto* row = holder_->findChildren<ShelfRowView*>().front();
    QTest::keyClick(row->figure(), Qt::Key_Return);
    auto* working = row->findChild<WorkingPanel*>();
    ASSERT_TRUE(working->isVisible());
    holder_->hide();
    settle();
    holder_->show();
    settle();
    EXPECT_FALSE(working->isVisible());
    EXPECT_FALSE(row->figure()->isChecked());
}

/// The job note offers what is left of the ribbon, tells it, and writes it once however often it is pressed.
TEST_F(Shelves, TheJobNoteWritesTheRibbonBackOnce) {
    const auto day = bench_->plan().shed->ribbon.front();
    holder_ = std::make_unique<QWidget>();
    auto* all = new QVBoxLayout(holder_.get());
    auto* form = new JobNoteForm(*bench_);
    all->addWidget(form);
    holder_->resize(800, 600);
    holder_->show();
    form->show(day->bookings.front(), {});
    settle();
    auto* says = part<QLabel>(QStringLiteral("share.note.ribbon"));
    auto* back = part<QPushButton>(QStringLiteral("share.note.ribbon_back"));
    ASSERT_TRUE(back->isVisible());
    EXPECT_TRUE(says->text().contains(QStringLiteral("goes back")) ||
                says->text().contains(QStringLiteral("nothing left")))
        << says->text().toStdString();
    const auto metres = [&] {
        std::int64_t mm = 0;
        for (const auto& l : bench_->season().ribbonLengths)
            mm += l.length.value;
        return mm;
    };
    const auto before = metres();
    back->click();
    const auto after = metres();
    EXPECT_LT(after, before);
    back->click();
    back->click();
    settle();
    EXPECT_EQ(metres(), after) << "pressed three times, written once";
    form->show(day->bookings.front(), {});
    EXPECT_FALSE(back->isVisible());
    EXPECT_TRUE(says->text().contains(QStringLiteral("written back already")));
    EXPECT_TRUE(bench_->undo().isEmpty());
    settle();
    EXPECT_EQ(metres(), before);
    form->show(day->bookings.front(), {});
    EXPECT_TRUE(back->isVisible());
}

/// A long name with an "&" is shown as typed, gives way to what fits, and the choice keeps the focus when a
/// new plan comes.
TEST_F(Shelves, AChoiceOfTableKeepsItsFocusAndItsName) {
    auto season = demoSeason();
    auto table = *season.venueTables.find(Id<model::VenueTable>(1));
    table.label = "Long & narrow trestle by the western wall of the old grain barn, under the gallery";
    season.venueTables.put(table);
    openBench(season);
    showTab<KitTab>({700, 700});
    part<Segments>(QStringLiteral("kit.pages"))->findChildren<QPushButton*>().at(1)->click();
    settle();
    auto* choice = part<QRadioButton>(QStringLiteral("tables.kind.1"));
    EXPECT_TRUE(choice->text().contains(QStringLiteral("Long && narrow")));
    EXPECT_TRUE(choice->shortcut().isEmpty()) << choice->shortcut().toString().toStdString();
    EXPECT_TRUE(choice->toolTip().contains(QString::fromStdString(table.label)));
    EXPECT_TRUE(choice->accessibleName().contains(QString::fromStdString(table.label)));
    EXPECT_LE(choice->width(), holder_->width());
    choice->setFocus();
    ASSERT_TRUE(choice->hasFocus());
    auto booking = *bench_->season().bookings.find(supper);
    booking.title = "Another supper";
    EXPECT_TRUE(bench_->apply(model::Edit("t").put(booking)).isEmpty());
    settle();
    EXPECT_EQ(holder_->findChild<QRadioButton*>(QStringLiteral("tables.kind.1")), choice);
    EXPECT_TRUE(choice->hasFocus());
    EXPECT_TRUE(choice->isVisible());
}

} // namespace withy::ui
