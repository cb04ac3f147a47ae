// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/ladder_steps.h"

#include <algorithm>
#include <cassert>

namespace withy::shareout {

namespace {

SlotAsk* findSlot(ShareProblem& problem, const SlotRef& at) {
    for (auto& line : problem.lines) {
        if (line.line != at.line) continue;
        for (auto& slot : line.slots) {
            if (slot.slot == at.slot) return &slot;
        }
    }
    return nullptr;
}

} // namespace

LineAsk& lineIn(ShareProblem& problem, Id<model::Line> line) {
    const auto at = std::find_if(problem.lines.begin(), problem.lines.end(),
                                 [&](const auto& l) { return l.line == line; });
    assert(at != problem.lines.end());
    return *at;
}

SlotAsk& slotIn(ShareProblem& problem, const SlotRef& at) {
    auto* slot = findSlot(problem, at);
    assert(slot);
    return *slot;
}

ShareProblem withPieces(ShareProblem problem, Id<model::Line> line, Pieces pieces) {
    lineIn(problem, line).pieces = pieces;
    return problem;
}

ShareProblem withFewer(ShareProblem problem, const SlotRef& at, Stems stems) {
    auto& line = lineIn(problem, at.line);
    slotIn(problem, at).count = slotIn(problem, at).count - stems;
    if (line.total) line.total = *line.total - stems;
    return problem;
}

ShareProblem withStems(ShareProblem problem, Id<model::Plant> plant, Stems stems) {
    const auto at = std::find_if(problem.counted.begin(), problem.counted.end(),
                                 [&](const auto& c) { return c.plant == plant; });
    if (at == problem.counted.end())
        problem.counted.push_back({plant, stems});
    else
        at->stems = at->stems.value_or(Stems(0)) + stems;
    return problem;
}

ShareProblem withChoice(ShareProblem problem, Id<model::Plant> plant, const std::vector<SlotRef>& slots) {
    for (const auto& at : slots) {
        auto* slot = findSlot(problem, at);
        if (!slot) continue;
        const bool there = std::any_of(slot->choices.begin(), slot->choices.end(),
                                       [&](const auto& c) { return c.plant == plant; });
        if (!there) slot->choices.push_back({plant});
    }
    return problem;
}

ShareProblem asDesigned(ShareProblem problem, Id<model::Line> id) {
    auto& line = lineIn(problem, id);
    Stems counts;
    for (const auto& slot : line.slots)
        counts += slot.count;
    if (line.total && *line.total != counts) return problem;
    for (auto& slot : line.slots)
        slot.mayVaryBy = Stems(0);
    return problem;
}

} // namespace withy::shareout
