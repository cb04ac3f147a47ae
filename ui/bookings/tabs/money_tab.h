// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/tabs/sheet_tab.h"

class QPushButton;

namespace withy::ui {

class FieldEdit;
class RecordTable;

/// The plain part of a booking's money: prices, what is given, paid and owed.
class MoneyTab : public SheetTab {
    Q_OBJECT

public:
    explicit MoneyTab(Workbench& bench, QWidget* parent = nullptr);
    void show(std::optional<Id<model::Booking>> id) override;
    using QWidget::show;

protected:
    void fill(const plan::BookingPlan& plan) override;

private:
    void makeGift();
    void makePayments();

    SheetTable* prices_;
    FieldEdit* gift_ = nullptr;
    SheetTable* sums_;
    RecordTable* payments_ = nullptr;
};

} // namespace withy::ui
