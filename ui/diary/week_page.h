// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"
#include "ui/logic/models/week_steps.h"

class QPushButton;
class QTableView;

namespace withy::ui {

class TextLabel;

/// One week of all bookings as a list of steps by day, with the sun's hours; Enter leads to the booking.
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
    void changeEvent(QEvent* event) override;

private:
    void refresh();
    void spanHeads();
    void follow(const QModelIndex& index);
    void showNextWork();

    Day monday_;
    WeekStepsModel* model_;
    QTableView* view_;
    TextLabel* week_;
    QWidget* tools_;
};

} // namespace withy::ui
