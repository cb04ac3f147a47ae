// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/shareout/random_harvests.h"

#include <algorithm>
#include <map>
#include <random>

namespace withy::shareout::tests {

namespace {

class Hat {
public:
    explicit Hat(std::uint32_t seed) : random_(seed) {}

    /// From..to, both possible.
    std::int64_t draw(std::int64_t from, std::int64_t to) {
        return from + static_cast<std::int64_t>(random_() % static_cast<std::uint32_t>(to - from + 1));
    }

    template <class Rows>
    void shuffle(Rows& rows) {
        for (std::size_t i = rows.size(); i > 1; --i)
            std::swap(rows[i - 1], rows[random_() % i]);
    }

private:
    std::mt19937 random_;
};

SlotAsk drawSlot(Hat& hat, std::int64_t id, std::int64_t pieces, const HarvestSize& size) {
    SlotAsk slot;
    slot.slot = Id<model::Slot>(id);
    slot.count = Stems(hat.draw(1, size.count));
    if (hat.draw(0, 2) == 0) slot.mayVaryBy = Stems(hat.draw(0, size.vary));
    if (size.clumps && hat.draw(0, 4) == 0) slot.clump = Stems(hat.draw(2, 4));
    std::vector<std::int64_t> plants;
    for (int p = 1; p <= size.plants; ++p)
        plants.push_back(p);
    hat.shuffle(plants);
    const auto choices = hat.draw(1, std::min(size.choices, size.plants));
    const bool shares = hat.draw(0, 3) == 0;
    for (std::int64_t c = 0; c < choices; ++c) {
        Choice choice{Id<model::Plant>(plants[static_cast<std::size_t>(c)])};
        if (shares) choice.wanted = Stems(pieces * slot.count.value / choices);
        slot.choices.push_back(choice);
    }
    return slot;
}

LineAsk drawLine(Hat& hat, std::int64_t id, const HarvestSize& size) {
    LineAsk line;
    line.line = Id<model::Line>(id);
    line.pieces = Pieces(hat.draw(1, size.pieces));
    line.inHand = hat.draw(0, 3) == 0;
    if (hat.draw(0, 9) == 0) line.turn = static_cast<int>(hat.draw(0, 2));
    std::int64_t least = 0, most = 0;
    for (auto s = hat.draw(1, size.slots); s > 0; --s) {
        line.slots.push_back(drawSlot(hat, id * 100 + s, line.pieces.value, size));
        const auto& slot = line.slots.back();
        least += std::max<std::int64_t>(0, slot.count.value - slot.mayVaryBy.value);
        most += slot.count.value + slot.mayVaryBy.value;
    }
    if (hat.draw(0, 5) == 0) line.total = Stems(hat.draw(least, most));
    return line;
}

} // namespace

ShareProblem randomHarvest(std::uint32_t seed, const HarvestSize& size) {
    Hat hat(seed);
    ShareProblem problem;
    const bool goodYear = hat.draw(0, 3) == 0;
    std::map<Id<model::Plant>, std::int64_t> need;
    for (auto l = hat.draw(1, size.lines); l > 0; --l) {
        problem.lines.push_back(drawLine(hat, l, size));
        const auto& line = problem.lines.back();
        for (const auto& slot : line.slots) {
            for (const auto& choice : slot.choices)
                need[choice.plant] +=
                    line.pieces.value * slot.count.value / static_cast<std::int64_t>(slot.choices.size()) + 1;
        }
    }
    for (int p = 1; p <= size.plants; ++p) {
        Counted counted{Id<model::Plant>(p), std::nullopt};
        if (hat.draw(0, 9) > 0 || p == problem.lines.front().slots.front().choices.front().plant.value)
            counted.stems = Stems(hat.draw(goodYear ? need[counted.plant] : 0,
                                           need[counted.plant] * (goodYear ? 3 : 1) * 3 / 2));
        problem.counted.push_back(counted);
    }
    return problem;
}

ShareProblem shuffledHarvest(ShareProblem problem, std::uint32_t seed) {
    Hat hat(seed);
    hat.shuffle(problem.counted);
    hat.shuffle(problem.lines);
    return problem;
}

} // namespace withy::shareout::tests
