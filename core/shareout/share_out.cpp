// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/share_out.h"

#include "core/base/working_lines.h"
#include "core/shareout/pieces.h"

#include <algorithm>
#include <map>
#include <set>

namespace withy::shareout {

namespace {

using PlantSums = std::map<Id<model::Plant>, Stems>;

PlantSums usedOf(const std::vector<LineShare>& lines) {
    PlantSums used;
    for (const auto& line : lines) {
        for (const auto& slot : line.slots) {
            for (const auto& plant : slot.plants)
                used[plant.plant] += plant.stems;
        }
    }
    return used;
}

std::vector<PlantUse> usesOf(const ShareProblem& problem, const std::vector<LineShare>& lines) {
    auto used = usedOf(lines);
    std::vector<PlantUse> uses;
    for (const auto& counted : problem.counted) {
        if (!counted.stems) continue;
        const auto stems = used[counted.plant];
        uses.push_back({counted.plant, *counted.stems, stems, *counted.stems - stems});
    }
    return uses;
}

void notePlants(const ShareProblem& problem, std::vector<ShareNote>& notes) {
    std::set<Id<model::Plant>> wanted, known;
    for (const auto& line : problem.lines) {
        for (const auto& slot : line.slots) {
            for (const auto& choice : slot.choices)
                wanted.insert(choice.plant);
        }
    }
    for (const auto& counted : problem.counted) {
        if (!counted.stems) continue;
        known.insert(counted.plant);
        if (counted.stems->value > 0 && !wanted.contains(counted.plant))
            notes.push_back({ShareFinding::plantInNoSlot, counted.plant, {}, {}, counted.stems->value});
    }
    for (const auto plant : wanted) {
        if (!known.contains(plant)) notes.push_back({ShareFinding::plantNotCounted, plant, {}, {}, 0});
    }
}

void noteLines(const ShareProblem& problem, const std::vector<LineShare>& lines,
               std::vector<ShareNote>& notes) {
    for (const auto& line : problem.lines) {
        if (line.slots.empty()) notes.push_back({ShareFinding::lineWithoutSlots, {}, line.line, {}, 0});
        for (const auto& slot : line.slots) {
            if (slot.choices.empty() && slot.count.value > 0)
                notes.push_back({ShareFinding::slotWithoutPlant, {}, line.line, slot.slot, 0});
        }
    }
    for (const auto& line : lines) {
        if (line.target.value == 0) continue;
        for (const auto& group : line.groups) {
            if (group.total.value == 0)
                notes.push_back({ShareFinding::piecesEmpty, {}, line.line, {}, group.pieces.value});
        }
    }
}

/// Stems of the plant in one piece, over all its slots.
Stems inPiece(const PieceGroup& group, Id<model::Plant> plant) {
    Stems stems;
    for (const auto& portion : group.portions) {
        if (portion.plant == plant) stems += portion.stems;
    }
    return stems;
}

} // namespace

Stems ShareOut::missing() const {
    Stems sum;
    for (const auto& line : lines)
        sum += line.missing;
    return sum;
}

Stems ShareOut::used() const {
    Stems sum;
    for (const auto& plant : plants)
        sum += plant.used;
    return sum;
}

Stems ShareOut::left() const {
    Stems sum;
    for (const auto& plant : plants)
        sum += plant.left;
    return sum;
}

Result<ShareOut, ShareFault> shareOut(const ShareProblem& listed) {
    if (const auto fault = shareFault(listed)) return *fault;
    const auto problem = inOrder(listed);
    auto amounts = amountsOf(problem);
    ShareOut share;
    for (std::size_t l = 0; l < problem.lines.size(); ++l)
        share.lines.push_back(piecesOf(problem.lines[l], amounts.given[l]));
    share.plants = usesOf(problem, share.lines);
    share.objectives = std::move(amounts.objectives);
    share.proofs = std::move(amounts.proofs);
    notePlants(problem, share.notes);
    noteLines(problem, share.lines, share.notes);
    return share;
}

Working workingOf(const ShareOut& share, Id<model::Plant> plant) {
    const auto use = std::find_if(share.plants.begin(), share.plants.end(),
                                  [&](const auto& p) { return p.plant == plant; });
    if (use == share.plants.end()) return {};
    std::map<Stems, Pieces, std::greater<>> byCount;
    for (const auto& line : share.lines) {
        for (const auto& group : line.groups) {
            const auto stems = inPiece(group, plant);
            if (stems.value > 0) byCount[stems] += group.pieces;
        }
    }
    Working working;
    for (const auto& [stems, pieces] : byCount) {
        working.push_back(lineOf(Step::given, "pieces", pieces.value, Unit::pieces));
        working.push_back(lineOf(Step::times, "stems a piece", stems.value, Unit::stems));
        working.push_back(lineOf(Step::result, "part", stems.value * pieces.value, Unit::stems));
    }
    working.push_back(lineOf(Step::plus, "left over", use->left.value, Unit::stems));
    working.push_back(lineOf(Step::result, "counted", use->counted.value, Unit::stems, Basis::counted));
    return working;
}

} // namespace withy::shareout
