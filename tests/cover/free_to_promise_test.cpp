// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/free_to_promise.h"
#include "tests/cover/random_covers.h"

#include <gtest/gtest.h>

#include <map>

namespace withy::cover::tests {

/// 12 April 1985 is W15 in ISO 8601's own examples (from memory); the others lie around turns of years and
/// are counted from its rule, the week with the year's first Thursday (from memory).
TEST(FreeToPromise, WeeksAreThoseOfIso8601) {
    const struct {
        int year, month, day, isoYear, isoWeek;
    } rows[] = {
        {1985, 4, 12, 1985, 15}, {1995, 1, 1, 1994, 52}, {1996, 12, 31, 1997, 1}, {2005, 1, 1, 2004, 53},
        {2008, 12, 29, 2009, 1}, {2010, 1, 3, 2009, 53}, {2027, 1, 4, 2027, 1},
    };

    for (const auto& row : rows) {
        SCOPED_TRACE(row.year * 10000 + row.month * 100 + row.day);
        const auto week = isoWeek(*Day::fromYmd(row.year, row.month, row.day));
        EXPECT_EQ(week.year, row.isoYear);
        EXPECT_EQ(week.week, row.isoWeek);
    }
}

/// On every random season: each line balances, and the sums are those of the supply and of the allocation.
TEST(FreeToPromise, AddsUp) {
    for (std::uint32_t seed = 1; seed <= 100; ++seed) {
        SCOPED_TRACE("season " + std::to_string(seed));
        const auto problem = randomCover(seed);
        const auto a = allocate(problem);
        ASSERT_TRUE(a.ok());
        std::map<Id<model::Plant>, std::int64_t> expected, inStore, taken;
        for (const auto& p : problem.patches)
            for (const auto n : p.ready)
                expected[p.plant] += n;
        for (const auto& l : problem.lots)
            inStore[l.plant] += l.stems.value;
        for (const auto& p : a->pieces)
            if (p.source != Source::offer) taken[p.plant] += p.stems.value;
        for (const auto& w : freeToPromise(*a)) {
            EXPECT_EQ(w.monday.weekday(), 1);
            EXPECT_EQ(w.expected + w.inStore, w.promised + w.asked + w.free);
            EXPECT_GE(w.free.value, 0);
            EXPECT_GE(w.promised.value, 0);
            EXPECT_GE(w.asked.value, 0);
            expected[w.plant] -= w.expected.value;
            inStore[w.plant] -= w.inStore.value;
            taken[w.plant] -= w.promised.value + w.asked.value;
        }
        for (const auto& sums : {expected, inStore, taken})
            for (const auto& [plant, left] : sums)
                EXPECT_EQ(left, 0) << "plant " << plant.value;
    }
}

} // namespace withy::cover::tests
