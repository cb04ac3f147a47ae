// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/kit_tab.h"

#include "ui/bookings/tabs/sheet_table.h"
#include "ui/logic/models/kit_rows.h"

namespace withy::ui {

KitTab::KitTab(Workbench& bench, QWidget* parent) : SheetTab(bench, QStringLiteral("kit"), parent) {}

void KitTab::fill(const plan::BookingPlan& plan) {
    say(kitAnswer(bench_.season(), plan));
    const auto groups = kitGroups(bench_.season(), plan);
    for (std::size_t i = 0; i < groups.size(); ++i) {
        if (i == groups_.size()) groups_.push_back(addSheet(QStringLiteral("kit.group%1").arg(i)));
        groups_[i]->setSheet(groups[i].sheet);
    }
    for (std::size_t i = 0; i < groups_.size(); ++i)
        groups_[i]->setVisible(i < groups.size());
}

} // namespace withy::ui
