// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shareout/share_out.h"

#include <string>
#include <vector>

/// What must hold of a share-out, checked piece by piece from the problem alone.
namespace withy::shareout::tests {

/// Empty when everything holds: whole pieces, the problem's limits, evenness to within one, no stem used
/// twice, what is left over, the objectives, and each turn's proof that no more can be used.
std::vector<std::string> wrongWith(const ShareProblem& problem, const ShareOut& share);

/// Stems below the design, slot by slot, whatever stands in.
Stems belowDesign(const ShareOut& share);

/// Short ways to write a problem.
Id<model::Plant> plant(std::int64_t id);
Id<model::Line> line(std::int64_t id);
Id<model::Slot> slot(std::int64_t id);
Counted counted(std::int64_t plant, std::int64_t stems);
SlotAsk slotOf(std::int64_t id, std::int64_t count, const std::vector<std::int64_t>& plants);
LineAsk lineOf(std::int64_t id, std::int64_t pieces, std::vector<SlotAsk> slots);

/// "16 x 3 0 2": pieces, then stems of each of these plants in one of them; one line per group.
std::vector<std::string> groupsAsText(const LineShare& line, const std::vector<std::int64_t>& plants);

} // namespace withy::shareout::tests
