// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/room.h"
#include "tests/cover/random_covers.h"

#include <gtest/gtest.h>

namespace withy::cover::tests {

/// The room for a trial is what solving the whole season anew gives to the trial when it is served last,
/// demand by demand, and the others keep what they had.
TEST(Room, IsWhatSolvingAnewGives) {
    std::int64_t brought = 0, partly = 0, none = 0;
    for (std::uint32_t seed = 1; seed <= 400; ++seed) {
        SCOPED_TRACE("season " + std::to_string(seed));
        const auto problem = randomCover(seed);
        auto trial = randomCover(seed + 5000).demands;
        const auto base = allocate(problem);
        ASSERT_TRUE(base.ok());
        auto both = problem;
        for (std::size_t i = 0; i < trial.size(); ++i) {
            trial[i].booking = Id<model::Booking>(9000);
            trial[i].line = Id<model::Line>(static_cast<std::int64_t>(9000 + i));
            trial[i].claim = Claim::enquiry;
            trial[i].event = *Day::fromYmd(2028, 1, 1); // served last
            both.demands.push_back(trial[i]);
        }
        const auto anew = allocate(both);
        ASSERT_TRUE(anew.ok());
        const auto room = Room(*base).forTrial(trial);
        ASSERT_EQ(room.size(), trial.size());
        for (std::size_t d = 0; d < base->unmet.size(); ++d)
            EXPECT_EQ(anew->unmet[d], base->unmet[d]);
        for (std::size_t i = 0; i < trial.size(); ++i) {
            EXPECT_EQ(room[i], trial[i].stems - anew->unmet[base->unmet.size() + i]);
            brought += room[i] == trial[i].stems;
            partly += room[i].value > 0 && room[i] < trial[i].stems;
            none += room[i].value == 0;
        }
    }
    EXPECT_GT(brought, 50);
    EXPECT_GT(partly, 50);
    EXPECT_GT(none, 50);
}

} // namespace withy::cover::tests
