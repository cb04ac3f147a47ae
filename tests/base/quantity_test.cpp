// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/quantity.h"
#include "core/base/range.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <type_traits>

namespace withy {
namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};

static_assert(Addable<Stems, Stems>);
static_assert(!Addable<Stems, Millimetres>, "stems and millimetres must not add up");
static_assert(!std::is_convertible_v<std::int64_t, Stems>, "a bare number has no unit");

struct RoundRow {
    std::int64_t number;
    std::int64_t step;
    std::int64_t rounded;
};

TEST(Quantity, RoundsUpToWholeSteps) {
    constexpr RoundRow rows[] = {{0, 10, 0},     {1, 10, 10},   {10, 10, 10},  {11, 10, 20},
                                 {132, 10, 140}, {132, 0, 132}, {132, 1, 132}, {7, 25, 25}};
    for (const auto& row : rows) {
        SCOPED_TRACE(std::to_string(row.number) + " by " + std::to_string(row.step));
        EXPECT_EQ(roundUpTo(row.number, row.step), row.rounded);
    }
}

TEST(Range, NamesTheFieldAndTheLimit) {
    EXPECT_FALSE(outside("pieces", 0, 0, 5).has_value());
    EXPECT_FALSE(outside("pieces", 5, 0, 5).has_value());
    const auto low = outside("pieces", -1, 0, 5);
    ASSERT_TRUE(low.has_value());
    EXPECT_EQ(low->code, ProblemCode::belowLeast);
    EXPECT_EQ(low->field, "pieces");
    EXPECT_EQ(low->value, "-1");
    EXPECT_EQ(low->details, std::vector<std::string>{"0"});
    const auto high = outside("pieces", 6, 0, 5);
    ASSERT_TRUE(high.has_value());
    EXPECT_EQ(high->code, ProblemCode::aboveMost);
    EXPECT_EQ(high->details, std::vector<std::string>{"5"});
}

TEST(Range, FractionsThatAreNoNumberOrEndlessAreProblems) {
    EXPECT_FALSE(outsideReal("loss", 0.5, 0, 1).has_value());
    const auto nan = outsideReal("loss", std::nan(""), 0, 1);
    ASSERT_TRUE(nan.has_value());
    EXPECT_EQ(nan->code, ProblemCode::notANumber);
    const auto endless = outsideReal("loss", std::numeric_limits<double>::infinity(), 0, 1);
    ASSERT_TRUE(endless.has_value());
    EXPECT_EQ(endless->code, ProblemCode::aboveMost);
    EXPECT_EQ(outsideReal("loss", 1.5, 0, 1)->value, "1.5");
}

} // namespace
} // namespace withy
