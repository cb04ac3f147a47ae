// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/tabs/sheet_tab.h"

namespace withy::ui {

/// The run-up as a plain timed list, day by day.
class RunUpTab : public SheetTab {
    Q_OBJECT

public:
    explicit RunUpTab(Workbench& bench, QWidget* parent = nullptr);

protected:
    void fill(const plan::BookingPlan& plan) override;

private:
    SheetTable* steps_;
};

} // namespace withy::ui
