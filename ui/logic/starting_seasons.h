// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/model/edit.h"

#include <optional>

namespace withy::ui {

/// A season with settings for `year` and nothing else: a place in the middle of England, to be changed.
model::Season emptySeason(int year);
/// The same with the plant catalogue in it.
model::Season seasonWithPlants(const model::Settings& settings);
/// The invented demo season compiled into the program.
model::Season demoSeason();
/// The demo season's own present (resources/demo/README.md): the demo is looked at as if on this day,
/// whenever it is opened. Blank for every other season, and for a demo whose place or dates were made one's
/// own.
std::optional<Day> demoDay(const model::Season& season);

} // namespace withy::ui
