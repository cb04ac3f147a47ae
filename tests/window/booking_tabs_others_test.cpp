// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/booking_tabs_fixture.h"
#include "ui/bookings/brief_tab.h"
#include "ui/bookings/piece_row_view.h"
#include "ui/bookings/pieces_tab.h"
#include "ui/bookings/tabs/kit_tab.h"
#include "ui/bookings/tabs/money_tab.h"
#include "ui/bookings/tabs/run_up_tab.h"
#include "ui/bookings/tabs/sheet_table.h"
#include "ui/common/drawn_design.h"
#include "ui/common/figure.h"
#include "ui/common/text_label.h"
#include "ui/logic/format.h"

#include <QLineEdit>
#include <QPushButton>

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

class OtherTabs : public TabTest {
protected:
    void SetUp() override { openBench(demoSeason()); }

    QString answer(const char* name) {
        return part<AnswerLabel>(QString::fromUtf8(name) + QStringLiteral(".answer"))->plainWords();
    }
};

TEST_F(OtherTabs, AfterMidnightTheBriefSpeaksOfTheNewDay) {
    showTab<BriefTab>(); // on Monday 6 September
    EXPECT_TRUE(answer("brief").endsWith(QStringLiteral("Two are needed by Wednesday.")))
        << answer("brief").toStdString();
    bench_->setToday(Day::fromYmd(2027, 9, 9));
    EXPECT_TRUE(answer("brief").endsWith(QStringLiteral("Two were needed before today.")))
        << answer("brief").toStdString();
}

TEST_F(OtherTabs, AMissingCountIsTypedInTheKitItself) {
    auto season = demoSeason();
    auto jar = *season.containers.find(Id<model::Container>(1));
    jar.owned.reset();
    season.containers.put(jar);
    openBench(season);
    showTab<KitTab>();
    EXPECT_TRUE(answer("kit").contains(QStringLiteral("nobody has counted yet")))
        << answer("kit").toStdString();
    auto* field = part<SheetTable>(QStringLiteral("kit.rows"))->findChild<QLineEdit*>();
    ASSERT_NE(field, nullptr);
    field->setFocus();
    QTest::keyClicks(field, QStringLiteral("20"));
    QTest::keyClick(field, Qt::Key_Return);
    settle();
    EXPECT_EQ(bench_->season().containers.find(jar.id)->owned, 20);
    EXPECT_TRUE(answer("kit").startsWith(QStringLiteral("Short: 4 Honey jar"))) // 24 needed
        << answer("kit").toStdString();
}

// 24 needed of the 20 there are: 4 short, and the figure says of whom and leads to the shelf.
TEST_F(OtherTabs, WhatIsShortOpensItsWorkingAndLeads) {
    auto season = demoSeason();
    auto jar = *season.containers.find(Id<model::Container>(1));
    jar.owned = 20;
    season.containers.put(jar);
    openBench(season);
    showTab<KitTab>();
    auto* rows = part<SheetTable>(QStringLiteral("kit.rows"));
    auto* lacking = rows->figure(QStringLiteral("container1"), 3);
    ASSERT_NE(lacking, nullptr);
    EXPECT_EQ(lacking->text().toStdString(), "4");
    EXPECT_TRUE(lacking->property("asks").toBool());
    lacking->setFocus();
    QTest::keyClick(lacking, Qt::Key_Return);
    settle();
    auto* panel = rows->findChild<WorkingPanel*>();
    ASSERT_NE(panel, nullptr);
    ASSERT_TRUE(panel->isVisible());
    picture("kit-working.png");
    QTest::keyClick(panel->lead(), Qt::Key_Space);
    EXPECT_EQ(led_, (model::Ref{model::TableKind::containers, 1}));
}

