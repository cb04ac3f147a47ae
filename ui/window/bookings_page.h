// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QDateTimeEdit;
class QLabel;
class QLineEdit;
class QListWidget;
class QSpinBox;
class QTableWidget;

namespace withy::ui {

/// The bookings on the left, the chosen one on the right: when, pieces, stems, kit.
class BookingsPage : public QWidget {
    Q_OBJECT

public:
    explicit BookingsPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<Id<model::Booking>> chosen() const { return chosen_; }

    void choose(Id<model::Booking> id);
    void newBooking();

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    QWidget* makeForm();
    void refresh();
    void showList();
    void showChosen();
    void showPieces(const plan::BookingPlan& plan);
    void showStems(const plan::BookingPlan& plan);
    void keepBrief();
    void addPiece();
    void take(const model::Edit& edit);

    Workbench& bench_;
    std::optional<Id<model::Booking>> chosen_;
    bool showing_ = false; ///< fields are being filled: their signals are not the grower's
    QListWidget* list_;
    QWidget* form_;
    QLineEdit* title_;
    QDateTimeEdit* start_;
    QDateTimeEdit* end_;
    QComboBox* standing_;
    QTableWidget* pieces_;
    QComboBox* design_;
    QSpinBox* count_;
    QTableWidget* stems_;
    QLabel* answer_;
    QLabel* kit_;
};

} // namespace withy::ui
