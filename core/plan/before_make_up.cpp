// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/working_lines.h"
#include "core/plan/work_times.h"
#include "core/runup/rates.h"

#include <cmath>

namespace withy::plan {

namespace {

using model::RateKind;
using runup::TimeSpan;
using Designs = std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>;

/// What the bench has to get ready.
struct Bench {
    std::int64_t pieces = 0;
    std::int64_t containers = 0;
    std::int64_t ribboned = 0;
};

Bench benchOf(const Index& index, const Designs& designs, const BookingPlan& plan) {
    Bench bench;
    for (const auto& line : plan.lines) {
        bench.pieces += line.pieces.value;
        if (index.season.designs.find(line.design)->container) bench.containers += line.pieces.value;
        if (designs.at(line.design)->ribbon) bench.ribboned += line.pieces.value;
    }
    return bench;
}

Minutes minutesFor(const Index& index, RateKind work, std::int64_t count) {
    const double exact = runup::rateOf(index.season, work).minutes * static_cast<double>(count);
    return Minutes(static_cast<std::int64_t>(std::ceil(exact - 1e-9)));
}

TimedStep benchStep(const Index& index, StepKind kind, RateKind work, std::int64_t count) {
    TimedStep step;
    step.kind = kind;
    step.count = count;
    step.minutes = minutesFor(index, work, count);
    const auto rate = runup::rateOf(index.season, work);
    step.working = {lineOf(Step::given, "count", static_cast<double>(count), Unit::count),
                    runup::rateLine(rate, "minutes each"),
                    lineOf(Step::result, "minutes", static_cast<double>(step.minutes.value), Unit::minutes)};
    return step;
}

TimedStep stripStep(const Index& index, const CutRound& round) {
    const auto rate = runup::rateOf(index.season, RateKind::stripHundredStems);
    TimedStep strip;
    strip.kind = StepKind::strip;
    strip.count = round.stems.value;
    strip.minutes = Minutes(
        static_cast<std::int64_t>(std::ceil(rate.minutes * static_cast<double>(round.stems.value) / 100)));
    strip.working = {lineOf(Step::given, "stems", round.stems.value, Unit::stems),
                     runup::rateLine(rate, "minutes for 100"), lineOf(Step::over, "stems", 100, Unit::stems),
                     lineOf(Step::result, "minutes", strip.minutes.value, Unit::minutes)};
    return strip;
}

/// Cut stems do not wait for the morning: they are stripped and stood in water as soon as they are in, past
/// the working day if need be. Only busy hours keep the hands away.
TimeSpan afterCutting(const WorkTimes& times, LocalTime from, Minutes work) {
    const runup::WorkCalendar hands(0, 1440, times.calendar.busy());
    const LocalTime end = hands.endFor(from, work);
    return {std::max(from, hands.startFor(end, work)), end};
}

void planRound(const Index& index, WorkTimes& times, const CutRound& round, BookingPlan& plan) {
    TimedStep cut;
    cut.kind = StepKind::cut;
    cut.from = round.start;
    cut.to = round.end;
    cut.minutes = round.work;
    cut.working = round.working;
    for (const auto i : round.needs)
        cut.stems.emplace_back(plan.needs[i].plant, plan.needs[i].need.total);
    cut.count = round.stems.value;
    times.calendar.occupy({cut.from, cut.to});
    plan.steps.push_back(cut);

    TimedStep strip = stripStep(index, round);
    const auto span = afterCutting(times, round.end, strip.minutes);
    strip.from = span.from;
    strip.to = span.to;
    times.calendar.occupy({strip.from, strip.to});

    TimedStep drink;
    drink.kind = StepKind::drink;
    drink.from = strip.to;
    drink.to = std::max(strip.to, plan.makeUpStart);
    drink.count = round.stems.value;
    plan.steps.push_back(std::move(strip));
    plan.steps.push_back(std::move(drink));
}

} // namespace

void planBeforeMakeUp(const Index& index, const Designs& designs, WorkTimes& times, BookingPlan& plan) {
    for (const auto& round : plan.rounds)
        planRound(index, times, round, plan);
    const Bench bench = benchOf(index, designs, plan);
    LocalTime end = plan.makeUpStart;
    // All of one kind of step before the next, the last before the make-up placed first.
    auto put = [&](TimedStep step) {
        if (step.count == 0) return;
        step.to = end;
        step.from = times.calendar.startFor(end, step.minutes);
        end = step.from;
        plan.steps.push_back(std::move(step));
    };
    put(benchStep(index, StepKind::sort, RateKind::sortPiece, bench.pieces));
    put(benchStep(index, StepKind::tieRibbon, RateKind::tieRibbon, bench.ribboned));
    TimedStep water = benchStep(index, StepKind::fillWater, RateKind::fillWater, bench.containers);
    water.litres = plan.kit.water.litres;
    put(std::move(water));
    put(benchStep(index, StepKind::washContainers, RateKind::washContainer, bench.containers));
}

} // namespace withy::plan
