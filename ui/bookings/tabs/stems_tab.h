// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/tabs/sheet_tab.h"

namespace withy::ui {

class FindingRows;
class ShareBar;

/// How many stems, of what, cut when; and what stands in the way. Which patch they come from is not said
/// here yet: the rows have room for it.
class StemsTab : public SheetTab {
    Q_OBJECT

public:
    explicit StemsTab(Workbench& bench, QWidget* parent = nullptr);

protected:
    void fill(const plan::BookingPlan& plan) override;

private:
    ShareBar* bar_;
    SheetTable* stems_;
    QWidget* roundsHead_;
    SheetTable* rounds_;
    FindingRows* findings_;
};

} // namespace withy::ui
