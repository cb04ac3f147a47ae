// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/free_weeks.h"

#include "ui/logic/format.h"

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

using Figure = FreeWeeksModel::Figure;

std::int64_t figureOf(const cover::PlantWeek& week, Figure figure) {
    switch (figure) {
    case Figure::free:
        return week.free.value;
    case Figure::promised:
        return week.promised.value;
    case Figure::asked:
        return week.asked.value;
    case Figure::expected:
        return week.expected.value + week.inStore.value;
    }
    return 0;
}

std::int64_t figureOf(const std::optional<cover::PlantWeek>& week, Figure figure) {
    return week ? figureOf(*week, figure) : 0;
}

/// "Mon 6 Sep" without its weekday.
QString weekHead(Day monday) {
    return shortDay(monday).section(QLatin1Char(' '), 1);
}

} // namespace

void FreeWeeksModel::show(const model::Season& season, const plan::CoverPlan* cover, Figure figure) {
    beginResetModel();
    figure_ = figure;
    rows_.clear();
    weeks_.clear();
    cells_.clear();
    std::set<Id<model::Plant>> plants;
    std::set<Day> weeks;
    for (std::size_t level = 0; cover && level < plan::levelCount; ++level) {
        for (const auto& week : cover->freeToPromise[level]) {
            if (!season.plants.find(week.plant)) continue;
            cells_[{week.plant, week.monday}][level] = week;
            plants.insert(week.plant);
            weeks.insert(week.monday);
        }
    }
    for (const auto id : plants)
        rows_.push_back({id, text(season.plants.find(id)->name)});
    std::stable_sort(rows_.begin(), rows_.end(),
                     [](const Row& a, const Row& b) { return a.name.localeAwareCompare(b.name) < 0; });
    weeks_.assign(weeks.begin(), weeks.end());
    endResetModel();
}

int FreeWeeksModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int FreeWeeksModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(weeks_.size());
}

const FreeWeeksModel::Levels* FreeWeeksModel::at(int row, int column) const {
    if (row < 0 || row >= rowCount() || column < 0 || column >= columnCount()) return nullptr;
    const auto found =
        cells_.find({rows_[static_cast<std::size_t>(row)].plant, weeks_[static_cast<std::size_t>(column)]});
    return found == cells_.end() ? nullptr : &found->second;
}

QVariant FreeWeeksModel::data(const QModelIndex& index, int role) const {
    const auto* levels = at(index.row(), index.column());
    switch (role) {
    case Qt::DisplayRole: {
        if (!levels) return {};
        const auto cautious = figureOf((*levels)[0], figure_);
        const auto likely = figureOf((*levels)[1], figure_);
        return cautious == likely ? whole(likely) : tr("%1 to %2").arg(whole(cautious), whole(likely));
    }
    case Qt::TextAlignmentRole:
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return levels ? QVariant(sentence(index)) : QVariant();
    case AmountRole:
        return levels ? QVariant(qlonglong(figureOf((*levels)[0], figure_))) : QVariant();
    case PlantRole:
        return index.isValid() ? QVariant(qlonglong(rows_[static_cast<std::size_t>(index.row())].plant.value))
                               : QVariant();
    default:
        return {};
    }
}

QVariant FreeWeeksModel::headerData(int section, Qt::Orientation orientation, int role) const {
    const bool week = orientation == Qt::Horizontal;
    if (section < 0 || section >= (week ? columnCount() : rowCount())) return {};
    if (role == Qt::TextAlignmentRole)
        return week ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                    : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (!week)
        return role == Qt::DisplayRole ? QVariant(rows_[static_cast<std::size_t>(section)].name) : QVariant();
    const Day monday = weeks_[static_cast<std::size_t>(section)];
    if (role == Qt::DisplayRole) return weekHead(monday);
    if (role == Qt::ToolTipRole)
        return tr("Week %1, from %2").arg(cover::isoWeek(monday).week).arg(longDay(monday));
    return {};
}

bool FreeWeeksModel::hasAnyFrom(int row, int column) const {
    for (int c = std::max(0, column); c < columnCount(); ++c)
        if (const auto* levels = at(row, c); levels && figureOf((*levels)[1], figure_) > 0) return true;
    return false;
}

