// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs.h"

#include "ui/bookings/tabs/kit_tab.h"
#include "ui/bookings/tabs/money_tab.h"
#include "ui/bookings/tabs/papers_tab.h"
#include "ui/bookings/tabs/run_up_tab.h"
#include "ui/bookings/tabs/stems_tab.h"

#include <QCoreApplication>

namespace withy::ui {

std::vector<TabEntry> makeBookingTabs(Workbench& bench, QWidget* parent) {
    const auto say = [](const char* words) { return QCoreApplication::translate("BookingTabs", words); };
    return {{"stems", say(QT_TRANSLATE_NOOP("BookingTabs", "Stems")), new StemsTab(bench, parent)},
            {"runUp", say(QT_TRANSLATE_NOOP("BookingTabs", "Run-up")), new RunUpTab(bench, parent)},
            {"kit", say(QT_TRANSLATE_NOOP("BookingTabs", "Kit")), new KitTab(bench, parent)},
            {"money", say(QT_TRANSLATE_NOOP("BookingTabs", "Money")), new MoneyTab(bench, parent)},
            {"papers", say(QT_TRANSLATE_NOOP("BookingTabs", "Papers")), new PapersTab(bench, parent)}};
}

} // namespace withy::ui
