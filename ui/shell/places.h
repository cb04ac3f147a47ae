// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"
#include "ui/shell/rail.h"

#include <functional>
#include <vector>

/// Which places there are, in the order of the rail: the only list of them. Those without an icon are not on
/// the rail: they are reached by their key and left by Esc.
namespace withy::ui {

struct PlaceEntry {
    const char* actionId; ///< "go.bookings"
    QString words;
    QString tip;
    RailButton::IconMaker icon;
    std::function<Place*()> make; ///< called once, when the place is first wanted
    bool wholeStrip = false;      ///< the bloom strip stands above it at its whole height
    QKeySequence keys = {};       ///< of a place that is not on the rail
};

std::vector<PlaceEntry> placesOf(Workbench& bench);

} // namespace withy::ui
