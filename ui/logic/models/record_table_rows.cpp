// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/models/record_table_model.h"

#include <QSet>

#include <algorithm>
#include <unordered_map>

/// Which records are shown and in what order, and how the rows get from one state to the next.
namespace withy::ui {

namespace {

using model::FieldInfo;
using model::FieldKind;
using model::TableKind;
using model::Value;

/// Past so many separate insertions and removals a fresh start is quicker.
constexpr std::size_t mostSteps = 40;

struct SortKey {
    bool blank = false;
    double number = 0;
    QString words;

    friend bool operator<(const SortKey& a, const SortKey& b) {
        if (a.blank != b.blank) return b.blank;
        if (a.number != b.number) return a.number < b.number;
        return a.words < b.words;
    }
};

SortKey keyOf(const model::Season& season, TableKind kind, const FieldInfo& field, const void* record) {
    const Value value = field.get(record);
    SortKey key;
    key.blank = model::isBlank(value);
    if (const auto* real = std::get_if<double>(&value)) {
        key.number = *real;
    } else if (const auto* n = std::get_if<std::int64_t>(&value)) {
        if (field.kind == FieldKind::reference)
            key.words = recordWords(season, field.refersTo, *n).toCaseFolded();
        else
            key.number = static_cast<double>(*n);
    } else if (const auto* s = std::get_if<std::string>(&value)) {
        const bool byIso = field.kind == FieldKind::day || field.kind == FieldKind::localTime;
        key.words = byIso ? text(*s) : fieldText(season, kind, field, value).toCaseFolded();
        key.blank = s->empty();
    }
    return key;
}

} // namespace

const QString& RecordTableModel::findKey(const Row& row) const {
    const auto found = keys_.constFind(row.record);
    if (found != keys_.constEnd()) return found.value();
    QString key;
    for (const auto& column : columns_) {
        if (!column.field || column.field->kind == FieldKind::yesNo) continue;
        key += fieldText(season_, spec_.kind, *column.field, column.field->get(row.record));
        key += QLatin1Char('\n');
    }
    return keys_.insert(row.record, key.toCaseFolded()).value();
}

RecordTableModel::Rows RecordTableModel::wantedRows() const {
    Rows rows;
    if (parentGone_) return rows;
    const auto* parent = spec_.parent ? info_.field(spec_.parent->first) : nullptr;
    model::forEachRecord(season_, spec_.kind, [&](std::int64_t id, const void* record) {
        if (parent && parent->get(record) != Value(spec_.parent->second)) return;
        if (spec_.filter && !spec_.filter(season_, id)) return;
        const Row row{id, record};
        const auto has = [&](const QString& word) { return findKey(row).contains(word); };
        if (std::all_of(find_.begin(), find_.end(), has)) rows.push_back(row);
    });
    const auto* by = info_.field(spec_.orderField.empty() ? spec_.sortField : spec_.orderField);
    if (!by) return rows;
    std::unordered_map<std::int64_t, SortKey> keys;
    for (const auto& row : rows)
        keys.emplace(row.id, keyOf(season_, spec_.kind, *by, row.record));
    const bool turned = spec_.newestFirst && spec_.orderField.empty();
    std::stable_sort(rows.begin(), rows.end(), [&](const Row& a, const Row& b) {
        return turned ? keys.at(b.id) < keys.at(a.id) : keys.at(a.id) < keys.at(b.id);
    });
    return rows;
}

bool RecordTableModel::shownNamesChanged(const model::Season& before) const {
    if (!model::sameRows(before, season_, TableKind::settings)) return true;
    return std::any_of(columns_.begin(), columns_.end(), [&](const Column& c) {
        return c.field && c.field->kind == FieldKind::reference &&
               !model::sameRows(before, season_, c.field->refersTo);
    });
}

void RecordTableModel::take() {
    const model::Season before = season_; // keeps the records alive that rows_ still points at
    season_ = bench_.season();
    const bool names = shownNamesChanged(before);
    if (names) {
        keys_.clear();
    } else if (!keys_.isEmpty() && !model::sameRows(before, season_, spec_.kind)) {
        QHash<const void*, QString> kept;
        model::forEachRecord(season_, spec_.kind, [&](std::int64_t, const void* record) {
            const auto found = keys_.constFind(record);
            if (found != keys_.constEnd()) kept.insert(record, found.value());
        });
        keys_ = kept;
    }
    if (names || spec_.filter || !model::sameRows(before, season_, spec_.kind)) goTo(wantedRows());
    if (names && !rows_.empty())
        Q_EMIT dataChanged(index(0, 0), index(static_cast<int>(rows_.size()) - 1, columnCount() - 1));
    else
        refreshComputed();
}

void RecordTableModel::refreshComputed() {
    if (rows_.empty()) return;
    for (int c = 0; c < columnCount(); ++c) {
        if (columns_[static_cast<std::size_t>(c)].computed)
            Q_EMIT dataChanged(index(0, c), index(static_cast<int>(rows_.size()) - 1, c));
    }
}

void RecordTableModel::repaintChanged(const Rows& wanted) {
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (rows_[i].record == wanted[i].record) continue;
        rows_[i].record = wanted[i].record;
        const int row = static_cast<int>(i);
        Q_EMIT dataChanged(index(row, 0), index(row, columnCount() - 1));
    }
}

