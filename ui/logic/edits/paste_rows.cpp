// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui::edits {

namespace {

constexpr int mostRows = 5000;

class PasteRowsSay {
    Q_DECLARE_TR_FUNCTIONS(Paste)

public:
    static QString nothing() { return tr("There is nothing to paste. Copy some rows first."); }

    static QString tooMany(int n) {
        return tr("%1 rows are too many at once. Paste up to %2, or bring them in as a file.")
            .arg(n)
            .arg(mostRows);
    }

    static QString otherTable(const QString& theirs, const QString& ours) {
        return tr("These rows are %1, and this is a list of %2. Paste them there.").arg(theirs, ours);
    }

    static QString width(int row, int cells, int columns) {
        return tr("Row %1 has %2 cells and this list has %3 columns. Copy as many, or add a row of heads.")
            .arg(row)
            .arg(cells)
            .arg(columns);
    }

    static QString cell(int row, const QString& head, const QString& sentence) {
        return tr("Row %1, %2: %3").arg(QString::number(row), head, sentence);
    }

    static QString whole(int row, const QString& sentence) {
        return tr("Row %1: %2").arg(QString::number(row), sentence);
    }
};

QString cleaned(const QString& head) {
    return head.trimmed().toCaseFolded();
}

/// The field of a head as people or files write it; null when the table has none like it.
const model::FieldInfo* fieldOfHead(const model::TableInfo& info, const QString& head) {
    const QString wanted = cleaned(head);
    for (const auto& f : info.fields) {
        if (wanted == text(std::string(f.name)) || wanted == cleaned(fieldWords(std::string(f.name))) ||
            wanted == cleaned(fieldLabel(info.kind, f)))
            return &f;
    }
    return nullptr;
}

bool isHead(const model::TableInfo& info, const QStringList& row) {
    int known = 0;
    int filled = 0;
    for (const auto& cell : row) {
        if (cell.trimmed().isEmpty()) continue;
        ++filled;
        if (fieldOfHead(info, cell)) ++known;
    }
    return filled > 0 && known == filled;
}

class Paster {
public:
    Paster(const Season& season, TableKind kind, const std::vector<std::string>& columns, const Given& given)
        : season_(season), after_(season), info_(model::tableInfo(kind)), given_(given) {
        for (const auto& name : columns) {
            if (const auto* field = info_.field(name)) columns_.push_back(field);
        }
    }

    PasteReading read(std::vector<QStringList> rows, int row) {
        if (rows.empty()) return no(PasteRowsSay::nothing());
        if (rows.size() > mostRows) return no(PasteRowsSay::tooMany(static_cast<int>(rows.size())));
        const auto heads = headsOf(info_.kind, rows.front());
        if (heads && *heads != info_.kind)
            return no(PasteRowsSay::otherTable(tableLabel(*heads, 2), tableLabel(info_.kind, 2)));
        if (heads) {
            takeHead(rows.front());
            rows.erase(rows.begin());
            ++row;
        }
        if (rows.empty()) return no(PasteRowsSay::nothing());
        out_.edit = Edit("records.paste", {std::string(info_.name), std::to_string(rows.size())});
        for (const auto& cells : rows) {
            const QString trouble = take(cells, row++);
            if (!trouble.isEmpty()) return no(trouble);
        }
        return judged();
    }

private:
    static PasteReading no(const QString& sentence) { return {std::nullopt, {}, sentence}; }

    void takeHead(const QStringList& row) {
        columns_.clear();
        for (const auto& cell : row)
            columns_.push_back(cell.trimmed().isEmpty() ? nullptr : fieldOfHead(info_, cell));
    }

