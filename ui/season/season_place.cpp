// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/season_place.h"

#include "ui/common/place_frame.h"
#include "ui/season/accepted_page.h"
#include "ui/season/backups_page.h"
#include "ui/season/figure_pages.h"
#include "ui/season/orders_page.h"
#include "ui/season/papers_page.h"
#include "ui/season/settings_page.h"
#include "ui/season/tables_page.h"

namespace withy::ui {

SeasonPlace::SeasonPlace(Workbench& bench, QWidget* parent) : Place(bench, parent) {
    auto* orders = new OrdersPage(bench);
    auto* backups = new BackupsPage(bench);
    connect(backups, &BackupsPage::restoreWanted, this, &SeasonPlace::restoreWanted);
    pages_ = new SubPages("season", tr("Season"),
                          {{"orders", tr("Orders"), orders},
                           {"settings", tr("Settings"), new SettingsPage(bench)},
                           {"months", tr("Usual months"), normalsPage(bench)},
                           {"rates", tr("Times of work"), ratesPage(bench)},
                           {"backups", tr("Backups"), backups},
                           {"papers", tr("On paper"), new PapersPage(bench)},
                           {"tables", tr("In and out"), new TablesPage(bench)},
                           {"accepted", tr("Kept quiet"), new AcceptedPage(bench)}});
    connect(orders, &OrdersPage::paperWanted, this, [this] { pages_->show("papers"); });
    frame(*this, *pages_);
}

void SeasonPlace::addActions(Actions& actions) {
    pages_->addActions(actions);
}

bool SeasonPlace::goTo(const model::Ref& ref) {
    return pages_->goTo(ref);
}

QString SeasonPlace::helpPage() const {
    return QStringLiteral("season");
}

void SeasonPlace::enter() {
    pages_->enter();
}

} // namespace withy::ui
