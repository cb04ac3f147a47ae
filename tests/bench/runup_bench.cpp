// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/schedule.h"
#include "tests/runup/project_cases.h"
#include "tests/runup/random_projects.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <ctime>

/// The run-up's scheduler: PSPLIB's thirty-job cases (found through WITHY_REFERENCE) with their excess over
/// the optimum, and made-up weeks of one to four bookings. docs/performance.md keeps the figures.
namespace {

using namespace withy::runup;

double processorMs() {
    return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

void thirtyJobs(benchmark::State& state) {
    const auto cases = tests::thirtyJobCases();
    if (!cases) {
        state.SkipWithError("the reference data is not there: WITHY_REFERENCE is not set");
        return;
    }
    SearchLimits limits;
    limits.seed = static_cast<std::uint64_t>(state.range(0));
    double sum = 0, most = 0, worst = 0;
    int proved = 0, optimal = 0;
    for (auto _ : state) {
        sum = most = worst = 0;
        proved = optimal = 0;
        for (const auto& c : *cases) {
            const double before = processorMs();
            const auto found = schedule(c.project, Aim::soonest, limits);
            worst = std::max(worst, processorMs() - before);
            const auto value = static_cast<double>(found->groups[0].last);
            const double excess =
                100 * (value - static_cast<double>(c.optimum)) / static_cast<double>(c.optimum);
            sum += excess;
            most = std::max(most, excess);
            proved += found->proved ? 1 : 0;
            optimal += found->groups[0].last == c.optimum ? 1 : 0;
        }
    }
    const auto count = static_cast<double>(cases->size());
    state.counters["mean_excess_percent"] = sum / count;
    state.counters["most_excess_percent"] = most;
    state.counters["worst_ms"] = worst;
    state.counters["optimal"] = optimal;
    state.counters["proved"] = proved;
    state.counters["cases"] = count;
}

/// A hundred weeks, laid with so many schedules each.
void weeks(benchmark::State& state) {
    SearchLimits limits;
    limits.schedules = static_cast<int>(state.range(0));
    double worst = 0;
    int fits = 0, proved = 0;
    for (auto _ : state) {
        worst = 0;
        fits = proved = 0;
        for (std::uint64_t seed = 1; seed <= 100; ++seed) {
            const Project project = tests::seasonProject(seed);
            const double before = processorMs();
            const auto found = schedule(project, Aim::latest, limits);
            worst = std::max(worst, processorMs() - before);
            fits += found->fits() ? 1 : 0;
            proved += found->proved ? 1 : 0;
        }
    }
    state.counters["worst_ms"] = worst;
    state.counters["fits"] = fits;
    state.counters["proved"] = proved;
}

BENCHMARK(thirtyJobs)->Arg(1)->Arg(2)->Arg(3)->Unit(benchmark::kMillisecond);
BENCHMARK(weeks)->Arg(1000)->Arg(5000)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
