// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/ladder.h"

#include <benchmark/benchmark.h>

namespace {

using namespace withy::shareout;

/// 200 pieces in five lines of four slots, 20 plants, each slot with three of them; some stand in clumps.
ShareProblem twoHundredPieces() {
    ShareProblem problem;
    std::int64_t need = 0;
    for (std::int64_t l = 1; l <= 5; ++l) {
        LineAsk line;
        line.line = withy::Id<withy::model::Line>(l);
        line.pieces = withy::Pieces(40);
        line.inHand = l == 5;
        for (std::int64_t s = 0; s < 4; ++s) {
            SlotAsk slot;
            slot.slot = withy::Id<withy::model::Slot>(l * 10 + s);
            slot.count = withy::Stems(2 + s);
            slot.mayVaryBy = withy::Stems(s % 2);
            slot.clump = withy::Stems(s == 3 ? 3 : 0);
            for (std::int64_t c = 0; c < 3; ++c)
                slot.choices.push_back({withy::Id<withy::model::Plant>((l * 4 + s + c * 7) % 20 + 1)});
            need += slot.count.value * line.pieces.value;
            line.slots.push_back(slot);
        }
        problem.lines.push_back(line);
    }
    for (std::int64_t p = 1; p <= 20; ++p)
        problem.counted.push_back(
            {withy::Id<withy::model::Plant>(p), withy::Stems(need / 20 - 25 + p * 37 % 41)});
    return problem;
}

/// One line of 200 pieces whose four slots may each use any of 20 plants.
ShareProblem anyPlantAnywhere() {
    ShareProblem problem = twoHundredPieces();
    auto line = problem.lines.front();
    line.pieces = withy::Pieces(200);
    for (auto& slot : line.slots) {
        slot.choices.clear();
        for (std::int64_t p = 1; p <= 20; ++p)
            slot.choices.push_back({withy::Id<withy::model::Plant>((p * 7 + slot.slot.value) % 20 + 1)});
    }
    problem.lines = {line};
    return problem;
}

void share(benchmark::State& state, const ShareProblem& problem) {
    std::size_t groups = 0;
    for (auto _ : state) {
        const auto out = shareOut(problem);
        groups = 0;
        for (const auto& line : out->lines)
            groups += line.groups.size();
    }
    state.counters["groups"] = static_cast<double>(groups);
    state.counters["missing"] = static_cast<double>(shareOut(problem)->missing().value);
}

void fiveLines(benchmark::State& state) {
    share(state, twoHundredPieces());
}

void oneLine(benchmark::State& state) {
    share(state, anyPlantAnywhere());
}

/// All the ways out of a short tally: a release and an offer for each of the 20 plants.
void wholeLadder(benchmark::State& state) {
    const auto problem = twoHundredPieces();
    LadderInput input;
    for (const auto& c : problem.counted) {
        input.releases.push_back({withy::Id<withy::model::Booking>(1), c.plant, withy::Stems(40)});
        input.offers.push_back({c.plant.value, c.plant, withy::Stems(10), 10, {}, {}, {}});
    }
    std::size_t ways = 0;
    for (auto _ : state)
        ways = ladder(problem, input)->ways.size();
    state.counters["ways"] = static_cast<double>(ways);
}

BENCHMARK(fiveLines)->Unit(benchmark::kMillisecond);
BENCHMARK(oneLine)->Unit(benchmark::kMillisecond);
BENCHMARK(wholeLadder)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
