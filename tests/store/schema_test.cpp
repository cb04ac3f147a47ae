// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/schema.h"
#include "core/store/schema_versions.h"
#include "tests/store/schema_text.h"

#include <QFile>

#include <gtest/gtest.h>

#include <set>

namespace withy::test {

using model::FieldKind;
using store::Connection;

namespace {

struct Fresh {
    Connection memory = Connection::inMemory({store::Attempt::create, QStringLiteral(":memory:")});

    Fresh() { store::SchemaVersions::shipped().run(memory, 0); }
};

std::string columnType(FieldKind kind) {
    static const std::set<FieldKind> whole = {FieldKind::whole, FieldKind::yesNo, FieldKind::money,
                                              FieldKind::reference};
    if (whole.contains(kind)) return "INTEGER";
    return kind == FieldKind::real ? "REAL" : "TEXT";
}

} // namespace

TEST(Schema, TablesAreThoseOfTheModelAndStrict) {
    Fresh fresh;
    std::set<std::string> found;
    for (const auto& row : fresh.memory.rows(QStringLiteral("PRAGMA table_list"))) {
        const std::string name = row[1].toString().toStdString();
        if (name.starts_with("sqlite_")) continue;
        found.insert(name);
        EXPECT_EQ(row[2].toString(), QStringLiteral("table")) << name;
        EXPECT_EQ(row[5].toInt(), 1) << name << " is not STRICT";
    }
    std::set<std::string> described;
    for (const auto& table : model::allTables())
        described.emplace(table.name);
    EXPECT_EQ(found, described);
}

TEST(Schema, ColumnsAreTheFields) {
    Fresh fresh;
    for (const auto& table : model::allTables()) {
        SCOPED_TRACE(table.name);
        const auto columns = fresh.memory.rows(QStringLiteral("PRAGMA table_xinfo(\"%1\")")
                                                   .arg(QString::fromStdString(std::string(table.name))));
        ASSERT_EQ(columns.size(), table.fields.size() + 1);
        EXPECT_EQ(columns[0][1].toString(), QStringLiteral("id"));
        EXPECT_EQ(columns[0][5].toInt(), 1) << "id is not the key";
        for (std::size_t i = 0; i < table.fields.size(); ++i) {
            const auto& field = table.fields[i];
            const auto& column = columns[i + 1];
            SCOPED_TRACE(field.name);
            EXPECT_EQ(column[1].toString().toStdString(), field.name);
            EXPECT_EQ(column[2].toString().toStdString(), columnType(field.kind));
            EXPECT_EQ(column[3].toInt() == 1, !field.optional);
            EXPECT_EQ(column[6].toInt(), 0) << "generated or hidden";
        }
    }
}

TEST(Schema, ReferencesAreThoseOfTheModel) {
    Fresh fresh;
    for (const auto& table : model::allTables()) {
        SCOPED_TRACE(table.name);
        std::set<std::string> found;
        for (const auto& row : fresh.memory.rows(QStringLiteral("PRAGMA foreign_key_list(\"%1\")")
                                                     .arg(QString::fromStdString(std::string(table.name))))) {
            found.insert(
                (row[3].toString() + " to " + row[2].toString() + "." + row[4].toString()).toStdString());
        }
        std::set<std::string> described;
        for (const auto& field : table.fields) {
            if (field.kind != FieldKind::reference) continue;
            described.insert(std::string(field.name) + " to " +
                             std::string(model::tableInfo(field.refersTo).name) + ".id");
        }
        EXPECT_EQ(found, described);
    }
}

// Holds until version 1 is first released; from then on this test goes and 002_what.sql comes.
TEST(Schema, TextIsWhatTheDescriptionMakes) {
    ASSERT_EQ(store::SchemaVersions::shipped().latest(), 1);
    EXPECT_EQ(store::SchemaVersions::shippedMigrations()[0].sql.toStdString(), schemaText());
}

TEST(Schema, AFileAsWrittenNeedsNoTrial) {
    Fresh fresh;
    const auto& shipped = store::SchemaVersions::shipped();
    auto found = store::schemaOf(fresh.memory);
    EXPECT_TRUE(shipped.asWritten(found));
    EXPECT_EQ(found, shipped.expected(1));
    found[3].sql += QStringLiteral(" ");
    EXPECT_FALSE(shipped.asWritten(found)) << "a table altered";
    found = store::schemaOf(fresh.memory);
    found.pop_back();
    EXPECT_FALSE(shipped.asWritten(found)) << "a table gone";
    fresh.memory.exec(QStringLiteral("CREATE TABLE moon (id INTEGER PRIMARY KEY) STRICT"));
    EXPECT_FALSE(shipped.asWritten(store::schemaOf(fresh.memory))) << "a table too many";
    auto steps = store::SchemaVersions::shippedMigrations();
    steps.push_back({2, QStringLiteral("CREATE TABLE moon (id INTEGER PRIMARY KEY) STRICT;")});
    const store::SchemaVersions two(steps);
    EXPECT_FALSE(two.asWritten(store::schemaOf(fresh.memory))) << "came by two steps";
    EXPECT_EQ(store::schemaOf(fresh.memory), two.expected(2));
}

TEST(Schema, StatementsAreSplitOutsideQuotesAndComments) {
    const QString script = QStringLiteral("-- a; b\nCREATE TABLE \"x;y\" (z TEXT DEFAULT 'it''s; so');\n"
                                          "  -- only; this\n;\nSELECT 1 -- end; here\n; SELECT 2");
    const QStringList expected = {
        QStringLiteral("-- a; b\nCREATE TABLE \"x;y\" (z TEXT DEFAULT 'it''s; so')"),
        QStringLiteral("SELECT 1 -- end; here"), QStringLiteral("SELECT 2")};
    EXPECT_EQ(store::statementsOf(script), expected);
}

} // namespace withy::test
