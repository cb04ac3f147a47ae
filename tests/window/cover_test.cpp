// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/ninety_stock.h"
#include "tests/window/booking_tabs_fixture.h"
#include "ui/bookings/tabs/cover_cells.h"
#include "ui/bookings/tabs/sheet_table.h"
#include "ui/bookings/tabs/stems_tab.h"
#include "ui/common/text_label.h"
#include "ui/logic/edits.h"

#include <QPushButton>

namespace withy::ui {

namespace {

class CoverPage : public TabTest {
protected:
    [[nodiscard]] QString answer() { return part<AnswerLabel>(QStringLiteral("stems.answer"))->plainWords(); }

    void openEnquiry() {
        openBench(tests::ninetyInStore());
        static_cast<BookingTab&>(showTab<StemsTab>()).show(tests::askedSupper);
        settle();
    }
};

} // namespace

/// Two bookings want the same 90 stems: one press mends it, undo puts it back, by the keyboard alone.
TEST_F(CoverPage, OnePressTakesTheSwapAndUndoRestores) {
    openEnquiry();
    const QString before = answer();
    EXPECT_TRUE(before.contains(QStringLiteral("90 zinnias are short, and one swap would mend it")))
        << before.toStdString();
    auto* swap = part<QPushButton>(QStringLiteral("stems.cover.slot2.1.way.0"));
    ASSERT_NE(swap, nullptr);
    picture("cover-short.png");
    int tabs = 0;
    while (QApplication::focusWidget() != swap && ++tabs < 200)
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : holder_.get(),
                        Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), swap) << "not reached by Tab";
    QTest::keyClick(swap, Qt::Key_Space);
    settle(); // it is taken
    settle(); // and planned
    ASSERT_EQ(bench_->season().agreedSwaps.size(), 1u);
    EXPECT_EQ(answer(), QStringLiteral("30 pieces, 90 stems. All are covered, 90 by other plants."));
    EXPECT_EQ(edits::inWords(bench_->undoName()),
              QStringLiteral("90 Zinnia, salmon stand in for Zinnia, coral"));
    picture("cover-mended.png");
    EXPECT_EQ(bench_->undo(), QString());
    settle();
    EXPECT_TRUE(bench_->season().agreedSwaps.empty());
    EXPECT_EQ(answer(), before);
}

TEST_F(CoverPage, ADoublePressTakesItOnce) {
    openEnquiry();
    auto* buy = part<QPushButton>(QStringLiteral("stems.cover.slot2.1.way.1"));
    ASSERT_NE(buy, nullptr);
    buy->click();
    buy->click();
    settle();
    EXPECT_EQ(bench_->season().stockLots.size(), 2u);
}

TEST_F(CoverPage, EveryMarkSaysInWordsWhatItShows) {
    openBench(demoSeason());
    showTab<StemsTab>({1188, 900});
    const auto& sheet = part<SheetTable>(QStringLiteral("stems.cover"))->sheet();
    ASSERT_FALSE(sheet.rows.empty());
    for (const auto* reach : holder_->findChildren<ReachCell*>())
        EXPECT_FALSE(reach->accessibleName().isEmpty());
    for (const auto& row : sheet.rows) {
        if (row.look != RowLook::body) continue;
        EXPECT_FALSE(row.cells.at(3).words.isEmpty()) << row.key.toStdString();
        for (const auto& s : row.cells.at(1).sources)
            EXPECT_FALSE(s.words.isEmpty()) << row.key.toStdString();
    }
    picture("cover-demo.png");
}

} // namespace withy::ui
