// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/plan/plan.h"
#endif

#include <QAbstractTableModel>

#include <optional>
#include <vector>

/// The steps of all bookings in one week, day by day.
namespace withy::ui {

struct WeekStep {
    LocalTime from;
    LocalTime to;
    Minutes minutes;     ///< of work; nought when it needs nobody
    QString words;       ///< "Cut 136 stems"
    QString detail;      ///< "80 Zinnia, coral; 56 Ammi"
    QString bookingName; ///< empty for busy hours
    std::optional<Id<model::Booking>> booking;
    std::optional<Id<model::BusyHours>> busy;
    bool nobody = false; ///< drinking, resting
};

struct WeekDay {
    Day day;
    QString sun; ///< "sun up 06:22, down 19:38"; polar days in words; empty where the place is not known
    Minutes work;
    std::vector<WeekStep> steps; ///< in order of time
};

/// The Monday of the day's week.
Day weekOf(Day day);
/// Seven days from Monday. Lost bookings are left out; so is what the season no longer has.
std::vector<WeekDay> stepsOfWeek(const model::Season& season, const plan::Plan& plan, Day monday);
/// "sun up 06:22, down 19:38" on the place's clock.
QString sunWords(const model::Settings& settings, Day day);
/// "8 h 15", "40 min".
QString workWords(Minutes work);

/// The same as rows: a head for each day, then its steps.
class WeekStepsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { timeColumn, stepColumn, bookingColumn, minutesColumn, columns };

    enum Role { HeadRole = Qt::UserRole + 1, BookingRole, BusyRole, NobodyRole };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<WeekDay> days);

    [[nodiscard]] const std::vector<WeekDay>& days() const { return days_; }

    [[nodiscard]] bool isHead(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    struct Row {
        std::size_t day = 0;
        int step = -1; ///< -1: the day's head
    };

    [[nodiscard]] QVariant headData(const WeekDay& day, int column, int role) const;
    [[nodiscard]] QVariant stepData(const WeekStep& step, int column, int role) const;

    std::vector<WeekDay> days_;
    std::vector<Row> rows_;
};

} // namespace withy::ui
