// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting/exact_sums.h"

#include <cstddef>
#include <cstdint>
#include <stop_token>
#include <utility>
#include <vector>

/// The common ground of both cutting plans: lengths to cut, lengths to cut them from, and what each costs in
/// one plain number. Lengths are whole units of any one size.
namespace withy::cutting {

inline constexpr std::size_t noStock = static_cast<std::size_t>(-1);
inline constexpr std::int64_t unlimited = -1;

struct Stock {
    std::int64_t length = 0;
    std::int64_t count = unlimited;
    double opened = 0;   ///< for each one cut into
    double perCut = 0;   ///< for each unit cut from it
    double perWaste = 0; ///< for each unit left over, when less than `keepFrom` is left
    std::int64_t keepFrom = 0;
};

double costOf(const Stock& stock, std::int64_t cut);

struct CutProblem {
    std::vector<std::int64_t> lengths; ///< one of each kind, longest first
    Counts demand;                     ///< of each kind
    std::vector<Stock> stocks;
    std::vector<double> alone;       ///< cost of one piece of a kind by itself ...
    std::size_t aloneFrom = noStock; ///< ... cut from this, or left missing
    bool wholeCosts = false;         ///< every cost is a whole number: bounds may be rounded up
    double least = 0;                ///< no plan costs less
};

struct CutPattern {
    std::size_t stock = noStock;
    std::vector<std::pair<std::size_t, std::int64_t>> cuts; ///< kind, how many
    std::int64_t cut = 0;                                   ///< their lengths together
    double cost = 0;
};

CutPattern patternOf(const CutProblem& problem, std::size_t stock, const Counts& counts);

/// What is still to do, and what is still there.
struct CutState {
    Counts demand;
    Counts stock; ///< `unlimited` stays as it is
};

CutState stateOf(const CutProblem& problem);

/// How many times the pattern can be used, at most.
std::int64_t timesPossible(const CutPattern& pattern, const CutState& state);
void use(const CutPattern& pattern, std::int64_t times, CutState& state);
bool nothingLeft(const CutState& state);
std::int64_t lengthLeft(const CutProblem& problem, const CutState& state);

/// Work counted in steps (multiplications and table cells, not seconds), so that a plan cut short is the same
/// on every machine.
class Effort {
public:
    Effort(std::int64_t steps, std::stop_token stop) : left_(steps), stop_(std::move(stop)) {}

    void spend(std::int64_t steps) { left_ -= steps, spent_ += steps; }

    [[nodiscard]] bool over() const { return left_ <= 0 || stop_.stop_requested(); }

    [[nodiscard]] bool stopped() const { return stop_.stop_requested(); }

    [[nodiscard]] std::int64_t spent() const { return spent_; }

    [[nodiscard]] std::int64_t left() const { return left_; }

private:
    std::int64_t left_;
    std::int64_t spent_ = 0;
    std::stop_token stop_;
};

} // namespace withy::cutting
