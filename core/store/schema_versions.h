// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace withy::store {

/// 'With' in ASCII: marks a SQLite file as a season of ours.
inline constexpr std::int32_t applicationId = 0x57697468;

/// One step of the schema: schema/NNN_what.sql leads from version NNN - 1 to NNN.
struct Migration {
    int version = 0;
    QString sql;
};

/// A table, index, view or trigger as sqlite_schema holds it.
struct SchemaObject {
    QString type;
    QString name;
    QString sql;
    friend bool operator==(const SchemaObject&, const SchemaObject&) = default;
};

/// The statements of a script, split at semicolons outside quotes and comments. No triggers: a
/// BEGIN ... END body would be torn apart.
QStringList statementsOf(const QString& script);

/// What the file holds now, in order of name; the statistics that ANALYZE keeps are left out.
std::vector<SchemaObject> schemaOf(Connection& connection);

/// The versions there are and what each looks like.
class SchemaVersions {
public:
    /// Precondition: versions 1, 2, 3 ... without a gap.
    explicit SchemaVersions(std::vector<Migration> migrations);
    /// Those shipped with the program; made once.
    static const SchemaVersions& shipped();
    /// The shipped migrations as they are, for tests that add one.
    static std::vector<Migration> shippedMigrations();

    [[nodiscard]] int latest() const { return static_cast<int>(migrations_.size()); }

    /// What a file of that version holds, made by running its steps in memory: some milliseconds.
    /// Precondition: 1 <= version <= latest().
    [[nodiscard]] std::vector<SchemaObject> expected(int version) const;
    /// Whether these are the only step's statements, word for word: then a file is sound, and nothing need
    /// be run. A file that came by several steps is never so.
    [[nodiscard]] bool asWritten(const std::vector<SchemaObject>& found) const;
    /// Runs the steps after `from` and sets user_version. The caller holds the transaction.
    void run(Connection& connection, int from) const;

private:
    std::vector<Migration> migrations_;
};

} // namespace withy::store
