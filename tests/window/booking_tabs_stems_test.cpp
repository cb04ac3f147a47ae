// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/booking_tabs_fixture.h"
#include "ui/bookings/tabs/row_marks.h"
#include "ui/bookings/tabs/sheet_table.h"
#include "ui/bookings/tabs/stems_tab.h"
#include "ui/common/finding_rows.h"
#include "ui/common/text_label.h"
#include "ui/logic/edits.h"

#include <QPushButton>

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

class StemsTabTest : public TabTest {
protected:
    void SetUp() override { openBench(demoSeason()); }

    [[nodiscard]] QString answer() { return part<AnswerLabel>(QStringLiteral("stems.answer"))->plainWords(); }

    [[nodiscard]] SheetTable& rows() { return *part<SheetTable>(QStringLiteral("stems.rows")); }

    [[nodiscard]] FigureButton* figureOf(const QString& plant, int column) {
        for (const auto& row : rows().sheet().rows)
            if (row.rest == plant) return rows().figure(row.key, column);
        return nullptr;
    }
};

TEST_F(StemsTabTest, AnswersWithTheSuppersCounts) {
    showTab<StemsTab>();
    // By hand: 24 x 10 + 38 + 17 = 295 stems, and of each plant a tenth to spare, rounded up. Whole bunches
    // are the cutter's affair and not asked of the garden.
    std::int64_t bare = 0;
    std::int64_t spare = 0;
    for (const auto& need : bench_->plan().bookings.at(supper)->needs) {
        bare += need.need.need.value;
        spare += (need.need.need.value + 9) / 10;
    }
    EXPECT_EQ(bare, 295);
    EXPECT_TRUE(answer().startsWith(
        QStringLiteral("26 pieces, 295 stems, %1 with the spare, 355 to cut in whole bunches.")
            .arg(bare + spare)))
        << answer().toStdString();
    auto* zinnia = figureOf(QStringLiteral("Zinnia, coral"), 2);
    ASSERT_NE(zinnia, nullptr);
    EXPECT_EQ(zinnia->text(), QStringLiteral("80")); // 24 x 3 = 72, a tenth of it 8, in tens: by hand
    EXPECT_EQ(figureOf(QStringLiteral("Zinnia, coral"), 0)->text(), QStringLiteral("72"));
}

TEST_F(StemsTabTest, TheWorkingOpensByKeyAndLeadsToTheSetting) {
    showTab<StemsTab>();
    auto* zinnia = figureOf(QStringLiteral("Zinnia, coral"), 2);
    ASSERT_NE(zinnia, nullptr);
    int tabs = 0;
    while (QApplication::focusWidget() != zinnia && ++tabs < 200)
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : holder_.get(),
                        Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), zinnia) << "not reached by Tab";
    QTest::keyClick(zinnia, Qt::Key_Return);
    settle();
    auto panels = rows().findChildren<WorkingPanel*>();
    ASSERT_EQ(panels.size(), 1);
    EXPECT_TRUE(panels[0]->isVisible());
    EXPECT_GT(panels[0]->mapTo(holder_.get(), QPoint()).y(), zinnia->mapTo(holder_.get(), QPoint()).y());
    QStringList words;
    for (const auto* label : panels[0]->findChildren<TextLabel*>())
        words << label->text();
    EXPECT_TRUE(words.join(QLatin1Char('|')).contains(QStringLiteral("= 80 stems, total")))
        << words.join(QLatin1Char('|')).toStdString();
    picture("stems-working.png");
    // What each line rests on, then what the whole does: the pieces, the design and the plant's bunch; the
    // spare is a setting, as the whole.
    const auto leads = panels[0]->leads();
    QStringList named;
    QWidget* at = zinnia;
    for (auto* lead : leads) {
        QTest::keyClick(at, Qt::Key_Tab);
        ASSERT_EQ(QApplication::focusWidget(), lead);
        named << (lead->accessibleName().isEmpty() ? lead->text() : lead->accessibleName());
        at = lead;
    }
    EXPECT_EQ(named.join(QLatin1Char('|')).toStdString(),
              "Pieces, for 24 pieces, Supper jar|Design, for × 3 stems a piece, Supper jar|"
              "Plant, for 10 stems, bunch|Change the spare");
    ASSERT_EQ(leads.back(), panels[0]->lead());
    QTest::keyClick(leads[1], Qt::Key_Space);
    ASSERT_TRUE(led_);
    EXPECT_EQ(led_->table, model::TableKind::designs);
    QTest::keyClick(panels[0]->lead(), Qt::Key_Space);
    EXPECT_EQ(led_, (model::Ref{model::TableKind::settings, 1}));
    zinnia->setFocus();
    QTest::keyClick(zinnia, Qt::Key_Return);
    EXPECT_FALSE(panels[0]->isVisible());
}

