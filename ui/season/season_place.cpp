// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/season_place.h"

#include "ui/print/desk_page.h"
#include "ui/season/accepted_page.h"
#include "ui/season/backups_page.h"
#include "ui/season/figure_pages.h"
#include "ui/season/orders_page.h"
#include "ui/season/settings_page.h"
#include "ui/season/tables_page.h"

namespace withy::ui {

SeasonPlace::SeasonPlace(Workbench& bench, QWidget* parent)
    : PagedPlace(bench, "season", tr("Season"),
                 {{"orders", tr("Orders"),
                   [this, &bench] {
                       auto* page = new OrdersPage(bench);
                       connect(page, &OrdersPage::paperWanted, this, [this] { pages().show("papers"); });
                       return page;
                   }},
                  {"settings", tr("Settings"), [&bench] { return new SettingsPage(bench); }},
                  {"rates", tr("Times of work"), [&bench] { return ratesPage(bench); }},
                  {"backups", tr("Backups"),
                   [this, &bench] {
                       auto* page = new BackupsPage(bench);
                       connect(page, &BackupsPage::restoreWanted, this, &SeasonPlace::restoreWanted);
                       return page;
                   }},
                  {"papers", tr("On paper"),
                   [&bench] {
                       return new DeskPage(bench, PaperKind::seasonOrders,
                                           {{tr("The season on paper, as it stands now.")}});
                   }},
                  {"tables", tr("In and out"), [&bench] { return new TablesPage(bench); }},
                  {"accepted", tr("Left so"), [&bench] { return new AcceptedPage(bench); }}},
                 parent) {}

} // namespace withy::ui
