// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/problem.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace withy::shareout {

namespace {

using Fault = std::optional<ShareFault>;

Fault outsideOf(const char* field, std::int64_t id, std::int64_t value, std::int64_t most) {
    if (value < 0) return ShareFault{ShareTrouble::negative, field, id, value, 0, most};
    if (value > most) return ShareFault{ShareTrouble::tooLarge, field, id, value, 0, most};
    return std::nullopt;
}

Fault twice(const char* field, std::int64_t id) {
    return ShareFault{ShareTrouble::repeated, field, id, 0, 0, 0};
}

Fault countedFault(const ShareProblem& problem) {
    std::set<Id<model::Plant>> seen;
    for (const auto& counted : problem.counted) {
        if (!seen.insert(counted.plant).second) return twice("counted", counted.plant.value);
        if (!counted.stems) continue;
        if (auto f = outsideOf("counted", counted.plant.value, counted.stems->value, mostCounted)) return f;
    }
    return std::nullopt;
}

Fault slotFault(const SlotAsk& slot) {
    const auto id = slot.slot.value;
    if (auto f = outsideOf("count", id, slot.count.value, mostInSlot)) return f;
    if (auto f = outsideOf("vary", id, slot.mayVaryBy.value, mostInSlot)) return f;
    if (auto f = outsideOf("clump", id, slot.clump.value, mostInSlot)) return f;
    std::set<Id<model::Plant>> seen;
    for (const auto& choice : slot.choices) {
        if (!seen.insert(choice.plant).second) return twice("choice", choice.plant.value);
        if (!choice.wanted) continue;
        if (auto f = outsideOf("wanted", id, choice.wanted->value, mostCounted)) return f;
    }
    return std::nullopt;
}

Fault totalFault(const LineAsk& line) {
    if (!line.total) return std::nullopt;
    std::int64_t least = 0, most = 0;
    for (const auto& slot : line.slots) {
        least += std::max<std::int64_t>(0, slot.count.value - slot.mayVaryBy.value);
        most += slot.count.value + slot.mayVaryBy.value;
    }
    const auto total = line.total->value;
    if (total >= least && total <= most) return std::nullopt;
    return ShareFault{ShareTrouble::totalOutOfReach, "total", line.line.value, total, least, most};
}

Fault lineFault(const LineAsk& line) {
    if (auto f = outsideOf("pieces", line.line.value, line.pieces.value, mostPiecesShared)) return f;
    std::set<Id<model::Slot>> seen;
    for (const auto& slot : line.slots) {
        if (!seen.insert(slot.slot).second) return twice("slot", slot.slot.value);
        if (auto f = slotFault(slot)) return f;
    }
    return totalFault(line);
}

/// No line wants a plant that has a figure, though some line wants one.
bool nothingCounted(const ShareProblem& problem) {
    std::set<Id<model::Plant>> known;
    for (const auto& counted : problem.counted) {
        if (counted.stems) known.insert(counted.plant);
    }
    for (const auto& line : problem.lines) {
        for (const auto& slot : line.slots) {
            for (const auto& choice : slot.choices) {
                if (known.contains(choice.plant)) return false;
            }
        }
    }
    return true;
}

} // namespace

Stems LineAsk::target() const {
    if (total) return *total;
    Stems sum;
    for (const auto& slot : slots)
        sum += slot.count;
    return sum;
}

std::optional<ShareFault> shareFault(const ShareProblem& problem) {
    if (auto f = countedFault(problem)) return f;
    std::set<Id<model::Line>> seen;
    for (const auto& line : problem.lines) {
        if (!seen.insert(line.line).second) return twice("line", line.line.value);
        if (auto f = lineFault(line)) return f;
    }
    if (nothingCounted(problem)) return ShareFault{ShareTrouble::noTally, "counted", 0, 0, 0, 0};
    return std::nullopt;
}

ShareProblem inOrder(ShareProblem problem) {
    std::sort(problem.counted.begin(), problem.counted.end(),
              [](const auto& a, const auto& b) { return a.plant < b.plant; });
    std::sort(problem.lines.begin(), problem.lines.end(),
              [](const auto& a, const auto& b) { return a.line < b.line; });
    return problem;
}

} // namespace withy::shareout
