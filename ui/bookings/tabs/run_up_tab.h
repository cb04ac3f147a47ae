// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/tabs/sheet_tab.h"

namespace withy::ui {

class FindingRows;
class TextLabel;

/// The run-up as a plain timed list, day by day.
class RunUpTab : public SheetTab {
    Q_OBJECT

public:
    explicit RunUpTab(Workbench& bench, QWidget* parent = nullptr);

protected:
    void fill(const plan::BookingPlan& plan) override;

private:
    struct DayPart {
        QWidget* head = nullptr;
        TextLabel* day = nullptr;
        TextLabel* note = nullptr;
        SheetTable* sheet = nullptr;
    };

    DayPart makePart(std::size_t index);

    std::vector<DayPart> parts_;
};

} // namespace withy::ui
