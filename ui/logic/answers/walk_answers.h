// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/answers/answer.h"
#include "ui/logic/edits/walk_edits.h"

#include <array>
#include <map>

/// What a walk was expected to find, and what it says so far.
namespace withy::ui {

/// What the forecast held of one patch before this walk.
struct WalkExpectation {
    std::array<std::optional<std::int64_t>, 3> likely; ///< by WalkCount; blank: no forecast
    std::int64_t week = 0;                             ///< likely to be had within the week, ready ones too
    double total = 0;                                  ///< stems of the whole flowering
    std::int64_t fortnight = 0; ///< hoped for within a fortnight: nought is not in bloom
};

using WalkExpectations = std::map<Id<model::Patch>, WalkExpectation>;

/// The forecast as it would be without the walks of that day and of later ones. Takes a while on a large
/// season: not for the thread that paints.
WalkExpectations walkExpectations(const model::Season& season, Day day);

/// Nothing is to be expected there within a fortnight. A patch without a forecast may hold anything.
bool isOutOfBloom(const WalkExpectations& expected, Id<model::Patch> patch);

/// Likely stems within the week by the plan as it is; blank: no forecast of the patch (yet).
std::optional<std::int64_t> likelyThisWeek(const plan::Plan& plan, Id<model::Patch> patch, Day day);

/// "5 of 8 patches counted: 312 ready now, where 352 were expected."
Answer walkEntryAnswer(const model::Season& season, Day day, const WalkExpectations& expected);

/// Of patches counted out of their usual days, where nothing was expected nor is: how many stand, and against
/// which date. Empty when there is none.
QString walkOutOfDays(const model::Season& season, const plan::Plan& plan, Day day,
                      const WalkExpectations& expected);

/// What is odd about a count, said beside it; it is taken all the same. Mostly empty.
QString countCaution(const model::Walk& walk, edits::WalkCount count, const WalkExpectation& expected);
/// Why a walk of that day cannot be kept: it is out of the season. Empty when it can.
QString walkDayRefusal(const model::Season& season, Day day);
/// What is odd about the day: it has not come yet.
QString walkDayCaution(Day day, std::optional<Day> today);
/// "What this walk changes", in a line: "Tunnel side: 46 likely this week, 52 before."
QString changeWords(const QString& patch, std::int64_t before, std::int64_t now);

} // namespace withy::ui
