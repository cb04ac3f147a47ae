// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/kit_through_time.h"
#include "tests/cover/demo_files.h"
#include "tests/shedplan/shed_sample.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace withy::plan::tests {

namespace {

using model::Standing;

const model::Ref jars{model::TableKind::containers, 1};

model::Return returned(std::int64_t booking, std::int64_t out, std::optional<std::int64_t> back,
                       std::optional<std::int64_t> broken = std::nullopt) {
    model::Return r;
    r.id = Id<model::Return>(booking);
    r.booking = Id<model::Booking>(booking);
    r.container = honeyJar;
    r.out = out;
    r.back = back;
    r.broken = broken;
    return r;
}

std::int64_t awayByLevels(const KitItem& item, Day day) {
    std::int64_t away = 0;
    for (const auto& level : item.levels)
        if (level.from <= day) away = level.away;
    return away;
}

} // namespace

// Counted with a pencil: 24 jars go on the 10th and are home on the 12th, 30 go on the 11th and are home on
// the 13th, 6 asked for go on the 11th. 24 + 30 + 6 = 60 of 46 on the 11th and 12th, 36 on the 13th.
TEST(KitThroughTime, CountsDayByDayAsByHand) {
    const auto season = shedSeason({{1, 11, 24}, {2, 12, 30}, {3, 12, 6, Standing::enquiry}});
    const auto plan = plan::plan(season, on(9, 1));
    const auto& item = kitOf(*plan.shed, jars);
    const std::pair<int, std::int64_t> hand[] = {{9, 0}, {10, 24}, {11, 60}, {12, 60}, {13, 36}, {14, 0}};
    for (const auto& [day, away] : hand) {
        SCOPED_TRACE(day);
        EXPECT_EQ(awayByLevels(item, model::sample::day(2027, 9, day)), away);
    }
    ASSERT_TRUE(item.firstShort);
    EXPECT_EQ(item.firstShort->day.iso(), "2027-09-11");
    EXPECT_EQ(item.firstShort->by, 14);
    EXPECT_TRUE(item.firstShort->firm); // 54 booked of 46
    EXPECT_EQ(item.firstShort->bookings.size(), 3u);
    EXPECT_EQ(item.promised, 60);
    EXPECT_EQ(item.here, 46);
    EXPECT_TRUE(finds(*plan.shed, ShedCode::kitRunsShort));
    ASSERT_EQ(plan.shed->buying.size(), 1u);
    EXPECT_EQ(plan.shed->buying[0].amount, 14);
    EXPECT_EQ(plan.shed->buying[0].neededBy.iso(), "2027-09-11");
    EXPECT_EQ(plan.shed->buying[0].cost->minor, 14 * 55);
}

TEST(KitThroughTime, AnEnquiryAloneMakesItShortOnlyIfTaken) {
    const auto season = shedSeason({{1, 11, 24}, {2, 12, 23, Standing::enquiry}});
    const auto plan = plan::plan(season, on(9, 1));
    const auto& item = kitOf(*plan.shed, jars);
    ASSERT_TRUE(item.firstShort);
    EXPECT_EQ(item.firstShort->by, 1);
    EXPECT_FALSE(item.firstShort->firm);
}

TEST(KitThroughTime, LostAndUncountedAskNothingOfTheShelf) {
    const auto lost = plan::plan(shedSeason({{1, 11, 60, Standing::lost}}), on(9, 1));
    EXPECT_FALSE(kitOf(*lost.shed, jars).firstShort);
    const auto uncounted = plan::plan(shedSeason({{1, 11, 60}}, std::nullopt), on(9, 1));
    EXPECT_FALSE(kitOf(*uncounted.shed, jars).firstShort); // blank is not nought
    EXPECT_TRUE(uncounted.shed->buying.empty());
}

