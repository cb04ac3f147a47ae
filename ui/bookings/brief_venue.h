// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/group_head.h"
#include "ui/logic/workbench.h"

namespace withy::ui {

class QuickLine;
class RecordForm;
class RecordTable;

/// The booking's venue: its tables, said in one line or row by row, and what is known of the house. A venue
/// is kept once, for all the bookings that go there.
class BriefVenue : public Group {
    Q_OBJECT

public:
    explicit BriefVenue(Workbench& bench, QWidget* parent = nullptr);
    void showBooking(std::optional<Id<model::Booking>> id);

    [[nodiscard]] QuickLine* tablesLine() const { return quick_; }

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    void refresh();
    QString addTables(const QString& typed);

    Workbench& bench_;
    std::optional<Id<model::Booking>> id_;
    std::optional<Id<model::Venue>> venue_;
    TextLabel* none_;
    QuickLine* quick_;
    RecordTable* tables_;
    TextLabel* usual_;
    RecordForm* form_;
};

} // namespace withy::ui
