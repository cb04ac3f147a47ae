// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/tabs/sheet_tab.h"

namespace withy::ui {

class RunUpDesk;

/// Whether the work fits, the days drawn with a lane for each pair of hands, and the steps as a list.
class RunUpTab : public SheetTab {
    Q_OBJECT

public:
    explicit RunUpTab(Workbench& bench, QWidget* parent = nullptr);

protected:
    void fill(const plan::BookingPlan& plan) override;

private:
    RunUpDesk* desk_;
};

} // namespace withy::ui