/// One row a case: what was counted home, and what that leaves.
TEST(KitThroughTime, ReturnsAreOutBackOrBroken) {
    struct Row {
        const char* name;
        Standing standing;
        std::optional<model::Return> record;
        int today; ///< of September; out on the 10th, due home on the 12th
        std::int64_t out, broken, here;
        bool late;
        std::size_t outstanding;
    };

    const Row rows[] = {
        {"on the table", Standing::delivered, std::nullopt, 11, 24, 0, 22, false, 1},
        {"not counted yet", Standing::delivered, std::nullopt, 20, 24, 0, 22, true, 1},
        {"noted as out, not counted", Standing::delivered, returned(1, 20, std::nullopt), 20, 20, 0, 26, true,
         1},
        {"all home", Standing::delivered, returned(1, 24, 24, 0), 20, 0, 0, 46, false, 0},
        {"two broken", Standing::delivered, returned(1, 24, 22, 2), 20, 0, 2, 44, false, 0},
        {"two broken, three not come", Standing::settled, returned(1, 24, 19, 2), 20, 3, 2, 41, false, 1},
        {"settled, nothing said", Standing::settled, std::nullopt, 20, 0, 0, 46, false, 0},
        {"none home", Standing::delivered, returned(1, 24, 0, 0), 20, 24, 0, 22, false, 1},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        auto season = shedSeason({{1, 11, 24, row.standing}});
        if (row.record) season = applied(season, model::Edit("t").put(*row.record));
        const auto plan = plan::plan(season, on(9, row.today));
        const auto& item = kitOf(*plan.shed, jars);
        EXPECT_EQ(item.out, row.out);
        EXPECT_EQ(item.broken, row.broken);
        EXPECT_EQ(item.here, row.here);
        EXPECT_EQ(plan.shed->returns.size(), row.outstanding);
        EXPECT_EQ(finds(*plan.shed, ShedCode::returnLate), row.late);
    }
}

/// By hand: 30 of 46 went out on the 3rd, were due on the 5th and written back by nobody; 40 go out on the
/// 19th. They cannot be out twice, so the first must have come home: none is short, and no more are out than
/// owned.
TEST(KitThroughTime, WhatNobodyWroteBackIsNeverOutTwice) {
    const auto season = shedSeason({{1, 4, 30, Standing::delivered}, {2, 20, 40}});
    const auto plan = plan::plan(season, on(9, 20));
    const auto& item = kitOf(*plan.shed, jars);
    EXPECT_EQ(item.out, 46);
    EXPECT_EQ(item.here, 0);
    EXPECT_FALSE(item.firstShort);
    EXPECT_TRUE(plan.shed->buying.empty());
    EXPECT_EQ(plan::awayOn(item, model::sample::day(2027, 9, 20)), 46);
    EXPECT_TRUE(finds(*plan.shed, ShedCode::returnLate));
}

/// One jar of a settled booking broke; two others want 54 of the 46 together, and it is not one of them.
TEST(KitThroughTime, ShortIsOnlyWhoIsStillToCome) {
    auto season = shedSeason({{1, 4, 24, Standing::settled}, {2, 18, 24}, {3, 18, 30}});
    season = applied(season, model::Edit("t").put(returned(1, 24, 23, 1)));
    const auto plan = plan::plan(season, on(9, 10));
    const auto& item = kitOf(*plan.shed, jars);
    ASSERT_TRUE(item.firstShort);
    EXPECT_EQ(item.firstShort->by, 24 + 30 + 1 - 46);
    const std::vector both{Id<model::Booking>(2), Id<model::Booking>(3)};
    EXPECT_EQ(item.firstShort->bookings, both);
    ASSERT_EQ(plan.shed->buying.size(), 1u);
    EXPECT_EQ(plan.shed->buying[0].bookings, both);
    EXPECT_EQ(plan.shed->buying[0].amount, item.firstShort->by);
}

/// Asked for and never taken: what it would have used up is not used.
TEST(KitThroughTime, AnEnquiryGoneByTakesNothing) {
    const auto season = shedSeason({{1, 4, 60, Standing::enquiry}});
    EXPECT_TRUE(kitOf(*plan::plan(season, on(9, 20)).shed, jars).holds.empty());
    EXPECT_EQ(kitOf(*plan::plan(season, on(9, 1)).shed, jars).holds.size(), 1u);
}

TEST(KitThroughTime, WhatGoesHomeWithThemNeverComesBack) {
    auto jar = jarRecord(46);
    jar.returnable = false;
    const auto season = applied(shedSeason({{1, 11, 24}, {2, 25, 24}}), model::Edit("t").put(jar));
    const auto plan = plan::plan(season, on(9, 1));
    const auto& item = kitOf(*plan.shed, jars);
    EXPECT_EQ(awayByLevels(item, model::sample::day(2027, 9, 20)), 24);
    ASSERT_TRUE(item.firstShort);
    EXPECT_EQ(item.firstShort->day.iso(), "2027-09-24");
    EXPECT_EQ(item.firstShort->by, 2);
}

/// The buying list comes in steps: what the first day wants, then what a later day wants beyond it.
TEST(KitThroughTime, BuyingComesInSteps) {
    const auto season = shedSeason({{1, 4, 48}, {2, 11, 50}, {3, 18, 47}, {4, 25, 60}});
    const auto plan = plan::plan(season, on(9, 1));
    const std::pair<const char*, std::int64_t> hand[] = {
        {"2027-09-03", 2}, {"2027-09-10", 2}, {"2027-09-24", 10}};
    ASSERT_EQ(plan.shed->buying.size(), std::size(hand));
    for (std::size_t i = 0; i < std::size(hand); ++i) {
        EXPECT_EQ(plan.shed->buying[i].neededBy.iso(), hand[i].first);
        EXPECT_EQ(plan.shed->buying[i].amount, hand[i].second);
    }
}

