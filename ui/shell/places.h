// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"
#include "ui/shell/rail.h"

#include <vector>

/// Which places there are, in the order of the rail: the only list of them.
namespace withy::ui {

struct PlaceEntry {
    const char* actionId; ///< "go.bookings"
    QString words;
    QString tip;
    RailButton::IconMaker icon;
    Place* place;
};

std::vector<PlaceEntry> makePlaces(Workbench& bench, QWidget* parent);

} // namespace withy::ui
