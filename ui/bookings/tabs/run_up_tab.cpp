// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/run_up_tab.h"

#include "ui/bookings/tabs/sheet_table.h"
#include "ui/logic/models/run_up_rows.h"

namespace withy::ui {

RunUpTab::RunUpTab(Workbench& bench, QWidget* parent)
    : SheetTab(bench, QStringLiteral("runUp"), parent), steps_(addSheet(QStringLiteral("runUp.steps"))) {}

void RunUpTab::fill(const plan::BookingPlan& plan) {
    say(runUpAnswer(bench_.season(), plan, findings()));
    steps_->setSheet(runUpSheet(bench_.season(), plan));
    steps_->setVisible(!plan.lines.empty());
}

} // namespace withy::ui
