// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_project.h"
#include "core/runup/time_spans.h"

#include <algorithm>

namespace withy::plan {

namespace {

using model::TableKind;
using runup::PinTrouble;

std::string stepWord(const Draft& step) {
    return std::string(model::wordOf(step.legs.front().key.step));
}

FindingCode codeOf(PinTrouble trouble) {
    switch (trouble) {
    case PinTrouble::notInHours:
        return FindingCode::pinInBusyHours;
    case PinTrouble::takenTwice:
        return FindingCode::pinsAtOneTime;
    case PinTrouble::outOfOrder:
        return FindingCode::pinOutOfOrder;
    case PinTrouble::outsideWindow:
        break;
    }
    return FindingCode::pinOutsideWindow;
}

/// The mark that pins a step, and its leg's word.
const model::StepMark* pinningMark(const RunUpFacts& facts, const Draft& step) {
    for (const auto& leg : step.legs) {
        const auto* mark = facts.markOf(leg.key);
        if (mark && mark->pinned) return mark;
    }
    return nullptr;
}

void findPins(const RunUpProject& project, const RunUpDraft& draft, const RunUpFacts& facts,
              const RunUpPart& part, std::vector<Finding>& findings) {
    for (const auto& fault : part.schedule.pinFaults) {
        const auto t = static_cast<std::size_t>(fault.task);
        const auto* mark = pinningMark(facts, draft.steps[t]);
        if (project.done[t] || !mark) continue;
        std::vector<std::string> subjects{std::string(model::wordOf(mark->step)), mark->pinned->iso()};
        if (fault.other >= 0)
            subjects.push_back(stepWord(draft.steps[static_cast<std::size_t>(fault.other)]));
        findings.push_back(
            {codeOf(fault.trouble), Severity::warning, {TableKind::stepMarks, mark->id.value}, subjects, {}});
    }
}

std::string dropPlace(const RunUpFacts& facts, const Draft& trip) {
    const auto& key = trip.legs.front().key;
    const auto* drop = key.drop ? facts.season.drops.find(*key.drop) : nullptr;
    if (drop) return drop->place;
    const auto* booking = key.booking ? facts.season.bookings.find(*key.booking) : nullptr;
    return booking ? booking->title : std::string();
}

/// Two trips that overlap, one of which cannot be made at its time.
void findClashes(const RunUpDraft& draft, const RunUpFacts& facts, const RunUpPart& part,
                 std::vector<Finding>& findings) {
    const auto isTrip = [&](std::size_t t) { return draft.steps[t].skill == Skill::drive; };
    for (std::size_t t = 0; t < draft.steps.size(); ++t) {
        const auto& placed = part.schedule.tasks[t];
        if (!isTrip(t) || (placed.outside == 0 && placed.mode >= 0)) continue;
        const auto& step = draft.steps[t];
        for (std::size_t other = 0; other < draft.steps.size(); ++other) {
            const auto& o = draft.steps[other];
            if (other == t || !isTrip(other) || *o.deadline <= *step.release || *step.deadline <= *o.release)
                continue;
            const auto drop = step.legs.front().key.drop;
            const model::Ref place =
                drop ? model::Ref{TableKind::drops, drop->value}
                     : model::Ref{TableKind::bookings,
                                  draft.groups[static_cast<std::size_t>(step.group)].value};
            findings.push_back(
                {FindingCode::dropsAtOneTime,
                 Severity::warning,
                 place,
                 {dropPlace(facts, step), dropPlace(facts, o)},
                 {static_cast<double>(placed.mode < 0 ? step.minutes.value : placed.outside)}});
            break;
        }
    }
}

/// The days of a part on which the grower has not one free hour.
void findAllBusy(const RunUpDraft& draft, const RunUpFacts& facts, std::vector<Finding>& findings) {
    for (std::size_t g = 0; g < draft.groups.size(); ++g) {
        const Day drive = facts.plan.bookings.at(draft.groups[g])->driveStart.day;
        const auto hours = facts.hands.hours(0, drive - 3, drive);
        std::vector<runup::TimeSpan> busy;
        for (const auto& b : hours.busy)
            busy.push_back(b.span);
        if (!runup::without(hours.there, std::move(busy)).empty()) continue;
        model::Ref place{TableKind::bookings, draft.groups[g].value};
        for (const auto& b : facts.season.busyHours)
            if (!b.helper) place = {TableKind::busyHours, b.id.value};
        findings.push_back(
            {FindingCode::busyCoversDays, Severity::warning, place, {(drive - 3).iso(), drive.iso()}, {}});
        return; // one such sentence says it
    }
}

/// Buckets that stand in the store at once, at their most.
void findFullStore(const RunUpFacts& facts, const RunUpPlan& plan, std::vector<Finding>& findings) {
    const auto room = facts.season.theSettings().coolBuckets;
    if (!room) return;
    std::map<LocalTime, std::int64_t> change;
    for (std::size_t r = 0; r < plan.rounds.size(); ++r) {
        std::int64_t buckets = 0;
        for (const auto& patch : plan.rounds[r].patches)
            buckets += patch.buckets.value_or(0);
        std::optional<LocalTime> from, to;
        for (const auto& step : plan.steps) {
            if (step.round != r || step.key.step != StepKind::drink) continue;
            from = from ? std::min(*from, step.from) : step.from;
            to = to ? std::max(*to, step.to) : step.to;
        }
        if (!from) continue;
        change[*from] += buckets;
        change[*to] -= buckets;
    }
    std::int64_t now = 0;
    std::map<Day, std::int64_t> most;
    for (const auto& [at, buckets] : change) {
        now += buckets;
        most[at.day] = std::max(most[at.day], now);
    }
    for (const auto& [day, buckets] : most)
        if (buckets > *room)
            findings.push_back({FindingCode::coolStoreFull,
                                Severity::warning,
                                {TableKind::settings, 1},
                                {day.iso()},
                                {static_cast<double>(buckets), static_cast<double>(*room)}});
}

void findClocks(const RunUpFacts& facts, const RunUpPlan& plan, std::vector<Finding>& findings) {
    const auto zone = Zone::fromPosix(facts.season.theSettings().zoneRule);
    if (!zone) return;
    std::set<Day> days;
    for (const auto& step : plan.steps)
        for (Day day = step.from.day; day <= step.to.day && day <= step.from.day + 1; day = day + 1)
            days.insert(day);
    for (const Day day : days) {
        const double hours = zone->hoursBetween({day, 0}, {day + 1, 0});
        if (hours == 24) continue;
        findings.push_back({FindingCode::clocksChange,
                            Severity::note,
                            {TableKind::settings, 1},
                            {day.iso()},
                            {(hours - 24) * 60}});
    }
}

} // namespace

void findInPart(const RunUpProject& project, const RunUpDraft& draft, const RunUpFacts& facts,
                const RunUpPart& part, std::vector<Finding>& findings) {
    findPins(project, draft, facts, part, findings);
    findClashes(draft, facts, part, findings);
    findAllBusy(draft, facts, findings);
}

void findInSeason(const RunUpFacts& facts, const RunUpPlan& plan, std::vector<Finding>& findings) {
    if (!plan.steps.empty())
        for (std::size_t w = 0; w < facts.hands.workers().size(); ++w) {
            if (!facts.hands.neverThere(w)) continue;
            const auto id = *facts.hands.workers()[w].helper;
            findings.push_back({FindingCode::helperWithoutHours,
                                Severity::note,
                                {TableKind::helpers, id.value},
                                {facts.season.helpers.find(id)->name},
                                {}});
        }
    findFullStore(facts, plan, findings);
    findClocks(facts, plan, findings);
}

} // namespace withy::plan
