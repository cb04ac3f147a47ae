// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/opening.h"

#include <algorithm>

namespace withy::garden {

namespace {

constexpr double slack = 1e-9; ///< hours, for sums that should be equal

int stepsToOpen(CutStage stage) {
    return static_cast<int>(CutStage::open) - static_cast<int>(stage);
}

} // namespace

double hoursToOpen(const OpeningHabit& habit, CutStage stage) {
    const int all = stepsToOpen(habit.listed);
    const int left = std::min(stepsToOpen(stage), all);
    return all == 0 ? 0 : habit.hours * left / all;
}

StageAdvice adviseStage(const OpeningHabit& habit, double untilDrive, double untilEvent) {
    StageAdvice advice;
    for (int s = static_cast<int>(habit.listed); s <= static_cast<int>(habit.furthest); ++s) {
        advice.stage = static_cast<CutStage>(s);
        advice.hoursToOpen = hoursToOpen(habit, advice.stage);
        if (advice.hoursToOpen <= untilEvent + slack) {
            // A plant that is to be cut open anyway is as it should be.
            const bool early = habit.listed != CutStage::open && advice.hoursToOpen < untilDrive - slack;
            advice.fit = early ? OpeningFit::opensBeforeDrive : OpeningFit::justRight;
            return advice;
        }
    }
    advice.fit = OpeningFit::notOpenInTime;
    return advice;
}

} // namespace withy::garden
