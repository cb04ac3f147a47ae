// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/finding_list.h"
#endif

#include "ui/bookings/booking_tab.h"
#include "ui/logic/answers/answer.h"

class QScrollArea;
class QVBoxLayout;

namespace withy::ui {

class AnswerLabel;
class SheetTable;

/// A tab that answers in a sentence and shows sheets of figures below it. It fills itself whenever a new
/// plan comes, while it is seen; a plan that lags behind the season is passed over in silence.
class SheetTab : public BookingTab {
    Q_OBJECT

public:
    SheetTab(Workbench& bench, const QString& name, QWidget* parent = nullptr);
    void show(std::optional<Id<model::Booking>> id) override;
    using QWidget::show;
    void enter() override;

protected:
    /// The plan of a booking that is there.
    virtual void fill(const plan::BookingPlan& plan) = 0;
    void showEvent(QShowEvent* event) override;

    void say(const Answer& answer);
    /// A sheet below what is there, which leads and refuses as the tab does.
    SheetTable* addSheet(const QString& name);
    /// A group's head, with a figure or note at its right.
    QWidget* addHead(const QString& words);
    [[nodiscard]] std::vector<ListedFinding> findings() const;

    QVBoxLayout* body_ = nullptr; ///< inside the scroll area, below the answer; ends in a stretch
    std::optional<Id<model::Booking>> booking_;

private:
    void refresh();

    AnswerLabel* answer_ = nullptr;
    QWidget* sheet_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    bool stale_ = true;
};

} // namespace withy::ui
