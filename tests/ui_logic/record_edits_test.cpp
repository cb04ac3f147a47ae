// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"
#include "tests/support/season_text.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/starting_seasons.h"

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

using edits::Given;
using model::Edit;
using model::Ref;
using model::Season;
using model::TableKind;
using model::Value;

/// Applies the edit, checks that its inverse leads back byte for byte, and gives the season after it.
Season thereAndBack(const Season& season, const Edit& edit) {
    const auto applied = model::apply(season, edit);
    EXPECT_TRUE(applied.ok())
        << problemWords(season, applied.ok() ? Problems{} : applied.error()).toStdString();
    if (!applied.ok()) return season;
    const auto back = model::apply(applied->season, applied->inverse);
    EXPECT_TRUE(back.ok());
    if (back.ok()) {
        EXPECT_EQ(exchange::exportSeason(back->season), exchange::exportSeason(season));
    }
    return applied->season;
}

template <class R>
Id<R> firstId(const model::Table<R>& table) {
    return table.begin()->id;
}

std::string words(const Edit& edit) {
    return edits::inWords(edit.name()).toStdString();
}

/// A design of three slots at the places given.
Season withSlots(const std::vector<std::int64_t>& places) {
    auto season = model::sample::season();
    model::Design design;
    design.id = Id<model::Design>(1);
    design.name = "Supper jar";
    season.designs.put(design);
    for (std::size_t i = 0; i < places.size(); ++i) {
        model::Slot slot;
        slot.id = Id<model::Slot>(static_cast<std::int64_t>(i) + 1);
        slot.design = design.id;
        slot.label = std::string(1, static_cast<char>('a' + i));
        slot.position = places[i];
        season.slots.put(slot);
    }
    return season;
}

/// The labels in order of place, and how many records the edit touches.
std::string orderAfter(const Season& season) {
    std::vector<std::pair<std::int64_t, std::string>> slots;
    for (const auto& slot : season.slots)
        slots.emplace_back(slot.position, slot.label);
    std::sort(slots.begin(), slots.end());
    std::string out;
    for (std::size_t i = 0; i < slots.size(); ++i) {
        EXPECT_TRUE(i == 0 || slots[i].first != slots[i - 1].first) << "two at one place";
        out += slots[i].second;
    }
    return out;
}

} // namespace

TEST(RecordEdits, OneFieldOfAnyRecordThereAndBack) {
    const auto season = demoSeason();
    int tried = 0;
    for (const auto& table : model::allTables()) {
        std::optional<Ref> first;
        model::forEachRecord(season, table.kind, [&](std::int64_t id, const void*) {
            if (!first) first = Ref{table.kind, id};
        });
        if (!first) continue;
        for (const auto& field : table.fields) {
            if (field.kind != model::FieldKind::text || table.kind == TableKind::plantFacts ||
                table.kind == TableKind::settings)
                continue;
            SCOPED_TRACE(std::string(table.name) + "." + std::string(field.name));
            const auto after =
                thereAndBack(season, edits::setField(season, *first, field.name, std::string("Neu")));
            EXPECT_EQ(valueOf(after, *first, field.name), Value(std::string("Neu")));
            ++tried;
        }
    }
    EXPECT_GT(tried, 30);
}

TEST(RecordEdits, UndoSaysWhatWasDone) {
    auto season = model::sample::season();
    season.bookings.put(model::sample::booking(1, "Library roof supper"));
    season.plants.put(model::sample::plant(1, "100 %1 daisy"));
    const Ref supper{TableKind::bookings, 1};
    EXPECT_EQ(words(edits::setField(season, supper, "must_not", std::string("lilies"))),
              "must not of Library roof supper");
    std::int64_t jar = 0;
    const auto made = edits::addNamed(season, TableKind::containers, QStringLiteral("Honey jar"), jar);
    EXPECT_EQ(words(made), "new container Honey jar");
    season = thereAndBack(season, made);
    EXPECT_EQ(words(edits::setField(season, {TableKind::containers, jar}, "owned", std::int64_t{48})),
              "48 owned of Honey jar");
    // A name that looks like a pattern stays as it is.
    EXPECT_EQ(words(edits::setField(season, {TableKind::plants, 1}, "notes", std::string("x"))),
              "notes of 100 %1 daisy");
    EXPECT_EQ(words(edits::eraseRecords(season, {supper})), "Library roof supper taken out");
    EXPECT_EQ(words(edits::eraseRecords(season, {{TableKind::plants, 1}, {TableKind::plants, 2}})),
              "2 plants taken out");
}

TEST(RecordEdits, ValuesOfTheWrongShapeChangeNothing) {
    auto season = model::sample::season();
    season.bookings.put(model::sample::booking(1, "Supper"));
    const Ref supper{TableKind::bookings, 1};
    EXPECT_TRUE(edits::setField(season, supper, "budget", std::string("much")).empty());
    EXPECT_TRUE(edits::setField(season, supper, "title", std::int64_t{1}).empty());
    EXPECT_TRUE(edits::setField(season, supper, "title", Value{}).empty());
    EXPECT_TRUE(edits::setField(season, supper, "no_such_field", std::string("x")).empty());
    EXPECT_TRUE(edits::setField(season, {TableKind::bookings, 9}, "title", std::string("x")).empty());
    EXPECT_TRUE(edits::setField(season, supper, "kind", std::string("coronation")).empty());
}

