// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/shed/return_words.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace withy::ui {

class Stepper;
class TextLabel;

/// A booking's containers, counted home: how many came back, how many broke. "All home" is one press.
class ReturnRows : public QWidget {
    Q_OBJECT

public:
    explicit ReturnRows(Workbench& bench, QWidget* parent = nullptr);
    void showBooking(const plan::BookingPlan& plan);

    [[nodiscard]] bool isEmpty() const { return rows_.empty(); }

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    struct Row {
        ReturnFacts facts;
        TextLabel* name = nullptr;
        Stepper* back = nullptr;
        Stepper* broken = nullptr;
        QPushButton* all = nullptr;
        TextLabel* said = nullptr;
    };

    void make(const std::vector<ReturnFacts>& facts);
    [[nodiscard]] ReturnFacts counted(std::size_t i) const;
    void count(std::size_t row, std::optional<std::int64_t> back, std::optional<std::int64_t> broken);

    Workbench& bench_;
    std::optional<Id<model::Booking>> booking_;
    QVBoxLayout* column_;
    std::vector<Row> rows_;
};

} // namespace withy::ui
