// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"
#include "ui/logic/answers/answer.h"

/// What the garden's pages begin with.
namespace withy::ui {

/// "8 patches of 8 plants; 3 have no walk yet."
Answer patchesAnswer(const model::Season& season);
/// "46 plants, 31 of them in a patch."
Answer plantsAnswer(const model::Season& season);
/// "Last walked on Sun 5 Sep: 8 of 13 patches have a count."
Answer walksAnswer(const model::Season& season);
/// "Measured to Sun 5 Sep, forecast to Sun 12 Sep."
Answer weatherAnswer(const model::Season& season);
Answer pastBloomsAnswer(const model::Season& season);
/// What stands in the store, and what is past its day by `today`.
Answer stockAnswer(const model::Season& season, std::optional<Day> today);

/// The patches as they are walked.
std::vector<const model::Patch*> inWalkingOrder(const model::Season& season);

} // namespace withy::ui
