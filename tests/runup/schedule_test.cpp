// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/schedule.h"
#include "tests/runup/every_start.h"
#include "tests/runup/project_cases.h"
#include "tests/runup/random_projects.h"
#include "tests/runup/schedule_checker.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

namespace withy::runup {
namespace {

using tests::complaints;

std::string joined(const std::vector<std::string>& lines) {
    return std::accumulate(lines.begin(), lines.end(), std::string(),
                           [](const std::string& a, const std::string& b) { return a + b + "\n"; });
}

/// The same work from the other end: all done by `end`, begun as late as can be.
Project fromTheEnd(Project p, Time end) {
    for (auto& t : p.tasks) {
        t.release = always;
        t.deadline = end;
    }
    return p;
}

// PSPLIB J30 (Kolisch and Sprecher 1997), proven optima.
void expectNearTheOptimum(Aim aim) {
    const auto cases = tests::thirtyJobCases();
    if (!cases) GTEST_SKIP() << "the reference data is not there: WITHY_REFERENCE is not set";
    ASSERT_FALSE(cases->empty());
    double sum = 0;
    for (const auto& c : *cases) {
        SCOPED_TRACE(c.id);
        const Time end = 1000;
        const Project project = aim == Aim::soonest ? c.project : fromTheEnd(c.project, end);
        const auto found = schedule(project, aim);
        ASSERT_TRUE(found.ok());
        EXPECT_EQ(joined(complaints(project, aim, *found)), "");
        const auto& group = found->groups[0];
        const Time value = aim == Aim::soonest ? group.last : end - group.first;
        const Time bound = aim == Aim::soonest ? group.atBest : end - group.atBest;
        EXPECT_GE(value, c.optimum);
        EXPECT_LE(bound, c.optimum);
        if (found->proved) {
            EXPECT_EQ(value, c.optimum);
        }
        const double excess = 100.0 * static_cast<double>(value - c.optimum) / static_cast<double>(c.optimum);
        EXPECT_LE(excess, 8.0);
        sum += excess;
    }
    EXPECT_LE(sum / static_cast<double>(cases->size()), 1.0);
}

TEST(Schedule, IsNearTheOptimumOfThirtyJobs) {
    expectNearTheOptimum(Aim::soonest);
}

TEST(Schedule, IsNearTheOptimumOfThirtyJobsFromTheEndToo) {
    expectNearTheOptimum(Aim::latest);
}

TEST(Schedule, IsOptimalAroundBusyBlocks) {
    const auto cases = tests::busyBlockCases();
    if (!cases) GTEST_SKIP() << "the reference data is not there: WITHY_REFERENCE is not set";
    ASSERT_FALSE(cases->empty());
    for (const auto& c : *cases) {
        SCOPED_TRACE(c.id);
        const auto found = schedule(c.project, Aim::soonest);
        ASSERT_TRUE(found.ok());
        EXPECT_EQ(joined(complaints(c.project, Aim::soonest, *found)), "");
        EXPECT_EQ(found->groups[0].last, c.optimum);
        EXPECT_LE(found->groups[0].atBest, c.optimum);
        EXPECT_TRUE(found->proved);
        Project free = c.project;
        for (auto& r : free.resources)
            r.changes.clear();
        EXPECT_EQ(schedule(free, Aim::soonest)->groups[0].last, c.optimumWithoutBusy);
    }
}

void expectBestOfEveryStart(Aim aim) {
    tests::PlainShape shape;
    shape.tasks = 4;
    shape.resources = 2;
    shape.longest = 3;
    shape.reach = 8;
    shape.pinPercent = 15;
    int proved = 0;
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        SCOPED_TRACE(seed);
        const Project p = tests::plainProject(seed, shape, aim == Aim::latest);
        const auto found = schedule(p, aim);
        ASSERT_TRUE(found.ok());
        ASSERT_EQ(joined(complaints(p, aim, *found)), "");
        const auto best = tests::bestOfEveryStart(p, aim, -22, 26);
        Time spans = 0;
        Time atBest = 0;
        for (const auto& task : p.tasks) {
            if (&task != &*std::find_if(p.tasks.begin(), p.tasks.end(),
                                        [&](const Task& t) { return t.group == task.group; }))
                continue;
            const auto& group = found->groups[task.group];
            spans += aim == Aim::soonest ? group.last : -group.first;
            atBest += aim == Aim::soonest ? group.atBest : -group.atBest;
        }
        EXPECT_EQ(found->outside, best.first);
        EXPECT_EQ(spans, best.second);
        if (best.first == 0) {
            EXPECT_LE(atBest, best.second);
        }
        if (found->misfitProved) {
            EXPECT_GT(best.first, 0);
        }
        proved += found->proved ? 1 : 0;
    }
    EXPECT_EQ(proved, 150); // few tasks: always told for certain
}

TEST(Schedule, OfFewTasksIsTheBestOfEveryStart) {
    expectBestOfEveryStart(Aim::soonest);
}

TEST(Schedule, OfFewTasksIsTheBestOfEveryStartFromTheEndToo) {
    expectBestOfEveryStart(Aim::latest);
}

SearchLimits quick() {
    SearchLimits limits;
    limits.schedules = 120;
    limits.exactUpTo = 0;
    return limits;
}

TEST(Schedule, OfRandomProjectsPassesTheChecker) {
    for (std::uint64_t seed = 1; seed <= 500; ++seed) {
        SCOPED_TRACE(seed);
        const Aim aim = seed % 2 == 0 ? Aim::latest : Aim::soonest;
        tests::PlainShape shape;
        shape.tasks = 5 + static_cast<int>(seed % 30);
        const Project p = tests::plainProject(seed, shape, aim == Aim::latest);
        const auto found = schedule(p, aim, quick());
        ASSERT_TRUE(found.ok());
        ASSERT_EQ(joined(complaints(p, aim, *found)), "");
        EXPECT_EQ(found->unplaced, 0);
    }
}

TEST(Schedule, OfRandomSeasonsPassesTheChecker) {
    int fits = 0;
    int proved = 0;
    for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
        SCOPED_TRACE(seed);
        const Project p = tests::seasonProject(seed);
        const auto found = schedule(p, Aim::latest, quick());
        ASSERT_TRUE(found.ok()) << static_cast<int>(found.error().trouble);
        ASSERT_EQ(joined(complaints(p, Aim::latest, *found)), "");
        fits += found->fits() ? 1 : 0;
        proved += found->proved ? 1 : 0;
    }
    RecordProperty("fits", fits);
    RecordProperty("proved", proved);
    EXPECT_GT(fits, 100); // both kinds are among them
    EXPECT_LT(fits, 1000);
}