void RecordTableModel::goTo(Rows wanted) {
    std::unordered_map<std::int64_t, std::size_t> place;
    for (std::size_t i = 0; i < wanted.size(); ++i)
        place.emplace(wanted[i].id, i);
    QSet<std::int64_t> have;
    std::size_t gone = 0;
    for (const auto& row : rows_) {
        have.insert(row.id);
        if (!place.contains(row.id)) ++gone;
    }
    std::size_t fresh = 0;
    for (const auto& row : wanted)
        fresh += have.contains(row.id) ? 0 : 1;
    if (gone + fresh > mostSteps) {
        beginResetModel();
        rows_ = std::move(wanted);
        endResetModel();
        return;
    }
    for (auto i = rows_.size(); i-- > 0;) {
        if (place.contains(rows_[i].id)) continue;
        beginRemoveRows({}, static_cast<int>(i), static_cast<int>(i));
        for (int c = 0; c < columnCount(); ++c)
            refusals_.erase({rows_[i].id, c});
        rows_.erase(rows_.begin() + static_cast<std::ptrdiff_t>(i));
        endRemoveRows();
    }
    const auto inPlace = [&](const Row& a, const Row& b) { return place.at(a.id) < place.at(b.id); };
    if (!std::is_sorted(rows_.begin(), rows_.end(), inPlace)) {
        Q_EMIT layoutAboutToBeChanged();
        const auto old = persistentIndexList();
        std::vector<std::optional<std::int64_t>> ids;
        for (const auto& at : old)
            ids.push_back(idAt(at.row()));
        std::sort(rows_.begin(), rows_.end(), inPlace);
        QModelIndexList now;
        for (qsizetype i = 0; i < old.size(); ++i) {
            const auto id = ids[static_cast<std::size_t>(i)];
            now << (id ? index(rowOf(*id), old[i].column()) : old[i]);
        }
        changePersistentIndexList(old, now);
        Q_EMIT layoutChanged();
    }
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (i < rows_.size() && rows_[i].id == wanted[i].id) continue;
        beginInsertRows({}, static_cast<int>(i), static_cast<int>(i));
        rows_.insert(rows_.begin() + static_cast<std::ptrdiff_t>(i), wanted[i]);
        endInsertRows();
    }
    repaintChanged(wanted);
}

void RecordTableModel::setParentId(std::optional<std::int64_t> id) {
    if (!spec_.parent) return;
    if (parentGone_ == !id && (!id || spec_.parent->second == *id)) return;
    beginResetModel();
    parentGone_ = !id;
    if (id) spec_.parent->second = *id;
    draft_.clear();
    refusals_.clear();
    rows_ = wantedRows();
    endResetModel();
}

void RecordTableModel::setFind(const QString& words) {
    find_ = words.toCaseFolded().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    goTo(wantedRows());
}

void RecordTableModel::sortBy(const std::string& field, bool newestFirst) {
    spec_.sortField = field;
    spec_.newestFirst = newestFirst;
    goTo(wantedRows());
}

} // namespace withy::ui
