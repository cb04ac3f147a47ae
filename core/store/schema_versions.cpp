// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema_versions.h"

#include <QDir>
#include <QFile>

#include <cassert>
#include <utility>

static void loadResource() {
    Q_INIT_RESOURCE(withy_schema); // a static library's resources are not linked in by themselves
}

namespace withy::store {

namespace {

/// Index just after the quoted text or comment that starts at `at`; `at` when none does.
qsizetype skipQuoted(const QString& s, qsizetype at) {
    const QChar c = s[at];
    if (c == QLatin1Char('\'') || c == QLatin1Char('"')) {
        const auto end = s.indexOf(c, at + 1);
        return end < 0 ? s.size() : end + 1;
    }
    if (QStringView(s).mid(at).startsWith(QLatin1String("--"))) {
        const auto end = s.indexOf(QLatin1Char('\n'), at);
        return end < 0 ? s.size() : end + 1;
    }
    return at;
}

bool onlyComments(const QString& s) {
    for (qsizetype i = 0; i < s.size();) {
        const auto next = skipQuoted(s, i);
        if (next == i && !s[i].isSpace()) return false;
        if (next != i && s[i] != QLatin1Char('-')) return false;
        i = next == i ? i + 1 : next;
    }
    return true;
}

/// As SQLite keeps a statement: from its first word on.
QString withoutLeadingComments(const QString& statement) {
    qsizetype start = 0;
    while (start < statement.size()) {
        const bool comment = QStringView(statement).mid(start).startsWith(QLatin1String("--"));
        if (!comment && !statement[start].isSpace()) break;
        start = comment ? skipQuoted(statement, start) : start + 1;
    }
    return statement.mid(start);
}

} // namespace

QStringList statementsOf(const QString& script) {
    QStringList all;
    qsizetype start = 0;
    const auto take = [&](qsizetype end) {
        const QString one = script.mid(start, end - start).trimmed();
        if (!onlyComments(one)) all << one;
        start = end + 1;
    };
    for (qsizetype i = 0; i < script.size();) {
        const auto next = skipQuoted(script, i);
        if (next == i && script[i] == QLatin1Char(';')) take(i);
        i = next == i ? i + 1 : next;
    }
    take(script.size());
    return all;
}

std::vector<SchemaObject> schemaOf(Connection& connection) {
    std::vector<SchemaObject> all;
    for (const auto& row : connection.rows(QStringLiteral(
             "SELECT type, name, sql FROM sqlite_schema WHERE name NOT IN ('sqlite_stat1','sqlite_stat4') "
             "OR type <> 'table' ORDER BY name, type"))) {
        all.push_back({row[0].toString(), row[1].toString(), row[2].toString()});
    }
    return all;
}

SchemaVersions::SchemaVersions(std::vector<Migration> migrations) : migrations_(std::move(migrations)) {
    for (std::size_t i = 0; i < migrations_.size(); ++i)
        assert(migrations_[i].version == static_cast<int>(i) + 1);
}

std::vector<Migration> SchemaVersions::shippedMigrations() {
    loadResource();
    std::vector<Migration> all;
    const QDir folder(QStringLiteral(":/withy/schema"));
    for (const QString& name : folder.entryList({QStringLiteral("*.sql")}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        [[maybe_unused]] const bool opened = file.open(QIODevice::ReadOnly);
        assert(opened);
        all.push_back({name.left(3).toInt(), QString::fromUtf8(file.readAll())});
    }
    assert(!all.empty());
    return all;
}

const SchemaVersions& SchemaVersions::shipped() {
    static const SchemaVersions all(shippedMigrations());
    return all;
}

std::vector<SchemaObject> SchemaVersions::expected(int version) const {
    Connection memory = Connection::inMemory({Attempt::create, QStringLiteral(":memory:")});
    for (const auto& migration : migrations_) {
        if (migration.version > version) break;
        for (const auto& statement : statementsOf(migration.sql))
            memory.exec(statement);
    }
    return schemaOf(memory);
}

bool SchemaVersions::asWritten(const std::vector<SchemaObject>& found) const {
    if (migrations_.size() != 1) return false;
    QStringList written = statementsOf(migrations_.front().sql);
    QStringList held;
    for (QString& statement : written)
        statement = withoutLeadingComments(statement);
    for (const auto& object : found)
        if (!object.sql.isNull()) held << object.sql; // without: an index that its table brings along
    written.sort();
    held.sort();
    return written == held;
}

void SchemaVersions::run(Connection& connection, int from) const {
    for (const auto& migration : migrations_) {
        if (migration.version <= from) continue;
        for (const auto& statement : statementsOf(migration.sql))
            connection.exec(statement);
    }
    connection.exec(QStringLiteral("PRAGMA user_version=%1").arg(latest()));
    connection.exec(QStringLiteral("PRAGMA application_id=%1").arg(applicationId));
}

} // namespace withy::store
