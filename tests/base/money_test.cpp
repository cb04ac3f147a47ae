// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/money.h"

#include <gtest/gtest.h>

#include <limits>
#include <vector>

namespace withy {
namespace {

struct CurrencyRow {
    const char* code;
    int digits;
};

// Minor unit digits by ISO 4217, list of 1 January 2026.
constexpr CurrencyRow currencies[] = {
    {"AUD", 2}, {"BHD", 3}, {"BIF", 0}, {"CAD", 2}, {"CHF", 2}, {"CLF", 4}, {"CLP", 0}, {"CNY", 2},
    {"CZK", 2}, {"DJF", 0}, {"DKK", 2}, {"EUR", 2}, {"GBP", 2}, {"GNF", 0}, {"HKD", 2}, {"HUF", 2},
    {"INR", 2}, {"IQD", 3}, {"ISK", 0}, {"JOD", 3}, {"JPY", 0}, {"KMF", 0}, {"KRW", 0}, {"KWD", 3},
    {"LYD", 3}, {"MXN", 2}, {"NOK", 2}, {"NZD", 2}, {"OMR", 3}, {"PLN", 2}, {"PYG", 0}, {"RWF", 0},
    {"SEK", 2}, {"SGD", 2}, {"TND", 3}, {"UGX", 0}, {"USD", 2}, {"UYI", 0}, {"UYW", 4}, {"VND", 0},
    {"VUV", 0}, {"XAF", 0}, {"XOF", 0}, {"XPF", 0}, {"ZAR", 2},
};

TEST(Money, MinorUnitsAreThoseOfIso4217) {
    for (const auto& row : currencies) {
        SCOPED_TRACE(row.code);
        ASSERT_TRUE(minorDigits(row.code).has_value());
        EXPECT_EQ(*minorDigits(row.code), row.digits);
    }
}

TEST(Money, WhatIsNoCurrencyCodeIsRefused) {
    for (const char* code : {"", "GB", "GBPP", "gbp", "G1P", "\xc2\xa3"}) {
        SCOPED_TRACE(code);
        EXPECT_FALSE(minorDigits(code).has_value());
    }
}

/// A decimal text as a whole number and the power of ten it was multiplied by.
struct Decimal {
    std::int64_t number = 0;
    std::int64_t scale = 1;

