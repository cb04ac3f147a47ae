// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/season_text.h"
#include "tests/window/window_fixture.h"
#include "ui/window/paper_dialog.h"

#include <QAction>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QLineEdit>
#include <QProcess>
#include <QSpinBox>
#include <QStatusBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTimer>

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

class BookTheSupper : public WindowTest {
protected:
    void SetUp() override {
        model::Settings s = emptySeason(2027).theSettings();
        open(seasonWithPlants(s), Day::fromYmd(2027, 8, 1));
    }

    /// A jar with three zinnias and two leaves, drawn with mouse and keys.
    void drawTheJar() {
        QTest::keyClick(window_.get(), Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
        type(find<QWidget>("name"), "Supper jar");
        find<QLineEdit>("jar")->setFocus();
        QTest::keyClicks(find<QWidget>("jar"), QStringLiteral("Honey jar"));
        click("addContainer");
        addSlot("Zinnia", "Round", 3);
        addSlot("Ninebark", "Leaf", 2);
    }

    void addSlot(const char* plant, const char* label, int stems) {
        type(find<QComboBox>("plant"), plant);
        type(find<QSpinBox>("stems"), std::to_string(stems).c_str());
        find<QLineEdit>("label")->setFocus();
        QTest::keyClicks(find<QWidget>("label"), QString::fromUtf8(label));
        click("addSlot");
    }

    void book(const char* title, int pieces) {
        QTest::keyClick(window_.get(), Qt::Key_N, Qt::ControlModifier);
        type(find<QWidget>("title"), title);
        type(find<QSpinBox>("count"), std::to_string(pieces).c_str());
        click("add");
    }

    /// Prints with Ctrl+P into a file and gives the words on it.
    std::string printedPrepSheet() {
        const QString path = folder_.filePath(QStringLiteral("prep.pdf"));
        QTimer::singleShot(0, window_.get(), [&] {
            auto* dialog = qobject_cast<PaperDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            EXPECT_TRUE(dialog->keepAs(path));
            dialog->accept();
        });
        window_->findChild<QAction*>(QStringLiteral("paper.prep"))->trigger();
        QProcess reader;
        reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
        EXPECT_TRUE(reader.waitForFinished());
        return reader.readAllStandardOutput().simplified().toStdString();
    }
};

} // namespace

TEST_F(BookTheSupper, FromAnEmptySeasonToThePrintedPrepSheet) {
    drawTheJar();
    book("Library roof supper", 24);
    ASSERT_EQ(season().bookings.size(), 1u);
    ASSERT_EQ(season().lines.size(), 1u);
    const auto& plan = *window_->bench().plan().bookings.begin()->second;
    EXPECT_EQ(plan.stemsNeeded.value, 24 * (3 + 2)); // by hand
    const auto words = printedPrepSheet();
    EXPECT_THAT(words, testing::HasSubstr("Library roof supper"));
    EXPECT_THAT(words, testing::HasSubstr("80 Zinnia")); // 24 x 3 = 72, spare 8, in tens
    EXPECT_THAT(words, testing::HasSubstr("24 Honey jar"));
}

TEST_F(BookTheSupper, OneNumberAndEverythingFollowsAndUndoIsOneKey) {
    drawTheJar();
    book("Library roof supper", 24);
    const auto before = exchange::exportSeason(season());
    auto* pieces = qobject_cast<QSpinBox*>(find<QTableWidget>("pieces")->cellWidget(0, 1));
    type(pieces, "30");
    EXPECT_EQ(window_->bench().plan().bookings.begin()->second->stemsNeeded.value, 150);
    QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(exchange::exportSeason(season()), before);
}

TEST_F(BookTheSupper, BadInputIsSaidAndNothingIsLost) {
    book("Library roof supper", 1);
    const auto before = exchange::exportSeason(season());
    type(find<QWidget>("title"), std::string(201, 'x').c_str());
    EXPECT_TRUE(window_->statusBar()->currentMessage().contains(QStringLiteral("Keep it to 200")));
    EXPECT_EQ(find<QLineEdit>("title")->text(), QStringLiteral("Library roof supper"));
    auto* start = find<QDateTimeEdit>("start");
    start->setDateTime(QDateTime(QDate(2027, 1, 2), QTime(12, 0), Qt::UTC));
    QTest::keyClick(start, Qt::Key_Return);
    EXPECT_TRUE(window_->statusBar()->currentMessage().contains(QStringLiteral("outside the season")));
    EXPECT_EQ(exchange::exportSeason(season()), before);
}

TEST_F(BookTheSupper, WordsAreShownAsTyped) {
    const char* odd = "<b>Réunion</b> 🌻 عيد & co";
    book("plain", 1);
    auto* title = find<QLineEdit>("title"); // pasted: the test library types Latin letters only
    title->setText(QString::fromUtf8(odd));
    QTest::keyClick(title, Qt::Key_Return);
    EXPECT_EQ(season().bookings.begin()->title, odd);
    EXPECT_EQ(find<QLineEdit>("title")->text(), QString::fromUtf8(odd));
}

} // namespace withy::ui
