// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/models/record_table_model.h"

#include <QColor>

/// What the cells say of themselves.
namespace withy::ui {

namespace {

using model::FieldKind;
using model::Season;
using model::TableKind;
using model::Value;

QVariant alignment(bool figure) {
    return QVariant::fromValue(Qt::Alignment(Qt::AlignVCenter | (figure ? Qt::AlignRight : Qt::AlignLeft)));
}

QColor colourFrom(const Value& value) {
    const auto* s = std::get_if<std::string>(&value);
    return s ? QColor(text(*s)) : QColor();
}

/// The colour a plant or ribbon is known by.
QColor colourOf(const Season& season, TableKind kind, std::int64_t id) {
    if (kind == TableKind::plants) return colourFrom(valueOf(season, {kind, id}, "colour_1"));
    if (kind == TableKind::ribbons) return colourFrom(valueOf(season, {kind, id}, "colour"));
    return {};
}

bool isTick(const model::FieldInfo* field) {
    return field && field->kind == FieldKind::yesNo && !field->optional;
}

} // namespace

QVariant RecordTableModel::computedData(const ComputedColumn& column, const Row& row, int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return column.text ? column.text(row.id) : QString();
    case Qt::TextAlignmentRole:
        return alignment(column.figure);
    case Qt::AccessibleTextRole:
        return column.head + QStringLiteral(": ") + (column.text ? column.text(row.id) : QString());
    default:
        return {};
    }
}

QVariant RecordTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const auto& column = columns_[static_cast<std::size_t>(index.column())];
    const auto id = idAt(index.row());
    if (role == IdRole) return id ? QVariant::fromValue(static_cast<qint64>(*id)) : QVariant();
    if (column.computed)
        return id ? computedData(*column.computed, rows_[static_cast<std::size_t>(index.row())], role)
                  : QVariant();
    const auto& field = *column.field;
    if (role == Qt::TextAlignmentRole) return alignment(isFigure(field) && !isMonth(spec_.kind, field));
    const Value value = valueAt(index);
    const auto refusal = refusals_.find({id.value_or(0), index.column()});
    const bool isRefused = refusal != refusals_.end();
    const QString makes = draftedName(index);
    const auto shown = [&] {
        return isRefused         ? refusal->second.typed
               : makes.isEmpty() ? fieldText(season_, spec_.kind, field, value)
                                 : makes;
    };
    const auto read = [&] {
        return isRefused || !makes.isEmpty() ? shown() : shownText(season_, spec_.kind, field, value);
    };
    switch (role) {
    case Qt::DisplayRole:
        return isTick(&field) ? QVariant() : QVariant(read());
    case Qt::EditRole:
    case TypedRole:
        return shown();
    case Qt::CheckStateRole:
        if (!isTick(&field)) return {};
        return value == Value(std::int64_t{1}) ? Qt::Checked : Qt::Unchecked;
    case SentenceRole:
    case Qt::ToolTipRole:
    case Qt::AccessibleDescriptionRole:
        return isRefused ? QVariant(refusal->second.sentence) : QVariant(QString());
    case Qt::AccessibleTextRole:
        return QString(fieldLabel(spec_.kind, field) + QStringLiteral(": ") + read());
    case BlankRole:
        return !isRefused && shown().isEmpty();
    case ColourRole: {
        if (field.kind == FieldKind::colour) return colourFrom(value);
        if (field.name == info_.nameField && id) return colourOf(season_, spec_.kind, *id);
        const auto* target = std::get_if<std::int64_t>(&value);
        return field.kind == FieldKind::reference && target ? colourOf(season_, field.refersTo, *target)
                                                            : QColor();
    }
    default:
        return {};
    }
}

QVariant RecordTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
    const auto& column = columns_[static_cast<std::size_t>(section)];
    if (role == Qt::DisplayRole)
        return column.field ? columnHead(spec_.kind, *column.field) : column.computed->head;
    if (role == Qt::TextAlignmentRole)
        return alignment(column.field ? isFigure(*column.field) && !isMonth(spec_.kind, *column.field)
                                      : column.computed->figure);
    return {};
}

Qt::ItemFlags RecordTableModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return spec_.orderField.empty() ? Qt::NoItemFlags : Qt::ItemIsDropEnabled;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    const auto* field = fieldAt(index.column());
    if (field && bench_.canWrite()) flags |= Qt::ItemIsEditable;
    if (isTick(field) && bench_.canWrite()) {
        flags |= Qt::ItemIsUserCheckable;
        flags &= ~Qt::ItemFlags(Qt::ItemIsEditable);
    }
    if (!spec_.orderField.empty() && !isAddRow(index.row()) && find_.isEmpty())
        flags |= Qt::ItemIsDragEnabled;
    return flags;
}

} // namespace withy::ui
