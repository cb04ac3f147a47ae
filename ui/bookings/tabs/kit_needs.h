// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/tabs/sheet_tab.h"

class QPushButton;

namespace withy::ui {

class FindingRows;
class ReturnRows;
class TextLabel;

/// What the booking takes from the shed; what nobody has counted is counted in its row. What went out is
/// counted home below.
class KitNeeds : public SheetTab {
    Q_OBJECT

public:
    explicit KitNeeds(Workbench& bench, QWidget* parent = nullptr);

    void addActions(Actions& actions) override { actions_ = &actions; }

protected:
    void fill(const plan::BookingPlan& plan) override;

private:
    void writeBack();

    Actions* actions_ = nullptr;
    SheetTable* rows_;
    QWidget* returnsHead_;
    ReturnRows* returns_;
    QPushButton* ribbon_;
    FindingRows* findings_;
};

} // namespace withy::ui
