// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/misfit.h"
#include "tests/runup/every_start.h"
#include "tests/runup/random_projects.h"
#include "tests/runup/schedule_checker.h"

#include <gtest/gtest.h>

namespace withy::runup {
namespace {

constexpr Time dayLong = 1440;
constexpr Time nine = 9 * 60;

/// One pair of hands from nine to five on Monday to Friday (days 0 to 4).
Resource weekOfHands() {
    std::vector<Hours> hours;
    for (Time day = 0; day < 5; ++day)
        hours.push_back({day * dayLong + nine, day * dayLong + 17 * 60});
    return resourceInHours(1, hours);
}

Task making(Time minutes, Time release, Time deadline) {
    Task task;
    task.modes = {{minutes, {{0, 1}}}};
    task.release = release;
    task.deadline = deadline;
    task.splittable = true;
    return task;
}

/// Thursday has eight hours, and ten hours of making by its end that may not begin before it. Two hours too
/// many, counted by hand: the last of it would have to be done on Wednesday from three o'clock.
Project fullThursday() {
    Project p;
    p.resources = {weekOfHands()};
    p.tasks = {making(360, 3 * dayLong, 4 * dayLong), making(240, 3 * dayLong, 4 * dayLong)};
    for (auto& task : p.tasks) {
        task.byPiece = true;
        task.releaseMoves = true;
    }
    return p;
}

TEST(Misfit, SaysByHowMuchAndOnWhichDay) {
    const Project p = fullThursday();
    const auto found = schedule(p, Aim::latest);
    ASSERT_TRUE(found.ok());
    EXPECT_FALSE(found->fits());
    EXPECT_TRUE(found->misfitProved);
    EXPECT_TRUE(tests::complaints(p, Aim::latest, *found).empty());
    const auto facts = misfit(p, *found);
    // One task begins on Wednesday at three: nine hours before Thursday begins.
    EXPECT_EQ(facts.minutes, 9 * 60);
    EXPECT_EQ(facts.chain, 0);
    ASSERT_TRUE(facts.tightest);
    EXPECT_EQ(facts.tightest->work, 600);
    EXPECT_EQ(facts.tightest->room, 480);
    EXPECT_EQ(facts.tightest->over(), 120);
    ASSERT_TRUE(facts.day);
    EXPECT_EQ(facts.day->from, 3 * dayLong);
    EXPECT_EQ(facts.day->over(), 120);
}

TEST(Misfit, MendsAreWhatFitsWhenLaidOutAgain) {
    const Project p = fullThursday();
    MendChoices choices;
    choices.helper = ExtraHands{resourceInHours(1, {{3 * dayLong + nine, 3 * dayLong + 13 * 60}}), 0, 150};
    choices.pieces = {{0, 30}};
    const auto all = mends(p, Aim::latest, choices);
    ASSERT_EQ(all.size(), 3);
    for (const auto& mend : all) {
        SCOPED_TRACE(static_cast<int>(mend.kind));
        switch (mend.kind) {
        case MendKind::startEarlier: // from Wednesday at three: nine hours
            EXPECT_TRUE(mend.fits);
            EXPECT_EQ(mend.earlier, 9 * 60);
            break;
        case MendKind::oneMoreHelper: // in four hours, half as slow again, neither of the two tasks can be
                                      // done
            EXPECT_FALSE(mend.fits);
            EXPECT_GT(mend.outside, 0);
            break;
        case MendKind::fewerPieces: // 480 of 600 minutes: 24 of 30
            EXPECT_TRUE(mend.fits);
            EXPECT_EQ(mend.pieces, 24);
            break;
        }
    }
    // Six hours of a helper as fast as the grower do for the shorter of the two.
    choices.helper = ExtraHands{resourceInHours(1, {{3 * dayLong + nine, 3 * dayLong + 15 * 60}}), 0, 100};
    const auto better = mends(p, Aim::latest, choices);
    for (const auto& mend : better)
        EXPECT_TRUE(mend.fits) << static_cast<int>(mend.kind);
}

TEST(Misfit, SaysWhenOneStepAfterTheOtherIsTooLong) {
    Project p;
    p.resources = {weekOfHands()};
    p.tasks = {making(60, 4 * dayLong + nine, never), making(60, 0, 4 * dayLong + 14 * 60)};
    p.follows = {{0, 1, 6 * 60}}; // six hours in water in between: done at five, due at two
    const auto found = schedule(p, Aim::soonest);
    ASSERT_TRUE(found.ok());
    EXPECT_TRUE(found->misfitProved);
    EXPECT_EQ(found->outside, 180);
    const auto facts = misfit(p, *found);
    EXPECT_EQ(facts.chain, 180);
    EXPECT_EQ(facts.minutes, 180);
    EXPECT_EQ(facts.task, 1);
}

TEST(Misfit, ChangesKeepEverythingElse) {
    const Project p = tests::seasonProject(5);
    const Project fewer = withPieces(p, 0, 10, 5);
    ASSERT_EQ(fewer.tasks.size(), p.tasks.size());
    for (std::size_t t = 0; t < p.tasks.size(); ++t) {
        const bool changed = p.tasks[t].group == 0 && p.tasks[t].byPiece;
        for (std::size_t m = 0; m < p.tasks[t].modes.size(); ++m) {
            const Time was = p.tasks[t].modes[m].duration;
            EXPECT_EQ(fewer.tasks[t].modes[m].duration, changed ? (was + 1) / 2 : was);
        }
    }
    const Project more = withOneMore(p, {weekOfHands(), 0, 100});
    EXPECT_EQ(more.resources.size(), p.resources.size() + 1);
    for (std::size_t t = 0; t < p.tasks.size(); ++t)
        EXPECT_GT(more.tasks[t].modes.size(), p.tasks[t].modes.size());
}

// What is called impossible is so: no start of any task makes it fit.
TEST(Misfit, IsProvedOnlyWhereNoStartFits) {
    tests::PlainShape shape;
    shape.tasks = 4;
    shape.resources = 2;
    shape.longest = 3;
    shape.reach = 6;
    int proved = 0;
    for (std::uint64_t seed = 1000; seed < 1150; ++seed) {
        SCOPED_TRACE(seed);
        const Project p = tests::plainProject(seed, shape);
        SearchLimits limits;
        limits.exactUpTo = 0; // by bounds alone
        const auto found = schedule(p, Aim::soonest, limits);
        ASSERT_TRUE(found.ok());
        const auto facts = misfit(p, *found);
        const bool called =
            found->misfitProved || facts.chain > 0 || (facts.tightest && facts.tightest->over() > 0);
        if (!called) continue;
        ++proved;
        EXPECT_GT(tests::bestOfEveryStart(p, Aim::soonest, -8, 22).first, 0);
    }
    EXPECT_GT(proved, 10);
}

} // namespace
} // namespace withy::runup
