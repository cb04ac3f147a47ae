// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/season_place.h"

#include "ui/season/accepted_page.h"
#include "ui/season/backups_page.h"
#include "ui/season/figure_pages.h"
#include "ui/season/orders_page.h"
#include "ui/season/papers_page.h"
#include "ui/season/settings_page.h"
#include "ui/season/tables_page.h"

namespace withy::ui {

SeasonPlace::SeasonPlace(Workbench& bench, QWidget* parent)
    : PagedPlace(bench, "season", tr("Season"),
                 {{"orders", tr("Orders"), new OrdersPage(bench)},
                  {"settings", tr("Settings"), new SettingsPage(bench)},
                  {"months", tr("Usual months"), normalsPage(bench)},
                  {"rates", tr("Times of work"), ratesPage(bench)},
                  {"backups", tr("Backups"), new BackupsPage(bench)},
                  {"papers", tr("On paper"), new PapersPage(bench)},
                  {"tables", tr("In and out"), new TablesPage(bench)},
                  {"accepted", tr("Kept quiet"), new AcceptedPage(bench)}},
                 parent) {
    connect(static_cast<BackupsPage*>(pages().page("backups")), &BackupsPage::restoreWanted, this,
            &SeasonPlace::restoreWanted);
    connect(static_cast<OrdersPage*>(pages().page("orders")), &OrdersPage::paperWanted, this,
            [this] { pages().show("papers"); });
}

} // namespace withy::ui
