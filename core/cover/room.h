// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cover/allocation.h"

#include <vector>

namespace withy::cover {

/// How much of a trial booking the season can still give while every demand of the allocation keeps as many
/// stems as it has: by augmenting paths in the residual network, the same answer as solving anew with the
/// trial served last, in a fraction of the time.
class Room {
public:
    /// The allocation must outlive it.
    explicit Room(const Allocation& allocation);

    /// Stems for each of the trial's demands, the first served first. The claims of the trial do not matter.
    [[nodiscard]] std::vector<Stems> forTrial(const std::vector<Demand>& trial) const;

    struct Ground;

private:
    std::shared_ptr<const Ground> ground_;
};

} // namespace withy::cover
