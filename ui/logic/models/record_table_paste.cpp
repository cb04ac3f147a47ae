// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/models/record_table_model.h"

#include <QCoreApplication>
#include <QMimeData>

namespace withy::ui {

namespace {

class RecordTablePasteSay {
    Q_DECLARE_TR_FUNCTIONS(Paste)

public:
    static QString cell(int row, const QString& head, const QString& sentence) {
        return tr("Row %1, %2: %3").arg(QString::number(row), head, sentence);
    }

    static QString computed(int row, const QString& head) {
        return tr("Row %1, %2: this column is worked out and cannot be pasted over.")
            .arg(QString::number(row), head);
    }

    static QString otherTable(const QString& theirs, const QString& ours) {
        return tr("These rows are %1, and this is a list of %2. Paste them there.").arg(theirs, ours);
    }

    static QString noText() { return tr("What was copied is not text. Copy some rows or cells first."); }

    static QString tooWide(int row) {
        return tr("Row %1 has more cells than there are columns from here. Start further to the left.")
            .arg(row);
    }
};

const QString copyMime = QStringLiteral("application/x-withy-rows");

} // namespace

QMimeData* RecordTableModel::mimeForCopy(const QModelIndexList& indexes) const {
    auto* data = new QMimeData;
    data->setText(copied(indexes));
    QModelIndexList typed;
    for (const auto& index : indexes) {
        if (fieldAt(index.column())) typed << index;
    }
    const QByteArray table(info_.name.data(), static_cast<qsizetype>(info_.name.size()));
    data->setData(copyMime, table + '\n' + copied(typed, true).toUtf8());
    return data;
}

QString RecordTableModel::pasteMime(const QModelIndex& at, const QMimeData& data) {
    if (data.hasFormat(copyMime)) {
        const QByteArray all = data.data(copyMime);
        const auto end = all.indexOf('\n');
        const auto* table = model::tableNamed(all.left(end).toStdString());
        if (table && table->kind != spec_.kind)
            return RecordTablePasteSay::otherTable(tableLabel(table->kind, 2), tableLabel(spec_.kind, 2));
        if (table) return paste({}, QString::fromUtf8(all.mid(end + 1)));
    }
    return data.hasText() ? paste(at, data.text()) : RecordTablePasteSay::noText();
}

QString RecordTableModel::paste(const QModelIndex& at, const QString& tsv) {
    auto rows = edits::splitTsv(tsv);
    const auto& season = bench_.season();
    std::vector<std::string> all;
    for (const auto& column : columns_) {
        if (column.field) all.emplace_back(column.field->name);
    }
    const bool over =
        at.isValid() && idAt(at.row()) && !rows.empty() && !edits::headsOf(spec_.kind, rows.front());
    if (!over) {
        auto reading = edits::pasteRows(season, spec_.kind, all, givenToNew(), tsv);
        return reading.edit ? bench_.apply(*reading.edit) : reading.sentence;
    }
    model::Edit edit("cells.paste", {std::string(info_.name), std::to_string(rows.size())});
    std::size_t used = 0;
    for (; used < rows.size(); ++used) {
        const auto id = idAt(at.row() + static_cast<int>(used));
        if (!id) break;
        edits::Given values;
        for (int c = 0; c < rows[used].size(); ++c) {
            const int column = at.column() + c;
            const int row = static_cast<int>(used) + 1;
            if (column >= columnCount()) return RecordTablePasteSay::tooWide(row);
            const auto* field = fieldAt(column);
            if (!field)
                return RecordTablePasteSay::computed(row, headerData(column, Qt::Horizontal).toString());
            const auto reading = readField(season, spec_.kind, *field, rows[used][c],
                                           valueOf(season, {spec_.kind, *id}, field->name));
            if (!reading.ok())
                return RecordTablePasteSay::cell(row, fieldLabel(spec_.kind, *field), reading.sentence);
            values.emplace_back(field->name, *reading.value);
        }
        edits::join(edit, edits::setFields(season, {spec_.kind, *id}, values));
    }
    if (used < rows.size()) { // below the last row they become new ones
        std::vector<std::string> columns;
        for (int c = at.column(); c < columnCount(); ++c) {
            if (fieldAt(c)) columns.emplace_back(fieldAt(c)->name);
        }
        rows.erase(rows.begin(), rows.begin() + static_cast<std::ptrdiff_t>(used));
        const auto reading = edits::pasteRows(season, spec_.kind, columns, givenToNew(), edits::joinTsv(rows),
                                              static_cast<int>(used) + 1);
        if (!reading.edit) return reading.sentence;
        edits::join(edit, *reading.edit);
    }
    const auto applied = model::apply(season, edit);
    return applied.ok() ? bench_.apply(edit) : problemWords(season, applied.error());
}

} // namespace withy::ui
