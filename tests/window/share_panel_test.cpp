// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/share_supper.h"
#include "tests/window/window_fixture.h"
#include "ui/bookings/cutting/job_note_form.h"
#include "ui/bookings/cutting/share_card.h"
#include "ui/bookings/cutting/share_panel.h"
#include "ui/common/text_label.h"

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>

namespace withy::ui {

/// The share-out's half of the cutting day, alone in a window.
class SharePanelTest : public WindowTest {
protected:
    ~SharePanelTest() override { panel_.reset(); }

    void open(const model::Season& season) {
        bench_ = std::make_unique<Workbench>(
            store::SeasonFile::create(folder_.filePath(QStringLiteral("share.withy")), season),
            tests::supperBench);
        bench_->waitForPlan();
        panel_ = std::make_unique<SharePanel>(*bench_);
        panel_->resize(760, 900);
        QObject::connect(panel_.get(), &SharePanel::refused, panel_.get(), [this](const QString& s) {
            if (!s.isEmpty()) refused_ = s;
        });
        panel_->show(tests::supper);
        static_cast<QWidget*>(panel_.get())->show();
        QApplication::setActiveWindow(panel_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(panel_.get()));
        rest();
    }

    void rest() {
        panel_->waitForAnswer();
        QApplication::processEvents();
    }

    QString answer() { return panel_->findChild<AnswerLabel*>(QStringLiteral("share.answer"))->plainWords(); }

    QPushButton* button(const char* name) {
        return panel_->findChild<QPushButton*>(QString::fromLatin1(name));
    }

    ShareCard* card(shareout::WayKind kind) {
        for (auto* c : panel_->findChildren<ShareCard*>())
            if (c->isVisible() && c->way() >= 0 &&
                panel_->found()->ladder.ways[static_cast<std::size_t>(c->way())].kind == kind)
                return c;
        return nullptr;
    }

    [[nodiscard]] Pieces jars() const { return bench_->season().lines.find(tests::supperLine)->pieces; }

