// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/designs_model.h"

#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"

#include <algorithm>
#include <array>

namespace withy::ui {

DesignsModel::DesignsModel(Workbench& bench, QObject* parent)
    : QAbstractListModel(parent), bench_(bench), blooms_(bloomsNow()), shown_(wanted()) {
    connect(&bench_, &Workbench::changed, this, &DesignsModel::refresh);
    connect(&bench_, &Workbench::planned, this, &DesignsModel::replanned);
}

int DesignsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

QVariant DesignsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto id = shown_[static_cast<std::size_t>(index.row())];
    const auto* d = bench_.season().designs.find(id);
    if (!d) return {};
    switch (role) {
    case Qt::DisplayRole:
        return text(d->name);
    case IdRole:
        return QVariant::fromValue<qlonglong>(id.value);
    case GroupRole:
        return static_cast<int>(groupOf(d->kind));
    case CaptionRole:
        return bloomOf(id).inWeek ? stemsAndPrice(bench_.season(), *d) : outOfBloomWords(bloomOf(id));
    case InBloomRole:
        return bloomOf(id).inWeek;
    case Qt::AccessibleTextRole: {
        const QString words = tr("%1, %2, %3")
                                  .arg(text(d->name), groupWords(groupOf(d->kind)).toLower(),
                                       stemsAndPrice(bench_.season(), *d));
        return bloomOf(id).inWeek ? words
                                  : tr("%1, not in bloom, %2").arg(words, outOfBloomWords(bloomOf(id)));
    }
    default:
        return {};
    }
}

void DesignsModel::setGroup(std::optional<DesignGroup> group) {
    group_ = group;
    refresh();
}

void DesignsModel::setInBloomOnly(bool on) {
    inBloomOnly_ = on;
    refresh();
}

std::optional<Day> DesignsModel::monday() const {
    const auto today = bench_.today();
    return today ? std::optional(weekOf(*today)) : std::nullopt;
}

/// Most edits and plans change nothing that blooms are reckoned from.
bool DesignsModel::bloomsStand() const {
    using enum model::TableKind;
    const auto& now = bench_.season();
    return week_ == monday() && garden_ == bench_.plan().garden &&
           std::ranges::all_of(std::array{designs, slots, slotPlants, patches, settings},
                               [&](auto kind) { return model::sameRows(reckoned_, now, kind); });
}

DesignBlooms DesignsModel::bloomsNow() {
    if (bloomsStand()) return blooms_;
    const auto week = monday();
    week_ = week;
    garden_ = bench_.plan().garden;
    reckoned_ = bench_.season();
    return week ? designBlooms(bench_.season(), bench_.plan(), *week) : DesignBlooms();
}

DesignBloom DesignsModel::bloomOf(Id<model::Design> design) const {
    const auto found = blooms_.find(design);
    return found == blooms_.end() ? DesignBloom() : found->second;
}

void DesignsModel::replanned() {
    if (bloomsNow() != blooms_) refresh();
}

void DesignsModel::setWords(const QString& words) {
    words_ = words.trimmed();
    refresh();
}

int DesignsModel::rowOf(Id<model::Design> design) const {
    const auto at = std::find(shown_.begin(), shown_.end(), design);
    return at == shown_.end() ? -1 : static_cast<int>(at - shown_.begin());
}

int DesignsModel::total() const {
    return static_cast<int>(bench_.season().designs.size());
}

std::vector<Id<model::Design>> DesignsModel::wanted() const {
    std::vector<std::pair<int, Id<model::Design>>> found;
    for (const auto& d : bench_.season().designs) {
        const auto group = groupOf(d.kind);
        if (group_ && group != *group_) continue;
        if (inBloomOnly_ && !bloomOf(d.id).inWeek) continue;
        if (!words_.isEmpty() && !text(d.name).contains(words_, Qt::CaseInsensitive)) continue;
        found.emplace_back(static_cast<int>(group), d.id);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Id<model::Design>> ids;
    for (const auto& [group, id] : found)
        ids.push_back(id);
    return ids;
}

void DesignsModel::refresh() {
    blooms_ = bloomsNow();
    auto now = wanted();
    if (now == shown_) {
        if (!shown_.empty()) Q_EMIT dataChanged(index(0), index(rowCount() - 1));
        return;
    }
    beginResetModel();
    shown_ = std::move(now);
    endResetModel();
}

} // namespace withy::ui
