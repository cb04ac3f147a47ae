// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/network.h"
#include "core/plan/cover_plan.h"
#include "tests/cover/cover_rows.h"
#include "tests/cover/demo_files.h"
#include "tests/cover/outside_solver.h"

#include <gtest/gtest.h>

#include <tuple>

namespace withy::plan::tests {

namespace {

struct Demo {
    model::Season season = withy::tests::demoFromFiles();
    Plan plan = plan::plan(season);
    const CoverPlan& cover = *plan.cover; ///< of the garden's own forecast
};

const Demo& demo() {
    static const Demo all;
    return all;
}

auto piecesOf(const SlotLevel& level) {
    std::vector<std::tuple<cover::Source, std::int64_t, std::int64_t, Day, Day, std::int64_t>> all;
    for (const auto& p : level.pieces)
        all.emplace_back(p.source, p.from, p.plant.value, p.ready, p.cut, p.stems.value);
    return all;
}

auto mendsOf(const SlotCover& slot) {
    std::vector<std::tuple<MendKind, std::int64_t, std::int64_t, std::int64_t, std::int64_t>> all;
    for (const auto& m : slot.mends)
        all.emplace_back(m.kind, m.plant.value, m.stems.value, m.bunches, m.pieces.value);
    return all;
}

} // namespace

/// The demo season against GLPK, objective for objective, at the cautious level, where more is short.
TEST(DemoCover, IsTheOutsideSolversOptimum) {
    ASSERT_TRUE(cover::tests::outsideSolverIsThere())
        << "glpsol is missing: install glpk-utils, as tests/run does";
    for (const auto& both : demo().cover.allocations) {
        ASSERT_TRUE(both);
        EXPECT_EQ(cover::tests::wrongWith(both->problem, *both), std::vector<std::string>{});
    }
    const auto& allocation = demo().cover.allocations[0];
    std::string error;
    const auto best = cover::tests::solveByClaim(allocation->problem, allocation->unmet, error);
    ASSERT_EQ(error, "");
    EXPECT_EQ(allocation->objectives.unmet, best.unmet);
    std::int64_t served = 0;
    const auto n = static_cast<std::int64_t>(allocation->unmet.size());
    for (std::int64_t d = 0; d < n; ++d)
        served += (n - d) * allocation->unmet[static_cast<std::size_t>(d)].value;
    EXPECT_EQ(served, best.served);
    EXPECT_EQ(allocation->objectives.price, best.price);
    EXPECT_EQ(allocation->objectives.places, best.places);
    EXPECT_EQ(allocation->objectives.keeping, best.keeping);
}

TEST(DemoCover, ComesOutTheSameTwice) {
    const auto whole = plan::plan(demo().season);
    const auto& again = *whole.cover;
    ASSERT_EQ(again.bookings.size(), demo().cover.bookings.size());
    for (const auto& [id, booking] : again.bookings) {
        const auto& before = demo().cover.bookings.at(id);
        EXPECT_EQ(booking.standing, before.standing);
        EXPECT_EQ(booking.covered, before.covered);
        ASSERT_EQ(booking.slots.size(), before.slots.size());
        for (std::size_t s = 0; s < booking.slots.size(); ++s) {
            EXPECT_EQ(mendsOf(booking.slots[s]), mendsOf(before.slots[s]));
            for (std::size_t level = 0; level < levelCount; ++level)
                EXPECT_EQ(piecesOf(booking.slots[s].at[level]), piecesOf(before.slots[s].at[level]));
        }
    }
}

/// What a booking asks of the garden is what it needs with its spare, before whole bunches; what it gets and
/// what it lacks add up slot by slot.
TEST(DemoCover, AsksForNeedAndSpareAndBalances) {
    std::array<int, 5> standings{};
    for (const auto& [id, booking] : demo().cover.bookings) {
        SCOPED_TRACE(demo().season.bookings.find(id)->title);
        Stems asked;
        for (const auto& need : demo().plan.bookings.at(id)->needs)
            asked += need.need.need + need.need.spare;
        EXPECT_EQ(booking.needed, asked);
        for (const auto& slot : booking.slots) {
            for (const auto& level : slot.at) {
                Stems pieces;
                for (const auto& p : level.pieces)
                    pieces += p.stems;
                EXPECT_EQ(pieces, level.covered);
                EXPECT_EQ(level.covered + level.shortBy, slot.needed);
            }
        }
        ++standings[static_cast<std::size_t>(booking.standing)];
    }
    EXPECT_GT(standings[static_cast<std::size_t>(CoverStanding::covered)], 0);
    EXPECT_GT(standings[static_cast<std::size_t>(CoverStanding::shortOf)], 0);
}

} // namespace withy::plan::tests
