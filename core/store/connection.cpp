// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QSqlRecord>

#include <utility>

namespace withy::store {

namespace {

// Primary result codes, https://www.sqlite.org/rescode.html
enum Sqlite {
    error = 1,
    perm = 3,
    busy = 5,
    locked = 6,
    readOnly = 8,
    ioError = 10,
    corrupt = 11,
    full = 13,
    cannotOpen = 14,
    notADatabase = 26
};

StoreFault faultOf(int code, const Doing& doing) {
    switch (code & 0xff) {
    case perm:
    case readOnly:
        return StoreFault::readOnly;
    case busy:
    case locked:
        return StoreFault::lockedBy;
    case corrupt:
        return StoreFault::damaged;
    case error: // our own SQL is right, so reading met something that is not ours
        return doing.reads() ? StoreFault::damaged : StoreFault::cannotWrite;
    case full:
        return StoreFault::diskFull;
    case notADatabase:
        return StoreFault::notASeason;
    default:
        return doing.reads() ? StoreFault::cannotRead : StoreFault::cannotWrite;
    }
}

const auto sharedPragmas = {"PRAGMA foreign_keys=ON", "PRAGMA trusted_schema=OFF",
                            "PRAGMA cell_size_check=ON"};

} // namespace

Connection::Connection(const QString& path, Access access, Doing doing)
    : doing_(std::move(doing))
    , name_(QStringLiteral("withy-%1").arg(reinterpret_cast<quintptr>(this)))
    , db_(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name_)) {
    db_.setDatabaseName(path);
    const bool reading = access == Access::read;
    try {
        open(reading ? QStringLiteral("QSQLITE_OPEN_READONLY;QSQLITE_BUSY_TIMEOUT=5000")
                     : QStringLiteral("QSQLITE_BUSY_TIMEOUT=2000"));
        if (!reading) exec(QStringLiteral("PRAGMA synchronous=FULL"));
    } catch (...) {
        db_ = QSqlDatabase();
        QSqlDatabase::removeDatabase(name_);
        throw;
    }
}

Connection Connection::inMemory(Doing doing) {
    return {QStringLiteral(":memory:"), Access::write, std::move(doing)};
}

Connection::~Connection() {
    db_.close();
    db_ = QSqlDatabase();
    QSqlDatabase::removeDatabase(name_);
}

void Connection::moveTo(QThread& thread) {
    db_.driver()->moveToThread(&thread); // from Qt 6.8 on: QSqlDatabase::moveToThread
}

void Connection::open(const QString& options) {
    db_.setConnectOptions(options);
    if (!db_.open()) fail(db_.lastError(), QStringLiteral("open"));
    for (const char* pragma : sharedPragmas)
        exec(QString::fromLatin1(pragma));
}

void Connection::fail(const QSqlError& error, const QString& sql) const {
    const QString text = error.databaseText() + QStringLiteral(" (SQLite ") + error.nativeErrorCode() +
                         QStringLiteral(") at: ") + sql.left(200);
    doing_.fail(faultOf(error.nativeErrorCode().toInt(), doing_), text.toStdString());
}

void Connection::exec(const QString& sql) {
    QSqlQuery query(db_);
    if (!query.exec(sql)) fail(query.lastError(), sql);
}

std::vector<std::vector<QVariant>> Connection::rows(const QString& sql) {
    QSqlQuery query = prepare(sql);
    run(query);
    const int columns = query.record().count();
    std::vector<std::vector<QVariant>> all;
    while (query.next()) {
        auto& row = all.emplace_back();
        for (int i = 0; i < columns; ++i)
            row.push_back(query.value(i));
    }
    throwIfFailed(query);
    return all;
}

QVariant Connection::value(const QString& sql) {
    QSqlQuery query = prepare(sql);
    run(query);
    QVariant result = query.next() ? query.value(0) : QVariant();
    throwIfFailed(query);
    return result;
}

QSqlQuery Connection::prepare(const QString& sql) {
    QSqlQuery query(db_);
    query.setForwardOnly(true);
    if (!query.prepare(sql)) fail(query.lastError(), sql);
    return query;
}

void Connection::run(QSqlQuery& prepared) {
    if (!prepared.exec()) fail(prepared.lastError(), prepared.lastQuery());
}

void Connection::throwIfFailed(const QSqlQuery& query) const {
    if (query.lastError().isValid()) fail(query.lastError(), query.lastQuery());
}

void Connection::rollBack() noexcept {
    try {
        QSqlQuery(db_).exec(QStringLiteral("ROLLBACK"));
    } catch (...) {
        return; // out of memory: closing the connection rolls back as well
    }
}

Transaction::Transaction(Connection& connection, Kind kind) : connection_(connection) {
    connection_.exec(kind == Kind::write ? QStringLiteral("BEGIN IMMEDIATE") : QStringLiteral("BEGIN"));
}

Transaction::~Transaction() {
    if (open_) connection_.rollBack();
}

void Transaction::commit() {
    connection_.exec(QStringLiteral("COMMIT"));
    open_ = false;
}

} // namespace withy::store