    std::unique_ptr<Workbench> bench_;
    std::unique_ptr<SharePanel> panel_;
    QString refused_;
};

TEST_F(SharePanelTest, SixtyFourOfSeventyTwoByKeyboardAndBackAgain) {
    open(tests::supperSeason());
    EXPECT_EQ(answer(), QStringLiteral("21 jars at full count, or 24 with one zinnia less in 8 of them"));
    auto* spread = card(shareout::WayKind::spread);
    ASSERT_NE(spread, nullptr);
    EXPECT_TRUE(spread->isChecked());
    spread->setFocus();
    QTest::keyClick(spread, Qt::Key_Down);
    auto* fewer = card(shareout::WayKind::fewerPieces);
    ASSERT_NE(fewer, nullptr);
    EXPECT_TRUE(fewer->isChecked());
    EXPECT_EQ(button("share.make")->text().remove(QLatin1Char('&')), QStringLiteral("Make these 21"));
    EXPECT_EQ(jars(), Pieces(24)); // looking changes nothing
    QTest::keyClick(fewer, Qt::Key_Return);
    rest();
    EXPECT_EQ(jars(), Pieces(21));
    EXPECT_EQ(answer(), QStringLiteral("All 21 jars at full count"));
    ASSERT_EQ(bench_->undo(), QString());
    rest();
    EXPECT_EQ(jars(), Pieces(24));
    EXPECT_EQ(refused_, QString());
}

TEST_F(SharePanelTest, MadePiecesAreWrittenDownWithTheirMinutesWhenAsked) {
    open(tests::supperSeason());
    QTest::mouseClick(button("share.make"), Qt::LeftButton);
    rest();
    auto* minutes = panel_->findChild<QLineEdit*>(QStringLiteral("share.made.minutes"));
    ASSERT_TRUE(minutes && minutes->isVisible());
    QTest::keyClicks(minutes, QStringLiteral("ninety"));
    QTest::keyClick(minutes, Qt::Key_Return);
    EXPECT_TRUE(bench_->season().made.empty()); // said in words, and nothing kept
    minutes->setText(QStringLiteral("90"));
    QTest::keyClick(minutes, Qt::Key_Return);
    rest();
    ASSERT_EQ(bench_->season().made.size(), 1U);
    EXPECT_EQ(bench_->season().made.begin()->minutes, Minutes(90));
    EXPECT_EQ(bench_->season().made.begin()->pieces, Pieces(24));
    EXPECT_TRUE(bench_->season().jobNotes.empty()); // offered, and not made for anybody
}

/// 24 jars want 72 of 64 zinnias, 9 posies 9 of 8 asters: two lines are short, neither by the other.
TEST_F(SharePanelTest, WhatWasTakenIsWrittenDownAsMadeWhateverElseIsLookedAt) {
    auto records = tests::supperRecords(true);
    constexpr Id<model::Plant> aster{7};
    tests::addPlant(records, aster, "Aster, blue", "#6a6fb0");
    tests::addTally(records, aster, 8);
    model::Design posy;
    posy.id = Id<model::Design>(2);
    posy.name = "Posy";
    posy.kind = model::PieceKind::handTied;
    records.put(posy);
    tests::addSlot(records, 6, "Spike", model::Purpose::spike, 1, aster, posy.id);
    model::Line posies;
    posies.id = Id<model::Line>(7);
    posies.booking = tests::supper;
    posies.design = posy.id;
    posies.pieces = Pieces(9);
    records.put(posies);
    open(tests::seasonOf(records));
    const auto fewerOf = [this](Id<model::Line> line) -> ShareCard* {
        if (button("share.others")->isVisible()) QTest::mouseClick(button("share.others"), Qt::LeftButton);
        for (auto* c : panel_->findChildren<ShareCard*>()) {
            if (!c->isVisible() || c->way() < 0) continue;
            const auto& way = panel_->found()->ladder.ways[static_cast<std::size_t>(c->way())];
            if (way.kind == shareout::WayKind::fewerPieces && way.line == line) return c;
        }
        return nullptr;
    };
    auto* fewerJars = fewerOf(tests::supperLine);
    ASSERT_NE(fewerJars, nullptr);
    QTest::mouseClick(fewerJars, Qt::LeftButton);
    QTest::mouseClick(button("share.make"), Qt::LeftButton);
    rest();
    EXPECT_EQ(jars(), Pieces(21));
    auto* fewerPosies = fewerOf(posies.id);
    ASSERT_NE(fewerPosies, nullptr) << "they are short still";
    QTest::mouseClick(fewerPosies, Qt::LeftButton);
    auto* minutes = panel_->findChild<QLineEdit*>(QStringLiteral("share.made.minutes"));
    ASSERT_TRUE(minutes && minutes->isVisible());
    QTest::keyClick(minutes, Qt::Key_Return);
    rest();
    const auto& now = bench_->season();
    ASSERT_EQ(now.made.size(), 2U);
    for (const auto& made : now.made)
        EXPECT_EQ(made.pieces, now.lines.find(made.line)->pieces) << made.line.value;
}

TEST_F(SharePanelTest, AMixIsChosenStepByStepAndTakenAtOnce) {
    open(tests::supperSeason());
    if (button("share.others")->isVisible()) QTest::mouseClick(button("share.others"), Qt::LeftButton);
    auto* swap = card(shareout::WayKind::swap);
    ASSERT_NE(swap, nullptr);
    QTest::mouseClick(swap, Qt::LeftButton);
    ASSERT_TRUE(button("share.mix")->isVisible());
    QTest::mouseClick(button("share.mix"), Qt::LeftButton);
    rest();
    auto* fewer = card(shareout::WayKind::fewerPieces);
    ASSERT_NE(fewer, nullptr);
    QTest::mouseClick(fewer, Qt::LeftButton);
    QTest::mouseClick(button("share.make"), Qt::LeftButton);
    rest();
    EXPECT_EQ(jars(), Pieces(23)); // 64 + 5 = 69 = 23 x 3
    ASSERT_EQ(bench_->undo(), QString());
    EXPECT_EQ(jars(), Pieces(24));
    EXPECT_FALSE(bench_->canUndo());
}

TEST_F(SharePanelTest, TheClientsWordsAreCopiedAndNotedAsTold) {
    open(tests::supperSeason());
    QTest::mouseClick(button("share.tell"), Qt::LeftButton);
    QTest::mouseClick(button("share.client.copy"), Qt::LeftButton);
    EXPECT_TRUE(QApplication::clipboard()->text().contains(QStringLiteral("8 of the 24 jars")));
    QTest::mouseClick(button("share.client.told"), Qt::LeftButton);
    rest();
    ASSERT_EQ(bench_->season().questions.size(), 1U);
    EXPECT_EQ(bench_->season().questions.begin()->answer, "told Fri 10 Sep");
}

TEST_F(SharePanelTest, WithoutATallyItOnlySaysWhatToDo) {
    open(tests::seasonOf(tests::supperRecords(false)));
    EXPECT_TRUE(answer().startsWith(QStringLiteral("Nothing is tallied yet."))) << answer().toStdString();
    EXPECT_FALSE(button("share.make")->isVisible());
}

TEST_F(SharePanelTest, WhatIsTypedInTheNoteStaysWhenOtherPlantsComeIn) {
    open(tests::supperSeason());
    JobNoteForm note(*bench_);
    note.show(tests::supper, {tests::dahlia, tests::zinnia});
    const auto line = [&](const QString& name) { return note.findChild<QLineEdit*>(name); };
    const auto left = [&](Id<model::Plant> plant) {
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the fields that were there
        return line(QStringLiteral("share.note.left.%1").arg(plant.value));
    };
    auto* drooped = note.findChild<QPlainTextEdit*>(QStringLiteral("share.note.drooped"));
    drooped->setPlainText(QStringLiteral("the zinnias by ten"));
    line(QStringLiteral("share.note.minutes"))->setText(QStringLiteral("90"));
    left(tests::zinnia)->setText(QStringLiteral("7"));
    note.show(tests::supper, {tests::zinnia, tests::cosmos}); // another way out was chosen
    EXPECT_EQ(drooped->toPlainText(), QStringLiteral("the zinnias by ten"));
    EXPECT_EQ(line(QStringLiteral("share.note.minutes"))->text(), QStringLiteral("90"));
    EXPECT_EQ(left(tests::zinnia)->text(), QStringLiteral("7"));
    EXPECT_EQ(left(tests::cosmos)->text(), QString());
    note.show(tests::otherSupper, {tests::zinnia, tests::cosmos});
    EXPECT_EQ(drooped->toPlainText(), QString());
    EXPECT_EQ(left(tests::zinnia)->text(), QString());
}

} // namespace withy::ui
