// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariant>

#include <vector>

class QThread;

namespace withy::store {

/// One SQLite connection with our settings; errors come out as StoreError.
/// Belongs to the thread that made it, unless moved. Queries taken from it must die before it does.
class Connection {
public:
    enum class Access {
        read,  ///< cannot write, cannot make the file
        write, ///< rollback journal, synchronous=FULL
    };

    /// `path` is the file opened, `doing.path` the one that errors name (they differ for copies).
    Connection(const QString& path, Access access, Doing doing);
    /// An empty database in memory.
    static Connection inMemory(Doing doing);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    [[nodiscard]] const Doing& doing() const { return doing_; }

    /// What errors from here on say was attempted.
    void now(Attempt attempt) { doing_.attempt = attempt; }

    /// With its queries. To be called by the thread it belonged to.
    void moveTo(QThread& thread);

    void exec(const QString& sql);
    /// First column of the first row; invalid when there is no row.
    QVariant value(const QString& sql);
    /// Every row of a query.
    std::vector<std::vector<QVariant>> rows(const QString& sql);
    QSqlQuery prepare(const QString& sql);
    void run(QSqlQuery& prepared);
    /// After the last row: throws when reading stopped because of an error.
    void throwIfFailed(const QSqlQuery& query) const;
    /// Undoes an open transaction; never throws.
    void rollBack() noexcept;

private:
    void open(const QString& options);
    [[noreturn]] void fail(const QSqlError& error, const QString& sql) const;

    Doing doing_;
    QString name_;
    QSqlDatabase db_;
};

/// Rolled back when it goes out of scope without commit().
class Transaction {
public:
    enum class Kind { read, write };
    Transaction(Connection& connection, Kind kind);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    void commit();

private:
    Connection& connection_;
    bool open_ = true;
};

} // namespace withy::store
