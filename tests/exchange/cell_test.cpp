// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cell.h"
#include "core/exchange/decimal.h"
#include "core/exchange/utf8.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace withy::exchange {
namespace {

using model::FieldInfo;
using model::FieldKind;
using model::Value;

FieldInfo fieldOf(FieldKind kind) {
    FieldInfo f;
    f.kind = kind;
    f.least = 0;
    f.most = 1e11;
    f.unit = "mm";
    return f;
}

TEST(Decimal, WritesTheShortestThatReadsBack) {
    // The digits are those of Python's repr(), which is the shortest too; large and small ones written
    // out without its exponent.
    const std::pair<double, const char*> cases[] = {
        {0.1, "0.1"},
        {100000, "100000"},
        {1e15, "1000000000000000"},
        {-2.5, "-2.5"},
        {1.0 / 3, "0.3333333333333333"},
        {2.0 / 3, "0.6666666666666666"},
        {1e-7, "0.0000001"},
        {0.1 + 0.2, "0.30000000000000004"},
        {123456789.125, "123456789.125"},
        {std::numeric_limits<double>::infinity(), ""},
    };
    for (const auto& [x, text] : cases)
        EXPECT_EQ(decimalText(x), text);
    EXPECT_EQ(decimalText(std::numeric_limits<double>::denorm_min()).size(), 326u); // 0. and 324 places
    EXPECT_EQ(decimalText(std::numeric_limits<double>::max()).size(), 309u);
}

TEST(Decimal, TakesPlainDecimalsOnly) {
    for (const char* good : {"0", "-0", "12", "12.5", "-0.001", "007"})
        EXPECT_TRUE(isPlainDecimal(good)) << good;
    for (const char* bad : {"", "-", ".", "1.", ".5", "+1", "1e3", "1,5", "1 000", "0x10", "inf", "nan",
                            "--1", "1.2.3", "1-", "\u0661"})
        EXPECT_FALSE(isPlainDecimal(bad)) << bad;
}

TEST(Decimal, OffersWhatANumberCouldStandFor) {
    const std::pair<const char*, std::vector<std::string>> cases[] = {
        {"1,5", {"1.5"}},
        {"-0,25", {"-0.25"}},
        {"1,234", {"1.234", "1234"}},
        {"1234,567", {"1234.567"}},
        {"1,234,567", {"1234567"}},
        {"1,234.50", {"1234.50"}},
        {"1.234,50", {"1234.50"}},
        {"1.234.567,5", {"1234567.5"}},
        {"1 234", {"1234"}},
        {"1\u00A0234,5", {"1234.5"}},
        {"1'234.5", {"1234.5"}},
        {"twelve", {}},
        {"=1+1", {}},
        {",", {}},
        {"1e5", {}},
    };
    for (const auto& [typed, forms] : cases)
        EXPECT_EQ(plainForms(typed), forms) << typed;
}

struct Reading {
    FieldKind kind;
    const char* text;
    Value value;
};

TEST(Cell, Reads) {
    const Reading cases[] = {
        {FieldKind::whole, " 12 ", std::int64_t{12}},
        {FieldKind::whole, "12.0", std::int64_t{12}},
        {FieldKind::whole, "-9223372036854775808", std::numeric_limits<std::int64_t>::min()},
        {FieldKind::real, "12.5", 12.5},
        {FieldKind::real, "0.1", 0.1},
        {FieldKind::real, "3", 3.0},
        {FieldKind::money, "9.5", std::int64_t{950}},
        {FieldKind::money, "-3", std::int64_t{-300}},
        {FieldKind::yesNo, "YES", std::int64_t{1}},
        {FieldKind::yesNo, "no", std::int64_t{0}},
        {FieldKind::text, " =1+1 ", std::string(" =1+1 ")},
        {FieldKind::day, "2024-02-29", std::string("2024-02-29")},
        {FieldKind::localTime, "2026-07-04 18:00", std::string("2026-07-04T18:00")},
        {FieldKind::colour, "#CCccFF", std::string("#ccccff")},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.text);
        const auto read = readCell(fieldOf(c.kind), c.text, 2);
        ASSERT_TRUE(read.ok());
        EXPECT_EQ(*read, c.value);
    }
}

TEST(Cell, ReadsNumbersTooNearNoughtAsNought) {
    const auto read = readCell(fieldOf(FieldKind::real), "-0." + std::string(400, '0') + "1", 2);
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(*read, Value(0.0));
}

struct Refusal {
    FieldKind kind;
    std::string text;
    int moneyDigits;
    ProblemCode code;
    std::vector<std::string> details;
};

