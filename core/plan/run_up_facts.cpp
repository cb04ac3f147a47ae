// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/good_hours.h"
#include "core/plan/cover_plan.h"
#include "core/plan/run_up_draft.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

constexpr std::int64_t quarter = 15;

const model::Holder* usualBucket(const model::Season& season) {
    const model::Holder* usual = nullptr; // the commonest sets the measure, as in the kit
    for (const auto& h : season.holders) {
        if (h.kind != model::HolderKind::bucket) continue;
        if (!usual || h.owned.value_or(0) > usual->owned.value_or(0)) usual = &h;
    }
    return usual;
}

/// Starts on the quarter hours joined to stretches.
std::vector<runup::TimeSpan> joined(const std::vector<garden::GoodHour>& hours) {
    std::vector<LocalTime> starts;
    for (const auto& h : hours)
        if (h.why != garden::GoodHourWhy::coolestThereIs && !h.overLimit) starts.push_back(h.start);
    std::sort(starts.begin(), starts.end());
    std::vector<runup::TimeSpan> out;
    for (const auto start : starts) {
        const LocalTime end = start + Minutes(quarter);
        if (!out.empty() && start <= out.back().to)
            out.back().to = std::max(out.back().to, end);
        else
            out.push_back({start, end});
    }
    return out;
}

} // namespace

RunUpFacts::RunUpFacts(const model::Season& s, const Plan& p, const RunUpOptions& o)
    : season(s)
    , plan(p)
    , options(o)
    , index(s)
    , hands(s)
    , days_(p.days ? p.days : std::make_shared<PlaceDays>(s))
    , bucket_(usualBucket(s)) {
    for (const auto& m : s.stepMarks)
        marks_.emplace(StepKey{m.step, m.booking, m.line, m.drop, m.day, m.number}, &m);
    if (!p.cover) return;
    for (const auto& allocation : p.cover->allocations) {
        if (!allocation) continue;
        for (const auto& patch : allocation->problem.patches)
            hold_.emplace(patch.patch, patch.holdDays);
    }
}

const model::StepMark* RunUpFacts::markOf(const StepKey& key) const {
    const auto found = marks_.find(key);
    return found == marks_.end() ? nullptr : found->second;
}

const std::vector<runup::TimeSpan>& RunUpFacts::goodHours(Day day) {
    if (const auto found = good_.find(day); found != good_.end()) return found->second;
    garden::CutHours in;
    in.earliest = {day, 0};
    in.latest = {day, 1439};
    in.heatLimit = season.theSettings().heatLimitCelsius;
    in.work = Minutes(quarter);
    in.days = {days().on(day).garden};
    const auto hours = garden::goodHours(in, 96);
    return good_.emplace(day, hours.ok() ? joined(*hours) : std::vector<runup::TimeSpan>{}).first->second;
}

std::optional<double> RunUpFacts::warmest(LocalTime from, LocalTime to) {
    std::optional<double> most;
    for (LocalTime at = from; at <= to; at = at + Minutes(quarter)) {
        const auto& day = days().on(at.day);
        if (!day.basis) return std::nullopt;
        const auto celsius = garden::temperatureAt(day.garden.heat, at.minute / 60.0);
        if (celsius.ok()) most = std::max(most.value_or(*celsius), *celsius);
    }
    return most;
}

int RunUpFacts::holdDays(Id<model::Patch> patch) const {
    const auto found = hold_.find(patch);
    return found == hold_.end() ? 0 : found->second;
}

std::int64_t RunUpFacts::stemsPerBucket(std::optional<Millimetres> length) const {
    if (!bucket_) return 0;
    std::optional<Stems> room;
    switch (shed::lengthClass(length.value_or(Millimetres(500)))) {
    case shed::LengthClass::shortStems:
        room = bucket_->shortStems;
        break;
    case shed::LengthClass::middleStems:
        room = bucket_->middleStems;
        break;
    case shed::LengthClass::longStems:
        room = bucket_->longStems;
        break;
    }
    return room ? room->value : 0;
}

} // namespace withy::plan
