// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/run_up_stretches.h"

#include "core/runup/time_spans.h"

#include <algorithm>

namespace withy::ui {

namespace {

std::int64_t handsOf(const plan::RunUpStep& step) {
    return static_cast<std::int64_t>(std::max<std::size_t>(1, step.who.size()));
}

} // namespace

std::vector<runup::TimeSpan> workedAt(const plan::RunUpStep& step,
                                      const std::vector<const plan::WorkerHours*>& people) {
    std::vector<runup::TimeSpan> open{{step.from, step.to}};
    if (!step.splittable || step.done || people.empty()) return open;
    for (const auto* person : people) {
        std::vector<runup::TimeSpan> busy;
        for (const auto& b : person->busy)
            busy.push_back(b.span);
        open = runup::without(std::move(open), std::move(busy));
    }
    auto there = open;
    for (const auto* person : people)
        there = runup::inBoth(std::move(there), person->there);
    Minutes length;
    for (const auto& span : there)
        length += span.to - span.from;
    return length.value * handsOf(step) >= step.minutes.value ? there : open;
}

std::vector<runup::TimeSpan> workedAt(const plan::RunUpPlan* runUp, const plan::RunUpStep& step) {
    std::vector<const plan::WorkerHours*> people;
    if (runUp)
        for (const auto& person : runUp->people)
            if (std::find(step.who.begin(), step.who.end(), person.worker) != step.who.end())
                people.push_back(&person);
    auto spans = workedAt(step, people);
    if (spans.empty()) spans = {{step.from, step.to}};
    return spans;
}

Minutes minutesEach(const plan::RunUpStep& step) {
    const auto hands = handsOf(step);
    return Minutes((step.minutes.value + hands - 1) / hands);
}

} // namespace withy::ui
