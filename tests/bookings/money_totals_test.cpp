// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bookings/money_totals.h"

#include <gtest/gtest.h>

#include <limits>

namespace withy::bookings {
namespace {

using std::int64_t;

// Worked by hand in pence; common practice, no source. The half-up cases are rows of the tax_rounding table
// (half up by HM Revenue and Customs manual VATREC12030), whose share of a net is the same sum.
TEST(MoneyTotals, IncomeIsPiecesTimesPrice) {
    const auto income = bookingIncome({{"Supper jar", 24, {}, Money{950}},
                                       {"Pedestal", 1, Money{12000}, Money{15000}},
                                       {"Posy", 2, Money{0}, Money{3500}}});
    ASSERT_TRUE(income.ok());
    EXPECT_EQ(income->total.minor, 22800 + 12000); // the line's price wins, a price of nothing is a price
    EXPECT_EQ(income->unpriced, 0);
    EXPECT_FALSE(income->partlyKnown());
    EXPECT_EQ(income->working.back().value, 34800);
    EXPECT_EQ(income->working.back().what, "income");
}

TEST(MoneyTotals, ABlankPriceIsNotNought) {
    const auto income =
        bookingIncome({{"Jar", 24, {}, Money{950}}, {"Arch", 1, {}, {}}, {"Not ordered", 0, {}, {}}});
    ASSERT_TRUE(income.ok());
    EXPECT_EQ(income->total.minor, 22800);
    EXPECT_EQ(income->unpriced, 1);
    EXPECT_TRUE(income->partlyKnown());
}

TEST(MoneyTotals, ListValueTakesTheDesignsOwnPrices) {
    const auto list =
        listValue({{"Jar", 24, Money{500}, Money{950}}, {"Arch", 1, Money{9000}, {}}, {"Sheaf", 1, {}, {}}});
    ASSERT_TRUE(list.ok());
    EXPECT_EQ(list->total.minor, 22800 + 9000);
    EXPECT_EQ(list->unpriced, 1);
}

struct ShareRow {
    int64_t income;
    int64_t share;
    int64_t given;
};

TEST(MoneyTotals, GiftShareIsRoundedHalfUp) {
    constexpr ShareRow rows[] = {
        {1000, 2000, 200}, {1, 2000, 0},     {2, 2000, 0},       {3, 2000, 1},        {9999, 1750, 1750},
        {3333, 500, 167},  {10, 500, 1},     {11, 500, 1},       {29, 500, 1},        {30, 500, 2},
        {50, 2100, 11},    {750, 2100, 158}, {1999, 1900, 380},  {123456, 700, 8642}, {145, 1000, 15},
        {155, 1000, 16},   {245, 1000, 25},  {435, 10'000, 435}, {0, 2000, 0},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(std::to_string(row.share) + " of " + std::to_string(row.income));
        const auto split = giftShare(Money{row.income}, row.share);
        ASSERT_TRUE(split.ok());
        EXPECT_EQ(split->given.minor, row.given);
        EXPECT_EQ((split->given + split->asked).minor, row.income);
    }
}

TEST(MoneyTotals, WhatIsOwedIsAskedLessPayments) {
    const auto part = owed(Money{34800}, {{"deposit", Money{8700}}, {"stage", Money{10000}}});
    ASSERT_TRUE(part.ok());
    EXPECT_EQ(part->paid.minor, 18700);
    EXPECT_EQ(part->owed.minor, 16100);
    EXPECT_EQ(part->overpaid.minor, 0);
    const auto over = owed(Money{1000}, {{"balance", Money{1500}}});
    ASSERT_TRUE(over.ok());
    EXPECT_EQ(over->owed.minor, 0);
    EXPECT_EQ(over->overpaid.minor, 500);
    EXPECT_EQ(over->working.back().what, "overpaid");
    const auto back = owed(Money{1000}, {{"balance", Money{1500}}, {"paid back", Money{-500}}});
    ASSERT_TRUE(back.ok());
    EXPECT_EQ(back->owed.minor, 0);
    EXPECT_EQ(back->overpaid.minor, 0);
}

TEST(MoneyTotals, GiftValueIsListLessAsked) {
    EXPECT_EQ(giftValue(Money{22800}, Money{5000})->gift.minor, 17800);
    EXPECT_EQ(giftValue(Money{22800}, Money{0})->gift.minor, 22800);
    const auto dearer = giftValue(Money{22800}, Money{25000});
    ASSERT_TRUE(dearer.ok());
    EXPECT_EQ(dearer->gift.minor, 0);
    EXPECT_EQ(dearer->aboveList.minor, 2200);
}

TEST(MoneyTotals, ACharityBookingAsAWhole) {
    // 24 jars at 9.50 and one posy at 12.00 (its own price 15.00), half given, 50.00 paid:
    // income 240.00, given 120.00, asked 120.00, owed 70.00; list 243.00, so the gift is worth 123.00.
    const auto money = bookingMoney({{"Jar", 24, {}, Money{950}}, {"Posy", 1, Money{1200}, Money{1500}}},
                                    5000, {{"deposit", Money{5000}}});
    ASSERT_TRUE(money.ok());
    EXPECT_EQ(money->income.total.minor, 24000);
    EXPECT_EQ(money->split.given.minor, 12000);
    EXPECT_EQ(money->split.asked.minor, 12000);
    EXPECT_EQ(money->owed.owed.minor, 7000);
    EXPECT_EQ(money->list.total.minor, 24300);
    EXPECT_EQ(money->gift.gift.minor, 12300);
}

TEST(MoneyTotals, WhatMakesNoSenseIsRefusedByName) {
    constexpr int64_t huge = std::numeric_limits<int64_t>::max();
    constexpr int64_t tiny = std::numeric_limits<int64_t>::min();

    struct Row {
        PricedLine line;
        const char* field;
    };

    const Row rows[] = {
        {{"", -1, Money{1}, {}}, "pieces"},
        {{"", 1'000'000'000'000, Money{1}, {}}, "pieces"},
        {{"", 1, Money{-1}, {}}, "unit_price"},
        {{"", 1, Money{tiny}, {}}, "unit_price"},
        {{"", 1, {}, Money{-1}}, "price"},
        {{"", 1, {}, Money{huge}}, "price"},
        {{"", 1'000'000, Money{mostMoney}, {}}, "unit_price"},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.field);
        const auto income = bookingIncome({row.line});
        ASSERT_FALSE(income.ok());
        EXPECT_EQ(income.error().field, row.field);
        EXPECT_FALSE(listValue({row.line}).ok());
    }
    EXPECT_EQ(giftShare(Money{100}, -1).error().field, "gift_share");
    EXPECT_EQ(giftShare(Money{100}, 10'001).error().field, "gift_share");
    EXPECT_EQ(giftShare(Money{-1}, 1).error().field, "income");
    EXPECT_EQ(owed(Money{tiny}, {}).error().field, "asked");
    EXPECT_EQ(owed(Money{1}, {{"", Money{huge}}}).error().field, "amount");
    EXPECT_EQ(owed(Money{1}, {{"", Money{tiny}}}).error().field, "amount");
    EXPECT_EQ(giftValue(Money{huge}, Money{0}).error().field, "list_value");
}

TEST(MoneyTotals, SumsThatDoNotFitAreRefused) {
    const std::vector<PricedLine> lines(3, PricedLine{"Jar", 1, Money{mostMoney / 2}, {}});
    ASSERT_FALSE(bookingIncome(lines).ok());
    EXPECT_EQ(bookingIncome(lines).error().code, ProblemCode::aboveMost);
    const std::vector<PaymentLine> payments(3, PaymentLine{"", Money{mostMoney / 2}});
    EXPECT_FALSE(owed(Money{0}, payments).ok());
    EXPECT_FALSE(bookingMoney(lines, 0, {}).ok());
}

} // namespace
} // namespace withy::bookings