TEST_F(OtherTabs, ThePiecesTotalOpensOneWorkingAtATime) {
    showTab<PiecesTab>();
    auto* making = part<FigureButton>(QStringLiteral("pieces.making"));
    auto* worth = part<FigureButton>(QStringLiteral("pieces.worth"));
    EXPECT_EQ(worth->text(),
              amount(bench_->plan().bookings.at(supper)->money->list.total, bench_->season().theSettings()));
    making->setFocus();
    QTest::keyClick(making, Qt::Key_Return);
    worth->setFocus();
    QTest::keyClick(worth, Qt::Key_Return);
    settle();
    EXPECT_FALSE(making->isChecked());
    int open = 0;
    for (auto* panel : holder_->findChildren<WorkingPanel*>()) {
        if (!panel->isVisible()) continue;
        ++open;
        ASSERT_FALSE(panel->leads().empty());
    }
    EXPECT_EQ(open, 1);
    picture("pieces-working.png");
}

TEST_F(OtherTabs, ASumOfMoneyLeadsToWhatEachLineRestsOn) {
    showTab<MoneyTab>();
    auto* sums = part<SheetTable>(QStringLiteral("money.sums"));
    auto* income = sums->figure(QStringLiteral("income"), 0);
    ASSERT_NE(income, nullptr);
    income->setFocus();
    QTest::keyClick(income, Qt::Key_Return);
    settle();
    picture("money-working.png");
    auto* panel = sums->findChild<WorkingPanel*>();
    ASSERT_NE(panel, nullptr);
    const auto leads = panel->leads();
    ASSERT_GE(leads.size(), 2u);
    QTest::keyClick(income, Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), leads[0]);
    QTest::keyClick(leads[0], Qt::Key_Space);
    ASSERT_TRUE(led_);
    EXPECT_EQ(led_->table, model::TableKind::lines);
}

TEST_F(OtherTabs, AReelThatIsRefusedStaysInItsField) {
    auto season = demoSeason();
    std::int64_t ribbon = 0;
    for (const auto& need : bench_->plan().bookings.at(supper)->kit.ribbons)
        ribbon = need.ribbon.value;
    for (const auto& length : demoSeason().ribbonLengths)
        if (length.ribbon.value == ribbon) season.ribbonLengths.erase(length.id);
    openBench(season);
    const QString path = bench_->path();
    bench_.reset();
    bench_ = std::make_unique<Workbench>(store::SeasonFile::open(path, store::SeasonFile::Mode::read),
                                         Day::fromYmd(2027, 9, 6));
    bench_->waitForPlan();
    showTab<KitTab>();
    auto* field = part<QLineEdit>(QStringLiteral("kit.reel%1").arg(ribbon));
    field->setFocus();
    QTest::keyClicks(field, QStringLiteral("20 m"));
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_FALSE(refused_.isEmpty());
    EXPECT_EQ(field->text(), QStringLiteral("20 m"));
    holder_.reset(); // it asks once more when it is left
}

TEST_F(OtherTabs, ALineWithAnotherDesignShowsThatOne) {
    auto& tab = showTab<PiecesTab>();
    auto* row = tab.findChild<PieceRowView*>();
    ASSERT_NE(row, nullptr);
    auto line = *bench_->season().lines.find(row->line());
    for (const auto was = line.design; const auto& design : bench_->season().designs)
        if (design.id != was) line.design = design.id;
    ASSERT_TRUE(bench_->take(model::Edit("t").put(line)));
    settle();
    const QString name = text(bench_->season().designs.find(line.design)->name);
    EXPECT_TRUE(row->findChild<DrawnDesign*>()->accessibleName().contains(name)) << name.toStdString();
}

TEST_F(OtherTabs, ANarrowListOfPiecesKeepsWithoutItsHeads) {
    QWidget room; // without a layout, which would keep it as wide as its widest row
    auto& tab = *new PiecesTab(*bench_, &room);
    tab.setGeometry(0, 0, 420, 640);
    room.resize(900, 640);
    room.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&room));
    static_cast<BookingTab&>(tab).show(supper);
    settle();
    const auto heads = [&] {
        int seen = 0;
        for (const auto* label : tab.findChildren<TextLabel*>())
            seen += label->text() == QStringLiteral("Design, and where it stands") && label->isVisible();
        return seen;
    };
    EXPECT_EQ(heads(), 0);
    auto line = *bench_->season().lines.find(tab.findChild<PieceRowView*>()->line());
    line.pieces = Pieces(line.pieces.value + 1);
    ASSERT_TRUE(bench_->take(model::Edit("t").put(line)));
    settle();
    EXPECT_EQ(heads(), 0);
    tab.resize(900, 640);
    settle();
    EXPECT_EQ(heads(), 1);
}

