// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "core/exchange/table_csv.h"
#include "core/model/schema.h"
#include "tests/exchange/filled_season.h"
#include "tests/support/season_text.h"

#include <gtest/gtest.h>

namespace withy::exchange {
namespace {

using namespace model;

Season with(Season season, const Edit& edit) {
    for (const auto& record : edit.puts())
        putRecord(season, record);
    return season;
}

Season without(Season season, TableKind kind) {
    std::vector<std::int64_t> ids;
    forEachRecord(season, kind, [&](std::int64_t id, const void*) { ids.push_back(id); });
    for (const auto id : ids)
        eraseRecord(season, kind, id);
    return season;
}

std::string complaints(const Problems& problems) {
    std::string out;
    for (const auto& p : problems)
        out += p.table + " " + p.field + " line " + std::to_string(p.line) + " code " +
               std::to_string(static_cast<int>(p.code)) + " '" + p.value + "'\n";
    return out;
}

class RoundTrip : public testing::TestWithParam<const char*> {
protected:
    /// Currencies with two, no, three and four decimals (ISO 4217).
    Season season(std::uint64_t seed) const { return withy::tests::filledSeason(seed, 12, GetParam()); }
};

TEST_P(RoundTrip, EveryTableComesBackByteForByte) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const Season full = season(seed);
        for (const auto& info : allTables()) {
            SCOPED_TRACE(std::string(info.name) + ", seed " + std::to_string(seed));
            const std::string text = exportTable(full, info.kind);
            ASSERT_EQ(static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) > 1, true);
            const Season rest = without(full, info.kind);
            const auto edit = importTable(rest, info.kind, text);
            ASSERT_TRUE(edit.ok()) << complaints(edit.error());
            EXPECT_EQ(edit->puts().size(), sizeOf(full, info.kind));
            // Settings make their own currency; the season they go to has none of its own.
            EXPECT_EQ(exportTable(with(rest, *edit), info.kind), text);
        }
    }
}

TEST_P(RoundTrip, ImportOverItselfChangesNothing) {
    const Season full = season(9);
    for (const auto& info : allTables()) {
        SCOPED_TRACE(std::string(info.name));
        const auto edit = importTable(full, info.kind, exportTable(full, info.kind));
        ASSERT_TRUE(edit.ok()) << complaints(edit.error());
        const auto applied = apply(full, *edit);
        ASSERT_TRUE(applied.ok());
        EXPECT_TRUE(applied->done.empty());
    }
}

TEST_P(RoundTrip, AWholeSeasonFromItsTables) {
    const Season full = season(10);
    Season made;
    for (const auto& info : allTables()) {
        const auto edit = importTable(made, info.kind, exportTable(full, info.kind));
        ASSERT_TRUE(edit.ok()) << complaints(edit.error());
        made = with(made, *edit);
    }
    EXPECT_EQ(exportSeason(made), exportSeason(full));
}

INSTANTIATE_TEST_SUITE_P(Currencies, RoundTrip, testing::Values("GBP", "JPY", "BHD", "UYW"));

TEST(SeasonText, TellsSeasonsApart) {
    const Season full = withy::tests::filledSeason(3, 4, "GBP");
    EXPECT_EQ(exportSeason(full), exportSeason(withy::tests::filledSeason(3, 4, "GBP")));
    EXPECT_NE(exportSeason(full), exportSeason(withy::tests::filledSeason(4, 4, "GBP")));
    for (const auto& info : allTables()) {
        SCOPED_TRACE(std::string(info.name));
        EXPECT_NE(exportSeason(full), exportSeason(without(full, info.kind)));
    }
}

TEST(SeasonText, NamesEveryTableInFileOrder) {
    const std::string text = exportSeason(Season{});
    std::size_t at = 0;
    for (const auto& info : allTables()) {
        const auto found = text.find("[" + std::string(info.name) + "]\r\nid,", at);
        ASSERT_NE(found, std::string::npos) << info.name;
        at = found;
    }
}

/// One field of one record changed is a changed text, for every field there is.
TEST(SeasonText, EveryFieldCounts) {
    const Season full = withy::tests::filledSeason(5, 3, "GBP");
    const Season other = withy::tests::filledSeason(6, 3, "GBP");
    for (const auto& info : allTables()) {
        Record record = *findRecord(full, info.kind, 1);
        const Record source = *findRecord(other, info.kind, 1);
        for (const auto& field : info.fields) {
            const Value before = field.get(recordPointer(record));
            const Value after = field.get(recordPointer(source));
            if (before == after) continue;
            Record changed = record;
            field.set(recordPointer(changed), after);
            Season season = full;
            putRecord(season, changed);
            EXPECT_NE(exportTable(season, info.kind), exportTable(full, info.kind))
                << info.name << "." << field.name;
        }
    }
}

} // namespace
} // namespace withy::exchange
