// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"
#include "ui/logic/models/week_steps.h"

class QPushButton;

namespace withy::ui {

class FigureButton;
class RunUpDesk;
class TextLabel;
class WorkingPanel;

/// One week of all bookings, drawn and as a list of steps by day; Enter on a step of the list leads to its
/// booking.
class WeekPage : public SubPage {
    Q_OBJECT

public:
    explicit WeekPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;
    [[nodiscard]] QWidget* tools() const override;

    void showWeek(Day anyDay);

    [[nodiscard]] Day monday() const { return monday_; }

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refresh();
    void showNextWork();

    Day monday_;
    RunUpDesk* desk_;
    QWidget* sum_; ///< of the week, with its working
    FigureButton* work_;
    WorkingPanel* working_;
    TextLabel* todays_;
    TextLabel* key_;
    TextLabel* week_;
    QWidget* tools_;
};

} // namespace withy::ui
