// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shed/kit_totals.h"

#include <gtest/gtest.h>

#include <cmath>

namespace withy::shed {
namespace {

// Sums worked by hand; common practice, no source.
UseCounts counts() {
    return {26, 264, 1, 3};
}

KitUse use(UseRule rule, std::int64_t thousandths) {
    return {rule, thousandths, counts(), "Supper jar"};
}

KitStock stock(std::optional<std::int64_t> thousandths, bool whole = true) {
    return {thousandths, whole};
}

struct RuleRow {
    const char* rule;
    KitUse use;
    std::int64_t needed;
};

TEST(KitTotals, EachRuleCountsItsOwn) {
    const RuleRow rows[] = {
        {"per piece", use(UseRule::perPiece, 1000), 26'000},
        {"per stem", use(UseRule::perStem, 2000), 528'000},
        {"per booking", use(UseRule::perBooking, 4000), 4'000},
        {"per tray", use(UseRule::perTray, 1000), 3'000},
        {"a third of a sheet a piece", use(UseRule::perPiece, 333), 9'000}, // 8.658 up to whole sheets
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.rule);
        const auto total = kitTotal({row.use}, stock(10'000));
        ASSERT_TRUE(total.ok());
        EXPECT_EQ(total->needed, row.needed);
        EXPECT_EQ(*total->missing, std::max<std::int64_t>(row.needed - 10'000, 0));
        EXPECT_EQ(*total->spare, std::max<std::int64_t>(10'000 - row.needed, 0));
    }
}

TEST(KitTotals, WhatIsMeasuredKeepsItsFraction) {
    // Half a metre of tape a piece: 13 m; a tenth of a metre a stem on 264 stems: 26.4 m; together 39.4 m.
    const auto total =
        kitTotal({use(UseRule::perPiece, 500), use(UseRule::perStem, 100)}, stock(39'000, false));
    ASSERT_TRUE(total.ok());
    EXPECT_EQ(total->needed, 39'400);
    EXPECT_EQ(total->missing, 400);
    EXPECT_EQ(total->working.back().what, "missing");
    EXPECT_NEAR(total->working.back().value, 0.4, 1e-12);
}

TEST(KitTotals, WholeUnitsAreRoundedUpOnceOnTheSum) {
    const auto total = kitTotal({use(UseRule::perTray, 100), use(UseRule::perTray, 100)}, stock({}));
    ASSERT_TRUE(total.ok());
    EXPECT_EQ(total->needed, 1'000); // 0.3 + 0.3 = 0.6; one by one it would be 2
}

TEST(KitTotals, BlankOnHandIsNotNought) {
    const auto unknown = kitTotal({use(UseRule::perPiece, 1000)}, stock({}));
    ASSERT_TRUE(unknown.ok());
    EXPECT_FALSE(unknown->missing.has_value());
    EXPECT_FALSE(unknown->spare.has_value());
    EXPECT_EQ(unknown->working.back().basis, Basis::notKnown);
    const auto none = kitTotal({use(UseRule::perPiece, 1000)}, stock(0));
    ASSERT_TRUE(none.ok());
    EXPECT_EQ(none->missing, 26'000);
}

TEST(KitTotals, TraysThatAreNotKnownAreSaidToBe) {
    KitUse tray = use(UseRule::perTray, 1000);
    tray.counts.trays.reset();
    const auto total = kitTotal({tray, use(UseRule::perBooking, 2000)}, stock(5'000));
    ASSERT_TRUE(total.ok());
    EXPECT_EQ(total->unknownUses, 1);
    EXPECT_EQ(total->needed, 2'000);
}

TEST(KitTotals, ItemsComeInTheOrderOfTheirKeys) {
    const std::vector<KeyedUse<std::string>> uses = {{"pins", use(UseRule::perStem, 1000)},
                                                     {"jars", use(UseRule::perPiece, 1000)},
                                                     {"pins", use(UseRule::perBooking, 10'000)}};
    const std::map<std::string, KitStock> there = {{"jars", stock(46'000)}};
    const auto totals = kitTotals(uses, there);
    ASSERT_TRUE(totals.ok());
    ASSERT_EQ(totals->size(), 2u);
    EXPECT_EQ((*totals)[0].first, "jars");
    EXPECT_EQ((*totals)[0].second.spare, 20'000);
    EXPECT_EQ((*totals)[1].first, "pins");
    EXPECT_EQ((*totals)[1].second.needed, 274'000);
    EXPECT_FALSE((*totals)[1].second.onHand.has_value());
}

TEST(KitTotals, AmountsAreReadToTheThousandth) {
    EXPECT_EQ(*thousandthsOf(0.1), 100);
    EXPECT_EQ(*thousandthsOf(2.675), 2675);
    EXPECT_EQ(*thousandthsOf(0), 0);
    EXPECT_EQ(wholeUnits(0), 0);
    EXPECT_EQ(wholeUnits(1), 1);
    EXPECT_EQ(wholeUnits(1000), 1);
    EXPECT_EQ(wholeUnits(1001), 2);
    for (const double bad : {-0.1, 1e12, std::nan("")})
        EXPECT_EQ(thousandthsOf(bad).error().field, "amount");
}

TEST(KitTotals, WhatMakesNoSenseIsRefusedByName) {
    struct Row {
        const char* field;
        UseRule rule;
        void (*change)(KitUse&);
    };

    const Row rows[] = {
        {"amount", UseRule::perPiece, [](KitUse& u) { u.thousandths = -1; }},
        {"amount", UseRule::perPiece, [](KitUse& u) { u.thousandths = INT64_MAX; }},
        {"pieces", UseRule::perPiece, [](KitUse& u) { u.counts.pieces = -1; }},
        {"pieces", UseRule::perPiece, [](KitUse& u) { u.counts.pieces = 1'000'000'000'000; }},
        {"stems", UseRule::perStem, [](KitUse& u) { u.counts.stems = -1; }},
        {"bookings", UseRule::perBooking, [](KitUse& u) { u.counts.bookings = -1; }},
        {"trays", UseRule::perTray, [](KitUse& u) { u.counts.trays = -1; }},
        {"needed", UseRule::perStem,
         [](KitUse& u) {
             u.thousandths = mostAmount;
             u.counts.stems = mostCounted;
         }},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.field);
        KitUse bad = use(row.rule, 1000);
        row.change(bad);
        const auto total = kitTotal({bad}, stock(0));
        ASSERT_FALSE(total.ok());
        EXPECT_EQ(total.error().field, row.field);
    }
    EXPECT_EQ(kitTotal({}, stock(-1)).error().field, "on_hand");
}

} // namespace
} // namespace withy::shed
