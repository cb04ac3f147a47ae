// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/record_io.h"

#include <QStringList>

#include <utility>

namespace withy::store {

using model::FieldInfo;
using model::FieldKind;
using model::TableInfo;
using model::Value;

namespace {

QString text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString quoted(std::string_view name) {
    return QLatin1Char('"') + text(name) + QLatin1Char('"');
}

QString putSql(const TableInfo& table) {
    QStringList columns{QStringLiteral("\"id\"")};
    QStringList marks{QStringLiteral("?")};
    QStringList updates;
    for (const FieldInfo& field : table.fields) {
        const QString name = quoted(field.name);
        columns << name;
        marks << QStringLiteral("?");
        updates << name + QStringLiteral("=excluded.") + name;
    }
    return QStringLiteral("INSERT INTO %1 (%2) VALUES (%3) ON CONFLICT(\"id\") DO UPDATE SET %4")
        .arg(quoted(table.name), columns.join(QLatin1Char(',')), marks.join(QLatin1Char(',')),
             updates.join(QLatin1Char(',')));
}

QString eraseSql(const TableInfo& table) {
    return QStringLiteral("DELETE FROM %1 WHERE \"id\"=?").arg(quoted(table.name));
}

bool isNumberKind(FieldKind kind) {
    return kind == FieldKind::whole || kind == FieldKind::yesNo || kind == FieldKind::money ||
           kind == FieldKind::reference;
}

bool isTextKind(FieldKind kind) {
    return !isNumberKind(kind) && kind != FieldKind::real;
}

/// Texts are read as bytes: faster than by way of UTF-16, and bytes that are no UTF-8 stay seen.
QString selectSql(const TableInfo& table) {
    QStringList columns{QStringLiteral("\"id\"")};
    for (const FieldInfo& field : table.fields) {
        columns << (isTextKind(field.kind) ? QStringLiteral("CAST(%1 AS BLOB)").arg(quoted(field.name))
                                           : quoted(field.name));
    }
    return QStringLiteral("SELECT %1 FROM %2 ORDER BY \"id\"")
        .arg(columns.join(QLatin1Char(',')), quoted(table.name));
}

/// The value in the shape of the field's kind; nothing when it has another.
std::optional<Value> toValue(const QVariant& found, FieldKind kind) {
    if (found.isNull()) return Value{};
    const int type = found.typeId();
    if (isNumberKind(kind)) {
        if (type != QMetaType::LongLong && type != QMetaType::Int) return std::nullopt;
        return Value{static_cast<std::int64_t>(found.toLongLong())};
    }
    if (kind == FieldKind::real) {
        if (type != QMetaType::Double) return std::nullopt;
        return Value{found.toDouble()};
    }
    if (type != QMetaType::QByteArray) return std::nullopt;
    const QByteArray utf8 = found.toByteArray();
    return Value{std::string(utf8.constData(), static_cast<std::size_t>(utf8.size()))};
}

ProblemCode codeFor(const FieldInfo& field, const QVariant& found) {
    if (found.isNull()) return ProblemCode::required;
    switch (field.kind) {
    case FieldKind::word:
        return ProblemCode::notAWord;
    case FieldKind::day:
        return ProblemCode::notADate;
    case FieldKind::localTime:
        return ProblemCode::notATime;
    case FieldKind::colour:
        return ProblemCode::notAColour;
    case FieldKind::yesNo:
        return ProblemCode::notYesNo;
    case FieldKind::text:
        return ProblemCode::notText;
    default:
        return ProblemCode::notANumber;
    }
}

Problem problemOf(const TableInfo& table, std::int64_t id, const FieldInfo& field, const QVariant& found) {
    Problem p;
    p.code = codeFor(field, found);
    p.table = table.name;
    p.record = id;
    p.field = field.name;
    p.value = found.toByteArray().toStdString();
    for (const auto word : field.words)
        p.details.emplace_back(word);
    return p;
}

void setId(model::Record& record, std::int64_t id) {
    std::visit(
        [id](auto& r) {
            if constexpr (requires { r.id.value = id; }) r.id.value = id;
        },
        record);
}

void readTable(Connection& connection, const TableInfo& table, model::Season& season, Problems& problems) {
    QSqlQuery query = connection.prepare(selectSql(table));
    connection.run(query);
    const model::Record blank = model::emptyRecord(table.kind, 0);
    while (query.next()) {
        model::Record record = blank;
        const std::int64_t id = query.value(0).toLongLong();
        setId(record, id);
        void* target = model::recordPointer(record);
        int column = 1;
        for (const FieldInfo& field : table.fields) {
            const QVariant found = query.value(column++);
            const auto value = toValue(found, field.kind);
            if (!value || !field.set(target, *value)) problems.push_back(problemOf(table, id, field, found));
        }
        model::putRecord(season, record);
    }
    connection.throwIfFailed(query);
}

} // namespace

QVariant toVariant(const Value& value) {
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return QVariant::fromValue<qlonglong>(*whole);
    if (const auto* real = std::get_if<double>(&value)) return *real;
    if (const auto* utf8 = std::get_if<std::string>(&value)) return text(*utf8);
    return QVariant(QMetaType(QMetaType::QString));
}

QSqlQuery& RecordWriter::prepared(Prepared& among, const TableInfo& table,
                                  QString (*sqlFor)(const TableInfo&)) {
    const auto known = among.find(table.kind);
    if (known != among.end()) return known->second;
    return among.emplace(table.kind, connection_.prepare(sqlFor(table))).first->second;
}

void RecordWriter::put(const model::Record& record) {
    put(model::tableInfo(model::kindOfRecord(record)), model::idOf(record), model::recordPointer(record));
}

void RecordWriter::put(const TableInfo& table, std::int64_t id, const void* record) {
    QSqlQuery& query = prepared(puts_, table, putSql);
    int column = 0;
    query.bindValue(column++, QVariant::fromValue<qlonglong>(id));
    for (const FieldInfo& field : table.fields)
        query.bindValue(column++, toVariant(field.get(record)));
    connection_.run(query);
}

void RecordWriter::erase(model::Ref ref) {
    QSqlQuery& query = prepared(erases_, model::tableInfo(ref.table), eraseSql);
    query.bindValue(0, QVariant::fromValue<qlonglong>(ref.id));
    connection_.run(query);
}

void RecordWriter::putAll(const model::Season& season) {
    for (const TableInfo& table : model::allTables()) {
        model::forEachRecord(season, table.kind,
                             [&](std::int64_t id, const void* record) { put(table, id, record); });
    }
}

model::Season readSeason(Connection& connection, Problems& problems) {
    model::Season season;
    for (const TableInfo& table : model::allTables())
        readTable(connection, table, season, problems);
    return season;
}

} // namespace withy::store
