// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/booking_tab.h"

#include <QString>

#include <vector>

namespace withy::ui {

/// One tab of a booking's page, after Brief and Pieces.
struct TabEntry {
    const char* id; ///< for object names and for leading to it: "stems"
    QString words;  ///< on the tab: "Stems"
    BookingTab* tab = nullptr;
};

/// Stems, Run-up, Kit, Money, Papers: in the order they are shown.
std::vector<TabEntry> makeBookingTabs(Workbench& bench, QWidget* parent);

} // namespace withy::ui
