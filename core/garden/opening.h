// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace withy::garden {

/// How far a flower is open, tightest first.
enum class CutStage { tightBud, showingColour, halfOpen, open };

/// How one plant opens after cutting. Hours are at 20 C; other temperatures scale as ageing does.
struct OpeningHabit {
    CutStage listed = CutStage::tightBud; ///< the handbook's stage to cut at
    double hours = 0;                     ///< from there to open, at 20 C
    CutStage furthest = CutStage::open;   ///< past this it bruises or will not travel
};

enum class OpeningFit {
    justRight,        ///< opens between the drive and the event
    opensBeforeDrive, ///< open in time, but already on the road; never said of one listed as open
    notOpenInTime,    ///< even cut at the furthest stage it opens after the event's start
};

struct StageAdvice {
    CutStage stage = CutStage::open;
    OpeningFit fit = OpeningFit::justRight;
    double hoursToOpen = 0; ///< from that stage, at 20 C
};

/// Hours at 20 C from `stage` to open. The steps between stages are taken as equally long (common
/// practice, no source). A stage tighter than the listed one counts as the listed one.
double hoursToOpen(const OpeningHabit& habit, CutStage stage);

/// The tightest stage, from the listed one to the furthest, that is open when the event starts: it
/// travels best and opens latest. Never tighter than listed, as such buds may not open at all.
/// `untilDrive`, `untilEvent`: hours of opening, at 20 C, that the stem gets after the cut.
StageAdvice adviseStage(const OpeningHabit& habit, double untilDrive, double untilEvent);

} // namespace withy::garden
