// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/bookings_fixture.h"
#include "tests/window/kept_paper.h"
#include "ui/bookings/cutting/cutting_day.h"
#include "ui/bookings/cutting/share_card.h"
#include "ui/bookings/cutting/share_panel.h"
#include "ui/bookings/cutting/tally_panel.h"
#include "ui/bookings/cutting/tally_row_view.h"
#include "ui/logic/format.h"

#include <QPushButton>

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

/// A cutting day from an empty tally to the printed make-up cards, once by keyboard alone and once by mouse.
class CuttingFlow : public BookingsTest {
protected:
    void SetUp() override {
        BookingsTest::SetUp();
        openPlace(demoSeason(), Day::parse("2027-09-10"), {1600, 900});
        place_->choose(Id<model::Booking>(1));
        settle();
        presses_ = 0;
    }

    [[nodiscard]] const std::vector<TallyRowView*>& rows() { return place_->cuttingDayPage().tally().rows(); }

    [[nodiscard]] SharePanel& share() { return *place_->cuttingDayPage().findChild<SharePanel*>(); }

    void answered() {
        share().waitForAnswer();
        QApplication::processEvents();
    }

    /// What each row asks for, but of the second eight too few.
    [[nodiscard]] std::int64_t found(std::size_t i) {
        const auto& row = rows().at(i)->row();
        return row.need + row.spare > 8 && i == 1 ? row.need - 8 : row.need + row.spare;
    }

    void keepAs(const QString& path) {
        tests::keepPaperAs(path);
        presses_ += 2;
    }

    void expectTheCards(const QString& pdf, int wanted) {
        const std::string cards = tests::pdfWords(pdf);
        EXPECT_THAT(cards, testing::HasSubstr("Make-up card"));
        for (const auto& line : now().lines) {
            if (line.booking != *place_->chosen()) continue;
            EXPECT_THAT(cards, testing::HasSubstr(now().designs.find(line.design)->name));
        }
        ASSERT_NE(share().found(), nullptr);
        for (const auto& group : share().found()->plan.share.lines.front().groups)
            EXPECT_THAT(cards, testing::HasSubstr(std::to_string(group.pieces.value)));
        RecordProperty("presses", presses_);
        std::printf("presses: %d for %zu plants\n", presses_, rows().size());
        EXPECT_LE(presses_, wanted);
    }

    /// The key of a button in view, as Alt and its letter would press it.
    void pressButton(const char* name) {
        QPushButton* button = nullptr;
        for (auto* b : host_->findChildren<QPushButton*>(QString::fromLatin1(name)))
            if (b->isVisible()) button = b;
        ASSERT_NE(button, nullptr) << name;
        ASSERT_FALSE(button->shortcut().isEmpty()) << name << " has a letter of its own";
        button->setFocus(Qt::ShortcutFocusReason);
        QTest::keyClick(button, Qt::Key_Space);
        settle();
        ++presses_;
    }

    void clickButton(const char* name) {
        QPushButton* button = nullptr;
        for (auto* b : host_->findChildren<QPushButton*>(QString::fromLatin1(name)))
            if (b->isVisible()) button = b;
        ASSERT_NE(button, nullptr) << name;
        clickOn(button);
    }
};

} // namespace

TEST_F(CuttingFlow, ByKeyboardAlone) {
    press(Qt::Key_T, Qt::ControlModifier);
    if (!place_->atTheCuttingDay()) trigger("booking.cutting");
    ASSERT_TRUE(place_->atTheCuttingDay());
    const auto count = rows().size();
    ASSERT_GE(count, 5u);
    for (std::size_t i = 0; i < count; ++i) {
        ASSERT_EQ(QApplication::focusWidget(), &rows().at(i)->count()) << i;
        typeWords(std::to_string(found(i)).c_str());
        press(Qt::Key_Return);
    }
    answered();
    ASSERT_NE(share().found(), nullptr);
    pressButton("share.make");
    answered();
    typeWords("150");
    press(Qt::Key_Return);
    answered();
    EXPECT_FALSE(now().made.empty());
    pressButton("share.card");
    pressButton("paper.pdfButton");
    const QString pdf = folder_.filePath(QStringLiteral("keys.pdf"));
    keepAs(pdf);
    expectTheCards(pdf, static_cast<int>(2 * count) + 10);
}

TEST_F(CuttingFlow, ByMouse) {
    place_->page().showTab(QStringLiteral("stems"));
    settle();
    clickButton("stems.cutting_day");
    ASSERT_TRUE(place_->atTheCuttingDay());
    const auto count = rows().size();
    int clicks = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const auto stems = found(i);
        for (std::int64_t ten = 0; ten < stems / 10; ++ten, ++clicks)
            clickOn(rows().at(i)->findChild<QPushButton*>(QStringLiteral("tally.ten")));
        for (std::int64_t one = 0; one < stems % 10; ++one, ++clicks)
            clickOn(rows().at(i)->findChild<QPushButton*>(QStringLiteral("tally.more")));
        EXPECT_EQ(rows().at(i)->row().cut, stems) << i;
    }
    answered();
    clickButton("share.make");
    answered();
    clickButton("share.made.keep");
    answered();
    EXPECT_FALSE(now().made.empty());
    clickButton("share.card");
    clickButton("paper.pdfButton");
    const QString pdf = folder_.filePath(QStringLiteral("mouse.pdf"));
    keepAs(pdf);
    expectTheCards(pdf, clicks + 7);
}

} // namespace withy::ui
