// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/scale_rule.h"

#include <gtest/gtest.h>

#include <limits>

namespace withy::ui {
namespace {

struct Row {
    const char* name;
    double scale, height, mm, tick;
};

// The 1-2-5 series of preferred numbers (ISO 497, coarsest rounding).
constexpr Row rows[]{
    {"a jar", 0.5, 120, 200, 50},        {"a bouquet", 0.2, 120, 500, 100},
    {"a pedestal", 0.1, 130, 1000, 200}, {"just under", 1, 199, 100, 20},
    {"exactly", 1, 200, 200, 50},        {"not a millimetre", 10, 9, 0, 0},
    {"no height", 1, 0, 0, 0},           {"no scale", 0, 100, 0, 0},
    {"backwards", -1, 100, 0, 0},        {"five metres", 0.02, 100, 5000, 1000},
};

TEST(ScaleRule, IsARoundLengthThatFits) {
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        const auto rule = ruleLength(row.scale, row.height);
        EXPECT_DOUBLE_EQ(rule.mm, row.mm);
        EXPECT_DOUBLE_EQ(rule.tick, row.tick);
    }
    EXPECT_EQ(ruleLength(std::numeric_limits<double>::quiet_NaN(), 10).mm, 0);
}

TEST(ScaleRule, SaysItsLengthInTheUsualUnit) {
    EXPECT_EQ(ruleWords(5), QStringLiteral("5 mm"));
    EXPECT_EQ(ruleWords(200), QStringLiteral("20 cm"));
    EXPECT_EQ(ruleWords(1000), QStringLiteral("1 m"));
    EXPECT_EQ(ruleWords(5000), QStringLiteral("5 m"));
}

} // namespace
} // namespace withy::ui
