// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"
#include "tests/support/season_text.h"
#include "tests/window/window_fixture.h"
#include "ui/common/field_edit.h"
#include "ui/common/record_table.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"

#include <QClipboard>
#include <QHeaderView>
#include <QLineEdit>
#include <QMimeData>
#include <QSignalSpy>
#include <QVBoxLayout>

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

using model::TableKind;
using testing::HasSubstr;

class RecordTableTest : public WindowTest {
protected:
    void SetUp() override {
        auto season = model::sample::season();
        for (int i = 1; i <= 3; ++i) {
            auto plant = model::sample::plant(i, "Plant " + std::to_string(i));
            plant.bunch = Stems(10);
            season.plants.put(plant);
            model::Patch patch;
            patch.id = Id<model::Patch>(i);
            patch.plant = plant.id;
            patch.label = "Bed " + std::to_string(i);
            patch.place = i - 1;
            season.patches.put(patch);
        }
        bench = std::make_unique<Workbench>(
            store::SeasonFile::create(folder_.filePath(QStringLiteral("t.withy")), season), std::nullopt);
        RecordTableSpec spec;
        spec.kind = TableKind::patches;
        spec.columns = {"label", "plant", "expected_stems", "under_cover", "way_there", "notes"};
        spec.orderField = "place";
        host = std::make_unique<QWidget>();
        auto* box = new QVBoxLayout(host.get());
        table = new RecordTable(*bench, spec);
        box->addWidget(table);
        host->resize(900, 500);
        host->show();
        QApplication::setActiveWindow(host.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(host.get()));
        table->setFocus();
        choose(0, 0);
    }

    void choose(int row, int column) { table->setCurrentIndex(table->model()->index(row, column)); }

    /// To the open list or else to what has the focus, as a keyboard does.
    void key(Qt::Key k, Qt::KeyboardModifiers held = Qt::NoModifier) {
        QWidget* target = QApplication::activePopupWidget();
        if (!target) target = QApplication::focusWidget();
        QTest::keyClick(target ? target : table, k, held);
        QApplication::processEvents();
    }

    void keys(const char* words) {
        for (const QChar c : QString::fromUtf8(words)) {
            QTest::keyClicks(QApplication::focusWidget(), QString(c));
            QApplication::processEvents();
        }
    }

    QString shown(int row, int column) { return table->model()->index(row, column).data().toString(); }

    std::string order() {
        std::string out;
        for (int row = 0; row < 3; ++row)
            out += shown(row, 0).right(1).toStdString();
        return out;
    }

    std::string season() { return exchange::exportSeason(bench->season()); }

    std::unique_ptr<Workbench> bench;
    std::unique_ptr<QWidget> host;
    RecordTable* table = nullptr;
};

} // namespace

TEST_F(RecordTableTest, TypingEditsEnterKeepsAndGoesDown) {
    choose(0, 2);
    keys("120");
    key(Qt::Key_Return);
    EXPECT_EQ(bench->season().patches.begin()->expectedStems, Stems(120));
    EXPECT_EQ(table->currentIndex().row(), 1);
    keys("80");
    key(Qt::Key_Return);
    EXPECT_EQ(shown(1, 2), QStringLiteral("80"));
    choose(0, 2);
    key(Qt::Key_F2);
    keys("0"); // what stood there was selected
    key(Qt::Key_Escape);
    EXPECT_EQ(shown(0, 2), QStringLiteral("120"));
}

/// What is typed later counts as well: a column of words widens, one of figures is never cut.
TEST_F(RecordTableTest, ColumnsFitWhatIsInThemAlsoLater) {
    const QFontMetrics metrics(typeFont(TypeRole::text));
    const int before = table->columnWidth(0);
    choose(0, 0);
    keys("The bed behind the old water tank");
    key(Qt::Key_Return);
    choose(0, 2);
    keys("1234567");
    key(Qt::Key_Return);
    QApplication::processEvents();
    EXPECT_GT(table->columnWidth(0), before);
    EXPECT_GE(table->columnWidth(2), metrics.horizontalAdvance(shown(0, 2)));
    for (int c = 0; c < table->model()->columnCount(); ++c) {
        SCOPED_TRACE(c);
        EXPECT_GE(table->columnWidth(c), table->horizontalHeader()->sectionSizeHint(c));
    }
    const int prompt = metrics.horizontalAdvance(table->records().addPrompt());
    EXPECT_GE(table->columnWidth(0), prompt);
}

