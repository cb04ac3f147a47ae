// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/model/sample.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/starting_seasons.h"

#include <gtest/gtest.h>

/// The demo season with a run-up laid by hand, for papers that read one.
namespace withy::ui::tests {

constexpr Id<model::Booking> roofSupper{1};
constexpr Id<model::Helper> wilf{1};

inline plan::Plan demoPlan(const model::Season& season) {
    plan::PlanOptions options;
    options.today = model::sample::day(2027, 9, 6);
    return plan::plan(season, options);
}

/// The bookings' own steps laid side by side: half an hour in hand each, the grower's all but the pieces,
/// which Wilf makes too, and the road, which he drives. Every cut is a round of its own.
inline plan::Plan withRunUp(const model::Season& season, plan::Plan plan) {
    plan.runUp.reset();
    auto runUp = std::make_shared<plan::RunUpPlan>();
    runUp->steps = runUpSteps(season, plan);
    for (auto& step : runUp->steps) {
        using enum plan::StepKind;
        const auto kind = step.key.step;
        step.latest = step.to + Minutes(30);
        if (!needsNobody(step)) step.who.push_back({});
        if (kind == make) step.who.push_back({wilf});
        if (kind == drive) step.who = {{wilf}};
        if (kind != cut) continue;
        plan::RunUpRound round;
        round.from = step.from;
        round.to = step.to;
        round.minutes = step.minutes;
        round.bookings = step.bookings;
        for (const auto& [plant, stems] : step.stems) {
            round.patches.push_back({std::nullopt, plant, stems, Minutes(10), std::nullopt, step.bookings});
            round.stems += stems;
        }
        step.round = runUp->rounds.size();
        runUp->rounds.push_back(std::move(round));
    }
    runUp->people = {{{}, {}, {}}, {{wilf}, {}, {}}};
    plan.runUp = std::move(runUp);
    return plan;
}

/// The demo season and its plan, planned once, for each test to change.
class ChangedDemo : public testing::Test {
protected:
    static const model::Season& demo() {
        static const model::Season season = demoSeason();
        return season;
    }

    static const plan::Plan& demoPlanned() {
        static const plan::Plan planned = demoPlan(demo());
        return planned;
    }

    model::Season season = demo();
    plan::Plan plan = demoPlanned();
};

} // namespace withy::ui::tests
