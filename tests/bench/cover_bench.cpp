// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/allocation.h"
#include "core/cover/free_to_promise.h"
#include "core/cover/network.h"
#include "core/cover/shortage.h"
#include "tests/cover/random_covers.h"

#include <benchmark/benchmark.h>
#include <lemon/network_simplex.h>
#include <lemon/smart_graph.h>

/// The allocation of a season of 4,000 bookings against the bare network simplex of LEMON on the same graph,
/// which is built beforehand. docs/performance.md keeps the figures.
namespace {

using namespace withy;
using namespace withy::cover;

const CoverProblem& large() {
    static const CoverProblem problem = tests::largeCover(4000, 1);
    return problem;
}

void bareNetworkSimplex(benchmark::State& state) {
    using lemon::SmartDigraph;
    const auto network = buildNetwork(inOrder(large())).value().flow;
    SmartDigraph graph;
    graph.reserveNode(static_cast<int>(network.supply.size()));
    graph.reserveArc(static_cast<int>(network.arcs.size()));
    SmartDigraph::NodeMap<std::int64_t> supply(graph);
    SmartDigraph::ArcMap<std::int64_t> most(graph), cost(graph);
    for (const auto amount : network.supply)
        supply[graph.addNode()] = amount;
    for (const auto& arc : network.arcs) {
        const auto a = graph.addArc(graph.nodeFromId(arc.from), graph.nodeFromId(arc.to));
        most[a] = arc.most;
        cost[a] = arc.cost;
    }
    for (auto _ : state) {
        lemon::NetworkSimplex<SmartDigraph, std::int64_t, std::int64_t> simplex(graph);
        simplex.supplyMap(supply).upperMap(most).costMap(cost);
        if (simplex.run() != simplex.OPTIMAL) state.SkipWithError("not optimal");
    }
    state.counters["nodes"] = static_cast<double>(network.supply.size());
    state.counters["arcs"] = static_cast<double>(network.arcs.size());
}

/// The same as the core calls it: its arcs sorted by where they leave, which is part of the time.
void sortedNetworkSimplex(benchmark::State& state) {
    const auto network = buildNetwork(inOrder(large())).value().flow;
    for (auto _ : state)
        benchmark::DoNotOptimize(minCostFlow(network));
}

void allocateAll(benchmark::State& state) {
    std::int64_t unmet = 0;
    for (auto _ : state) {
        const auto a = allocate(large());
        if (!a.ok()) return state.SkipWithError("refused");
        unmet = 0;
        for (const auto n : a->objectives.unmet)
            unmet += n;
    }
    state.counters["demands"] = static_cast<double>(large().demands.size());
    state.counters["unmet"] = static_cast<double>(unmet);
}

void nameShortages(benchmark::State& state) {
    const auto a = allocate(large());
    for (auto _ : state)
        benchmark::DoNotOptimize(shortages(*a));
}

void promise(benchmark::State& state) {
    const auto a = allocate(large());
    for (auto _ : state)
        benchmark::DoNotOptimize(freeToPromise(*a));
}

} // namespace

BENCHMARK(bareNetworkSimplex)->Unit(benchmark::kMillisecond);
BENCHMARK(sortedNetworkSimplex)->Unit(benchmark::kMillisecond);
BENCHMARK(allocateAll)->Unit(benchmark::kMillisecond);
BENCHMARK(nameShortages)->Unit(benchmark::kMillisecond);
BENCHMARK(promise)->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();
