// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shareout/ladder.h"

/// The small changes of a problem that ways out are made of.
namespace withy::shareout {

/// Precondition of all: the line, and the slot, are there.
LineAsk& lineIn(ShareProblem& problem, Id<model::Line> line);
SlotAsk& slotIn(ShareProblem& problem, const SlotRef& at);

ShareProblem withPieces(ShareProblem problem, Id<model::Line> line, Pieces pieces);

/// Every piece holds `stems` fewer in the slot, and in all.
ShareProblem withFewer(ShareProblem problem, const SlotRef& at, Stems stems);

/// So many more stems of a plant; one that was not counted has just these.
ShareProblem withStems(ShareProblem problem, Id<model::Plant> plant, Stems stems);

/// The plant may fill these slots too, after all others. Slots that are not there are passed over.
ShareProblem withChoice(ShareProblem problem, Id<model::Plant> plant, const std::vector<SlotRef>& slots);

/// Slots of the line hold what the design says and no more; a line with a total of its own keeps its leave.
ShareProblem asDesigned(ShareProblem problem, Id<model::Line> line);

/// Largest n in low..high with `holds(n)`, given that it holds at low and, once it fails, fails from there
/// on.
template <class Holds>
std::int64_t largestThat(std::int64_t low, std::int64_t high, Holds holds) {
    while (low < high) {
        const auto middle = low + (high - low + 1) / 2;
        if (holds(middle))
            low = middle;
        else
            high = middle - 1;
    }
    return low;
}

} // namespace withy::shareout