// The checker itself: a task moved by a minute, or done another way, does not go unseen.
TEST(Schedule, SpoiltIsComplainedOf) {
    const Project p = tests::seasonProject(4);
    const auto found = schedule(p, Aim::latest, quick());
    ASSERT_TRUE(found.ok());
    for (std::size_t t = 0; t < p.tasks.size(); ++t) {
        SCOPED_TRACE(t);
        auto spoilt = *found;
        spoilt.tasks[t].end += 1; // longer than it takes
        EXPECT_FALSE(complaints(p, Aim::latest, spoilt).empty());
        spoilt = *found;
        spoilt.tasks[t].start -= 30 * 1440; // when nobody is there
        spoilt.tasks[t].end -= 30 * 1440;
        EXPECT_FALSE(complaints(p, Aim::latest, spoilt).empty());
    }
    auto crowded = *found;
    for (const auto& f : p.follows) { // each on top of what it waits for
        crowded.tasks[f.after].start = crowded.tasks[f.before].start;
        EXPECT_FALSE(complaints(p, Aim::latest, crowded).empty());
        crowded = *found;
    }
}

TEST(Schedule, IsTheSameForTheSameSeed) {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        SCOPED_TRACE(seed);
        const Project p = tests::seasonProject(seed);
        const auto once = schedule(p, Aim::latest, quick());
        const auto again = schedule(p, Aim::latest, quick());
        ASSERT_TRUE(once.ok() && again.ok());
        for (std::size_t t = 0; t < p.tasks.size(); ++t) {
            EXPECT_EQ(once->tasks[t].start, again->tasks[t].start);
            EXPECT_EQ(once->tasks[t].mode, again->tasks[t].mode);
        }
    }
}

TEST(Schedule, StoppedStillGivesOne) {
    std::stop_source source;
    source.request_stop();
    const Project p = tests::seasonProject(3);
    const auto found = schedule(p, Aim::latest, {}, source.get_token());
    ASSERT_TRUE(found.ok());
    EXPECT_TRUE(found->stopped);
    EXPECT_EQ(joined(complaints(p, Aim::latest, *found)), "");
}

} // namespace
} // namespace withy::runup
