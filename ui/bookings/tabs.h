// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/booking_tab.h"

#include <QString>

#include <functional>
#include <vector>

namespace withy::ui {

/// One tab of a booking's page.
struct TabEntry {
    const char* id;                    ///< for object names and for leading to it: "stems"
    QString words;                     ///< on the tab: "Stems"
    std::function<BookingTab*()> make; ///< called once, when the tab is first wanted
    BookingTab* tab = nullptr;         ///< null: not yet
};

/// In the order they are shown.
std::vector<TabEntry> bookingTabs(Workbench& bench);

} // namespace withy::ui
