// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/week_steps.h"

#include "core/garden/sun.h"
#include "core/runup/busy_spans.h"
#include "ui/logic/format.h"
#include "ui/logic/step_wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

struct Week {
    Q_DECLARE_TR_FUNCTIONS(WeekSteps)
};

QString hourWords(double hours) {
    return clockOf(static_cast<int>(std::lround(hours * 60)));
}

QString timeWords(const WeekStep& step) {
    if (step.from == step.to) return clock(step.from);
    const QString to = step.from.day == step.to.day
                           ? clock(step.to)
                           : shortDay(step.to.day) + QLatin1Char(' ') + clock(step.to);
    return Week::tr("%1 to %2").arg(clock(step.from), to);
}

std::size_t dayIndex(Day day, Day monday) {
    const int ahead = day - monday;
    return ahead < 0 || ahead > 6 ? 7 : static_cast<std::size_t>(ahead);
}

void addSteps(const model::Season& season, const plan::BookingPlan& plan, Day monday,
              std::vector<WeekDay>& days) {
    const auto* booking = season.bookings.find(plan.booking);
    if (!booking || booking->standing == model::Standing::lost) return;
    for (const auto& s : plan.steps) {
        const auto at = dayIndex(s.from.day, monday);
        if (at > 6 || (s.kind == plan::StepKind::place && s.minutes.value == 0)) continue;
        WeekStep step;
        step.from = s.from;
        step.to = s.to;
        step.nobody = needsNobody(s);
        step.minutes = step.nobody ? Minutes{} : s.minutes;
        step.words = stepTitle(season, plan, s);
        step.detail = stepDetail(season, s);
        step.bookingName = text(booking->title);
        step.booking = plan.booking;
        days[at].work += step.minutes;
        days[at].steps.push_back(std::move(step));
    }
}

void addBusy(const model::Season& season, Day monday, std::vector<WeekDay>& days) {
    for (const auto& span : runup::growersBusySpans(season, monday, monday + 6)) {
        WeekStep step;
        step.from = std::max(span.span.from, LocalTime{monday, 0}); // it may have begun the week before
        const auto at = dayIndex(step.from.day, monday);
        if (at > 6) continue;
        step.to = span.span.to;
        step.words = text(span.label);
        step.nobody = true;
        for (const auto& b : season.busyHours) {
            const int since = span.span.from.day - b.from.day;
            const bool thatDay = b.repeats == model::Repeat::never    ? since == 0
                                 : b.repeats == model::Repeat::weekly ? since % 7 == 0
                                                                      : since >= 0;
            if (!b.helper && b.label == span.label && b.from.minute == span.span.from.minute && thatDay)
                step.busy = b.id;
        }
        days[at].steps.push_back(std::move(step));
    }
}

} // namespace

Day weekOf(Day day) {
    return day - (day.weekday() - 1);
}

QString sunWords(const model::Settings& settings, Day day) {
    const auto zone = Zone::fromPosix(settings.zoneRule);
    const auto sun = garden::sunOn(day, {settings.latitude, settings.longitude});
    if (!zone || !sun.ok()) return {};
    if (sun->status == garden::SunStatus::allDay) return Week::tr("the sun does not set");
    if (sun->status == garden::SunStatus::allNight) return Week::tr("the sun does not rise");
    if (!sun->rise || !sun->set) return {};
    return Week::tr("sun up %1, down %2")
        .arg(hourWords(garden::clockHours(*zone, day, *sun->rise)),
             hourWords(garden::clockHours(*zone, day, *sun->set)));
}

QString workWords(Minutes work) {
    const auto hours = work.value / 60;
    const auto minutes = work.value % 60;
    if (hours == 0) return Week::tr("%1 min").arg(minutes);
    return minutes == 0 ? Week::tr("%1 h").arg(hours)
                        : Week::tr("%1 h %2").arg(hours).arg(minutes, 2, 10, QLatin1Char('0'));
}

std::vector<WeekDay> stepsOfWeek(const model::Season& season, const plan::Plan& plan, Day monday) {
    std::vector<WeekDay> days(7);
    for (int i = 0; i < 7; ++i) {
        auto& day = days[static_cast<std::size_t>(i)];
        day.day = monday + i;
        day.sun = sunWords(season.theSettings(), day.day);
    }
    for (const auto& [id, booking] : plan.bookings)
        addSteps(season, *booking, monday, days);
    addBusy(season, monday, days);
    for (auto& day : days)
        std::stable_sort(day.steps.begin(), day.steps.end(),
                         [](const WeekStep& a, const WeekStep& b) { return a.from < b.from; });
    return days;
}

void WeekStepsModel::show(std::vector<WeekDay> days) {
    beginResetModel();
    days_ = std::move(days);
    rows_.clear();
    for (std::size_t d = 0; d < days_.size(); ++d) {
        rows_.push_back({d, -1});
        for (int s = 0; s < static_cast<int>(days_[d].steps.size()); ++s)
            rows_.push_back({d, s});
    }
    endResetModel();
}

bool WeekStepsModel::isHead(int row) const {
    return row >= 0 && row < rowCount() && rows_[static_cast<std::size_t>(row)].step < 0;
}

int WeekStepsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int WeekStepsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant WeekStepsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    const auto& day = days_[row.day];
    if (role == HeadRole) return row.step < 0;
    if (row.step < 0) return headData(day, index.column(), role);
    return stepData(day.steps[static_cast<std::size_t>(row.step)], index.column(), role);
}

QVariant WeekStepsModel::headData(const WeekDay& day, int column, int role) const {
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    if (column == timeColumn) return shortDay(day.day);
    if (column == stepColumn) return day.sun;
    if (column == minutesColumn && day.work.value > 0) return workWords(day.work);
    return {};
}

QVariant WeekStepsModel::stepData(const WeekStep& step, int column, int role) const {
    if (role == BookingRole) return step.booking ? QVariant(qlonglong(step.booking->value)) : QVariant();
    if (role == BusyRole) return step.busy ? QVariant(qlonglong(step.busy->value)) : QVariant();
    if (role == NobodyRole) return step.nobody;
    if (role == Qt::TextAlignmentRole)
        return column == minutesColumn ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                       : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole && column == stepColumn)
        return step.detail.isEmpty() ? QVariant() : QVariant(step.detail);
    if (role != Qt::DisplayRole) return {};
    switch (column) {
    case timeColumn:
        return timeWords(step);
    case stepColumn:
        return step.detail.isEmpty() ? step.words : tr("%1. %2").arg(step.words, step.detail);
    case bookingColumn:
        return step.busy ? tr("busy") : step.bookingName;
    case minutesColumn:
        return step.minutes.value > 0 ? workWords(step.minutes) : QString();
    default:
        return {};
    }
}

QVariant WeekStepsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return section == minutesColumn ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                        : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case timeColumn:
        return tr("When");
    case stepColumn:
        return tr("What");
    case bookingColumn:
        return tr("For");
    case minutesColumn:
        return tr("Work");
    default:
        return {};
    }
}

} // namespace withy::ui
