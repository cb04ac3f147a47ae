// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/cover_rows.h"

/// What is said below a short slot: who competes, what one more stem would do, and the ways out.
namespace withy::ui {

/// The level the season promises by.
plan::Level promiseLevel(const model::Season& season);

/// By the likely level: what is short even then.
Stems shortBy(const plan::SlotCover& slot);
/// The plant a slot is spoken of by: its first choice, or the first that was left out.
std::optional<Id<model::Plant>> leadingPlant(const plan::SlotCover& slot);

/// "Wedding, Imogen and Bryn (Sat 18 Sep) has 96 of the dahlia." and so on.
QStringList coverNotes(const CoverView& view, const plan::SlotCover& slot);
/// One for each of the slot's mends.
std::vector<SheetWay> coverWays(const CoverView& view, const plan::SlotCover& slot);

} // namespace withy::ui