/// The demo season's shelf again by another way: every day by itself, booking by booking, without levels.
TEST(KitThroughTime, DemoDayByDay) {
    const auto season = withy::tests::demoFromFiles();
    const auto plan = plan::plan(season, on(6, 1));
    int days = 0;
    for (const auto& item : plan.shed->kit) {
        if (item.item.table != model::TableKind::containers) continue;
        SCOPED_TRACE(season.containers.find(Id<model::Container>(item.item.id))->name);
        for (Day day = model::sample::day(2027, 6, 1); day < model::sample::day(2027, 10, 31);
             day = day + 1) {
            std::int64_t away = 0;
            for (const auto& [id, booked] : plan.bookings) {
                if (season.bookings.find(id)->standing == Standing::lost) continue;
                for (const auto& hold : item.holds)
                    if (hold.booking == id && hold.from <= day)
                        away += !hold.until || day <= *hold.until ? hold.amount : hold.broken + hold.lost;
            }
            ASSERT_EQ(awayByLevels(item, day), away) << day.iso();
            ++days;
        }
    }
    EXPECT_GT(days, 1000);
}

/// By hand: the 4th wants 60 of 46 alone, and says so itself. On the 11th 24 and 30 are away together, 54 of
/// 46: that is found, with its first day, whatever one booking wants at another time.
TEST(KitThroughTime, OneBookingThatWantsTooMuchSilencesNoOther) {
    const auto season = shedSeason({{1, 4, 60}, {2, 11, 24}, {3, 12, 30}});
    const auto plan = plan::plan(season, on(9, 1));
    std::vector<const Finding*> found;
    for (const auto& f : plan.shed->findings)
        if (f.finding.code == ShedCode::kitRunsShort) found.push_back(&f.finding);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0]->place, jars);
    EXPECT_EQ(found[0]->subjects.at(1), "2027-09-11");
    EXPECT_EQ(found[0]->numbers.at(0), 8);
    const auto& own = plan.bookings.at(Id<model::Booking>(1))->findings;
    EXPECT_TRUE(std::any_of(own.begin(), own.end(),
                            [](const Finding& f) { return f.code == FindingCode::containerShort; }));
}

/// Short twice in a season, found twice.
TEST(KitThroughTime, EachTimeItIsShortIsFound) {
    const auto season = shedSeason({{1, 4, 24}, {2, 5, 30}, {3, 18, 40}, {4, 19, 20}});
    const auto plan = plan::plan(season, on(9, 1));
    std::vector<std::string> days;
    for (const auto& f : plan.shed->findings)
        if (f.finding.code == ShedCode::kitRunsShort) days.push_back(f.finding.subjects.at(1));
    EXPECT_EQ(days, (std::vector<std::string>{"2027-09-04", "2027-09-18"}));
}

/// Trays of which one booking alone wants more than there are: no booking's own kit list counts them, so the
/// shelf says it, and they are on the buying list. Eight jars of 215 mm stand in 860 x 430.
TEST(KitThroughTime, TraysThatRunShortAreFoundAndBought) {
    model::Holder tray;
    tray.id = slatted;
    tray.name = "Slatted tray";
    tray.kind = model::HolderKind::tray;
    tray.innerLength = Millimetres(860);
    tray.innerWidth = Millimetres(430);
    tray.owned = 2;
    const auto season = applied(shedSeason({{1, 11, 24}}), model::Edit("t").put(tray));
    const auto plan = plan::plan(season, on(9, 1));
    const model::Ref trays{model::TableKind::holders, slatted.value};
    const Finding* found = nullptr;
    for (const auto& f : plan.shed->findings)
        if (f.finding.code == ShedCode::kitRunsShort && f.finding.place == trays) found = &f.finding;
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->subjects.at(1), "2027-09-11") << "the day they go on the road";
    EXPECT_EQ(found->numbers.at(0), 1);
    const auto bought = std::find_if(plan.shed->buying.begin(), plan.shed->buying.end(),
                                     [&](const BuyingLine& l) { return l.item == trays; });
    ASSERT_NE(bought, plan.shed->buying.end());
    EXPECT_EQ(bought->amount, 1);
    EXPECT_EQ(bought->neededBy.iso(), "2027-09-11");
}

} // namespace withy::plan::tests
