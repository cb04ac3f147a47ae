// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/opening.h"

#include <gtest/gtest.h>

namespace withy::garden {
namespace {

TEST(Opening, HoursShrinkStageByStage) {
    const OpeningHabit habit{CutStage::tightBud, 72, CutStage::open};
    EXPECT_DOUBLE_EQ(hoursToOpen(habit, CutStage::tightBud), 72);
    EXPECT_DOUBLE_EQ(hoursToOpen(habit, CutStage::showingColour), 48);
    EXPECT_DOUBLE_EQ(hoursToOpen(habit, CutStage::halfOpen), 24);
    EXPECT_DOUBLE_EQ(hoursToOpen(habit, CutStage::open), 0);
    const OpeningHabit later{CutStage::halfOpen, 10, CutStage::open};
    EXPECT_DOUBLE_EQ(hoursToOpen(later, CutStage::tightBud), 10);
    EXPECT_DOUBLE_EQ(hoursToOpen({CutStage::open, 10, CutStage::open}, CutStage::open), 0);
}

struct OpeningRow {
    const char* name;
    OpeningHabit habit;
    double untilDrive;
    double untilEvent;
    CutStage stage;
    OpeningFit fit;
};

TEST(Opening, StageThatIsOpenAtTheEvent) {
    const OpeningHabit bud{CutStage::tightBud, 72, CutStage::open};
    const OpeningHabit tender{CutStage::tightBud, 72, CutStage::showingColour};
    const OpeningRow rows[] = {
        {"days ahead: a tight bud", bud, 70, 80, CutStage::tightBud, OpeningFit::justRight},
        {"exactly at the event's start", bud, 60, 72, CutStage::tightBud, OpeningFit::justRight},
        {"exactly at the drive", bud, 72, 80, CutStage::tightBud, OpeningFit::justRight},
        {"long ahead: open on the road", bud, 90, 100, CutStage::tightBud, OpeningFit::opensBeforeDrive},
        {"two days", bud, 40, 50, CutStage::showingColour, OpeningFit::justRight},
        {"one day", bud, 20, 30, CutStage::halfOpen, OpeningFit::justRight},
        {"between two stages", bud, 30, 40, CutStage::halfOpen, OpeningFit::opensBeforeDrive},
        {"the same day", bud, 5, 8, CutStage::open, OpeningFit::opensBeforeDrive},
        {"no time at all", bud, 0, 0, CutStage::open, OpeningFit::justRight},
        {"always cut open",
         {CutStage::open, 0, CutStage::open},
         20,
         30,
         CutStage::open,
         OpeningFit::justRight},
        {"may not be cut later", tender, 20, 30, CutStage::showingColour, OpeningFit::notOpenInTime},
    };
    for (const OpeningRow& row : rows) {
        SCOPED_TRACE(row.name);
        const StageAdvice advice = adviseStage(row.habit, row.untilDrive, row.untilEvent);
        EXPECT_EQ(advice.stage, row.stage);
        EXPECT_EQ(advice.fit, row.fit);
        EXPECT_DOUBLE_EQ(advice.hoursToOpen, hoursToOpen(row.habit, row.stage));
    }
}

} // namespace
} // namespace withy::garden
