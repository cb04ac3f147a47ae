// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/serial_schedule.h"

#include <cstdint>
#include <random>
#include <stop_token>

/// A seeded search over task lists: a first crop by sampled priorities (latest start first, as Kolisch 1996
/// found best among single rules), then lists bred from pairs of good ones with two-point crossover
/// (Hartmann 1998, "A competitive genetic algorithm for resource-constrained project scheduling"), each
/// improved forwards and backwards. The same seed gives the same schedule, on any machine.
namespace withy::runup {

struct SearchLimits {
    int schedules = 5000;   ///< laid at most, those of the improvement included
    int nodes = 200'000;    ///< of the exact search
    int exactUpTo = 10;     ///< tasks not pinned, for the exact search to be tried
    std::uint64_t seed = 1; ///< of the sampling
};

class ListSearch {
public:
    ListSearch(const ReadyProject& forward, const ReadyProject& backward, const SearchLimits& limits);

    /// The first schedules, by the plain rules and by sampling. Stops early at `enough`.
    void begin(const Score& enough, const std::stop_token& stop);
    /// Breeds on until `enough` is reached or the limit is.
    void breed(const Score& enough, const std::stop_token& stop);

    [[nodiscard]] const Laid& best() const { return best_; }

    [[nodiscard]] int tried() const { return tried_; }

private:
    struct Breed {
        std::vector<int> list;
        std::vector<int> modes;
        Score score;
    };

    [[nodiscard]] std::size_t below(std::size_t n) { return static_cast<std::size_t>(random_() % n); }

    [[nodiscard]] bool going(const Score& enough, const std::stop_token& stop) const;
    void sow(const Score& enough, const std::stop_token& stop);
    void evaluate(Breed& breed);
    void add(Breed breed);
    [[nodiscard]] std::vector<int> sampledList(const std::vector<Time>& urgency, int sharpness);
    [[nodiscard]] const Breed& parent();
    [[nodiscard]] Breed child(const Breed& a, const Breed& b);
    void mutate(Breed& breed);
    [[nodiscard]] std::vector<Time> latestStarts() const;
    [[nodiscard]] bool follows(int before, int after) const;

    const ReadyProject& ready_;
    const ReadyProject& backward_;
    SearchLimits limits_;
    ForwardBackward layer_;
    std::mt19937_64 random_;
    std::vector<Time> urgency_; ///< latest start of each task
    std::vector<Breed> crop_;   ///< best first
    Laid best_;
    int tried_ = 0;
    bool severalWays_ = false;
};

} // namespace withy::runup