    explicit Decimal(const std::string& text) {
        bool fraction = false;
        for (const char c : text) {
            if (c == '.') fraction = true;
            if (c < '0' || c > '9') continue;
            number = number * 10 + (c - '0');
            if (fraction) scale *= 10;
        }
        if (text.front() == '-') number = -number;
    }
};

struct TaxRow {
    const char* net;
    const char* rate;
    const char* tax;
    const char* netRounded;
};

// Exact decimals; the half goes up by HM Revenue and Customs manual VATREC12030 and article 5 of Regulation
// (EC) 1103/97, below zero away from zero. 2.675, 1.005 and 0.615 catch binary fractions.
constexpr TaxRow taxRows[] = {
    {"10.00", "20", "2.00", "10.00"},     {"0.01", "20", "0.00", "0.01"},
    {"0.02", "20", "0.00", "0.02"},       {"0.03", "20", "0.01", "0.03"},
    {"0.025", "20", "0.01", "0.03"},      {"1.005", "0", "0.00", "1.01"},
    {"2.675", "0", "0.00", "2.68"},       {"1.115", "0", "0.00", "1.12"},
    {"0.615", "0", "0.00", "0.62"},       {"12.35", "20", "2.47", "12.35"},
    {"12.375", "20", "2.48", "12.38"},    {"99.99", "17.5", "17.50", "99.99"},
    {"33.33", "5", "1.67", "33.33"},      {"0.10", "5", "0.01", "0.10"},
    {"0.11", "5", "0.01", "0.11"},        {"0.29", "5", "0.01", "0.29"},
    {"0.30", "5", "0.02", "0.30"},        {"0.50", "21", "0.11", "0.50"},
    {"7.50", "21", "1.58", "7.50"},       {"19.99", "19", "3.80", "19.99"},
    {"1234.56", "7", "86.42", "1234.56"}, {"1.45", "10", "0.15", "1.45"},
    {"1.55", "10", "0.16", "1.55"},       {"2.45", "10", "0.25", "2.45"},
    {"8.25", "8.875", "0.73", "8.25"},    {"100000.00", "8.875", "8875.00", "100000.00"},
    {"4.35", "100", "4.35", "4.35"},      {"-1.005", "0", "-0.00", "-1.01"},
    {"-0.125", "20", "-0.03", "-0.13"},   {"0.00", "20", "0.00", "0.00"},
};

TEST(Money, TaxIsRoundedHalfUp) {
    for (const auto& row : taxRows) {
        SCOPED_TRACE(std::string(row.net) + " at " + row.rate + " %");
        const Decimal net(row.net);
        const Decimal rate(row.rate);
        // Pence = net x 100 x rate / 100.
        const Money tax = scaledHalfUp(Money{net.number}, rate.number, net.scale * rate.scale);
        EXPECT_EQ(tax, parseAmount(row.tax, 2));
        EXPECT_EQ(scaledHalfUp(Money{net.number}, 100, net.scale), parseAmount(row.netRounded, 2));
    }
}

struct InvoiceRow {
    std::vector<const char*> nets;
    const char* rate;
    const char* perLine;
    const char* onTotal;
    const char* difference;
};

TEST(Money, TaxPerLineAndOnTheTotalMayDiffer) {
    // Exact decimals, rounded half up as above.
    const InvoiceRow invoiceRows[] = {
        {{"0.12", "0.12", "0.12"}, "20", "0.06", "0.07", "-0.01"},
        {{"1.13", "2.27", "0.98"}, "20", "0.88", "0.88", "0.00"},
        {{"9.99", "9.99", "9.99", "9.99", "9.99", "9.99", "9.99"}, "20", "14.00", "13.99", "0.01"},
        {{"0.04", "0.04", "0.04", "0.04", "0.04", "0.04", "0.04", "0.04", "0.04", "0.04"},
         "5",
         "0.00",
         "0.02",
         "-0.02"},
        {{"14.17", "3.33", "0.49", "0.51"}, "21", "3.89", "3.89", "0.00"},
    };
    for (const auto& row : invoiceRows) {
        SCOPED_TRACE(std::string(row.nets.front()) + " ... at " + row.rate + " %");
        const Decimal rate(row.rate);
        Money perLine;
        Money total;
        for (const char* net : row.nets) {
            const Money amount = *parseAmount(net, 2);
            total += amount;
            perLine += scaledHalfUp(amount, rate.number, 100 * rate.scale);
        }
        const Money onTotal = scaledHalfUp(total, rate.number, 100 * rate.scale);
        EXPECT_EQ(perLine, parseAmount(row.perLine, 2));
        EXPECT_EQ(onTotal, parseAmount(row.onTotal, 2));
        EXPECT_EQ(perLine - onTotal, parseAmount(row.difference, 2));
    }
}

TEST(Money, ScalingIsExactBeyondSixtyFourBits) {
    // 9e17 x 8.875 % : the product leaves 64 bits, the answer does not.
    EXPECT_EQ(scaledHalfUp(Money{900'000'000'000'000'000}, 8'875, 100'000).minor, 79'875'000'000'000'000);
    EXPECT_EQ(scaledHalfUp(Money{1}, 1, 3).minor, 0);
    EXPECT_EQ(scaledHalfUp(Money{2}, 1, 3).minor, 1);
    EXPECT_EQ(scaledHalfUp(Money{-2}, 1, 3).minor, -1);
    EXPECT_EQ(scaledHalfUp(Money{-1}, 1, 2).minor, -1);
}

struct AmountRow {
    const char* text;
    int digits;
    std::optional<std::int64_t> minor;
};

TEST(Money, AmountsReadAndWriteExactly) {
    const AmountRow rows[] = {
        {"9.5", 2, 950},
        {"9.50", 2, 950},
        {"-3", 2, -300},
        {"0", 0, 0},
        {"1500", 0, 1500},
        {"1.5", 0, {}},
        {"1.234", 3, 1234},
        {"1.2345", 3, {}},
        {"0.0001", 4, 1},
        {"-0.05", 2, -5},
        {"", 2, {}},
        {"-", 2, {}},
        {".5", 2, {}},
        {"5.", 2, {}},
        {"1,50", 2, {}},
        {"1 50", 2, {}},
        {"+1", 2, {}},
        {"1e3", 2, {}},
        {"--1", 2, {}},
        {"1.2.3", 2, {}},
        {"\xd9\xa1", 2, {}},
        {"00.10", 2, 10},
        {"999999999999999", 2, 99'999'999'999'999'900},
        {"9999999999999999", 2, {}},
        // With four decimals fifteen digits would leave 64 bits.
        {"999999999999999.9999", 4, {}},
        {"99999999999999.9999", 4, 999'999'999'999'999'999},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE("'" + std::string(row.text) + "' with " + std::to_string(row.digits));
        const auto read = parseAmount(row.text, row.digits);
        ASSERT_EQ(read.has_value(), row.minor.has_value());
        if (!read) continue;
        EXPECT_EQ(read->minor, *row.minor);
        EXPECT_EQ(parseAmount(plainAmount(*read, row.digits), row.digits), read);
    }
}

TEST(Money, PlainAmountsPutThePointByTheCurrency) {
    EXPECT_EQ(plainAmount(Money{950}, 2), "9.50");
    EXPECT_EQ(plainAmount(Money{5}, 2), "0.05");
    EXPECT_EQ(plainAmount(Money{-5}, 2), "-0.05");
    EXPECT_EQ(plainAmount(Money{1500}, 0), "1500");
    EXPECT_EQ(plainAmount(Money{1}, 4), "0.0001");
    EXPECT_EQ(plainAmount(Money{std::numeric_limits<std::int64_t>::min()}, 2), "-92233720368547758.08");
}

} // namespace
} // namespace withy
