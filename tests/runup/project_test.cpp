// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/schedule.h"

#include <gtest/gtest.h>

namespace withy::runup {
namespace {

Task task(Time minutes, std::vector<Need> needs = {{0, 1}}) {
    Task out;
    out.modes = {{minutes, std::move(needs)}};
    return out;
}

Project two() {
    Project p;
    p.resources = {resourceInHours(1, {{0, 100}, {200, 300}})};
    p.tasks = {task(30), task(40)};
    p.follows = {{0, 1, 5}};
    return p;
}

struct FaultRow {
    const char* name;
    ProjectTrouble trouble;
    void (*spoil)(Project&);
    Aim aim = Aim::soonest;
};

TEST(Project, FaultsAreNamed) {
    using Trouble = ProjectTrouble;
    const FaultRow rows[] = {
        {"times that do not rise", Trouble::badResource,
         [](Project& p) {
             p.resources[0].changes = {{5, 1}, {5, 0}};
         }},
        {"negative units", Trouble::badResource, [](Project& p) { p.resources[0].units = -1; }},
        {"nobody's task", Trouble::noModes, [](Project& p) { p.tasks[1].modes.clear(); }},
        {"negative minutes", Trouble::badMode, [](Project& p) { p.tasks[1].modes[0].duration = -1; }},
        {"a resource that is not there", Trouble::badNeed,
         [](Project& p) { p.tasks[1].modes[0].needs[0].resource = 1; }},
        {"no units", Trouble::badNeed, [](Project& p) { p.tasks[1].modes[0].needs[0].units = 0; }},
        {"a resource twice", Trouble::badNeed,
         [](Project& p) {
             p.tasks[1].modes[0].needs = {{0, 1}, {0, 1}};
         }},
        {"a release out of all reach", Trouble::badTime, [](Project& p) { p.tasks[0].release = never - 1; }},
        {"a negative lag", Trouble::badTime, [](Project& p) { p.follows[0].lag = -1; }},
        {"a pin to another way", Trouble::badPin,
         [](Project& p) {
             p.tasks[0].pin = Pin{0, 1};
         }},
        {"a group out of range", Trouble::badGroup, [](Project& p) { p.tasks[0].group = 2; }},
        {"after a task that is not there", Trouble::badFollows, [](Project& p) { p.follows[0].after = 7; }},
        {"after itself", Trouble::badFollows, [](Project& p) { p.follows[0].after = 0; }},
        {"in a circle", Trouble::circle,
         [](Project& p) {
             p.follows.push_back({1, 0, 0});
         }},
        {"no deadline to count back from", Trouble::noDeadline, [](Project&) {}, Aim::latest},
        {"a helper without hours", Trouble::noHands,
         [](Project& p) { p.resources[0] = resourceInHours(1, {}); }},
        {"busy hours over everything", Trouble::noHands,
         [](Project& p) {
             p.resources[0] = steadyResource(1, {{-1000, 9'000'000, 1}});
             p.resources[0].changes.back().units = 0;
             p.resources[0].units = 0;
         }},
        {"longer than any gap", Trouble::longerThanAnyGap,
         [](Project& p) { p.tasks[1].modes[0].duration = 101; }},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        Project p = two();
        row.spoil(p);
        const auto found = schedule(p, row.aim);
        ASSERT_FALSE(found.ok());
        EXPECT_EQ(static_cast<int>(found.error().trouble), static_cast<int>(row.trouble));
    }
}

TEST(Project, AStepLongerThanAnyGapSaysHowLongTheLongestIs) {
    Project p = two();
    p.tasks[1].modes[0].duration = 130;
    const auto found = schedule(p, Aim::soonest);
    ASSERT_FALSE(found.ok());
    EXPECT_EQ(found.error().task, 1);
    EXPECT_EQ(found.error().longest, 100);
    EXPECT_EQ(found.error().needed, 130);
    p.tasks[1].splittable = true; // laid down over the gap: 35 to 100, then 65 from 200
    const auto split = schedule(p, Aim::soonest);
    ASSERT_TRUE(split.ok());
    EXPECT_EQ(split->tasks[1].start, 35);
    EXPECT_EQ(split->tasks[1].end, 265);
    EXPECT_TRUE(split->proved);
}

TEST(Project, PinsStayAndSayWhatIsWrongWithThem) {
    Project p = two();
    p.tasks.push_back(task(10));
    p.tasks[0].pin = Pin{80, 0};
    p.tasks[1].pin = Pin{105, 0}; // hands are there again from 200
    p.tasks[2].pin = Pin{90, 0};  // while the first goes on
    p.follows = {{1, 0, 0}};
    const auto found = schedule(p, Aim::soonest);
    ASSERT_TRUE(found.ok());
    EXPECT_EQ(found->tasks[0].start, 80);
    EXPECT_EQ(found->tasks[1].start, 105);
    EXPECT_EQ(found->tasks[2].start, 90);
    bool hours = false;
    bool twice = false;
    bool order = false;
    for (const auto& fault : found->pinFaults) {
        hours = hours || (fault.trouble == PinTrouble::notInHours && fault.task == 1 && fault.resource == 0);
        twice = twice || (fault.trouble == PinTrouble::takenTwice && fault.task == 2 && fault.other == 0);
        order = order || (fault.trouble == PinTrouble::outOfOrder && fault.task == 0 && fault.other == 1);
    }
    EXPECT_TRUE(hours);
    EXPECT_TRUE(twice);
    EXPECT_TRUE(order);
}

TEST(Project, ThreeAtOnceAreTooManyForTwo) {
    Project p;
    p.resources = {steadyResource(2)};
    for (int i = 0; i < 3; ++i) {
        p.tasks.push_back(task(10));
        p.tasks.back().pin = Pin{i, 0};
    }
    const auto found = schedule(p, Aim::soonest);
    ASSERT_TRUE(found.ok());
    ASSERT_EQ(found->pinFaults.size(), 1);
    EXPECT_EQ(static_cast<int>(found->pinFaults[0].trouble), static_cast<int>(PinTrouble::takenTwice));
    p.tasks.pop_back();
    EXPECT_TRUE(schedule(p, Aim::soonest)->pinFaults.empty());
}

TEST(Project, OfNothingIsAnEmptySchedule) {
    const auto found = schedule({}, Aim::latest);
    ASSERT_TRUE(found.ok());
    EXPECT_TRUE(found->fits());
    EXPECT_TRUE(found->tasks.empty());
}

} // namespace
} // namespace withy::runup
