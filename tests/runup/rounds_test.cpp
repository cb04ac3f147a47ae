// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/rounds.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <bit>
#include <random>

namespace withy::runup {
namespace {

constexpr Day theDay{20'620};

LocalTime at(std::int64_t minutes) {
    return LocalTime{theDay, 0} + Minutes(minutes);
}

std::int64_t since(LocalTime t) {
    return (t - LocalTime{theDay, 0}).value;
}

CutSlot slot(std::int64_t earliest, std::int64_t latest, std::int64_t minutes = 0, int patch = 0,
             std::int64_t stems = 10) {
    return {at(earliest), at(latest), Stems(stems), Minutes(minutes), patch, 30};
}

/// Fewest of the moments 0 to `moments` such that each slot can begin at one: every subset is tried.
int fewestOfAll(const std::vector<CutSlot>& slots, const std::vector<TimeSpan>& good, int moments) {
    std::vector<std::uint32_t> may;
    for (const auto& s : slots) {
        const auto last = std::max(since(s.earliest), since(s.latest) - s.minutes.value);
        std::uint32_t window = 0;
        std::uint32_t inGood = 0;
        for (int m = 0; m < moments; ++m) {
            if (m < since(s.earliest) || m > last) continue;
            window |= 1U << m;
            if (std::any_of(good.begin(), good.end(),
                            [&](const TimeSpan& g) { return g.from <= at(m) && at(m) < g.to; }))
                inGood |= 1U << m;
        }
        may.push_back(inGood != 0 ? inGood : window);
    }
    int best = moments;
    for (std::uint32_t chosen = 0; chosen < (1U << moments); ++chosen) {
        if (std::popcount(chosen) >= best) continue;
        if (std::all_of(may.begin(), may.end(), [&](std::uint32_t m) { return (m & chosen) != 0; }))
            best = std::popcount(chosen);
    }
    return best;
}

TEST(Rounds, AreTheFewestOfAllSubsets) {
    std::mt19937_64 random(7);
    const auto upTo = [&](std::uint64_t n) { return static_cast<std::int64_t>(random() % (n + 1)); };
    constexpr int moments = 13;
    for (int i = 0; i < 300; ++i) {
        SCOPED_TRACE(i);
        std::vector<CutSlot> slots;
        for (auto n = 1 + upTo(6); n > 0; --n) {
            const auto earliest = upTo(9);
            slots.push_back(slot(earliest, std::min<std::int64_t>(moments - 1, earliest + upTo(5)), upTo(2)));
        }
        std::vector<TimeSpan> good;
        for (auto n = upTo(3); n > 0; --n) {
            const auto from = upTo(11);
            good.push_back({at(from), at(from + 1 + upTo(2))});
        }
        const auto merged = fewestOutings(slots, good);
        ASSERT_TRUE(merged.unserved.empty());
        EXPECT_EQ(static_cast<int>(merged.outings.size()), fewestOfAll(slots, good, moments));
        std::vector<int> served(slots.size());
        for (const auto& outing : merged.outings) {
            for (const auto s : outing.slots) {
                ++served[s];
                EXPECT_LE(slots[s].earliest, outing.start);
                EXPECT_LE(since(outing.start), std::max(since(slots[s].earliest),
                                                        since(slots[s].latest) - slots[s].minutes.value));
                // Either all is cut in time, or the outing says by how much not.
                EXPECT_LE(outing.end - outing.past, slots[s].latest);
            }
            const bool inside = std::any_of(good.begin(), good.end(), [&](const TimeSpan& g) {
                return g.from <= outing.start && outing.start < g.to;
            });
            EXPECT_EQ(inside || !outing.inGoodHours, true);
        }
        EXPECT_EQ(std::count(served.begin(), served.end(), 1), static_cast<std::ptrdiff_t>(slots.size()));
    }
}

// Counted by hand: evening before (1080 to 1260) and dawn (1740 to 1920), a supper and a wedding.
TEST(Rounds, ServeTwoBookingsAtOnce) {
    const std::vector<TimeSpan> good{{at(1740), at(1920)}, {at(1080), at(1260)}};
    const std::vector<CutSlot> slots{slot(600, 2000, 40, 1, 80), slot(1000, 1300, 20, 2, 40),
                                     slot(1500, 2000, 30, 1, 25), slot(900, 1950, 30, 3, 61)};
    const auto merged = fewestOutings(slots, good);
    ASSERT_EQ(merged.outings.size(), 2);
    const auto& evening = merged.outings[0];
    EXPECT_EQ(evening.slots, (std::vector<std::size_t>{1}));
    EXPECT_EQ(since(evening.start), 1240); // 20 minutes, done as the good hours end
    EXPECT_EQ(since(evening.end), 1260);
    const auto& dawn = merged.outings[1];
    EXPECT_EQ(dawn.slots, (std::vector<std::size_t>{0, 2, 3}));
    EXPECT_EQ(dawn.minutes, Minutes(100));
    EXPECT_EQ(since(dawn.start), 1820);
    EXPECT_EQ(dawn.stems, Stems(166));
    EXPECT_EQ(dawn.past, Minutes(0));
    ASSERT_EQ(dawn.patches.size(), 2);
    EXPECT_EQ(dawn.patches[0].patch, 1);
    EXPECT_EQ(dawn.patches[0].stems, Stems(105));
    EXPECT_EQ(dawn.patches[0].minutes, Minutes(70));
    EXPECT_EQ(dawn.patches[0].buckets, 4); // 80 in three of 30, 25 in one
    EXPECT_EQ(dawn.patches[1].buckets, 3);
    EXPECT_EQ(dawn.buckets, 7);
    EXPECT_TRUE(dawn.inGoodHours);
}

TEST(Rounds, TwoPairsOfHandsTakeHalfAsLong) {
    const auto merged = fewestOutings({slot(0, 300, 101)}, {{at(0), at(400)}}, 2);
    ASSERT_EQ(merged.outings.size(), 1);
    EXPECT_EQ(merged.outings[0].end - merged.outings[0].start, Minutes(51));
    EXPECT_EQ(merged.outings[0].end, at(300));
    EXPECT_EQ(merged.outings[0].minutes, Minutes(101));
}

TEST(Rounds, SayWhenTheWorkIsLongerThanTheWindow) {
    const auto merged = fewestOutings({slot(100, 150, 30), slot(100, 150, 40)}, {{at(90), at(160)}});
    ASSERT_EQ(merged.outings.size(), 1);
    EXPECT_EQ(since(merged.outings[0].start), 100);
    EXPECT_EQ(merged.outings[0].past, Minutes(20));
}

TEST(Rounds, LeaveOutAWindowThatEndsBeforeItBegins) {
    const auto merged = fewestOutings({slot(100, 50), slot(10, 20)}, {});
    EXPECT_EQ(merged.unserved, (std::vector<std::size_t>{0}));
    ASSERT_EQ(merged.outings.size(), 1);
    EXPECT_FALSE(merged.outings[0].inGoodHours);
}

TEST(Rounds, OfNothingAreNone) {
    EXPECT_TRUE(fewestOutings({}, {{at(0), at(60)}}).outings.empty());
}

} // namespace
} // namespace withy::runup
