// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/booking_tables.h"

#include "ui/logic/format.h"

#include <gtest/gtest.h>

namespace withy::ui {

namespace {

struct Case {
    const char* typed;
    const char* label;
    std::int64_t howMany;
    std::int64_t covers;
    model::TableShape shape;
    std::int64_t length;
    std::int64_t width; ///< nought: round
};

constexpr auto oblong = model::TableShape::rectangular;
constexpr auto circle = model::TableShape::round;

// The sizes that are not typed are common practice, no source; 6 ft is 6 x 304.8 = 1828.8 mm (exact foot of
// 1959).
const Case cases[] = {
    {"12 trestles of 8", "Trestle", 12, 8, oblong, 1830, 760},
    {"12 Trestles of 8", "Trestle", 12, 8, oblong, 1830, 760},
    {"twelve trestles for eight", "Trestle", 12, 8, oblong, 1830, 760},
    {"12 trestles seating 8 guests each", "Trestle", 12, 8, oblong, 1830, 760},
    {"3 rounds of 10", "Round", 3, 10, circle, 1500, 0},
    {"3 round tables of 10, ", "Round table", 3, 10, circle, 1500, 0},
    {"1 top table", "Top table", 1, 0, oblong, 1830, 760},
    {"a top table of 6", "Top table", 1, 6, oblong, 1830, 760},
    {"4 trestles 2440 x 760 of 8", "Trestle", 4, 8, oblong, 2440, 760},
    {"4 trestles of 8 at 2.44 x 0.76 m", "Trestle", 4, 8, oblong, 2440, 760},
    {"5 rounds 1800 mm of 10", "Round", 5, 10, circle, 1800, 0},
    {"5 rounds of 10 at 6 ft", "Round", 5, 10, circle, 1829, 0},
    {"2 benches of 5", "Bench", 2, 5, oblong, 1830, 760},
};

} // namespace

TEST(BookingTables, AreReadAsTheyAreSaid) {
    for (const auto& c : cases) {
        SCOPED_TRACE(c.typed);
        const auto reading = readTables(QString::fromUtf8(c.typed));
        ASSERT_TRUE(reading.ok()) << reading.sentence.toStdString();
        ASSERT_EQ(reading.tables.size(), 1u);
        const auto& t = reading.tables.front();
        EXPECT_EQ(t.label, c.label);
        EXPECT_EQ(t.howMany, c.howMany);
        EXPECT_EQ(t.covers, c.covers);
        EXPECT_EQ(t.shape, c.shape);
        EXPECT_EQ(t.length.value, c.length);
        EXPECT_EQ(t.width.value_or(Millimetres{}).value, c.width);
    }
}

TEST(BookingTables, SeveralInOneLine) {
    const auto reading = readTables(QStringLiteral("12 trestles of 8, 1 top table of 6 and 3 rounds of 10"));
    ASSERT_TRUE(reading.ok());
    EXPECT_EQ(tablesWords(reading.tables).toStdString(),
              "12 trestles of 8, 1 top table of 6, 3 rounds of 10");
}

TEST(BookingTables, WhatIsReadIsReadBackTheSame) {
    for (const auto& c : cases) {
        SCOPED_TRACE(c.typed);
        const auto once = readTables(QString::fromUtf8(c.typed)).tables;
        const auto again = readTables(tablesWords(once));
        ASSERT_TRUE(again.ok());
        EXPECT_EQ(again.tables.front().label, once.front().label);
        EXPECT_EQ(again.tables.front().howMany, once.front().howMany);
        EXPECT_EQ(again.tables.front().covers, once.front().covers);
    }
}

TEST(BookingTables, WhatCannotBeReadIsSaid) {
    for (const char* typed : {"", "  ", "trestles", "some trestles of 8", "0 trestles of 8", "-3 trestles",
                              "99999 trestles of 8", "12 trestles of 9999", "<b>12</b>", "🌻"}) {
        SCOPED_TRACE(typed);
        const auto reading = readTables(QString::fromUtf8(typed));
        EXPECT_FALSE(reading.ok());
        EXPECT_TRUE(reading.tables.empty());
    }
}

TEST(BookingTables, ASizeNobodyMeasuredIsMarked) {
    auto tables = readTables(QStringLiteral("12 trestles of 8, 2 rounds of 10")).tables;
    const std::vector<const model::VenueTable*> both{&tables[0], &tables[1]};
    const QString words = usualSizeWords(both, model::UnitSystem::metric);
    EXPECT_TRUE(words.contains(QStringLiteral("1,830 × 760 mm")));
    EXPECT_TRUE(words.contains(QStringLiteral("1,500 mm across")));
    EXPECT_TRUE(words.contains(QStringLiteral("common practice, no source")));
    tables[0].length = Millimetres(2440);
    EXPECT_FALSE(
        usualSizeWords({&tables[0]}, model::UnitSystem::metric).contains(QStringLiteral("common practice")));
}

} // namespace withy::ui