TEST_F(StemsTabTest, AnOpenWorkingFollowsAnEditAndKeepsTheFocus) {
    showTab<StemsTab>();
    auto* zinnia = figureOf(QStringLiteral("Zinnia, coral"), 2);
    ASSERT_NE(zinnia, nullptr);
    zinnia->setFocus();
    QTest::keyClick(zinnia, Qt::Key_Return);
    const auto line = std::find_if(bench_->season().lines.begin(), bench_->season().lines.end(),
                                   [](const auto& l) { return l.booking == supper && l.pieces.value == 24; });
    ASSERT_EQ(bench_->apply(edits::setPieces(bench_->season(), line->id, 30)), QString());
    settle();
    EXPECT_EQ(figureOf(QStringLiteral("Zinnia, coral"), 2)->text(),
              QStringLiteral("100")); // 90 and 9, in tens
    EXPECT_EQ(QApplication::focusWidget(), zinnia);
    EXPECT_TRUE(rows().findChildren<WorkingPanel*>()[0]->isVisible());
}

TEST_F(StemsTabTest, AFindingIsAcceptedUntilItsFactsChange) {
    showTab<StemsTab>();
    auto& findings = *part<FindingRows>(QStringLiteral("stems.findings"));
    ASSERT_FALSE(findings.findings().empty());
    const auto first = findings.findings().front();
    auto* leave = part<QPushButton>(QStringLiteral("stems.findings.0.accept"));
    leave->setFocus();
    QTest::keyClick(leave, Qt::Key_Space);
    settle();
    ASSERT_EQ(bench_->season().acceptedFindings.size(), 1u);
    EXPECT_TRUE(accepted(bench_->season(), first.finding, first.booking));
    auto changed = first.finding;
    changed.numbers.push_back(1);
    EXPECT_FALSE(accepted(bench_->season(), changed, first.booking));
    EXPECT_TRUE(findings.findings().back().accepted);
    EXPECT_EQ(bench_->undo(), QString());
    settle();
    EXPECT_FALSE(accepted(bench_->season(), first.finding, first.booking));
}

TEST_F(StemsTabTest, EmptyAndGoneBookingsAreNoTrouble) {
    auto& tab = showTab<StemsTab>();
    static_cast<BookingTab&>(tab).show(std::nullopt);
    settle();
    static_cast<BookingTab&>(tab).show(supper);
    ASSERT_EQ(bench_->apply(edits::eraseBooking(bench_->season(), supper)), QString());
    settle();
    Id<model::Booking> made;
    ASSERT_EQ(bench_->apply(edits::newBooking(bench_->season(), "Bare", *Day::fromYmd(2027, 9, 20), made)),
              QString());
    static_cast<BookingTab&>(tab).show(made);
    settle();
    EXPECT_TRUE(answer().startsWith(QStringLiteral("Nothing is ordered yet."))) << answer().toStdString();
}

TEST_F(StemsTabTest, LongAndOddNamesStayWithinThePage) {
    auto season = demoSeason();
    for (const auto& d : demoSeason().designs) {
        auto odd = d;
        odd.name = std::string(190, 'W') + std::to_string(d.id.value) + "<b>";
        season.designs.put(odd);
    }
    openBench(season);
    showTab<StemsTab>();
    EXPECT_LE(rows().width(), holder_->width());
    EXPECT_LE(rows().sizeHint().width(), holder_->width() * 2);
    picture("stems-long-names.png");
}

struct Look {
    const char* name;
    QSize size;
    Theme theme;
    double points;
};

TEST_F(StemsTabTest, NothingIsCutOffAtAnySize) {
    const Look looks[] = {{"stems-light-1280.png", {868, 560}, Theme::light, 10.5},
                          {"stems-dark-1280.png", {868, 560}, Theme::dark, 10.5},
                          {"stems-light-1920.png", {1480, 840}, Theme::light, 10.5},
                          {"stems-150.png", {960, 560}, Theme::light, 15.75}};
    for (const auto& look : looks) {
        SCOPED_TRACE(look.name);
        showTab<StemsTab>(look.size, look.theme, look.points);
        figureOf(QStringLiteral("Zinnia, coral"), 2)->setChecked(true);
        settle();
        for (const auto* label : rows().findChildren<TextLabel*>()) {
            if (!label->isVisible()) continue;
            EXPECT_LE(label->mapTo(holder_.get(), QPoint(label->width(), 0)).x(), look.size.width())
                << label->text().toStdString();
            if (!label->wordWrap()) {
                EXPECT_GE(label->width(), label->sizeHint().width()) << label->text().toStdString();
            }
        }
        picture(look.name);
    }
    applyStyle(Theme::light, 10.5);
}

} // namespace

} // namespace withy::ui