TEST_F(RecordTableTest, DoubleClickEditsAndTabGoesAcross) {
    const auto cell = table->visualRect(table->model()->index(1, 0));
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, cell.center());
    QTest::mouseDClick(table->viewport(), Qt::LeftButton, {}, cell.center());
    keys("Hedge end");
    key(Qt::Key_Tab);
    EXPECT_EQ(shown(1, 0), QStringLiteral("Hedge end"));
    EXPECT_EQ(table->currentIndex().column(), 1);
    key(Qt::Key_Tab);
    key(Qt::Key_Tab); // past the tick, which is not typed
    EXPECT_EQ(table->currentIndex().column(), 4);
    keys("past the butt");
    key(Qt::Key_Return);
    EXPECT_EQ(shown(1, 4), QStringLiteral("past the butt"));
}

TEST_F(RecordTableTest, SpaceAndMouseFlipATick) {
    choose(1, 3);
    key(Qt::Key_Space);
    EXPECT_TRUE(bench->season().patches.find(Id<model::Patch>(2))->underCover);
    const auto cell = table->visualRect(table->model()->index(0, 3));
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {},
                      QPoint(cell.left() + grid(4), cell.center().y()));
    EXPECT_TRUE(bench->season().patches.find(Id<model::Patch>(1))->underCover);
}

TEST_F(RecordTableTest, BadInputStaysInTheCellWithItsSentence) {
    const auto before = season();
    QSignalSpy refused(table, &RecordTable::refused);
    choose(0, 2);
    keys("dozens");
    key(Qt::Key_Return);
    EXPECT_EQ(shown(0, 2), QStringLiteral("dozens"));
    EXPECT_EQ(refused.count(), 1);
    EXPECT_THAT(refused[0][0].toString().toStdString(), HasSubstr("is not a number"));
    EXPECT_EQ(season(), before);
    choose(0, 2);
    key(Qt::Key_F2);
    EXPECT_EQ(qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(), QStringLiteral("dozens"));
    keys("24");
    key(Qt::Key_Return);
    EXPECT_EQ(shown(0, 2), QStringLiteral("24"));
    keys("x"); // refused while the window closes: the words stay
    EXPECT_FALSE(commitFocusedField(host.get()));
    EXPECT_EQ(shown(1, 2), QStringLiteral("x"));
    choose(1, 2);
    key(Qt::Key_Escape);
    EXPECT_EQ(shown(1, 2), QString());
    EXPECT_TRUE(commitFocusedField(host.get()));
}

TEST_F(RecordTableTest, TheBlankRowMakesOneAfterAnother) {
    key(Qt::Key_Insert);
    EXPECT_EQ(table->currentIndex().row(), 3);
    keys("Low field");
    key(Qt::Key_Tab);
    keys("Plant 2");
    key(Qt::Key_Escape); // shuts the list of names
    ASSERT_EQ(table->currentIndex().row(), 3);
    key(Qt::Key_Return);
    ASSERT_EQ(bench->season().patches.size(), 4u);
    EXPECT_EQ(bench->season().patches.find(Id<model::Patch>(4))->label, "Low field");
    EXPECT_EQ(bench->season().patches.find(Id<model::Patch>(4))->place, 3);
    EXPECT_EQ(table->currentIndex().row(), 4); // on to the next
    bench->undo();
    EXPECT_EQ(bench->season().patches.size(), 3u);
}

TEST_F(RecordTableTest, TabGoesOnInTheRecordJustMade) {
    RecordTableSpec spec;
    spec.kind = TableKind::clients;
    spec.columns = {"name", "address"};
    RecordTable clients(*bench, spec, host.get());
    clients.resize(500, 200);
    clients.show();
    clients.setFocus();
    clients.startNewRow();
    keys("Mrs Askew");
    key(Qt::Key_Tab);
    EXPECT_EQ(clients.currentIndex(), clients.model()->index(0, 1));
    keys("Rose Cottage");
    key(Qt::Key_Return);
    ASSERT_EQ(bench->season().clients.size(), 1u);
    EXPECT_EQ(bench->season().clients.begin()->address, "Rose Cottage");
}

