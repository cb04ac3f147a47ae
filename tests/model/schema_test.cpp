// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/schema.h"

#include <gtest/gtest.h>

#include <set>

namespace withy::model {

TEST(Schema, DescribesEveryTableInOrderWithUniqueNames) {
    std::set<std::string_view> names;
    ASSERT_EQ(allTables().size(), tableCount);
    for (std::size_t i = 0; i < allTables().size(); ++i) {
        const auto& t = allTables()[i];
        EXPECT_EQ(static_cast<std::size_t>(t.kind), i) << t.name;
        EXPECT_TRUE(names.insert(t.name).second) << t.name;
        EXPECT_EQ(tableNamed(t.name), &t);
        EXPECT_TRUE(t.nameField.empty() || t.field(t.nameField)) << t.name;
        for (const auto name : t.unique)
            EXPECT_NE(t.field(name), nullptr) << t.name << '.' << name;
    }
}

TEST(Schema, FieldNamesAreUniqueWithinATable) {
    for (const auto& t : allTables()) {
        std::set<std::string_view> names{"id"};
        for (const auto& f : t.fields)
            EXPECT_TRUE(names.insert(f.name).second) << t.name << '.' << f.name;
    }
}

TEST(Schema, EveryFieldTakesBackWhatItGives) {
    for (const auto& t : allTables()) {
        Record a = emptyRecord(t.kind, 1);
        for (const auto& f : t.fields) {
            SCOPED_TRACE(std::string(t.name) + "." + std::string(f.name));
            const Value v = f.get(recordPointer(a));
            EXPECT_EQ(isBlank(v), f.optional);
            EXPECT_TRUE(f.set(recordPointer(a), v));
            EXPECT_EQ(f.get(recordPointer(a)), v);
            EXPECT_EQ(f.set(recordPointer(a), Value{}), f.optional);
        }
    }
}

TEST(Schema, ReferencesPointAtTables) {
    for (const auto& t : allTables()) {
        for (const auto& f : t.fields)
            EXPECT_EQ(f.kind == FieldKind::reference, f.refersTo != TableKind::none)
                << t.name << '.' << f.name;
    }
}

TEST(Schema, RefusesWordsDaysTimesAndColoursItCannotRead) {
    Record b = emptyRecord(TableKind::bookings, 1);
    const auto& t = tableInfo(TableKind::bookings);
    EXPECT_FALSE(t.field("standing")->set(recordPointer(b), std::string("perhaps")));
    EXPECT_FALSE(t.field("held_until")->set(recordPointer(b), std::string("2027-02-29")));
    EXPECT_TRUE(t.field("held_until")->set(recordPointer(b), std::string("2028-02-29")));
    EXPECT_FALSE(t.field("event_start")->set(recordPointer(b), std::string("2027-09-11T24:00")));
    Record p = emptyRecord(TableKind::plants, 1);
    EXPECT_FALSE(
        tableInfo(TableKind::plants).field("colour_1")->set(recordPointer(p), std::string("#12345g")));
}

TEST(Schema, KnowsRecordsByName) {
    Season s;
    Plant p;
    p.id = Id<Plant>(7);
    p.name = "Zinnia, coral";
    putRecord(s, p);
    EXPECT_EQ(nameOf(s, TableKind::plants, 7), "Zinnia, coral");
    EXPECT_EQ(nameOf(s, TableKind::plants, 8), "plant 8");
}

} // namespace withy::model