TEST(RecordEdits, ANewRecordOfEveryTableHolds) {
    const auto season = demoSeason();
    for (const auto& table : model::allTables()) {
        if (table.kind == TableKind::settings) continue;
        SCOPED_TRACE(table.name);
        Given given;
        for (const auto& field : table.fields) { // its name and what it must refer to, no more
            if (field.required)
                given.emplace_back(field.name, table.kind == TableKind::plantFacts
                                                   ? Value(std::string("q10"))
                                                   : Value(std::string("New")));
            if (field.kind != model::FieldKind::reference || field.optional) continue;
            std::int64_t last = 0;
            model::forEachRecord(season, field.refersTo, [&](std::int64_t id, const void*) { last = id; });
            given.emplace_back(field.name, last);
        }
        if (table.kind == TableKind::plantFacts || table.kind == TableKind::slotPlants ||
            table.kind == TableKind::ribbonMixParts || table.kind == TableKind::tallies ||
            table.kind == TableKind::rates || table.kind == TableKind::monthNormals ||
            table.kind == TableKind::agreedSwaps)
            continue; // no two alike: judged below
        std::int64_t made = 0;
        const auto after = thereAndBack(season, edits::addRecord(season, table.kind, given, made));
        EXPECT_TRUE(model::hasRecord(after, table.kind, made));
    }
}

TEST(RecordEdits, NewRecordsBeginWhereTheyBelong) {
    auto season = model::sample::season();
    season.bookings.put(model::sample::booking(1, "Supper"));
    std::int64_t id = 0;
    season = thereAndBack(season,
                          edits::addRecord(season, TableKind::bookings, {{"title", std::string("Tea")}}, id));
    EXPECT_EQ(textOf(season, {TableKind::bookings, id}, "event_start").toStdString(),
              "Mon 1 Mar 2027, 12:00");
    EXPECT_EQ(textOf(season, {TableKind::bookings, id}, "event_end").toStdString(), "Mon 1 Mar 2027, 16:00");
    const Given drop{{"booking", std::int64_t{1}}, {"place", std::string("Foyer")}};
    season = thereAndBack(season, edits::addRecord(season, TableKind::drops, drop, id));
    EXPECT_EQ(textOf(season, {TableKind::drops, id}, "time").toStdString(), "Sat 11 Sep 2027, 16:30");
    // Months, kinds of work and days of weather: the first that is free.
    for (int month = 1; month <= 3; ++month)
        season = thereAndBack(season, edits::addRecord(season, TableKind::monthNormals, {}, id));
    EXPECT_EQ(textOf(season, {TableKind::monthNormals, id}, "month").toStdString(), "March");
    for (int day = 1; day <= 2; ++day)
        season = thereAndBack(season, edits::addRecord(season, TableKind::weather, {}, id));
    EXPECT_EQ(textOf(season, {TableKind::weather, id}, "date").toStdString(), "Tue 2 Mar 2027");
    // Last in its own order.
    auto slots = withSlots({0, 5});
    slots =
        thereAndBack(slots, edits::addRecord(slots, TableKind::slots,
                                             {{"design", std::int64_t{1}}, {"label", std::string("z")}}, id));
    EXPECT_EQ(orderAfter(slots), "abz");
}

TEST(RecordEdits, MovingRenumbersOnlyWhatIsNeeded) {
    const struct {
        std::vector<std::int64_t> places;
        std::int64_t moved; ///< id: 1 is a
        int to;
        const char* order;
        std::size_t touched;
    } cases[] = {
        {{0, 10, 20, 30}, 4, 1, "adbc", 1}, // room between: one record
        {{0, 10, 20, 30}, 1, 3, "bcda", 1}, // to the end: one record
        {{5, 10, 20}, 3, 0, "cab", 1},      // room before the first
        {{0, 1, 2, 3}, 1, 2, "bcad", 2},    // no room: the moved one and the one after it
        {{0, 1, 2, 3}, 4, 0, "dabc", 4},
        {{0, 0, 0}, 3, 0, "cab", 2},              // never numbered before
        {{99998, 99999, 100000}, 1, 2, "bca", 3}, // at the top of what is allowed: all anew
        {{0, 1, 2}, 2, 1, "abc", 0},              // where it stands
        {{0, 1, 2}, 1, 99, "bca", 1},             // beyond the end is the end
        {{0, 1, 2}, 3, -5, "cab", 3},
    };

    for (const auto& c : cases) {
        const auto season = withSlots(c.places);
        const auto edit = edits::moveRecord(season, {TableKind::slots, c.moved}, "position", c.to, "design");
        SCOPED_TRACE(std::string(c.order) + " to " + std::to_string(c.to));
        EXPECT_EQ(edit.puts().size(), c.touched);
        EXPECT_EQ(orderAfter(thereAndBack(season, edit)), c.order);
    }
}

TEST(RecordEdits, MovingLeavesOtherParentsAlone) {
    auto season = withSlots({0, 1});
    model::Design other;
    other.id = Id<model::Design>(2);
    other.name = "Posy";
    season.designs.put(other);
    model::Slot slot;
    slot.id = Id<model::Slot>(9);
    slot.design = other.id;
    slot.label = "x";
    season.slots.put(slot);
    const auto edit = edits::moveRecord(season, {TableKind::slots, 1}, "position", 1, "design");
    const auto after = thereAndBack(season, edit);
    EXPECT_EQ(after.slots.find(Id<model::Slot>(9))->position, 0);
}

} // namespace withy::ui
