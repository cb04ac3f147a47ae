// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/planned_demo.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/shell_wording.h"

#include <gmock/gmock.h>

#include <set>

/// The demo season has a present of its own, and papers go by the program's.
namespace withy::ui::tests {

namespace {

using testing::HasSubstr;

class DemoDay : public PlannedDemo {};

} // namespace

/// resources/demo/README.md: the garden's present is about 1 June 2027.
TEST_F(DemoDay, TheDemoHasAPresentOfItsOwn) {
    EXPECT_EQ(demoDay(season()), Day::fromYmd(2027, 6, 1));
    EXPECT_FALSE(demoDay(emptySeason(2027)));
    auto settings = season().theSettings();
    settings.placeName = "My own field";
    EXPECT_FALSE(demoDay(model::apply(season(), model::Edit("t").put(settings))->season));
    EXPECT_EQ(keptWords(season(), true, {}, demoDay(season())),
              QStringLiteral("Season 2027, Wren Bank: demo, as if Tue 1 Jun 2027"));
    EXPECT_EQ(keptWords(season(), true, {}), QStringLiteral("Season 2027, Wren Bank"));
}

TEST_F(DemoDay, TheWalkSheetHasTheProgramsToday) {
    const QDateTime printed(QDate(2026, 11, 26), QTime(6, 0));
    PaperOrder order{season(), plan(), std::nullopt, printed};
    order.today = Day::fromYmd(2027, 9, 6);
    const auto sheet = paperOf(PaperKind::walkSheet, order);
    EXPECT_EQ(sheet.key, "Mon 6 Sep");
    EXPECT_THAT(sheet.footPrinted, HasSubstr("26 Nov")) << "printed when it was printed";
}

} // namespace withy::ui::tests
