// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/fit_plan.h"
#include "core/plan/garden_supply.h"
#include "tests/cover/demo_files.h"

#include <benchmark/benchmark.h>

/// "Can I take it?" on a season of 200 bookings, and the cover plan it is held against. docs/performance.md
/// keeps the figures.
namespace {

using namespace withy;
using namespace withy::plan;

struct Ground {
    model::Season season = withy::tests::demoManyTimes(200);
    Plan plan = plan::plan(season);
    GardenSupply supply = gardenSupply(season, *plan.garden);
    const CoverPlan& cover = *plan.cover;
};

const Ground& ground() {
    static const Ground all;
    return all;
}

FitAsk askFor(int month, int day, std::int64_t pieces) {
    FitAsk ask;
    ask.eventStart = {*Day::fromYmd(2027, month, day), 18 * 60};
    ask.eventEnd = {*Day::fromYmd(2027, month, day), 22 * 60};
    ask.lines = {{ground().season.designs.begin()->id, Pieces(pieces)}};
    return ask;
}

void check(benchmark::State& state, const FitAsk& ask, const FitOptions& options) {
    FitAnswer last;
    for (auto _ : state) {
        auto answer = fitCheck(ground().season, ground().plan, ground().cover, ask, options);
        if (!answer.ok()) return state.SkipWithError("refused");
        last = std::move(answer).value();
    }
    state.counters["answer"] = static_cast<double>(last.fit);
    state.counters["most"] = last.most.empty() ? -1 : static_cast<double>(last.most[0].likely.value);
    state.counters["dates"] = static_cast<double>(last.dates.size());
}

void fitInSeason(benchmark::State& state) {
    check(state, askFor(9, 11, 16), {});
}

void fitOnAFreeDay(benchmark::State& state) {
    check(state, askFor(8, 3, 16), {});
}

void fitOutOfSeason(benchmark::State& state) {
    check(state, askFor(12, 20, 16), {});
}

void fitAnswerAlone(benchmark::State& state) {
    FitOptions options;
    options.most = options.dates = false;
    check(state, askFor(9, 11, 16), options);
}

void coverOfTwoHundred(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(coverPlan(ground().season, ground().plan, ground().supply));
    state.counters["demands"] = static_cast<double>(ground().cover.allocations[0]->problem.demands.size());
}

} // namespace

BENCHMARK(fitInSeason)->Unit(benchmark::kMillisecond);
BENCHMARK(fitOnAFreeDay)->Unit(benchmark::kMillisecond);
BENCHMARK(fitOutOfSeason)->Unit(benchmark::kMillisecond);
BENCHMARK(fitAnswerAlone)->Unit(benchmark::kMillisecond);
BENCHMARK(coverOfTwoHundred)->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();
