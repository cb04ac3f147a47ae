// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/run_up_tab.h"

#include "ui/common/run_up_desk.h"
#include "ui/logic/models/run_up_rows.h"

#include <QVBoxLayout>

namespace withy::ui {

RunUpTab::RunUpTab(Workbench& bench, QWidget* parent)
    : SheetTab(bench, QStringLiteral("runUp"), parent)
    , desk_(new RunUpDesk(bench, BoardStyle::days, QStringLiteral("runUp"))) {
    body_->insertWidget(body_->count() - 1, desk_);
    connect(desk_, &RunUpDesk::leadTo, this, &SheetTab::leadTo);
    connect(desk_, &RunUpDesk::told, this, &SheetTab::said);
}

void RunUpTab::fill(const plan::BookingPlan& plan) {
    say(runUpAnswer(bench_.season(), bench_.plan(), plan.booking));
    desk_->showBooking(plan.booking);
    desk_->setVisible(!plan.lines.empty());
}

} // namespace withy::ui
