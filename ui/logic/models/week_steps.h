// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/plan/run_up_plan.h"
#endif

#include <QAbstractTableModel>

#include <map>
#include <optional>
#include <vector>

/// The steps of all bookings in one week, or of one booking, day by day.
namespace withy::ui {

class Workbench;

struct WeekStep {
    LocalTime from;
    LocalTime to;
    Minutes minutes;                           ///< of work; nought when it needs nobody
    QString words;                             ///< "Cut 136 stems"
    QString detail;                            ///< "80 Zinnia, coral; 56 Ammi"
    QString bookingName;                       ///< empty for busy hours
    std::optional<Id<model::Booking>> booking; ///< the one it leads to
    std::vector<Id<model::Booking>> bookings;  ///< all it is for
    std::optional<Id<model::BusyHours>> busy;
    bool nobody = false; ///< drinking, resting
    /// Of the run-up of all bookings, and what the grower has said of it; blank: busy hours, and the past.
    std::optional<plan::StepKey> key;
    std::optional<std::size_t> step; ///< index into RunUpPlan::steps
    QString who;                     ///< "You, Wilf"
    std::optional<LocalTime> done;
    std::optional<Minutes> took;
    bool kept = false;
    bool placed = true;
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
/// The days of one booking's steps, with the rounds that cut for others too.
std::vector<WeekDay> stepsOfBooking(const model::Season& season, const plan::Plan& plan,
                                    Id<model::Booking> booking);
/// When a step that is ticked off was done: when it was to end, or now, should that lie ahead.
LocalTime tickTime(LocalTime plannedEnd, std::optional<LocalTime> now);
/// Monday of the first week with steps, from the day's own week on; of the day's week when there is none
/// later. Without a day, from the season's first.
Day nextWeekWithWork(const model::Season& season, const plan::Plan& plan, std::optional<Day> from);
/// "sun up 06:22, down 19:38" on the place's clock.
QString sunWords(const model::Settings& settings, Day day);
/// "8 h 15", "40 min".
QString workWords(Minutes work);

/// A day's work as it is told everywhere: to the nearest five minutes.
Minutes toldWork(Minutes work);
/// All hands' work of each day that has some, as told. Of bookings that are not laid into time with the
/// others, the usual hours.
std::map<Day, Minutes> workByDay(const model::Season& season, const plan::Plan& plan);
Minutes workBetween(const std::map<Day, Minutes>& days, Day first, Day last);

/// The same as rows: a head for each day, then its steps. Ticks, minutes and pins are edits of their own.
class WeekStepsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        timeColumn,
        stepColumn,
        bookingColumn,
        whoColumn,
        minutesColumn,
        doneColumn,
        tookColumn,
        keptColumn,
        columns
    };

    enum Role { HeadRole = Qt::UserRole + 1, BookingRole, BusyRole, NobodyRole };

    using QAbstractTableModel::QAbstractTableModel;

    /// Without a workbench nothing can be ticked.
    void setBench(Workbench* bench) { bench_ = bench; }

    /// Rows that stay are changed in place, so that what is being typed into one of them stays too.
    void show(std::vector<WeekDay> days);
    /// Null for a head.
    [[nodiscard]] const WeekStep* stepAt(int row) const;
    /// The row of a step of the run-up; -1: none.
    [[nodiscard]] int rowOf(std::size_t step) const;

    [[nodiscard]] const std::vector<WeekDay>& days() const { return days_; }

    [[nodiscard]] bool isHead(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    /// What was typed cannot be read, and how it would be.
    void refused(const QString& sentence);

private:
    struct Row {
        std::size_t day = 0;
        int step = -1; ///< -1: the day's head
    };

    [[nodiscard]] static QString spokenTick(const WeekStep& step, int column);
    [[nodiscard]] QVariant headData(const WeekDay& day, int column, int role) const;
    [[nodiscard]] QVariant stepData(const WeekStep& step, int column, int role) const;

    Workbench* bench_ = nullptr;
    std::vector<WeekDay> days_;
    std::vector<Row> rows_;
};

} // namespace withy::ui
