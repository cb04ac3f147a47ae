// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/models/record_table_model.h"

#include <QCoreApplication>
#include <QMimeData>

/// What is done to whole rows and blocks of cells.
namespace withy::ui {

namespace {

using model::Ref;
using model::Value;

const QString rowMime = QStringLiteral("application/x-withy-row");

std::vector<Ref> refsOf(model::TableKind kind, const std::vector<std::int64_t>& ids) {
    std::vector<Ref> refs;
    for (const auto id : ids)
        refs.push_back({kind, id});
    return refs;
}

} // namespace

edits::Given RecordTableModel::givenToNew() const {
    edits::Given given;
    if (spec_.parent) given.emplace_back(spec_.parent->first, Value(spec_.parent->second));
    for (const auto& [name, value] : spec_.given)
        given.emplace_back(name, value);
    return given;
}

QString RecordTableModel::add(std::int64_t& id) {
    const auto edit = edits::addRecord(bench_.season(), spec_.kind, givenToNew(), id);
    const auto applied = model::apply(bench_.season(), edit);
    if (!applied.ok()) return problemWords(bench_.season(), applied.error());
    return bench_.apply(edit);
}

edits::ErasePlan RecordTableModel::planErase(const std::vector<std::int64_t>& ids) const {
    return edits::planErase(bench_.season(), refsOf(spec_.kind, ids));
}

QString RecordTableModel::addPrompt() const {
    return QCoreApplication::translate("RecordTable", "New %1").arg(tableLabel(spec_.kind, 1));
}

QString RecordTableModel::makeInPlace(const QModelIndex& index, const QString& name) {
    const auto* field = fieldAt(index.column());
    if (!field || !edits::canMakeNamed(field->refersTo)) return {};
    std::int64_t other = 0;
    auto edit = edits::addNamed(bench_.season(), field->refersTo, name, other);
    const auto id = idAt(index.row());
    if (!id) { // the blank row: made together with it, once it holds
        const auto applied = model::apply(bench_.season(), edit);
        if (!applied.ok()) return problemWords(bench_.season(), applied.error());
        setDraft(index, {{}, name.trimmed()}, name);
        return {};
    }
    auto whole = edits::setField(bench_.season(), {spec_.kind, *id}, field->name, Value(other));
    edits::join(whole, edit);
    return bench_.apply(whole);
}

QString RecordTableModel::erase(const std::vector<std::int64_t>& ids) {
    if (ids.empty()) return {};
    const auto plan = planErase(ids);
    if (!plan.free()) return plan.sentence;
    return bench_.apply(edits::eraseRecords(bench_.season(), plan.wanted));
}

QString RecordTableModel::eraseAndBlank(const std::vector<std::int64_t>& ids) {
    if (ids.empty()) return {};
    const auto plan = planErase(ids);
    if (!plan.inTheWay.empty()) return plan.sentence;
    return bench_.apply(edits::eraseAndBlank(bench_.season(), plan.wanted));
}

QString RecordTableModel::move(std::int64_t id, int toRow) {
    if (spec_.orderField.empty() || !find_.isEmpty() || spec_.filter) return {};
    const std::string parent = spec_.parent ? spec_.parent->first : std::string();
    return bench_.apply(
        edits::moveRecord(bench_.season(), {spec_.kind, id}, spec_.orderField, toRow, parent));
}

QStringList RecordTableModel::mimeTypes() const {
    return {rowMime, QStringLiteral("text/plain")};
}

QMimeData* RecordTableModel::mimeData(const QModelIndexList& indexes) const {
    auto* data = new QMimeData;
    data->setText(copied(indexes));
    const auto id = indexes.isEmpty() ? std::nullopt : idAt(indexes.front().row());
    if (id)
        data->setData(rowMime, QByteArray::number(static_cast<int>(spec_.kind)) + ' ' +
                                   QByteArray::number(static_cast<qlonglong>(*id)));
    return data;
}

Qt::DropActions RecordTableModel::supportedDropActions() const {
    return Qt::MoveAction;
}

bool RecordTableModel::canDropMimeData(const QMimeData* data, Qt::DropAction, int, int,
                                       const QModelIndex&) const {
    const auto parts = data->data(rowMime).split(' ');
    return parts.size() == 2 && parts[0].toInt() == static_cast<int>(spec_.kind) &&
           !spec_.orderField.empty() && rowOf(parts[1].toLongLong()) >= 0;
}

bool RecordTableModel::dropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                                    const QModelIndex& parent) {
    if (!canDropMimeData(data, action, row, column, parent)) return false;
    const auto id = data->data(rowMime).split(' ')[1].toLongLong();
    int to = row >= 0 ? row : parent.isValid() ? parent.row() : static_cast<int>(rows_.size());
    const int from = rowOf(id);
    if (row >= 0 && from < to) --to; // a gap between rows, counted before the row is lifted out
    const QString said = move(id, to);
    if (!said.isEmpty()) Q_EMIT refused(said);
    return false; // the row has moved already; the view has nothing to take out
}

QString RecordTableModel::copied(const QModelIndexList& indexes, bool withHeads) const {
    std::map<int, std::map<int, QString>> cells;
    for (const auto& index : indexes) {
        const auto* field = fieldAt(index.column());
        cells[index.row()][index.column()] =
            field ? fieldText(season_, spec_.kind, *field, valueAt(index)) : index.data().toString();
    }
    std::vector<QStringList> rows;
    if (withHeads && !cells.empty()) {
        QStringList heads;
        for (const auto& [column, cell] : cells.begin()->second)
            heads << headerData(column, Qt::Horizontal).toString();
        rows.push_back(heads);
    }
    for (const auto& [row, inRow] : cells) {
        QStringList out;
        for (const auto& [column, cell] : inRow)
            out << cell;
        if (!isAddRow(row)) rows.push_back(out);
    }
    return edits::joinTsv(rows);
}

QString RecordTableModel::blank(const QModelIndexList& indexes) {
    std::map<std::int64_t, edits::Given> wanted;
    for (const auto& index : indexes) {
        const auto* field = fieldAt(index.column());
        const auto id = idAt(index.row());
        if (!field || !id) continue;
        const auto reading = readField(season_, spec_.kind, *field, QString());
        if (!reading.ok()) return fieldLabel(spec_.kind, *field) + QStringLiteral(": ") + reading.sentence;
        wanted[*id].emplace_back(field->name, *reading.value);
    }
    model::Edit all("cells.blank", {std::string(info_.name), std::to_string(wanted.size())});
    for (const auto& [id, values] : wanted) {
        edits::join(all, edits::setFields(bench_.season(), {spec_.kind, id}, values));
    }
    const auto applied = model::apply(bench_.season(), all);
    return applied.ok() ? bench_.apply(all) : problemWords(bench_.season(), applied.error());
}

} // namespace withy::ui
