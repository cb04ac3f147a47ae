// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/working_lines.h"
#include "core/plan/plant_facts.h"
#include "core/plan/window_plan.h"
#include "core/runup/rates.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

constexpr int furthestBack = 14; ///< days before the make-up that are worth looking at

struct Group {
    LocalTime earliest;
    LocalTime latest;
    std::vector<std::size_t> needs;
};

std::vector<Group> fewestGroups(const BookingPlan& plan) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < plan.needs.size(); ++i) {
        if (plan.needs[i].window && plan.needs[i].window->window.times) order.push_back(i);
    }
    const auto times = [&](std::size_t i) -> const garden::CutTimes& {
        return *plan.needs[i].window->window.times;
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](auto a, auto b) { return times(a).latest < times(b).latest; });
    std::vector<Group> groups;
    for (const auto i : order) {
        const LocalTime earliest =
            std::max(times(i).earliest, plan.makeUpStart - Minutes(std::int64_t{furthestBack} * 1440));
        if (groups.empty() || groups.back().latest < earliest)
            groups.push_back({earliest, times(i).latest, {}});
        groups.back().earliest = std::max(groups.back().earliest, earliest);
        groups.back().needs.push_back(i);
    }
    return groups;
}

Minutes cuttingMinutes(const Index& index, const BookingPlan& plan, const Group& group, Working& working) {
    const auto rate = runup::rateOf(index.season, model::RateKind::cutHundredStems);
    double minutes = 0;
    for (const auto i : group.needs) {
        const auto& plant = *index.season.plants.find(plan.needs[i].plant);
        const double stems = static_cast<double>(plan.needs[i].need.total.value);
        working.push_back(lineOf(Step::given, "stems", stems, Unit::stems, Basis::computed, {}, plant.name));
        if (plant.cuttingStemsPerHour) {
            const auto rateOfPlant =
                PlantFacts(index, plant).known("cutting_stems_per_hour", *plant.cuttingStemsPerHour);
            minutes += stems * 60 / rateOfPlant.value;
            working.push_back(lineOf(Step::times, "minutes an hour", 60, Unit::minutes));
            working.push_back(
                from(rateOfPlant.from, lineOf(Step::over, "stems an hour", rateOfPlant.value, Unit::stems,
                                              rateOfPlant.basis, rateOfPlant.source, plant.name)));
        } else {
            minutes += stems * rate.minutes / 100;
            working.push_back(runup::rateLine(rate, "minutes for 100"));
            working.push_back(lineOf(Step::over, "stems", 100, Unit::stems));
        }
    }
    const Minutes all(static_cast<std::int64_t>(std::ceil(minutes - 1e-9)));
    working.push_back(lineOf(Step::result, "minutes", all.value, Unit::minutes));
    return all;
}

garden::CutHours hoursOf(const Index& index, PlaceDays& days, const Group& group, Minutes work, bool& known) {
    garden::CutHours in;
    in.earliest = group.earliest;
    in.latest = group.latest;
    in.heatLimit = index.season.theSettings().heatLimitCelsius;
    in.work = std::min(work, Minutes(1440));
    known = true;
    for (Day d = group.earliest.day; d <= group.latest.day; d = d + 1) {
        const auto& day = days.on(d);
        known = known && day.basis.has_value();
        in.days.push_back(day.garden);
    }
    return in;
}

CutRound roundFor(const Index& index, PlaceDays& days, const Group& group, BookingPlan& plan) {
    CutRound round;
    round.work = cuttingMinutes(index, plan, group, round.working);
    round.needs = group.needs;
    for (const auto i : group.needs)
        round.stems += plan.needs[i].need.total;
    bool known = false;
    const auto in = hoursOf(index, days, group, round.work, known);
    const auto hours = garden::goodHours(in, 1);
    round.start = hours.ok() ? hours->front().start : std::max(group.earliest, group.latest - round.work);
    round.end = round.start + round.work;
    if (hours.ok() && known) round.hour = hours->front();
    if (round.hour && round.hour->overLimit)
        plan.findings.push_back({FindingCode::cutInHeat,
                                 Severity::warning,
                                 {model::TableKind::bookings, plan.booking.value},
                                 {},
                                 {round.hour->celsius, in.heatLimit}});
    return round;
}

} // namespace

void planRounds(const Index& index, PlaceDays& days, BookingPlan& plan) {
    const auto groups = fewestGroups(plan);
    for (const auto& group : groups)
        plan.rounds.push_back(roundFor(index, days, group, plan));
    std::stable_sort(plan.rounds.begin(), plan.rounds.end(),
                     [](const CutRound& a, const CutRound& b) { return a.start < b.start; });
    bool unknown = false;
    for (std::size_t r = 0; r < plan.rounds.size(); ++r) {
        unknown = unknown || !plan.rounds[r].hour;
        for (const auto i : plan.rounds[r].needs)
            plan.needs[i].round = static_cast<int>(r);
    }
    if (unknown)
        plan.findings.push_back(
            {FindingCode::noTemperatures, Severity::note, {model::TableKind::settings, 1}, {}, {}});
}

} // namespace withy::plan