TEST_F(OtherTabs, ARibbonNobodyMeasuredIsMeasuredThere) {
    auto season = demoSeason();
    std::int64_t ribbon = 0;
    for (const auto& need : bench_->plan().bookings.at(supper)->kit.ribbons)
        ribbon = need.ribbon.value;
    for (const auto& length : demoSeason().ribbonLengths)
        if (length.ribbon.value == ribbon) season.ribbonLengths.erase(length.id);
    openBench(season);
    showTab<KitTab>();
    auto* field = part<QLineEdit>(QStringLiteral("kit.reel%1").arg(ribbon));
    field->setFocus();
    QTest::keyClicks(field, QStringLiteral("a lot"));
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_FALSE(refused_.isEmpty());
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("25 m"));
    QTest::keyClick(field, Qt::Key_Return);
    settle();
    EXPECT_EQ(bench_->plan().bookings.at(supper)->kit.ribbons.front().onHand, Millimetres(25000));
}

TEST_F(OtherTabs, MoneyAddsUpAndSaysItInASentence) {
    showTab<MoneyTab>();
    const auto& m = *bench_->plan().bookings.at(supper)->money;
    const auto& s = bench_->season().theSettings();
    EXPECT_TRUE(answer("money").startsWith(amount(m.split.asked, s) + QStringLiteral(" to pay")))
        << answer("money").toStdString();
    EXPECT_TRUE(answer("money").contains(QStringLiteral("£33.70 paid")))
        << answer("money").toStdString(); // the demo's deposit
    for (const auto* label : holder_->findChildren<QLabel*>())
        EXPECT_FALSE(label->text().contains(QStringLiteral("tax"), Qt::CaseInsensitive));
}

TEST_F(OtherTabs, APriceIsTypedInItsRow) {
    showTab<MoneyTab>();
    auto* field = part<SheetTable>(QStringLiteral("money.prices"))->findChild<QLineEdit*>();
    ASSERT_NE(field, nullptr);
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("10"));
    QTest::keyClick(field, Qt::Key_Return);
    settle();
    const auto first = bench_->plan().bookings.at(supper)->lines.front().line;
    EXPECT_EQ(bench_->season().lines.find(first)->unitPrice, Money{1000});
}

TEST_F(OtherTabs, NoLabelIsCutOffAtAnySize) {
    struct Look {
        const char* suffix;
        QSize size;
        Theme theme;
        double points;
    };

    const Look looks[] = {{"light-1280", {868, 560}, Theme::light, 10.5},
                          {"dark-1280", {868, 560}, Theme::dark, 10.5},
                          {"light-1920", {1480, 840}, Theme::light, 10.5},
                          {"150", {960, 560}, Theme::light, 15.75}};
    const auto expectWhole = [this](const char* tab) {
        SCOPED_TRACE(tab);
        for (const auto* label : holder_->findChildren<TextLabel*>()) {
            if (!label->isVisible() || label->wordWrap()) continue;
            EXPECT_GE(label->width(), label->sizeHint().width()) << label->text().toStdString();
        }
    };
    for (const auto& look : looks) {
        SCOPED_TRACE(look.suffix);
        showTab<RunUpTab>(look.size, look.theme, look.points);
        expectWhole("run-up");
        showTab<KitTab>(look.size, look.theme, look.points);
        expectWhole("kit");
        showTab<MoneyTab>(look.size, look.theme, look.points);
        expectWhole("money");
    }
    applyStyle(Theme::light, 10.5);
}

} // namespace

} // namespace withy::ui
