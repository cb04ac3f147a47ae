// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/schema.h"
#include "ui/logic/edits/run_up_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/workbench.h"

#include <QCoreApplication>
#include <QTime>

#include <algorithm>
#include <iterator>
#include <variant>

namespace withy::ui {

namespace {

struct WeekStepsModelSay {
    Q_DECLARE_TR_FUNCTIONS(WeekSteps)
};

QString timeWords(const WeekStep& step) {
    const auto at = [&](LocalTime t) { return step.busy ? clock(t) : planClock(t); }; // busy hours are typed
    if (step.from.day == step.to.day && at(step.from) == at(step.to)) return at(step.from);
    const QString to =
        step.from.day == step.to.day ? at(step.to) : shortDay(step.to.day) + QLatin1Char(' ') + at(step.to);
    return WeekStepsModelSay::tr("%1 to %2").arg(at(step.from), to);
}

QVariant checked(bool on) {
    return on ? Qt::Checked : Qt::Unchecked;
}

/// What a row is told by, whatever it says now: a head by its day, a step by its key, what has none by what
/// it is and when.
struct RowName {
    Day day;
    std::optional<plan::StepKey> key;
    std::optional<Id<model::BusyHours>> busy;
    std::optional<Id<model::Booking>> booking;
    std::optional<LocalTime> from;
    QString words;
    friend bool operator==(const RowName&, const RowName&) = default;
};

std::vector<RowName> namesOf(const std::vector<WeekDay>& days) {
    std::vector<RowName> names;
    for (const auto& day : days) {
        names.push_back({day.day, {}, {}, {}, {}, {}});
        for (const auto& step : day.steps) {
            if (step.key)
                names.push_back({day.day, step.key, {}, {}, {}, {}});
            else
                names.push_back({day.day, {}, step.busy, step.booking, step.from, step.words});
        }
    }
    return names;
}

bool isTick(int column) {
    return column == WeekStepsModel::doneColumn || column == WeekStepsModel::keptColumn;
}

/// The clock of today; nothing where no today is known.
std::optional<LocalTime> nowOf(const Workbench& bench) {
    if (!bench.today()) return std::nullopt;
    const auto now = QTime::currentTime();
    return LocalTime{*bench.today(), now.hour() * 60 + now.minute()};
}

} // namespace

void WeekStepsModel::show(std::vector<WeekDay> days) {
    const auto was = namesOf(days_), now = namesOf(days);
    const auto [oldBegin, newBegin] = std::mismatch(was.begin(), was.end(), now.begin(), now.end());
    const auto same = static_cast<int>(oldBegin - was.begin());
    const auto ends = std::mismatch(was.rbegin(), std::make_reverse_iterator(oldBegin), now.rbegin(),
                                    std::make_reverse_iterator(newBegin));
    const auto below = static_cast<int>(ends.first - was.rbegin());
    const auto gone = static_cast<int>(was.size()) - same - below;
    const auto come = static_cast<int>(now.size()) - same - below;
    if (gone > 0) {
        beginRemoveRows({}, same, same + gone - 1);
        rows_.erase(rows_.begin() + same, rows_.begin() + same + gone);
        endRemoveRows();
    }
    if (come > 0) beginInsertRows({}, same, same + come - 1);
    days_ = std::move(days);
    rows_.clear();
    for (std::size_t d = 0; d < days_.size(); ++d) {
        rows_.push_back({d, -1});
        for (int s = 0; s < static_cast<int>(days_[d].steps.size()); ++s)
            rows_.push_back({d, s});
    }
    if (come > 0) endInsertRows();
    if (!rows_.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
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
        return column == minutesColumn || column == tookColumn ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                                               : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (role == Qt::CheckStateRole && step.key && !step.nobody && isTick(column))
        return checked(column == doneColumn ? step.done.has_value() : step.kept);
    if (role == Qt::EditRole && column == tookColumn)
        return step.took ? QVariant(workWords(*step.took)) : QVariant();
    if (role == Qt::AccessibleTextRole && step.key && isTick(column)) return spokenTick(step, column);
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
    case whoColumn:
        return step.placed ? step.who : tr("nobody");
    case minutesColumn:
        return step.minutes.value > 0 ? workWords(step.minutes) : QString();
    case tookColumn:
        return step.took ? workWords(*step.took) : QString();
    default:
        return {};
    }
}

QString WeekStepsModel::spokenTick(const WeekStep& step, int column) {
    if (column == doneColumn)
        return step.done ? tr("%1, done").arg(step.words) : tr("%1, not done").arg(step.words);
    return step.kept ? tr("%1, kept where it is").arg(step.words) : tr("%1, free to move").arg(step.words);
}

const WeekStep* WeekStepsModel::stepAt(int row) const {
    if (row < 0 || row >= rowCount() || isHead(row)) return nullptr;
    const auto& at = rows_[static_cast<std::size_t>(row)];
    return &days_[at.day].steps[static_cast<std::size_t>(at.step)];
}

int WeekStepsModel::rowOf(std::size_t step) const {
    for (int row = 0; row < rowCount(); ++row)
        if (const auto* s = stepAt(row); s && s->step == step) return row;
    return -1;
}

Qt::ItemFlags WeekStepsModel::flags(const QModelIndex& index) const {
    auto flags = QAbstractTableModel::flags(index);
    const auto* step = stepAt(index.row());
    if (!bench_ || !bench_->canWrite() || !step || !step->key || step->nobody) return flags;
    if (isTick(index.column())) flags |= Qt::ItemIsUserCheckable;
    if (index.column() == tookColumn && step->done) flags |= Qt::ItemIsEditable;
    return flags;
}

bool WeekStepsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const auto* at = stepAt(index.row());
    if (!bench_ || !at || !at->key) return false;
    const WeekStep step = *at; // the edit may bring other rows
    const bool on = value.toInt() == Qt::Checked;
    const auto& season = bench_->season();
    if (role == Qt::CheckStateRole && index.column() == doneColumn)
        return bench_->take(
            on ? edits::tickStepOff(season, *step.key, tickTime(step.to, nowOf(*bench_)), step.took)
               : edits::takeTickBack(season, *step.key));
    if (role == Qt::CheckStateRole && index.column() == keptColumn)
        return bench_->take(on ? edits::keepStepAt(season, *step.key, step.from)
                               : edits::letStepGo(season, *step.key));
    if (role != Qt::EditRole || index.column() != tookColumn) return false;
    const auto* field = model::tableInfo(model::TableKind::stepMarks).field("minutes");
    const auto reading = readField(season, model::TableKind::stepMarks, *field, value.toString());
    if (!reading.ok()) {
        Q_EMIT refused(reading.sentence);
        return false;
    }
    const auto* minutes = std::get_if<std::int64_t>(&*reading.value);
    return bench_->take(
        edits::setStepMinutes(season, *step.key, minutes ? std::optional(Minutes(*minutes)) : std::nullopt));
}

QVariant WeekStepsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return section == minutesColumn || section == tookColumn ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                                                 : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case timeColumn:
        return tr("When");
    case stepColumn:
        return tr("What");
    case bookingColumn:
        return tr("For");
    case whoColumn:
        return tr("Who");
    case minutesColumn:
        return tr("Work");
    case doneColumn:
        return tr("Done");
    case tookColumn:
        return tr("Took");
    case keptColumn:
        return tr("Kept");
    default:
        return {};
    }
}

} // namespace withy::ui
