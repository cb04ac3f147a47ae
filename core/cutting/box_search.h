// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting/dive.h"
#include "core/cutting/ribbon_box.h"

#include <optional>

namespace withy::cutting {

/// One reel or end.
struct BoxLength {
    bool reel = false;
    std::int64_t length = 0;
};

/// Kinds of pieces with their number, and reels and ends one by one: ends first, each shortest first.
struct BoxTask {
    std::vector<std::int64_t> lengths; ///< longest first
    Counts demand;
    std::vector<BoxLength> stock;
    std::int64_t keepFrom = 0;
};

/// How many of each kind are cut from each of BoxTask::stock.
struct BoxPlan {
    std::vector<Counts> cuts;
    BoxCost cost;
};

/// What a plan comes to.
BoxCost costOf(const BoxTask& task, const std::vector<Counts>& cuts);

/// Less than this is not possible: plain sums.
BoxCost leastCost(const BoxTask& task);

/// The best plan of all by dynamic programming over what is left to cut, reel after reel; what cannot come to
/// a better plan than `known` is dropped. Nothing when the effort does not suffice.
std::optional<BoxPlan> searchAll(const BoxTask& task, const BoxPlan& known, Effort& effort);

} // namespace withy::cutting