TEST(Cell, RefusesWithWhatTheMendNeeds) {
    const Refusal cases[] = {
        {FieldKind::whole, "12.5", 2, ProblemCode::notWhole, {}},
        {FieldKind::whole, "1,234", 2, ProblemCode::notANumber, {"1.234", "1234"}},
        {FieldKind::whole, "1e3", 2, ProblemCode::notANumber, {}},
        {FieldKind::whole, "99999999999999999999", 2, ProblemCode::aboveMost, {"100000000000", "mm"}},
        {FieldKind::whole, "-99999999999999999999", 2, ProblemCode::belowLeast, {"0", "mm"}},
        {FieldKind::real, "1,5", 2, ProblemCode::notANumber, {"1.5"}},
        {FieldKind::real, "nan", 2, ProblemCode::notANumber, {}},
        {FieldKind::real, std::string(400, '9'), 2, ProblemCode::aboveMost, {"100000000000", "mm"}},
        {FieldKind::money, "9.505", 2, ProblemCode::notWhole, {"2"}},
        // The yen has no minor unit: ISO 4217 list, version of 1 January 2026.
        {FieldKind::money, "9.50", 0, ProblemCode::notWhole, {"0"}},
        {FieldKind::money,
         "\u00A3"
         "9.50",
         2,
         ProblemCode::notANumber,
         {}},
        {FieldKind::money, "999999999999999.9999", 4, ProblemCode::aboveMost, {"10000000.0000", "mm"}},
        {FieldKind::yesNo, "true", 2, ProblemCode::notYesNo, {}},
        {FieldKind::day, "2026-02-29", 2, ProblemCode::notADate, {}},
        {FieldKind::day, "04/07/2026", 2, ProblemCode::notADate, {}},
        {FieldKind::localTime, "2026-07-04", 2, ProblemCode::notATime, {}},
        {FieldKind::localTime, "2026-07-04T24:00", 2, ProblemCode::notATime, {}},
        {FieldKind::colour, "lilac", 2, ProblemCode::notAColour, {}},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.text);
        const auto read = readCell(fieldOf(c.kind), c.text, c.moneyDigits);
        ASSERT_FALSE(read.ok());
        EXPECT_EQ(read.error().code, c.code);
        EXPECT_EQ(read.error().details, c.details);
    }
}

TEST(Cell, ReadsIds) {
    EXPECT_EQ(readId("1"), 1);
    EXPECT_EQ(readId("9007199254740991"), 9007199254740991);
    for (const char* bad : {"", "0", "-1", "1.0", "x", "+1", "9007199254740992", "99999999999999999999"})
        EXPECT_FALSE(readId(bad)) << bad;
}

TEST(Utf8, FoldsCapitals) {
    // Pairs from CaseFolding.txt of Unicode, status C.
    const std::pair<const char*, const char*> cases[] = {
        {"Zinnia", "zinnia"},
        {"\u00C9\u00D8\u00DE", "\u00E9\u00F8\u00FE"}, // E acute, O stroke, thorn
        {"\u00D7\u00F7", "\u00D7\u00F7"},             // times and division signs are no letters
        {"\u0100\u012E\u0132\u0136", "\u0101\u012F\u0133\u0137"},
        {"\u0139\u0147\u014A\u0176", "\u013A\u0148\u014B\u0177"},
        {"\u0178\u0179\u017D\u0218\u021A", "\u00FF\u017A\u017E\u0219\u021B"},
        {"\u0386\u0388\u038C\u038E\u0391\u03A9", "\u03AC\u03AD\u03CC\u03CD\u03B1\u03C9"},
        {"\u03C2", "\u03C3"}, // final sigma
        {"\u0401\u0410\u042F", "\u0451\u0430\u044F"},
        {"\u0130\u0131\u0138\u0149", "\u0130\u0131\u0138\u0149"}, // no simple folding
        {"\u273F \U0001F33C", "\u273F \U0001F33C"},
    };
    for (const auto& [capital, small] : cases)
        EXPECT_EQ(folded(capital), small) << capital;
    EXPECT_EQ(folded("A\xFF"), "a\xFF");
}

TEST(Utf8, ClipsBetweenCharacters) {
    EXPECT_EQ(clipped("short", 5), "short");
    EXPECT_EQ(clipped("a\u273Fb", 3), "a\u2026");
    EXPECT_EQ(clipped("a\u273Fb", 4), "a\u273F\u2026");
}

} // namespace
} // namespace withy::exchange
