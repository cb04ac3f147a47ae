// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/booking_tab.h"

#include <initializer_list>

class QBoxLayout;

namespace withy::ui {

class AnswerLabel;
class BriefColours;
class BriefQuestions;
class BriefVenue;
class FieldEdit;
class RecordForm;
class RecordTable;
class TextLabel;

/// What the client wants, where and when, and what is still to be asked.
class BriefTab : public BookingTab {
    Q_OBJECT

public:
    explicit BriefTab(Workbench& bench, QWidget* parent = nullptr);

    void show(std::optional<Id<model::Booking>> id) override;

    [[nodiscard]] bool scrollsItself() const override { return false; }

    void enter() override;
    void addActions(Actions& actions) override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeLeft();
    QWidget* makeRight();
    QWidget* makeCaution();
    /// `wide`: the columns that share the room.
    QWidget* addTable(const QString& head, const QString& remark, RecordTable* table);
    void refresh();
    void arrange();

    std::optional<Id<model::Booking>> id_;
    AnswerLabel* answer_;
    TextLabel* remark_;
    QBoxLayout* columns_;
    BriefQuestions* questions_ = nullptr;
    std::vector<RecordForm*> forms_;
    TextLabel* caution_ = nullptr;
    BriefColours* colours_ = nullptr;
    RecordTable* swaps_ = nullptr;
    RecordTable* drops_ = nullptr;
    BriefVenue* venue_ = nullptr;
    RecordTable* sent_ = nullptr;
};

} // namespace withy::ui
