// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/tabs/sheet_tab.h"

namespace withy::ui {

/// What the booking takes from the shed; what nobody has counted is counted in its row.
class KitTab : public SheetTab {
    Q_OBJECT

public:
    explicit KitTab(Workbench& bench, QWidget* parent = nullptr);

protected:
    void fill(const plan::BookingPlan& plan) override;

private:
    SheetTable* rows_;
};

} // namespace withy::ui
