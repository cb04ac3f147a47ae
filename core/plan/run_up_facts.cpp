// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/cool_hours.h"
#include "core/plan/cover_plan.h"
#include "core/plan/run_up_draft.h"
#include "core/plan/usual_holder.h"
#include "core/runup/time_spans.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

constexpr std::int64_t quarter = 15;

/// The quarter hours from..to (hours of the clock) that are not too warm.
std::vector<runup::TimeSpan> coolQuarters(const garden::GardenDay& day, double from, double to,
                                          double limit) {
    std::vector<runup::TimeSpan> out;
    const auto first = static_cast<std::int64_t>(std::ceil(from * 60));
    const auto last = static_cast<std::int64_t>(std::floor(std::min(to, 24.0) * 60));
    for (auto at = first; at < last; at += quarter) {
        const auto end = std::min(at + quarter, last);
        const auto warm = garden::temperatureAt(day.heat, static_cast<double>(end) / 60);
        if (!warm.ok() || *warm > limit) continue;
        out.push_back({LocalTime{day.day, 0} + Minutes(at), LocalTime{day.day, 0} + Minutes(end)});
    }
    return runup::joined(std::move(out));
}

/// After dawn and towards evening, or by dusk when it is too warm until then.
std::vector<runup::TimeSpan> coolSpans(const garden::GardenDay& day, double limit) {
    const auto cool = garden::coolHours(day);
    if (!cool) return coolQuarters(day, 0, 24, limit); // polar day and night
    auto out = coolQuarters(day, cool->dawnFrom, cool->dawnUntil, limit);
    auto evening = coolQuarters(day, cool->eveningFrom, cool->sunset, limit);
    if (evening.empty()) evening = coolQuarters(day, cool->sunset, cool->dusk, limit);
    out.insert(out.end(), evening.begin(), evening.end());
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
    , bucket_(commonestHolder(s, model::HolderKind::bucket)) {
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
    return good_.emplace(day, coolSpans(days().on(day).garden, season.theSettings().heatLimitCelsius))
        .first->second;
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
