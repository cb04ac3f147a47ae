// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>

namespace withy {

/// Another program that holds a season's file, as a slow disk would: nobody can write to it meanwhile.
class HeldFile {
public:
    explicit HeldFile(const QString& path)
        : db_(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("held"))) {
        db_.setDatabaseName(path);
        held_ = db_.open() && QSqlQuery(db_).exec(QStringLiteral("BEGIN IMMEDIATE"));
    }

    ~HeldFile() {
        letGo();
        db_.close();
        db_ = {};
        QSqlDatabase::removeDatabase(QStringLiteral("held"));
    }

    HeldFile(const HeldFile&) = delete;
    HeldFile& operator=(const HeldFile&) = delete;

    [[nodiscard]] bool isHeld() const { return held_; }

    void letGo() {
        if (held_) QSqlQuery(db_).exec(QStringLiteral("ROLLBACK"));
        held_ = false;
    }

private:
    QSqlDatabase db_;
    bool held_ = false;
};

} // namespace withy