int FreeWeeksModel::columnOf(Day day) const {
    const auto found = std::lower_bound(weeks_.begin(), weeks_.end(), cover::mondayOf(day));
    const auto n = static_cast<int>(found - weeks_.begin());
    return std::min(n, columnCount() - 1);
}

QString FreeWeeksModel::sentence(const QModelIndex& index) const {
    const auto* levels = at(index.row(), index.column());
    if (!levels) return index.isValid() ? tr("Nothing of it becomes ready that week.") : QString();
    const auto level = [](const std::optional<cover::PlantWeek>& w) {
        if (!w) return tr("nothing");
        QString words = tr("%1 expected").arg(whole(w->expected.value));
        if (w->inStore.value > 0) words += tr(", %1 in store").arg(whole(w->inStore.value));
        return words + tr(", %1 promised, %2 asked for, %3 free")
                           .arg(whole(w->promised.value), whole(w->asked.value), whole(w->free.value));
    };
    return tr("%1, week of %2. Cautious: %3. Likely: %4.")
        .arg(rows_[static_cast<std::size_t>(index.row())].name,
             weekHead(weeks_[static_cast<std::size_t>(index.column())]), level((*levels)[0]),
             level((*levels)[1]));
}

Answer FreeWeeksModel::answer(std::optional<Day> today) const {
    if (rows_.empty()) return {{nothingFreeWords(), {}}};
    std::map<Day, std::array<std::int64_t, plan::levelCount>> sums;
    for (const auto& [key, levels] : cells_) {
        if (today && key.second < cover::mondayOf(*today)) continue;
        for (std::size_t level = 0; level < plan::levelCount; ++level)
            sums[key.second][level] += figureOf(levels[level], Figure::free);
    }
    const AnswerPart plants{tr("%n plant(s)", nullptr, rowCount()), AnswerPart::Weight::strong};
    if (sums.empty())
        return {plants, {tr(" over %n week(s), all of them gone by.", nullptr, columnCount()), {}}};
    auto most = sums.begin();
    for (auto it = sums.begin(); it != sums.end(); ++it)
        if (it->second[0] > most->second[0]) most = it;
    return {plants,
            {tr(" over %n week(s). Most is free in the week of ", nullptr, columnCount()), {}},
            {weekHead(most->first), {}},
            {tr(": %1 stem(s) cautious, %2 likely.", nullptr, static_cast<int>(most->second[0]))
                 .arg(whole(most->second[0]), whole(most->second[1])),
             {}}};
}

QString FreeWeeksModel::tsv() const {
    QStringList lines;
    lines << QStringList{tr("Plant"),    tr("Week from"), tr("Level"),     tr("Expected"),
                         tr("In store"), tr("Promised"),  tr("Asked for"), tr("Free")}
                 .join(QLatin1Char('\t'));
    for (const auto& row : rows_) {
        for (const Day week : weeks_) {
            const auto found = cells_.find({row.plant, week});
            if (found == cells_.end()) continue;
            for (std::size_t level = 0; level < plan::levelCount; ++level) {
                const auto& w = found->second[level];
                if (!w) continue;
                QStringList cells{QString(row.name).replace(QLatin1Char('\t'), QLatin1Char(' ')),
                                  text(week.iso()), level == 0 ? tr("cautious") : tr("likely")};
                for (const Stems n : {w->expected, w->inStore, w->promised, w->asked, w->free})
                    cells << QString::number(n.value);
                lines << cells.join(QLatin1Char('\t'));
            }
        }
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

QString figureWords(FreeWeeksModel::Figure figure) {
    switch (figure) {
    case Figure::free:
        return FreeWeeksModel::tr("Free");
    case Figure::promised:
        return FreeWeeksModel::tr("Promised");
    case Figure::asked:
        return FreeWeeksModel::tr("Asked for");
    case Figure::expected:
        return FreeWeeksModel::tr("Expected");
    }
    return {};
}

QString nothingFreeWords() {
    return FreeWeeksModel::tr(
        "Nothing is forecast yet. Give the patches their usual dates and expected stems, "
        "and this page says what is free to promise.");
}

} // namespace withy::ui
