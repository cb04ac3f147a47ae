// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed_plan.h"
#include "ui/logic/measures.h"
#include "ui/logic/shed/scene.h"

namespace withy::ui {

/// The reels and ends of one ribbon's day as bars at one scale, with their cuts, one below the other: what it
/// is at the left, what is cut from it and what stays below it.
struct RibbonSceneRoom {
    double width = 600;
    double row = 30;   ///< height of one bar's row
    double lead = 110; ///< for the words at the left
};

Scene ribbonScene(const model::Season& season, const plan::RibbonCutPlan& plan, const RibbonSceneRoom& room,
                  const SceneLook& look);

/// "20 × 458 mm Supper jar, 4 × 358 mm June jar".
QString cutWords(const model::Season& season, const std::vector<plan::RibbonPieces>& cuts);
/// "reel 9.40 m, 118".
QString barWords(const plan::RibbonBar& bar, Units units);
/// "240 mm goes back", "84 mm waste".
QString leftWords(const plan::RibbonBar& bar, Units units);

} // namespace withy::ui
