// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/share_plan.h"

#include "tests/cover/demo_files.h"
#include "tests/shareout/share_checks.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace withy::plan::tests {

namespace {

using shareout::tests::belowDesign;
using shareout::tests::wrongWith;

const model::Season& demoSeason() {
    static const auto season = withy::tests::demoFromFiles();
    return season;
}

/// What the booking's rounds brought home of each plant: cut - thrown away, summed here anew.
std::map<Id<model::Plant>, std::int64_t> broughtHome(const model::Season& season,
                                                     Id<model::Booking> booking) {
    std::map<Id<model::Plant>, std::int64_t> sums;
    std::set<Id<model::Round>> rounds;
    for (const auto& r : season.roundBookings) {
        if (r.booking == booking) rounds.insert(r.round);
    }
    for (const auto& t : season.tallies) {
        if (!rounds.contains(t.round) || !t.cut) continue;
        sums[season.patches.find(t.patch)->plant] += t.cut->value - (t.thrownAway ? t.thrownAway->value : 0);
    }
    return sums;
}

model::Season stillToMake(model::Season season) {
    std::vector<model::Booking> bookings(season.bookings.begin(), season.bookings.end());
    for (auto& b : bookings) {
        b.standing = model::Standing::booked;
        season.bookings.put(b);
    }
    return season;
}

} // namespace

/// Every booking of the demo season whose rounds were tallied, as if it were still to be made: the tally and
/// the pieces counted anew from the season's own tables, and every property of a share-out.
TEST(SharePlan, SharesOutTheDemoSeasonsTallies) {
    const auto season = stillToMake(demoSeason());
    int shared = 0, withoutTally = 0;
    for (const auto& booking : season.bookings) {
        SCOPED_TRACE(booking.title);
        const auto home = broughtHome(season, booking.id);
        const auto plan = planShare(season, booking.id);
        if (!plan.ok()) {
            const auto* fault = std::get_if<shareout::ShareFault>(&plan.error());
            ASSERT_TRUE(fault);
            EXPECT_EQ(fault->trouble, shareout::ShareTrouble::noTally);
            ++withoutTally;
            continue;
        }
        ++shared;
        EXPECT_EQ(wrongWith(plan->problem, plan->share), std::vector<std::string>{});
        std::int64_t counted = 0, all = 0;
        for (const auto& p : plan->share.plants)
            counted += p.counted.value;
        for (const auto& [plant, stems] : home)
            all += stems;
        for (const auto& a : plan->setAside) {
            EXPECT_NE(a.booking, booking.id);
            all -= a.stems.value;
        }
        EXPECT_EQ(counted, all);
        std::map<Id<model::Line>, std::int64_t> pieces;
        for (const auto& line : season.lines) {
            if (line.booking == booking.id) pieces[line.id] = line.pieces.value + line.sparePieces.value;
        }
        ASSERT_EQ(plan->share.lines.size(), pieces.size());
        for (const auto& line : plan->share.lines)
            EXPECT_EQ(line.pieces.value, pieces.at(line.line));
    }
    EXPECT_GT(shared, 5);
    EXPECT_GT(withoutTally, 5);
}

TEST(SharePlan, RefusesWhatIsDeliveredOrNotThere) {
    const auto& season = demoSeason();
    int refused = 0;
    for (const auto& booking : season.bookings) {
        using enum model::Standing;
        if (booking.standing != delivered && booking.standing != settled && booking.standing != lost)
            continue;
        const auto plan = planShare(season, booking.id);
        ASSERT_FALSE(plan.ok());
        EXPECT_EQ(plan.error(), ShareStop(ShareRefusal::alreadyDelivered));
        ++refused;
    }
    EXPECT_GT(refused, 5);
    const auto none = planShare(season, Id<model::Booking>(987'654));
    ASSERT_FALSE(none.ok());
    EXPECT_EQ(none.error(), ShareStop(ShareRefusal::noSuchBooking));
}

/// Stems out of the store are shared out with what was cut, and fill a booking that has no round yet.
TEST(SharePlan, TakesStemsOutOfTheStore) {
    const auto season = stillToMake(demoSeason());
    const Id<model::Booking> supper(1);
    const auto before = planShare(season, supper);
    std::vector<shareout::TallyLine> store;
    std::set<Id<model::Plant>> seen;
    for (const auto& line : season.lines) {
        if (line.booking != supper) continue;
        for (const auto& slot : season.slots) {
            if (slot.design != line.design) continue;
            for (const auto& p : season.slotPlants) {
                if (p.slot == slot.id && seen.insert(p.plant).second)
                    store.push_back({{}, p.plant, Stems(5'000), {}, {}});
            }
        }
    }
    ASSERT_FALSE(store.empty());
    const auto plan = planShare(season, supper, store);
    ASSERT_TRUE(plan.ok());
    EXPECT_EQ(plan->share.missing(), Stems(0));
    EXPECT_EQ(belowDesign(plan->share), Stems(0));
    for (const auto& line : plan->share.lines) {
        for (const auto& group : line.groups)
            EXPECT_EQ(group.total, line.target);
    }
    for (const auto& standIn : agreedStandIns(season, supper, plan->problem)) {
        EXPECT_TRUE(standIn.agreed);
        EXPECT_FALSE(standIn.fits.empty());
    }
    EXPECT_GT(agreedStandIns(season, supper, plan->problem).size(), 0U);
    EXPECT_FALSE(before.ok() && before->share.missing() == Stems(0));
}

} // namespace withy::plan::tests
