// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs.h"

#include "ui/bookings/brief_tab.h"
#include "ui/bookings/pieces_tab.h"
#include "ui/bookings/tabs/kit_tab.h"
#include "ui/bookings/tabs/money_tab.h"
#include "ui/bookings/tabs/papers_tab.h"
#include "ui/bookings/tabs/run_up_tab.h"
#include "ui/bookings/tabs/stems_tab.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

template <class T>
std::function<BookingTab*()> making(Workbench& bench) {
    return [&bench] { return new T(bench); };
}

} // namespace

std::vector<TabEntry> bookingTabs(Workbench& bench) {
    const auto say = [](const char* words) { return QCoreApplication::translate("BookingTabs", words); };
    return {{"brief", say(QT_TRANSLATE_NOOP("BookingTabs", "Brief")), making<BriefTab>(bench)},
            {"pieces", say(QT_TRANSLATE_NOOP("BookingTabs", "Pieces")), making<PiecesTab>(bench)},
            {"stems", say(QT_TRANSLATE_NOOP("BookingTabs", "Stems")), making<StemsTab>(bench)},
            {"runUp", say(QT_TRANSLATE_NOOP("BookingTabs", "Run-up")), making<RunUpTab>(bench)},
            {"kit", say(QT_TRANSLATE_NOOP("BookingTabs", "Kit")), making<KitTab>(bench)},
            {"money", say(QT_TRANSLATE_NOOP("BookingTabs", "Money")), making<MoneyTab>(bench)},
            {"papers", say(QT_TRANSLATE_NOOP("BookingTabs", "Papers")), making<PapersTab>(bench)}};
}

} // namespace withy::ui