    QString take(const QStringList& cells, int row) {
        if (cells.size() > static_cast<qsizetype>(columns_.size()))
            return PasteRowsSay::width(row, static_cast<int>(cells.size()),
                                       static_cast<int>(columns_.size()));
        Given values = given_;
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            const auto* field = columns_[i];
            const QString cell =
                i < static_cast<std::size_t>(cells.size()) ? cells[static_cast<int>(i)] : QString();
            if (!field || (cell.trimmed().isEmpty() && !mustBeFilled(*field))) continue;
            const auto reading = readField(season_, info_.kind, *field, cell);
            if (!reading.ok())
                return PasteRowsSay::cell(row, fieldLabel(info_.kind, *field), reading.sentence);
            values.emplace_back(field->name, *reading.value);
        }
        std::int64_t id = 0;
        const Edit one = addRecord(after_, info_.kind, values, id);
        for (const auto& record : one.puts()) {
            model::putRecord(after_, record); // so that the next row gets the next number and place
            out_.edit->put(record);
        }
        out_.made.push_back(id);
        rowOf_[id] = row;
        return {};
    }

    /// A blank cell falls to the default unless there is none.
    static bool mustBeFilled(const model::FieldInfo& field) {
        return field.required || (field.kind == model::FieldKind::reference && !field.optional);
    }

    PasteReading judged() {
        const auto applied = model::apply(season_, *out_.edit);
        if (applied.ok()) return out_;
        const Problem& first = applied.error().front();
        const auto row = rowOf_.find(first.record);
        const QString words = problemWords(season_, {first});
        return no(row == rowOf_.end() ? words : PasteRowsSay::whole(row->second, words));
    }

    const Season& season_;
    Season after_;
    const model::TableInfo& info_;
    const Given& given_;
    std::vector<const model::FieldInfo*> columns_;
    std::map<std::int64_t, int> rowOf_;
    PasteReading out_;
};

} // namespace

PasteReading pasteRows(const Season& season, TableKind kind, const std::vector<std::string>& columns,
                       const Given& given, const QString& tsv, int firstRow) {
    return Paster(season, kind, columns, given).read(splitTsv(tsv), firstRow);
}

std::optional<TableKind> headsOf(TableKind preferred, const QStringList& row) {
    if (isHead(model::tableInfo(preferred), row)) return preferred;
    if (row.size() < 2) return std::nullopt; // one word may be anything
    for (const auto& info : model::allTables()) {
        if (isHead(info, row)) return info.kind;
    }
    return std::nullopt;
}

std::vector<QStringList> splitTsv(const QString& tsv) {
    std::vector<QStringList> rows;
    QStringList row;
    QString cell;
    bool quoted = false;
    const auto endRow = [&] {
        row << cell;
        cell.clear();
        rows.push_back(row);
        row.clear();
    };
    for (qsizetype i = 0; i < tsv.size(); ++i) {
        const QChar c = tsv[i];
        if (quoted) {
            if (c != QLatin1Char('"'))
                cell += c;
            else if (i + 1 < tsv.size() && tsv[i + 1] == QLatin1Char('"'))
                cell += tsv[++i];
            else
                quoted = false;
        } else if (c == QLatin1Char('"') && cell.isEmpty() && tsv.indexOf(QLatin1Char('"'), i + 1) > 0) {
            quoted = true;
        } else if (c == QLatin1Char('\t')) {
            row << cell;
            cell.clear();
        } else if (c == QLatin1Char('\n')) {
            endRow();
        } else if (c != QLatin1Char('\r')) {
            cell += c;
        }
    }
    if (!cell.isEmpty() || !row.isEmpty()) endRow();
    const auto blank = [](const QStringList& r) {
        return std::all_of(r.begin(), r.end(), [](const QString& s) { return s.trimmed().isEmpty(); });
    };
    while (!rows.empty() && blank(rows.back()))
        rows.pop_back();
    return rows;
}

QString joinTsv(const std::vector<QStringList>& rows) {
    QStringList lines;
    for (const auto& row : rows) {
        QStringList cells;
        for (QString cell : row) {
            if (cell.contains(QLatin1Char('\t')) || cell.contains(QLatin1Char('\n')) ||
                cell.startsWith(QLatin1Char('"')))
                cell = QLatin1Char('"') + cell.replace(QLatin1Char('"'), QStringLiteral("\"\"")) +
                       QLatin1Char('"');
            cells << cell;
        }
        lines << cells.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace withy::ui::edits
