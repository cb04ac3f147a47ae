// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/growing_on.h"

#include <gtest/gtest.h>

namespace withy::designs {

// The Q10 rule (van 't Hoff 1884): a rate is q10 times as high ten degrees warmer.
TEST(GrowingOn, AddsUpOverTimeAndWarmth) {
    struct Row {
        const char* name;
        std::vector<WaterPhase> phases;
        double grown;
    };

    const Row rows[]{{"a day at 20 C", {{24, 20}}, 10},
                     {"a day at 30 C is two", {{24, 30}}, 20},
                     {"a day at 10 C is half", {{24, 10}}, 5},
                     {"a day at 0 C is a quarter", {{24, 0}}, 2.5},
                     {"one after the other", {{12, 20}, {24, 10}}, 10},
                     {"no time", {}, 0}};
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        const auto grown = growOn({10, 2, row.phases});
        ASSERT_TRUE(grown.ok());
        EXPECT_NEAR(grown->millimetres, row.grown, 1e-9);
        EXPECT_NEAR(grown->working.back().value, row.grown, 1e-9);
    }
}

TEST(GrowingOn, NamesWhatCannotBe) {
    EXPECT_EQ(growOn({-1, 2, {}}).error().field, "grows_on");
    EXPECT_EQ(growOn({1, 0, {}}).error().field, "q10");
    EXPECT_EQ(growOn({1, 2, {{-1, 20}}}).error().field, "hours");
    EXPECT_EQ(growOn({1, 2, {{1, 90}}}).error().field, "celsius");
}

} // namespace withy::designs
