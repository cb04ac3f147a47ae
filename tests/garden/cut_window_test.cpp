// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/cut_window.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <limits>
#include <string>

namespace withy::garden {
namespace {

Sourced figure(double value) {
    return {value, Basis::mine, "test"};
}

LocalTime at(const char* iso) {
    return *LocalTime::parse(iso);
}

/// All sums by hand. Q10 2: a day at 0 C uses 1/4 of a day at 20 C, at 10 C 1/2, at 30 C 2.
/// After make-up: 6 + 12/2 + 3 x 2 + 30 = 48 aged hours, 2 days. Bucket 2 h at 30 C: 4 aged hours;
/// rest of the conditioning 6 h at 10 C: 3. Six days of life leave 144 - 48 - 7 = 89 aged hours,
/// 356 h in a store at 0 C.
CutWindowInput supper() {
    CutWindowInput in;
    in.plant = "Cornflower";
    in.vaseLifeDays = figure(6);
    in.q10 = figure(2);
    in.conditioningHours = figure(8);
    in.conditioningCelsius = figure(10);
    in.bucketHours = figure(2);
    in.bucketCelsius = figure(30);
    in.storeCelsius = figure(0);
    in.afterMakeUp = {{"bench", figure(6), figure(20)},
                      {"cool rest", figure(12), figure(10)},
                      {"van", figure(3), figure(30)},
                      {"venue", figure(30), figure(20)}};
    in.makeUpStart = at("2026-06-19T09:00");
    in.driveStart = at("2026-06-20T08:00");
    in.eventStart = at("2026-06-20T12:00");
    in.zone = *Zone::fromPosix("GMT0BST,M3.5.0/1:00,M10.5.0/2:00");
    return in;
}

TEST(CutWindow, KeepingLifeAndConditioning) {
    const auto window = cutWindow(supper());
    ASSERT_TRUE(window.ok());
    ASSERT_TRUE(window->times);
    EXPECT_FALSE(window->impossible);
    EXPECT_EQ(window->times->latest.iso(), "2026-06-19T01:00");
    EXPECT_EQ(window->times->earliest.iso(), "2026-06-04T05:00"); // 2 + 6 + 356 h
    EXPECT_EQ(window->times->latestBy, WindowLimit::conditioning);
    EXPECT_EQ(window->times->earliestBy, WindowLimit::keepingLife);
    EXPECT_NEAR(window->times->lifeLeftAtLatest, 89.0 / 24, 1e-9);
    EXPECT_NEAR(window->times->lifeLeftAtEarliest, 0, 1e-9);
    EXPECT_FALSE(window->times->stageAtLatest);
}

struct LimitRow {
    const char* name;
    std::function<void(CutWindowInput&)> change;
    const char* earliest;
    WindowLimit earliestBy;
    const char* latest;
    WindowLimit latestBy;
};

TEST(CutWindow, WhichLimitDecides) {
    const auto life = WindowLimit::keepingLife;
    const auto store = WindowLimit::storageLimit;
    const auto conditioning = WindowLimit::conditioning;
    const LimitRow rows[] = {
        {"a week in the store", [](auto& in) { in.storageLimitDays = figure(7); }, "2026-06-12T01:00", store,
         "2026-06-19T01:00", conditioning},
        {"not to be stored", [](auto& in) { in.storageLimitDays = figure(0); }, "2026-06-19T01:00", store,
         "2026-06-19T01:00", conditioning},
        {"storage limit longer than life", [](auto& in) { in.storageLimitDays = figure(30); },
         "2026-06-04T05:00", life, "2026-06-19T01:00", conditioning},
        // A store at 10 C ages twice as fast as the handbook's at 0 C: 84 h instead of 168.
        {"store warmer than the handbook's",
         [](auto& in) {
             in.storageLimitDays = figure(7);
             in.storageLimitCelsius = figure(0);
             in.storeCelsius = figure(10);
         },
         "2026-06-15T13:00", store, "2026-06-19T01:00", conditioning},
        {"store colder than the handbook's",
         [](auto& in) {
             in.storageLimitDays = figure(7);
             in.storageLimitCelsius = figure(5);
         },
         "2026-06-12T01:00", store, "2026-06-19T01:00", conditioning},
        {"no conditioning, no bucket",
         [](auto& in) {
             in.conditioningHours = figure(0);
             in.bucketHours = figure(0);
         },
         "2026-06-03T09:00", life, "2026-06-19T09:00", conditioning}, // 96 aged hours, 384 h
        // At -20 C and a Q10 of 20 an aged hour takes 20^4 hours: centuries. The answer is 366 days.
        {"keeps for ever",
         [](auto& in) {
             in.q10 = figure(20);
             in.storeCelsius = figure(-20);
             for (auto& phase : in.afterMakeUp)
                 phase.celsius = figure(20);
         },
         "2025-06-18T09:00", WindowLimit::oneYear, "2026-06-19T01:00", conditioning},
        // Showing colour at the latest: 48 h at 20 C from there, 24 of them after make-up starts, so 24
        // before it: 4 in the bucket, 3 conditioning, 17 in the store = 68 h; 76 h in all.
        {"opens slowly",
         [](auto& in) {
             in.openingHours = figure(72);
             in.listedStage = CutStage::tightBud;
             in.furthestStage = CutStage::showingColour;
         },
         "2026-06-04T05:00", life, "2026-06-16T05:00", WindowLimit::opening},
    };
    for (const LimitRow& row : rows) {
        SCOPED_TRACE(row.name);
        CutWindowInput in = supper();
        row.change(in);
        const auto window = cutWindow(in);
        ASSERT_TRUE(window.ok());
        ASSERT_TRUE(window->times);
        EXPECT_EQ(window->times->earliest.iso(), row.earliest);
        EXPECT_EQ(window->times->earliestBy, row.earliestBy);
        EXPECT_EQ(window->times->latest.iso(), row.latest);
        EXPECT_EQ(window->times->latestBy, row.latestBy);
    }
}

TEST(CutWindow, ImpossibleSaysWhyAndByHowMuch) {
    CutWindowInput brief = supper();
    brief.vaseLifeDays = figure(2.2); // 48 + 7 aged hours are 2.2917 days
    const auto spent = cutWindow(brief);
    ASSERT_TRUE(spent->impossible);
    EXPECT_FALSE(spent->times);
    EXPECT_EQ(spent->impossible->reason, NoCutReason::lifeTooShort);
    EXPECT_NEAR(spent->impossible->shortBy, 55.0 / 24 - 2.2, 1e-9);

    CutWindowInput slow = supper();
    slow.openingHours = figure(72);
    slow.listedStage = CutStage::tightBud;
    slow.furthestStage = CutStage::showingColour; // must be cut 76 h ahead
    slow.storageLimitDays = figure(2);            // may be cut 8 + 48 h ahead
    const auto stored = cutWindow(slow);
    ASSERT_TRUE(stored->impossible);
    EXPECT_EQ(stored->impossible->reason, NoCutReason::storageLimit);
    EXPECT_NEAR(stored->impossible->shortBy, 20, 1e-9);

    slow.storageLimitDays = std::nullopt;
    slow.vaseLifeDays = figure(65.0 / 24); // 10 aged hours left: 40 h in the store, 48 in all
    const auto opening = cutWindow(slow);
    ASSERT_TRUE(opening->impossible);
    EXPECT_EQ(opening->impossible->reason, NoCutReason::openingTooLong);
    EXPECT_NEAR(opening->impossible->shortBy, 28, 1e-9);
}

TEST(CutWindow, LifeThatJustLasts) {
    CutWindowInput in = supper();
    in.vaseLifeDays = figure(55.0 / 24);
    const auto window = cutWindow(in);
    ASSERT_TRUE(window->times);
    EXPECT_EQ(window->times->earliest, window->times->latest);
    EXPECT_NEAR(window->times->lifeLeftAtLatest, 0, 1e-9);
}

TEST(CutWindow, StageToCutAt) {
    CutWindowInput in = supper();
    in.openingHours = figure(72);
    in.listedStage = CutStage::tightBud;
    const auto window = cutWindow(in);
    ASSERT_TRUE(window->times);
    // Cut at the latest: 7 aged hours before make-up, 20 to the drive, 24 to the event: 27 and 31.
    EXPECT_EQ(window->times->stageAtLatest->stage, CutStage::halfOpen);
    EXPECT_EQ(window->times->stageAtLatest->fit, OpeningFit::opensBeforeDrive);
    // Cut at the earliest: 96 + 24 hours of opening, more than the 72 of a tight bud.
    EXPECT_EQ(window->times->stageAtEarliest->stage, CutStage::tightBud);
    // 140 h ahead: 4 + 3 + 132 / 4 = 40 aged hours, 60 to the drive, 64 to the event.
    const auto outcome = cutOutcome(in, at("2026-06-13T13:00"));
    ASSERT_TRUE(outcome.ok());
    EXPECT_EQ(outcome->stage->stage, CutStage::showingColour);
    EXPECT_NEAR(outcome->hoursAhead, 140, 1e-9);
    EXPECT_NEAR(outcome->storeHours, 132, 1e-9);
    EXPECT_NEAR(outcome->lifeLeftDays, (144.0 - 48 - 40) / 24, 1e-9);
}

TEST(CutWindow, ClocksChangeAndRealHoursCount) {
    CutWindowInput in = supper();
    in.conditioningHours = figure(10);
    const auto latest = [&](const char* makeUp, const char* drive, const char* event) {
        in.makeUpStart = at(makeUp);
        in.driveStart = at(drive);
        in.eventStart = at(event);
        return cutWindow(in)->times->latest.iso();
    };
    // 29 March 2026: 01:00 becomes 02:00. Ten hours before 09:00 is 22:00, not 23:00.
    EXPECT_EQ(latest("2026-03-29T09:00", "2026-03-29T15:00", "2026-03-29T18:00"), "2026-03-28T22:00");
    // 25 October 2026: 02:00 becomes 01:00. Ten hours before 09:00 is midnight.
    EXPECT_EQ(latest("2026-10-25T09:00", "2026-10-25T15:00", "2026-10-25T18:00"), "2026-10-25T00:00");
    in.zone = Zone::utc();
    EXPECT_EQ(latest("2026-03-29T09:00", "2026-03-29T15:00", "2026-03-29T18:00"), "2026-03-28T23:00");
}

TEST(CutWindow, EndsOfTheWindowHold) {
    for (const double life : {2.5, 3.37, 4.0, 6.1}) {
        SCOPED_TRACE(life);
        CutWindowInput in = supper();
        in.vaseLifeDays = figure(life);
        in.q10 = figure(2.6);
        const auto window = cutWindow(in);
        ASSERT_TRUE(window->times);
        const LocalTime earliest = window->times->earliest;
        EXPECT_GE(cutOutcome(in, earliest)->lifeLeftDays, -1e-9);
        EXPECT_LT(cutOutcome(in, earliest - Minutes(2))->lifeLeftDays, 0);
        EXPECT_NEAR(cutOutcome(in, window->times->latest)->lifeLeftDays, window->times->lifeLeftAtLatest,
                    1e-3);
    }
}

TEST(CutWindow, MoreLifeNeverNarrowsIt) {
    LocalTime before = at("2200-01-01T00:00");
    for (double life = 2.5; life < 20; life += 0.37) {
        CutWindowInput in = supper();
        in.vaseLifeDays = figure(life);
        const auto window = cutWindow(in);
        ASSERT_TRUE(window->times);
        EXPECT_LE(window->times->earliest, before);
        before = window->times->earliest;
    }
}

TEST(CutWindow, WorkingNamesEveryFigureAndItsSource) {
    CutWindowInput in = supper();
    in.storageLimitDays = Sourced{7, Basis::published, "a handbook"};
    in.openingHours = figure(10);
    const Working working = cutWindow(in)->working;
    const auto line = [&](const std::string& what) {
        const auto found = std::find_if(working.begin(), working.end(),
                                        [&](const WorkingLine& l) { return l.what == what; });
        EXPECT_NE(found, working.end()) << what;
        return found == working.end() ? WorkingLine{} : *found;
    };
    EXPECT_EQ(line("storage limit").source, "a handbook");
    EXPECT_EQ(line("storage limit").basis, Basis::published);
    EXPECT_EQ(line("vase life at 20 C").subject, "Cornflower");
    EXPECT_EQ(line("van").unit, Unit::hours);
    EXPECT_NEAR(line("life left after conditioning").value, 89.0 / 24, 1e-9);
    EXPECT_NEAR(line("most ahead of make-up").value, 176, 1e-9);
    EXPECT_EQ(line("latest").value, static_cast<double>(at("2026-06-19T01:00").minutesSinceEpoch()));
    EXPECT_EQ(working.back().what, "earliest");
    // What is given less what is used comes to what is left.
    double life = 0;
    for (const WorkingLine& l : working) {
        if (l.what == "vase life at 20 C") life += l.value;
        if (l.what == "life used") life -= l.value;
    }
    EXPECT_NEAR(life, 89.0 / 24, 1e-9);
}

struct FaultRow {
    const char* field;
    CutWindowTrouble trouble;
    std::function<void(CutWindowInput&)> change;
};

TEST(CutWindow, FaultsNameTheirField) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinite = std::numeric_limits<double>::infinity();
    const FaultRow rows[] = {
        {"vase life", CutWindowTrouble::notFinite, [&](auto& in) { in.vaseLifeDays.value = nan; }},
        {"vase life", CutWindowTrouble::notFinite, [&](auto& in) { in.vaseLifeDays.value = infinite; }},
        {"vase life", CutWindowTrouble::negative, [](auto& in) { in.vaseLifeDays.value = -1; }},
        {"vase life", CutWindowTrouble::outOfRange, [](auto& in) { in.vaseLifeDays.value = 367; }},
        {"Q10", CutWindowTrouble::notFinite, [&](auto& in) { in.q10.value = nan; }},
        {"Q10", CutWindowTrouble::outOfRange, [](auto& in) { in.q10.value = 0; }},
        {"Q10", CutWindowTrouble::outOfRange, [](auto& in) { in.q10.value = 20.5; }},
        {"storage limit", CutWindowTrouble::negative, [](auto& in) { in.storageLimitDays = figure(-1); }},
        {"storage limit temperature", CutWindowTrouble::outOfRange,
         [](auto& in) { in.storageLimitCelsius = figure(99); }},
        {"conditioning", CutWindowTrouble::negative, [](auto& in) { in.conditioningHours.value = -0.5; }},
        {"conditioning temperature", CutWindowTrouble::notFinite,
         [&](auto& in) { in.conditioningCelsius = figure(nan); }},
        {"opening", CutWindowTrouble::outOfRange, [](auto& in) { in.openingHours = figure(1e9); }},
        {"furthest stage", CutWindowTrouble::outOfOrder,
         [](auto& in) { in.furthestStage = CutStage::tightBud; }},
        {"bucket", CutWindowTrouble::negative, [](auto& in) { in.bucketHours.value = -2; }},
        {"bucket temperature", CutWindowTrouble::outOfRange, [](auto& in) { in.bucketCelsius.value = 61; }},
        {"store temperature", CutWindowTrouble::notFinite,
         [&](auto& in) { in.storeCelsius.value = -infinite; }},
        {"van", CutWindowTrouble::negative, [](auto& in) { in.afterMakeUp[2].hours.value = -1; }},
        {"van", CutWindowTrouble::notFinite, [&](auto& in) { in.afterMakeUp[2].celsius.value = nan; }},
        {"after make-up", CutWindowTrouble::tooShort, [](auto& in) { in.afterMakeUp.resize(2); }},
        {"after make-up", CutWindowTrouble::tooShort, [](auto& in) { in.afterMakeUp.clear(); }},
        {"make-up start", CutWindowTrouble::badTime, [](auto& in) { in.makeUpStart.minute = 1440; }},
        {"drive start", CutWindowTrouble::badTime, [](auto& in) { in.driveStart.day = Day{2000000}; }},
        {"event start", CutWindowTrouble::badTime, [](auto& in) { in.eventStart.day = Day{-2000000}; }},
        {"drive start", CutWindowTrouble::outOfOrder,
         [](auto& in) { in.driveStart = at("2026-06-19T08:59"); }},
        {"event start", CutWindowTrouble::outOfOrder,
         [](auto& in) { in.eventStart = at("2026-06-20T07:59"); }},
    };
    for (const FaultRow& row : rows) {
        SCOPED_TRACE(row.field);
        CutWindowInput in = supper();
        row.change(in);
        const auto window = cutWindow(in);
        ASSERT_FALSE(window.ok());
        EXPECT_EQ(window.error().field, row.field);
        EXPECT_EQ(window.error().trouble, row.trouble);
        EXPECT_FALSE(cutOutcome(in, at("2026-06-18T09:00")).ok());
    }
    LocalTime never = at("2026-06-18T09:00");
    never.minute = -1;
    EXPECT_EQ(cutOutcome(supper(), never).error().field, "cut");
}

} // namespace
} // namespace withy::garden
