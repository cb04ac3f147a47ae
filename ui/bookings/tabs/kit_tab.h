// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/booking_tab.h"

class QStackedWidget;

namespace withy::ui {

class Segments;

/// What the booking takes from the shed, how its pieces fit the tables, and how they are packed.
class KitTab : public BookingTab {
    Q_OBJECT

public:
    explicit KitTab(Workbench& bench, QWidget* parent = nullptr);
    void show(std::optional<Id<model::Booking>> id) override;
    using QWidget::show;
    void enter() override;
    void addActions(Actions& actions) override;

private:
    void turnTo(int page);

    Segments* pages_;
    QStackedWidget* stack_;
    std::vector<BookingTab*> parts_;
};

} // namespace withy::ui
