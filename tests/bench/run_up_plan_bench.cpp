// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_plan.h"
#include "tests/plan/run_up_season.h"

#include <benchmark/benchmark.h>

#include <ctime>

/// Issue 6, "must show" 4: a week with three bookings and two helpers, one drop moved to and fro.
/// docs/performance.md keeps the figures.
namespace {

using namespace withy;
using namespace withy::plan;

model::Season withDropAt(const model::Season& season, std::int64_t minutesEarlier) {
    auto drop = *season.drops.find(Id<model::Drop>(2));
    drop.time = drop.time - Minutes(minutesEarlier);
    return tests::changed(season, model::Edit("bench").put(drop));
}

void moveOneDrop(benchmark::State& state) {
    const auto season = tests::threeBookings();
    auto was = season;
    auto before = plan::plan(was);
    std::int64_t minutes = 0;
    double worst = 0;
    for (auto _ : state) {
        state.PauseTiming();
        minutes = (minutes + 5) % 180;
        const auto next = withDropAt(season, minutes);
        state.ResumeTiming();
        const double start = 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
        auto made = replan(next, {}, was, before, {});
        worst = std::max(worst, 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC - start);
        state.PauseTiming();
        before = std::move(*made);
        was = next;
        state.ResumeTiming();
    }
    state.counters["worst_processor_ms"] = worst;
}

/// The run-up alone, nothing kept.
void layTheWeek(benchmark::State& state) {
    const auto season = tests::threeBookings();
    const auto plan = plan::plan(season);
    for (auto _ : state)
        benchmark::DoNotOptimize(runUpPlan(season, plan));
}

BENCHMARK(moveOneDrop)->Unit(benchmark::kMillisecond);
BENCHMARK(layTheWeek)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
