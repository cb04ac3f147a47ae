// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/shed/shelf_rows.h"

/// How the Kit tab's figures of one day came about, a line for each booking that has some then.
namespace withy::ui {

/// What is out with others, or used by them before, and what is broken.
Working kitOthersWorking(const model::Season& season, const plan::ShedPlan& shed, const model::Ref& item,
                         Id<model::Booking> booking, const KitOnDay& on);
/// Needed, with the others' and the broken ones, less what there is: what is short, or left.
Working kitShortWorking(const model::Season& season, const plan::ShedPlan& shed, const model::Ref& item,
                        Id<model::Booking> booking, const KitOnDay& on);

} // namespace withy::ui