TEST_F(RecordTableTest, DeleteTakesOutOrSaysWhatIsInTheWay) {
    QSignalSpy blocked(table, &RecordTable::blocked);
    const auto before = season();
    choose(1, 0);
    key(Qt::Key_Delete);
    EXPECT_EQ(bench->season().patches.size(), 2u);
    EXPECT_EQ(blocked.count(), 0);
    bench->undo();
    EXPECT_EQ(season(), before);
    RecordTableSpec spec;
    spec.kind = TableKind::plants;
    spec.columns = {"name"};
    RecordTable plants(*bench, spec);
    QSignalSpy held(&plants, &RecordTable::blocked);
    plants.choose(1);
    plants.eraseChosen();
    ASSERT_EQ(held.count(), 1);
    EXPECT_EQ(held[0][0].toString().toStdString(), "Plant 1 is in Bed 1. Take it out there first.");
    EXPECT_EQ(season(), before);
}

TEST_F(RecordTableTest, RowsMoveByKeyAndKeepTheChoice) {
    choose(0, 0);
    key(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(order(), "213");
    EXPECT_EQ(table->chosenId(), 1);
    key(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(order(), "231");
    key(Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(order(), "213");
    bench->undo();
    bench->undo();
    bench->undo();
    EXPECT_EQ(order(), "123");
    EXPECT_EQ(table->chosenId(), 1);
}

TEST_F(RecordTableTest, CopyCutAndPaste) {
    const auto before = season();
    table->selectRow(0);
    key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QApplication::clipboard()->text(), QStringLiteral("Bed 1\tPlant 1\t\tno\t\t"));
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(bench->season().patches.size(), 4u);
    bench->undo();
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(bench->season().patches.size(), 2u);
    bench->undo();
    EXPECT_EQ(season(), before);
    QSignalSpy refused(table, &RecordTable::refused);
    QApplication::clipboard()->setText(QStringLiteral("booking\tdate\tamount\nSupper\t1 jul\t50\n"));
    key(Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(refused.count(), 1);
    EXPECT_EQ(refused[0][0].toString().toStdString(),
              "These rows are payments, and this is a list of patches. Paste them there.");
    QApplication::clipboard()->setText(QStringLiteral("12\n30\n"));
    choose(1, 2);
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(shown(1, 2) + shown(2, 2), QStringLiteral("1230"));
}

TEST_F(RecordTableTest, MarkupEmojiAndLongTextAreShownAsTyped) {
    for (const QString& odd : {QStringLiteral("<b>x</b>&amp;"), QStringLiteral("🌻"), QStringLiteral("عيد"),
                               QString(10000, QLatin1Char('y'))}) {
        EXPECT_TRUE(table->model()->setData(table->model()->index(0, 5), odd));
        EXPECT_EQ(text(bench->season().patches.begin()->notes), odd);
        EXPECT_EQ(shown(0, 5), odd);
        table->grab(); // paints without a word from Qt
    }
    EXPECT_FALSE(table->model()->setData(table->model()->index(0, 5), QString(10001, QLatin1Char('y'))));
}

TEST_F(RecordTableTest, ChosenIsToldAndSurvivesChangesElsewhere) {
    QSignalSpy chosen(table, &RecordTable::chosen);
    choose(2, 0);
    ASSERT_EQ(chosen.count(), 1);
    std::int64_t id = 0;
    bench->apply(edits::addNamed(bench->season(), TableKind::plants, QStringLiteral("Aster"), id));
    bench->apply(edits::eraseRecords(bench->season(), {{TableKind::patches, 1}}));
    EXPECT_EQ(table->chosenId(), 3);
    EXPECT_EQ(table->chosenIds(), std::vector<std::int64_t>{3});
    choose(0, 2);
    keys("4"); // an open editor
    bench->apply(edits::setField(bench->season(), {TableKind::patches, 3}, "label", std::string("Far bed")));
    keys("8");
    key(Qt::Key_Return);
    EXPECT_EQ(shown(0, 2), QStringLiteral("48"));
    EXPECT_EQ(shown(1, 0), QStringLiteral("Far bed"));
}

TEST_F(RecordTableTest, RowsKeepTheGridAndTabLeavesTheTable) {
    EXPECT_EQ(table->rowHeight(0), tableRow());
    EXPECT_FALSE(table->tabKeyNavigation());
    EXPECT_EQ(table->accessibleName(), QStringLiteral("patches"));
    EXPECT_EQ(table->objectName(), QStringLiteral("patch.table"));
}

} // namespace withy::ui
