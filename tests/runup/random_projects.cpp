// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/runup/random_projects.h"

#include <algorithm>
#include <random>

namespace withy::runup::tests {

namespace {

class Dice {
public:
    explicit Dice(std::uint64_t seed) : random_(seed) {}

    /// From a to b, both included.
    Time between(Time a, Time b) {
        return a + static_cast<Time>(random_() % static_cast<std::uint64_t>(b - a + 1));
    }

    int count(int a, int b) { return static_cast<int>(between(a, b)); }

    bool percent(int p) { return between(1, 100) <= p; }

private:
    std::mt19937_64 random_;
};

Mode plainMode(Dice& dice, const PlainShape& shape, const std::vector<int>& units) {
    Mode mode;
    mode.duration = dice.between(dice.percent(5) ? 0 : 1, shape.longest);
    for (int r = 0; r < shape.resources; ++r)
        if (dice.percent(55) && units[r] > 0) mode.needs.push_back({r, dice.count(1, units[r])});
    return mode;
}

constexpr Time dayLong = 1440;

class SeasonDice {
public:
    explicit SeasonDice(std::uint64_t seed) : dice_(seed) {}

    Project make() {
        hands();
        const int bookings = dice_.count(1, 4);
        for (int b = 0; b < bookings; ++b)
            booking(b);
        return std::move(p_);
    }

private:
    std::vector<Hours> daysOfHours(Time from, Time to, int everyPercent) {
        std::vector<Hours> hours;
        for (Time day = -21; day < 8; ++day)
            if (dice_.percent(everyPercent)) hours.push_back({day * dayLong + from, day * dayLong + to});
        return hours;
    }

    void hands() {
        Resource grower;
        for (Time day = -21; day < 8; ++day) {
            grower.changes.push_back({day * dayLong + 6 * 60, 1});
            if (dice_.percent(50)) { // busy for a while
                const Time from = day * dayLong + dice_.between(7, 16) * 60;
                grower.changes.push_back({from, 0});
                grower.changes.push_back({from + dice_.between(2, 12) * 15, 1});
            }
            grower.changes.push_back({day * dayLong + 20 * 60, 0});
        }
        p_.resources = {grower, steadyResource(2), steadyResource(1)};
        helpers_ = dice_.count(0, 2);
        for (int h = 0; h < helpers_; ++h)
            p_.resources.push_back(
                resourceInHours(1, daysOfHours(dice_.between(7, 10) * 60, dice_.between(12, 18) * 60, 60)));
    }

    /// `helped`: helpers may do it, alone or beside the grower. `also`: bench (1), van (2) or nothing (0).
    int step(int group, Time minutes, bool splittable, bool helped, int also) {
        Task task;
        task.group = group;
        task.splittable = splittable;
        task.release = -21 * dayLong;
        const auto with = [&](std::vector<Need> needs, Time duration) {
            if (also > 0) needs.push_back({also, 1});
            task.modes.push_back({duration, std::move(needs)});
        };
        with({{0, 1}}, minutes);
        for (int h = 0; h < helpers_ && helped; ++h) {
            with({{3 + h, 1}}, minutes * 3 / 2);
            with({{0, 1}, {3 + h, 1}}, (minutes * 3 + 4) / 5);
        }
        p_.tasks.push_back(std::move(task));
        return static_cast<int>(p_.tasks.size()) - 1;
    }

    void follow(int before, int after, Time lag = 0) { p_.follows.push_back({before, after, lag}); }

    void booking(int group) {
        const Time pieces = dice_.between(4, 30);
        const int wash = step(group, pieces, true, true, 1);
        const int ribbon = step(group, pieces, true, true, 1);
        const int fill = step(group, (pieces + 1) / 2, true, true, 1);
        follow(wash, ribbon);
        follow(ribbon, fill);
        const int cut = step(group, pieces * 3, false, helpers_ > 0 && dice_.percent(50), 0);
        const int strip = step(group, pieces * 2, true, true, 0);
        const Time event = dice_.between(4, 6) * dayLong + dice_.between(9, 17) * 60;
        p_.tasks[cut].release = event - dice_.between(30, 60) * 60;
        follow(cut, strip);
        const int pack = step(group, pieces / 2 + 10, false, true, 0);
        for (int line = dice_.count(1, 3); line > 0; --line) {
            const int make = step(group, dice_.between(2, 8) * pieces / 2, true, dice_.percent(70), 1);
            follow(strip, make, dice_.between(2, 8) * 60);
            follow(fill, make);
            follow(make, pack, 60);
            p_.tasks[make].byPiece = true;
        }
        const int drive = step(group, dice_.between(20, 60), false, false, 2);
        const int place = step(group, pieces, false, true, 0);
        follow(pack, drive);
        follow(drive, place);
        p_.tasks[drive].deadline = event - 60;
        p_.tasks[place].deadline = event;
        if (dice_.percent(50)) p_.tasks[drive].pin = Pin{event - 120 - pieces, 0};
        if (dice_.percent(20)) p_.tasks[wash].pin = Pin{dice_.between(0, 3) * dayLong + 9 * 60, 0};
    }

    Dice dice_;
    Project p_;
    int helpers_ = 0;
};

} // namespace

Project plainProject(std::uint64_t seed, const PlainShape& shape, bool latest) {
    Dice dice(seed);
    Project p;
    std::vector<int> units;
    for (int r = 0; r < shape.resources; ++r) {
        units.push_back(dice.count(1, 3));
        std::vector<Busy> busy;
        for (int b = dice.count(0, 4); b > 0; --b) {
            const Time from = dice.between(0, shape.reach);
            busy.push_back(
                {from, std::min(shape.reach, from + dice.between(1, shape.longest)), dice.count(1, 3)});
        }
        p.resources.push_back(steadyResource(units[r], busy));
    }
    const int groups = dice.count(1, 3);
    for (int t = 0; t < shape.tasks; ++t) {
        Task task;
        task.splittable = dice.percent(40);
        task.group = std::min(dice.count(0, groups - 1), shape.tasks - 1);
        for (int m = dice.percent(60) ? 1 : dice.count(1, 3); m > 0; --m)
            task.modes.push_back(plainMode(dice, shape, units));
        const Time length = task.modes.front().duration;
        if (dice.percent(40)) task.release = dice.between(0, shape.reach / 2);
        if (dice.percent(40)) task.deadline = task.release + length + dice.between(0, shape.reach);
        if (latest && task.deadline == never) task.deadline = shape.reach + dice.between(0, shape.reach);
        if (dice.percent(shape.pinPercent))
            task.pin =
                Pin{dice.between(0, shape.reach), dice.count(0, static_cast<int>(task.modes.size()) - 1)};
        for (int before = 0; before < t; ++before)
            if (dice.percent(200 / shape.tasks))
                p.follows.push_back({before, t, dice.percent(30) ? dice.between(1, shape.longest) : 0});
        p.tasks.push_back(std::move(task));
    }
    return p;
}

Project seasonProject(std::uint64_t seed) {
    return SeasonDice(seed).make();
}

} // namespace withy::runup::tests
