// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/fit_parts.h"

#include "core/plan/shed/kit_through_time.h"

#include <algorithm>
#include <limits>

namespace withy::plan {

namespace {

using cover::Claim;

bool isFirm(const Beside& other) {
    return other.claim <= Claim::held;
}

bool meet(Day aFrom, Day aTo, Day bFrom, Day bTo) {
    return aFrom <= bTo && bFrom <= aTo;
}

Day firstCut(const BookingPlan& plan) {
    return plan.rounds.empty() ? plan.makeUpStart.day
                               : std::min(plan.rounds.front().start.day, plan.makeUpStart.day);
}

void count(FitKit& kit, const Beside& other, std::int64_t n) {
    if (n == 0) return;
    (isFirm(other) ? kit.promised : kit.asked) += n;
    kit.others.push_back(other.booking);
}

void judge(FitKit& kit) {
    if (kit.owned && kit.needed + kit.promised + kit.asked <= *kit.owned)
        kit.fit = Fit::yes;
    else
        kit.fit = !kit.owned || kit.needed + kit.promised <= *kit.owned ? Fit::tight : Fit::no;
}

std::int64_t containersOf(const BookingPlan& plan, Id<model::Container> id) {
    for (const auto& need : plan.kit.containers) {
        if (need.container == id) return shed::wholeUnits(need.total.needed);
    }
    return 0;
}

const KitItem* shelfItem(const ShedPlan* shed, model::Ref ref) {
    if (!shed) return nullptr;
    for (const auto& item : shed->kit)
        if (item.item == ref) return &item;
    return nullptr;
}

/// Who claims it, as it counts here; blank: a hold that has lapsed.
std::optional<bool> firmHere(const KitHold& hold, const std::vector<Beside>& beside) {
    for (const auto& other : beside)
        if (other.booking == hold.booking) return isFirm(other);
    return hold.firm ? std::optional(true) : std::nullopt;
}

/// The day of the span on which most is away; what is late is taken to be home by then.
void countAway(FitKit& kit, const KitItem& item, Day from, Day to, const std::vector<Beside>& beside) {
    std::vector<Day> days{from};
    for (const auto& hold : item.holds)
        if (from < hold.from && hold.from <= to) days.push_back(hold.from);
    kit.owned = item.owned;
    if (kit.owned) *kit.owned = std::max<std::int64_t>(0, *kit.owned - item.broken);
    for (const Day day : days) {
        std::int64_t firm = 0, all = 0;
        for (const auto& hold : item.holds) {
            const auto away = hold.late ? 0 : std::max<std::int64_t>(0, awayOn(hold, day) - hold.broken);
            const auto sure = firmHere(hold, beside);
            if (!sure) continue;
            all += away;
            firm += *sure ? away : 0;
            const bool open = away > hold.lost && hold.from <= to;
            if (open && std::find(kit.others.begin(), kit.others.end(), hold.booking) == kit.others.end())
                kit.others.push_back(hold.booking);
        }
        if (all < kit.promised + kit.asked) continue;
        kit.promised = firm;
        kit.asked = all - firm;
    }
}

FitKit containerFit(const model::Container& container, std::int64_t needed, const BookingPlan& trial,
                    const model::Booking& booking, const std::vector<Beside>& beside, const ShedPlan* shed) {
    FitKit kit;
    kit.kind = FitKitKind::container;
    kit.container = container.id;
    kit.needed = needed;
    kit.owned = container.owned;
    if (const auto* item = shelfItem(shed, {model::TableKind::containers, container.id.value})) {
        const Day home = booking.eventEnd.day + usualDaysAway; // nobody has said who clears
        const Day end{std::numeric_limits<std::int32_t>::max() / 2};
        countAway(kit, *item, trial.makeUpStart.day, container.returnable ? home : end, beside);
        judge(kit);
        return kit;
    }
    for (const auto& other : beside) {
        const bool together = container.returnable ? meet(trial.makeUpStart.day, booking.eventEnd.day,
                                                          other.kitFrom, other.kitTo)
                                                   : !other.made;
        if (together) count(kit, other, containersOf(*other.plan, container.id));
    }
    judge(kit);
    return kit;
}

/// Buckets of the trial and of the others between cut and make-up: as things, and as room in the cool store.
std::optional<FitKit> bucketFit(FitKitKind kind, std::optional<std::int64_t> owned, const BookingPlan& trial,
                                const std::vector<Beside>& beside) {
    if (!trial.kit.buckets || trial.kit.buckets->total == 0) return std::nullopt;
    FitKit kit;
    kit.kind = kind;
    kit.needed = trial.kit.buckets->total;
    kit.owned = owned;
    for (const auto& other : beside) {
        if (other.plan->kit.buckets &&
            meet(firstCut(trial), trial.makeUpEnd.day, other.bucketsFrom, other.bucketsTo))
            count(kit, other, other.plan->kit.buckets->total);
    }
    judge(kit);
    return kit;
}

/// Stretches of minutes since the epoch.
using Stretch = std::pair<std::int64_t, std::int64_t>;
using Stretches = std::vector<Stretch>;

Stretch stretchOf(LocalTime from, LocalTime to) {
    return {from.minutesSinceEpoch(), to.minutesSinceEpoch()};
}

/// Sorted, and none touching another.
Stretches merged(Stretches all) {
    std::sort(all.begin(), all.end());
    Stretches out;
    for (const auto& s : all) {
        if (s.second <= s.first) continue;
        if (!out.empty() && s.first <= out.back().second)
            out.back().second = std::max(out.back().second, s.second);
        else
            out.push_back(s);
    }
    return out;
}

/// Minutes of `open` that no stretch of `taken` covers; both merged.
std::int64_t minutesLeft(const Stretches& open, const Stretches& taken) {
    std::int64_t left = 0;
    for (const auto& [from, to] : open) {
        left += to - from;
        for (const auto& t : taken)
            left -= std::max<std::int64_t>(0, std::min(to, t.second) - std::max(from, t.first));
    }
    return left;
}

bool isHandWork(StepKind kind) {
    switch (kind) {
    case StepKind::cut:
    case StepKind::strip:
    case StepKind::washContainers:
    case StepKind::cutRibbon:
    case StepKind::fillWater:
    case StepKind::tieRibbon:
    case StepKind::sort:
    case StepKind::make:
        return true;
    case StepKind::drink:
    case StepKind::restCool:
    case StepKind::checkWater:
    case StepKind::pack:
    case StepKind::load:
    case StepKind::drive:
    case StepKind::place:
    case StepKind::handOver:
    case StepKind::driveBack:
    case StepKind::collect:
    case StepKind::washBack:
        return false;
    }
    return false;
}

/// The planner gives a step all free hours between its two times.
Stretch workOf(const TimedStep& step) {
    return stretchOf(step.from, step.to);
}

/// Working days, and the trial's own cutting and stripping outside them, between the two times.
Stretches openHours(const model::Settings& s, const BookingPlan& trial, LocalTime from, LocalTime to) {
    Stretches open;
    for (Day d = from.day; d <= to.day; d = d + 1) {
        const LocalTime midnight{d, 0};
        open.push_back(stretchOf(std::max(from, midnight + Minutes(s.workFrom)),
                                 std::min(to, midnight + Minutes(s.workTo))));
    }
    for (const auto& step : trial.steps) {
        if (step.kind == StepKind::cut || step.kind == StepKind::strip) open.push_back(workOf(step));
    }
    return merged(std::move(open));
}

} // namespace

std::vector<Beside> allBeside(const model::Season& season, const Plan& plan, std::optional<Day> today) {
    std::vector<Beside> all;
    for (const auto& b : season.bookings) {
        const auto claim = claimOf(b, today);
        const auto found = plan.bookings.find(b.id);
        if (!claim || found == plan.bookings.end()) continue;
        Beside other;
        other.booking = b.id;
        other.claim = *claim;
        other.made = b.standing == model::Standing::made || b.standing == model::Standing::delivered ||
                     b.standing == model::Standing::settled;
        other.plan = found->second;
        other.kitFrom = other.plan->makeUpStart.day;
        other.kitTo = b.eventEnd.day;
        other.bucketsFrom = firstCut(*other.plan);
        other.bucketsTo = other.plan->makeUpEnd.day;
        all.push_back(std::move(other));
    }
    return all;
}

std::vector<FitKit> fitKit(const Index& index, const BookingPlan& trial, const model::Booking& booking,
                           const std::vector<Beside>& beside, const ShedPlan* shed) {
    std::vector<FitKit> all;
    for (const auto& need : trial.kit.containers)
        all.push_back(containerFit(*index.season.containers.find(need.container),
                                   shed::wholeUnits(need.total.needed), trial, booking, beside, shed));
    const auto& cool = index.season.theSettings().coolBuckets;
    if (auto buckets = bucketFit(FitKitKind::bucket, trial.kit.bucketsOwned, trial, beside))
        all.push_back(std::move(*buckets));
    if (auto room = bucketFit(FitKitKind::coolSpace, cool, trial, beside)) all.push_back(std::move(*room));
    return all;
}

FitHours fitHours(const Index& index, const BookingPlan& trial, const std::vector<Beside>& beside) {
    FitHours hours;
    hours.from = LocalTime{trial.makeUpStart.day - 1, 0} + Minutes(index.season.theSettings().workFrom);
    hours.to = trial.makeUpEnd;
    for (const auto& step : trial.steps) {
        if (!isHandWork(step.kind)) continue;
        hours.work += step.minutes;
        hours.from = std::min(hours.from, step.from);
        hours.to = std::max(hours.to, step.to);
    }
    Stretches firm, all;
    for (const auto& b : trial.busy)
        firm.push_back(stretchOf(b.span.from, b.span.to));
    all = firm;
    for (const auto& other : beside) {
        if (other.bucketsFrom > hours.to.day || other.kitTo < hours.from.day) continue;
        bool inTheWay = false;
        for (const auto& step : other.plan->steps) {
            const auto work = workOf(step);
            if (step.minutes.value == 0 || work.second <= hours.from.minutesSinceEpoch() ||
                work.first >= hours.to.minutesSinceEpoch())
                continue;
            inTheWay = true;
            all.push_back(work);
            if (isFirm(other)) firm.push_back(work);
        }
        if (inTheWay) hours.others.push_back(other.booking);
    }
    const auto open = openHours(index.season.theSettings(), trial, hours.from, hours.to);
    hours.free = Minutes(minutesLeft(open, merged(std::move(firm))));
    hours.freeBesideAll = Minutes(minutesLeft(open, merged(std::move(all))));
    if (hours.work <= hours.freeBesideAll)
        hours.fit = Fit::yes;
    else
        hours.fit = hours.work <= hours.free ? Fit::tight : Fit::no;
    return hours;
}

} // namespace withy::plan
