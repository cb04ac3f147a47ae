// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/action_finder.h"

namespace withy::ui {

class SeasonView;

/// Everything in the season that has a name and a place of its own.
std::vector<ActionFinder::Target> findTargets(SeasonView& view);

} // namespace withy::ui
