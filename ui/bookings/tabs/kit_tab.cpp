// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/kit_tab.h"

#include "ui/bookings/tabs/sheet_table.h"
#include "ui/logic/models/kit_rows.h"

namespace withy::ui {

KitTab::KitTab(Workbench& bench, QWidget* parent)
    : SheetTab(bench, QStringLiteral("kit"), parent), rows_(addSheet(QStringLiteral("kit.rows"))) {}

void KitTab::fill(const plan::BookingPlan& plan) {
    say(kitAnswer(bench_.season(), plan));
    const auto sheet = kitSheet(bench_.season(), plan);
    rows_->setVisible(!sheet.rows.empty());
    rows_->setSheet(sheet);
}

} // namespace withy::ui
