// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/record_table_model.h"

#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

#include <algorithm>

namespace withy::ui {

using model::Value;

RecordTableModel::RecordTableModel(Workbench& bench, RecordTableSpec spec, QObject* parent)
    : QAbstractTableModel(parent)
    , bench_(bench)
    , spec_(std::move(spec))
    , info_(model::tableInfo(spec_.kind)) {
    layColumns();
    season_ = bench_.season();
    rows_ = wantedRows();
    connect(&bench_, &Workbench::changed, this, [this] { take(); });
}

void RecordTableModel::layColumns() {
    for (const auto& name : spec_.columns) {
        if (const auto* field = info_.field(name)) columns_.push_back({field, nullptr});
    }
    for (const auto& computed : spec_.computed) {
        const auto at =
            std::min<std::size_t>(static_cast<std::size_t>(std::max(0, computed.at)), columns_.size());
        columns_.insert(columns_.begin() + static_cast<std::ptrdiff_t>(at), {nullptr, &computed});
    }
}

int RecordTableModel::rowCount(const QModelIndex& parent) const {
    if (parent.isValid()) return 0;
    const bool blank = spec_.addRow && !parentGone_ && bench_.canWrite();
    return static_cast<int>(rows_.size()) + (blank ? 1 : 0);
}

int RecordTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

const model::FieldInfo* RecordTableModel::fieldAt(int column) const {
    if (column < 0 || column >= columnCount()) return nullptr;
    return columns_[static_cast<std::size_t>(column)].field;
}

int RecordTableModel::columnOf(const std::string& field) const {
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        if (columns_[i].field && columns_[i].field->name == field) return static_cast<int>(i);
    }
    return -1;
}

std::optional<std::int64_t> RecordTableModel::idAt(int row) const {
    if (row < 0 || row >= static_cast<int>(rows_.size())) return std::nullopt;
    return rows_[static_cast<std::size_t>(row)].id;
}

int RecordTableModel::rowOf(std::int64_t id) const {
    const auto found = std::find_if(rows_.begin(), rows_.end(), [&](const Row& r) { return r.id == id; });
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

bool RecordTableModel::isAddRow(int row) const {
    return row == static_cast<int>(rows_.size()) && row < rowCount();
}

Value RecordTableModel::valueAt(const QModelIndex& index) const {
    const auto* field = fieldAt(index.column());
    if (!field || index.row() < 0) return {};
    if (index.row() < static_cast<int>(rows_.size()))
        return field->get(rows_[static_cast<std::size_t>(index.row())].record);
    const auto drafted = draft_.find(field->name);
    return drafted == draft_.end() ? Value{} : drafted->second.value;
}

bool RecordTableModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || !fieldAt(index.column())) return false;
    if (role == Qt::CheckStateRole)
        return setCell(index, wordText(value.toInt() == Qt::Checked ? "yes" : "no"));
    return role == Qt::EditRole && setCell(index, value.toString());
}

bool RecordTableModel::refuse(const QModelIndex& index, const QString& typed, const QString& sentence) {
    refusals_[{idAt(index.row()).value_or(0), index.column()}] = {typed, sentence};
    Q_EMIT dataChanged(index, index);
    Q_EMIT refused(sentence);
    return false;
}

void RecordTableModel::forget(const QModelIndex& index) {
    if (!index.isValid()) return;
    const bool had = refusals_.erase({idAt(index.row()).value_or(0), index.column()}) > 0;
    const bool drafted = isAddRow(index.row()) && !draft_.empty();
    if (drafted) draft_.clear();
    if (had || drafted)
        Q_EMIT dataChanged(this->index(index.row(), 0), this->index(index.row(), columnCount() - 1));
}

bool RecordTableModel::setCell(const QModelIndex& index, const QString& typed) {
    const auto& field = *fieldAt(index.column());
    const Value now = valueAt(index);
    const auto reading = readField(season_, spec_.kind, field, typed, now);
    if (isAddRow(index.row()) && typed.trimmed().isEmpty()) {
        draft_.erase(std::string(field.name));
        forget(draft_.empty() ? index : QModelIndex());
        return true;
    }
    if (isAddRow(index.row()) && typed == draftedName(index)) return true;
    if (!reading.ok()) return refuse(index, typed, reading.sentence);
    if (isAddRow(index.row())) return setDraft(index, {*reading.value, {}}, typed);
    const model::Ref ref{spec_.kind, *idAt(index.row())};
    const QString trouble = judgeField(bench_.season(), ref, field.name, *reading.value);
    if (!trouble.isEmpty()) return refuse(index, typed, trouble);
    refusals_.erase({ref.id, index.column()});
    const QPersistentModelIndex keep(index);
    const QString said = bench_.apply(edits::setField(bench_.season(), ref, field.name, *reading.value));
    if (!said.isEmpty()) return refuse(index, typed, said);
    if (keep.isValid()) Q_EMIT dataChanged(keep, keep);
    return true;
}

QString RecordTableModel::draftedName(const QModelIndex& index) const {
    const auto* field = fieldAt(index.column());
    const auto drafted = field && isAddRow(index.row()) ? draft_.find(field->name) : draft_.end();
    return drafted == draft_.end() ? QString() : drafted->second.makes;
}

/// The new row, and with it the records it names that are to be made: one step, so that one undo takes
/// all of it back.
model::Edit RecordTableModel::draftEdit(std::int64_t& id) const {
    auto season = bench_.season();
    edits::Given given = givenToNew();
    model::Edit made("record.add");
    for (const auto& [name, drafted] : draft_) {
        if (drafted.makes.isEmpty()) {
            given.emplace_back(name, drafted.value);
            continue;
        }
        std::int64_t other = 0;
        const auto edit = edits::addNamed(season, info_.field(name)->refersTo, drafted.makes, other);
        if (auto applied = model::apply(season, edit); applied.ok()) season = applied->season;
        edits::join(made, edit);
        given.emplace_back(name, Value(other));
    }
    auto edit = edits::addRecord(season, spec_.kind, given, id);
    edits::join(edit, made);
    return edit;
}

bool RecordTableModel::setDraft(const QModelIndex& index, const Drafted& cell, const QString& typed) {
    const auto* field = fieldAt(index.column());
    refusals_.erase({0, index.column()});
    draft_[std::string(field->name)] = cell;
    std::int64_t id = 0;
    const auto edit = draftEdit(id);
    const auto applied = model::apply(bench_.season(), edit);
    if (!applied.ok()) {
        const auto stillWanted = [&](const Problem& p) {
            return p.code == ProblemCode::required && !draft_.contains(p.field);
        };
        const auto& problems = applied.error();
        if (std::all_of(problems.begin(), problems.end(), stillWanted)) {
            Q_EMIT dataChanged(index, index);
            return true; // the row waits for the rest
        }
        draft_.erase(std::string(field->name));
        return refuse(index, typed, problemWords(season_, problems, field->name));
    }
    const auto drafted = std::exchange(draft_, {});
    const QString said = bench_.apply(edit);
    if (!said.isEmpty()) {
        draft_ = drafted;
        return refuse(index, typed, said);
    }
    const int blank = rowCount() - 1;
    Q_EMIT dataChanged(this->index(blank, 0), this->index(blank, columnCount() - 1));
    Q_EMIT made(id);
    return true;
}

} // namespace withy::ui
