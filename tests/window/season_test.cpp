// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "tests/support/season_text.h"
#include "tests/window/place_fixture.h"
#include "ui/common/figure.h"
#include "ui/common/record_form.h"
#include "ui/logic/models/orders_model.h"
#include "ui/season/orders_page.h"
#include "ui/season/season_place.h"
#include "ui/season/tables_page.h"

#include <QClipboard>
#include <QFile>
#include <QHeaderView>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>

namespace withy::ui {

class SeasonPages : public PlaceTest {
protected:
    QString fileOf(const char* name, const char* text) {
        const auto path = folder_.filePath(QString::fromUtf8(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return path;
    }

    void chooseTable(model::TableKind kind) {
        auto* list = in<QListWidget>("season.tables.list");
        for (int row = 0; row < list->count(); ++row) {
            list->setCurrentRow(row);
            if (bare_->findChild<TablesPage*>()->chosenTable() == kind) return;
        }
        FAIL();
    }
};

TEST_F(SeasonPages, OrdersAreSortedByTheirHeadsAndTheSumStaysLast) {
    openPlace<SeasonPlace>(demoSeason());
    auto* view = in<QTableView>("season.orders.table");
    const int rows = view->model()->rowCount();
    EXPECT_EQ(rows, static_cast<int>(held().bookings.size()) + 1);
    view->sortByColumn(4, Qt::DescendingOrder);
    const auto first = view->model()->index(0, 4).data().toString().remove(QLatin1Char(',')).toInt();
    const auto second = view->model()->index(1, 4).data().toString().remove(QLatin1Char(',')).toInt();
    EXPECT_GE(first, second);
    EXPECT_EQ(view->model()->index(rows - 1, 0).data().toString().toStdString(), "All");
    EXPECT_TRUE(answer().contains(QStringLiteral("is still owed"))) << answer().toStdString();
}

TEST_F(SeasonPages, EnterLeadsToTheBooking) {
    openPlace<SeasonPlace>(demoSeason());
    auto* view = in<QTableView>("season.orders.table");
    view->setFocus();
    view->setCurrentIndex(view->model()->index(0, 1));
    QTest::keyClick(view, Qt::Key_Return);
    ASSERT_TRUE(led_);
    EXPECT_EQ(led_->table, model::TableKind::bookings);
}

TEST_F(SeasonPages, AnOrdersFiguresOpenAndLead) {
    openPlace<SeasonPlace>(demoSeason());
    auto* view = in<QTableView>("season.orders.table");
    auto* asked = in<FigureButton>("season.orders.figure.2");
    view->setFocus();
    view->setCurrentIndex(view->model()->index(view->model()->rowCount() - 1, OrdersModel::title));
    EXPECT_EQ(asked->text(),
              view->model()->index(view->model()->rowCount() - 1, OrdersModel::asked).data().toString());
    view->setCurrentIndex(view->model()->index(0, OrdersModel::title));
    EXPECT_EQ(asked->text(), view->model()->index(0, OrdersModel::asked).data().toString());
    auto* working = in<QWidget>("season.orders.figures")->findChild<WorkingPanel*>();
    ASSERT_NE(working, nullptr);
    EXPECT_TRUE(working->findChildren<QLabel*>().isEmpty()) << "made before it is asked for";
    asked->setFocus();
    QTest::keyClick(asked, Qt::Key_Return);
    QApplication::processEvents();
    ASSERT_TRUE(working->isVisible());
    const auto leads = working->leads();
    ASSERT_FALSE(leads.empty());
    EXPECT_TRUE(leads.front()->focusPolicy() & Qt::TabFocus);
    EXPECT_FALSE(leads.front()->accessibleName().isEmpty());
    QTest::keyClick(leads.front(), Qt::Key_Space);
    ASSERT_TRUE(led_);
    EXPECT_EQ(led_->table, model::TableKind::lines);
}

TEST_F(SeasonPages, TheChosenOrdersAreCopied) {
    openPlace<SeasonPlace>(demoSeason());
    auto* view = in<QTableView>("season.orders.table");
    const auto rows = copiedFrom(*view);
    ASSERT_EQ(rows.size(), 3); // the heads and two rows
    EXPECT_TRUE(rows[0].startsWith(QStringLiteral("Day\tBooking\t")));
    EXPECT_EQ(rows[1].section(QLatin1Char('\t'), 1, 1), view->model()->index(1, 1).data().toString());
    EXPECT_EQ(rows[2].section(QLatin1Char('\t'), 1, 1), view->model()->index(2, 1).data().toString());
    EXPECT_TRUE(said_.startsWith(QStringLiteral("2 row"))) << said_.toStdString();
}

TEST_F(SeasonPages, TheChosenBackupIsCopied) {
    openPlace<SeasonPlace>(demoSeason());
    show("page.season.backups");
    show("season.backups.make");
    auto* view = in<QTableView>("season.backups.table");
    ASSERT_GT(view->model()->rowCount(), 0);
    view->setFocus();
    // Not by the view, which asks what keys are held down: those of the test before may still be.
    view->selectionModel()->setCurrentIndex(view->model()->index(0, 0),
                                            QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    QTest::keySequence(view, QKeySequence::Copy);
    const auto rows = QGuiApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_EQ(rows.size(), 2);
    EXPECT_EQ(rows[1].section(QLatin1Char('\t'), 0, 0), view->model()->index(0, 0).data().toString());
}

TEST_F(SeasonPages, OrdersAreWrittenAsCsv) {
    openPlace<SeasonPlace>(demoSeason());
    const auto* page = bare_->findChild<OrdersPage*>();
    const auto path = folder_.filePath(QStringLiteral("orders.csv"));
    EXPECT_EQ(page->exportTo(path), QString());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto rows = exchange::parseCsv(file.readAll().toStdString());
    ASSERT_TRUE(rows.ok());
    EXPECT_EQ(rows->size(), held().bookings.size() + 1);
    EXPECT_FALSE(page->exportTo(QStringLiteral("/no/such/folder/orders.csv")).isEmpty());
}

TEST_F(SeasonPages, SettingsAreChangedInPlaceAndTheirBasisFollows) {
    openPlace<SeasonPlace>(demoSeason());
    show("page.season.settings");
    auto* form = in<RecordForm>("season.settings.form");
    auto* store = form->field("store_celsius");
    store->control()->setFocus();
    store->setTyped(QStringLiteral("5"));
    QTest::keyClick(store->control(), Qt::Key_Return);
    EXPECT_EQ(held().theSettings().storeCelsius, 5);
    for (const char* bad : {"cold", "999", ""}) {
        store->setTyped(QString::fromUtf8(bad));
        QTest::keyClick(store->control(), Qt::Key_Return);
        EXPECT_EQ(held().theSettings().storeCelsius, 5) << bad;
        EXPECT_FALSE(store->sentence().isEmpty()) << bad;
        QTest::keyClick(store->control(), Qt::Key_Escape);
    }
    auto* currency = form->field("currency");
    currency->setTyped(QStringLiteral("shells"));
    QTest::keyClick(currency->control(), Qt::Key_Return);
    EXPECT_EQ(held().theSettings().currency, "GBP");
    QTest::keyClick(currency->control(), Qt::Key_Escape);
}

TEST_F(SeasonPages, AFileIsReadShownAndOnlyThenTaken) {
    openPlace<SeasonPlace>(emptySeason(2027));
    show("page.season.tables");
    auto* page = bare_->findChild<TablesPage*>();
    chooseTable(model::TableKind::weather);
    const auto before = exchange::exportSeason(held());
    page->readFrom(
        fileOf("weather.csv", "date,min_celsius,max_celsius,kind\r\n2027-05-01,4,17,measured\r\n"));
    EXPECT_EQ(exchange::exportSeason(held()), before) << "reading changes nothing";
    press("season.tables.take");
    EXPECT_EQ(held().weather.size(), 1u);
    EXPECT_TRUE(bench_->undo().isEmpty());
    EXPECT_EQ(exchange::exportSeason(held()), before);
}

TEST_F(SeasonPages, AWrongTableIsSaidAndNothingIsTaken) {
    openPlace<SeasonPlace>(demoSeason());
    show("page.season.tables");
    auto* page = bare_->findChild<TablesPage*>();
    chooseTable(model::TableKind::weather);
    const auto before = exchange::exportSeason(held());
    page->readFrom(fileOf("bookings.csv", "title,event_start\r\nSupper,2027-09-11T18:30\r\n"));
    EXPECT_FALSE(in<QLabel>("season.tables.what")->text().isEmpty());
    EXPECT_FALSE(in<QWidget>("season.tables.take")->isVisible());
    EXPECT_FALSE(page->take());
    EXPECT_EQ(exchange::exportSeason(held()), before);
}

TEST_F(SeasonPages, AnAcceptedWarningIsToldAgain) {
    auto season = demoSeason();
    model::AcceptedFinding quiet;
    quiet.id = Id<model::AcceptedFinding>(1);
    quiet.finding = "stems too short";
    quiet.acceptedOn = *Day::fromYmd(2027, 9, 1);
    season = model::apply(season, model::Edit("accept").put(quiet)).value().season;
    openPlace<SeasonPlace>(season);
    show("page.season.accepted");
    in<RecordTable>("season.accepted.table")->choose(1);
    press("season.accepted.again_button");
    EXPECT_TRUE(held().acceptedFindings.empty());
    EXPECT_TRUE(answer().startsWith(QStringLiteral("Nothing is left so"))) << answer().toStdString();
}

} // namespace withy::ui
