// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

namespace withy::cutting {

using Counts = std::vector<std::int64_t>;

/// For every sum from 0 to `room`, the greatest worth of pieces whose lengths come to exactly that sum, each
/// kind at most so many times: the bounded knapsack by dynamic programming over sums (S. Martello, P. Toth,
/// Knapsack Problems, Wiley 1990, chapters 2 and 3), each kind split into parts of 1, 2, 4 ... copies. Whole
/// numbers throughout, so that a bound drawn from it is exact.
class ExactSums {
public:
    static constexpr std::int64_t unreached = -(std::int64_t{1} << 60);

    /// `lengths` from 1; kinds with a count or a worth of nought or less are left out.
    /// Precondition: most worth x count over all kinds stays under 2^58.
    void fill(const std::vector<std::int64_t>& lengths, const Counts& most, const Counts& worth,
              std::int64_t room);

    /// `unreached` where no pieces come to the sum.
    [[nodiscard]] const std::vector<std::int64_t>& best() const { return best_; }

    /// How many of each kind make up best()[sum].
    [[nodiscard]] Counts countsAt(std::int64_t sum) const;

    /// Cells worked through by the last fill.
    [[nodiscard]] std::int64_t cells() const { return cells_; }

    /// Cells that fill() would work through at most.
    static std::int64_t cellsFor(const Counts& most, std::int64_t room);

private:
    struct Part {
        std::size_t kind = 0;
        std::int64_t copies = 0;
        std::int64_t length = 0;
        std::int64_t worth = 0;
    };

    void take(const Part& part, std::size_t row);

    std::vector<std::int64_t> best_;
    std::vector<Part> parts_;
    std::vector<std::uint8_t> taken_; ///< parts x sums
    std::size_t kinds_ = 0;
    std::int64_t reach_ = 0;
    std::int64_t cells_ = 0;
};

} // namespace withy::cutting
