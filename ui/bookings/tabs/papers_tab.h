// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/booking_tab.h"

namespace withy::ui {

class PaperDesk;

/// The papers of a booking, looked at beside what can be chosen of them.
class PapersTab : public BookingTab {
    Q_OBJECT

public:
    explicit PapersTab(Workbench& bench, QWidget* parent = nullptr);
    void show(std::optional<Id<model::Booking>> id) override;
    using QWidget::show;
    void enter() override;
    void addActions(Actions& actions) override;

    [[nodiscard]] PaperDesk& desk() const { return *desk_; }

private:
    PaperDesk* desk_;
};

} // namespace withy::ui
