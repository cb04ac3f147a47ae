// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/one_length.h"
#include "core/cutting/ribbon_box.h"
#include "tests/cutting/cutting_reference.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>

/// The published cutting instances class by class (found through WITHY_REFERENCE), and a full ribbon box.
/// The counters say how many reach the optimum, how many prove it, the slowest in milliseconds, and the most
/// rolls above the optimum. docs/performance.md keeps the figures.
namespace {

using namespace withy;
using namespace withy::cutting;

void publishedClass(benchmark::State& state, const char* family) {
    const auto all = tests::cuttingInstances();
    if (!all) return state.SkipWithError("WITHY_REFERENCE is not set");
    double instances = 0, reached = 0, proved = 0, slowest = 0, above = 0;
    for (auto _ : state) {
        instances = reached = proved = slowest = above = 0;
        for (const auto& instance : *all) {
            if (instance.family != family) continue;
            const auto begin = std::chrono::steady_clock::now();
            const auto plan = cutFromRolls(instance.roll, instance.pieces);
            const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
            if (!plan.ok()) return state.SkipWithError("refused");
            ++instances;
            reached += plan->rolls == instance.optimum ? 1 : 0;
            proved += plan->rolls == instance.optimum && plan->proved ? 1 : 0;
            slowest = std::max(slowest, took.count());
            above = std::max(above, static_cast<double>(plan->rolls - instance.optimum));
        }
    }
    state.counters["instances"] = instances;
    state.counters["reached"] = reached;
    state.counters["proved"] = proved;
    state.counters["slowest_ms"] = slowest;
    state.counters["most_above"] = above;
}

/// Five lengths to cut, forty pieces, ten ends and two reels of 10 m.
void fullBox(benchmark::State& state) {
    RibbonBox box;
    for (std::int64_t k = 0; k < 5; ++k)
        box.pieces.push_back({Millimetres(420 + 135 * k), 8});
    for (std::int64_t s = 0; s < 10; ++s)
        box.onHand.push_back({RibbonKind::end, Millimetres(500 + 173 * s), 1, {}});
    box.onHand.push_back({RibbonKind::reel, Millimetres(10'000), 2, {}});
    bool proved = false;
    for (auto _ : state) {
        const auto plan = cutFromBox(box);
        if (!plan.ok()) return state.SkipWithError("refused");
        proved = plan->proved;
    }
    state.counters["proved"] = proved ? 1 : 0;
}

} // namespace

BENCHMARK_CAPTURE(publishedClass, u120, "u120")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(publishedClass, u250, "u250")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(publishedClass, t60, "t60")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(publishedClass, t120, "t120")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(publishedClass, scholl1, "scholl1")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(publishedClass, scholl2, "scholl2")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(publishedClass, generated, "generated")->Unit(benchmark::kMillisecond);
BENCHMARK(fullBox)->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();
