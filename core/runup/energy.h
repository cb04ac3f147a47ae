// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/ready_project.h"

namespace withy::runup {

/// Work that must fall between two times, and the room there is for it, in units times minutes.
struct Crowding {
    Time from = 0;
    Time to = 0;
    Time work = 0;
    Time room = 0;
};

/// Resources to be counted together: each by itself, then those that can stand in for each other.
std::vector<std::vector<int>> poolsOf(const ReadyProject& ready);

/// The least work that the tasks put on a pool of resources between any two ends of their windows:
/// each pushed as far out to either side as its window allows, done the way that asks least of the pool.
class Energy {
public:
    Energy(const ReadyProject& ready, std::vector<int> pool);

    /// A task that can start at `start` and must end by `end`; one without an end counts for nothing.
    void add(int task, Time start, Time end);
    /// Other times worth asking after: the ends of days.
    void addCut(Time at);

    /// Between which times the work exceeds the room most, or comes closest to it; of equals the shortest.
    /// All nought when no task touches the pool.
    [[nodiscard]] Crowding worst() const;
    /// Between two cuts that follow each other by addCut().
    [[nodiscard]] std::vector<Crowding> betweenCuts() const;

private:
    struct Item {
        int task = 0;
        Time start = 0;
        Time end = 0;
    };

    /// One way of doing an item, in minutes worked on its calendar.
    struct Way {
        Time units = 0; ///< on the pool
        Time duration = 0;
        std::vector<Time> worked; ///< up to each cut
        std::vector<Time> before; ///< what can be done by each cut
        std::vector<Time> after;  ///< what can be left until each cut
    };

    struct Figures {
        std::vector<Time> cuts;
        std::vector<Time> room;             ///< up to each cut
        std::vector<std::vector<Way>> ways; ///< by item
    };

    [[nodiscard]] std::vector<Time> cuts() const;
    [[nodiscard]] Figures figures() const;
    [[nodiscard]] std::vector<Way> waysOf(const Item& item, const std::vector<Time>& cuts) const;
    [[nodiscard]] Time workBetween(const Figures& in, std::size_t a, std::size_t b) const;
    [[nodiscard]] std::vector<Time> workedUpTo(const std::vector<Time>& cuts, const Mode& mode) const;
    [[nodiscard]] std::vector<Time> roomUpTo(const std::vector<Time>& cuts) const;
    [[nodiscard]] Time unitsOn(const Mode& mode) const;

    const ReadyProject& ready_;
    std::vector<int> pool_;
    std::vector<Item> items_;
    std::vector<Time> cuts_;
};

} // namespace withy::runup
