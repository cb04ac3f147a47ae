// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/group_head.h"
#include "ui/logic/workbench.h"

class QPushButton;

namespace withy::ui {

class RecordTable;

/// What is still to be asked, soonest first, and what has been answered, folded away.
class BriefQuestions : public Group {
    Q_OBJECT

public:
    explicit BriefQuestions(Workbench& bench, QWidget* parent = nullptr);
    void showBooking(std::optional<Id<model::Booking>> id);

    [[nodiscard]] RecordTable& open() const { return *open_; }

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    void refresh();

    Workbench& bench_;
    std::optional<Id<model::Booking>> id_;
    RecordTable* open_;
    QPushButton* fold_;
    RecordTable* answered_;
};

} // namespace withy::ui
