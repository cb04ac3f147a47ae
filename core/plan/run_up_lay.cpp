// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_project.h"
#include "core/runup/load_profile.h"

#include <algorithm>

namespace withy::plan {

namespace {

using runup::ProjectTrouble;
using runup::Time;

constexpr int workForSearch = 20'000; ///< tasks laid at most: fewer schedules where there are more tasks
constexpr int mostSchedules = 1000;
constexpr int fewestSchedules = 150;
constexpr int mendSchedules = 60;
constexpr std::size_t mostPieceMends = 2;

runup::SearchLimits limitsFor(std::size_t tasks) {
    runup::SearchLimits limits;
    limits.nodes = 20'000;
    limits.schedules =
        std::clamp(workForSearch / std::max(1, static_cast<int>(tasks)), fewestSchedules, mostSchedules);
    return limits;
}

std::string titleOf(const RunUpFacts& facts, Id<model::Booking> id) {
    const auto* booking = facts.season.bookings.find(id);
    return booking ? booking->title : std::string();
}

/// The task is laid all the same, by nobody, so that what follows it keeps its place.
void takeOut(RunUpProject& project, const RunUpDraft& draft, const RunUpFacts& facts,
             const runup::ProjectFault& fault, std::vector<Finding>& findings) {
    const auto t = static_cast<std::size_t>(fault.task);
    const auto& step = draft.steps[t];
    const bool gaps = fault.trouble == ProjectTrouble::longerThanAnyGap;
    const auto booking = draft.groups[static_cast<std::size_t>(step.group)];
    std::vector<double> numbers;
    if (gaps) numbers = {static_cast<double>(fault.needed), static_cast<double>(fault.longest)};
    findings.push_back({gaps ? FindingCode::stepLongerThanGap : FindingCode::nobodyForStep,
                        Severity::warning,
                        {model::TableKind::bookings, booking.value},
                        {std::string(model::wordOf(step.legs.front().key.step)), titleOf(facts, booking)},
                        std::move(numbers)});
    project.project.tasks[t].modes = {{step.minutes.value, {}}};
    project.who[t] = {{}};
    project.nobody[t] = true;
}

Time lastDeadline(const runup::Project& project) {
    Time last = 0;
    for (const auto& t : project.tasks)
        if (t.deadline < runup::never) last = std::max(last, t.deadline);
    return last;
}

/// What should be done soon moves up to the first moment that leaves all else where it is.
void hurryUp(const RunUpProject& project, runup::Schedule& schedule) {
    const auto& p = project.project;
    for (std::size_t t = 0; t < p.tasks.size(); ++t) {
        auto& placed = schedule.tasks[t];
        if (!project.hurry[t] || p.tasks[t].pin || placed.mode < 0 || placed.outside > 0) continue;
        runup::LoadProfile profile(p.resources);
        Time from = std::max(p.tasks[t].release, *project.hurry[t]);
        for (std::size_t u = 0; u < p.tasks.size(); ++u) {
            const auto& other = schedule.tasks[u];
            if (u == t || other.mode < 0) continue;
            profile.take(p.tasks[u].modes[static_cast<std::size_t>(other.mode)], p.tasks[u].splittable,
                         {other.start, other.end}, true);
        }
        for (const auto& f : p.follows)
            if (f.after == static_cast<int>(t)) from = std::max(from, schedule.tasks[f.before].end + f.lag);
        // With whoever is done first: waiting for a helper would leave the stems dry.
        for (std::size_t m = 0; m < p.tasks[t].modes.size(); ++m) {
            const auto place = profile.earliest(p.tasks[t].modes[m], p.tasks[t].splittable, from);
            if (!place || placed.end <= place->end || placed.start < place->start) continue;
            placed = {place->start, place->end, static_cast<int>(m), 0};
        }
        auto& group = schedule.groups[static_cast<std::size_t>(p.tasks[t].group)];
        group.first = std::min(group.first, placed.start);
    }
}

} // namespace

RunUpPart laid(RunUpProject& project, const RunUpDraft& draft, const RunUpFacts& facts,
               std::vector<Finding>& findings, const std::vector<std::shared_ptr<const RunUpPart>>& kept,
               std::shared_ptr<const RunUpPart>& same) {
    RunUpPart part;
    const auto limits = limitsFor(project.project.tasks.size());
    for (;;) {
        part.row = inOneRow(project.project);
        for (const auto& k : kept) {
            if (k->row != part.row) continue;
            same = k;
            return *k;
        }
        auto found = runup::schedule(project.project, runup::Aim::latest, limits, facts.options.stop);
        if (found.ok()) {
            part.schedule = std::move(found).value();
            break;
        }
        const auto fault = found.error();
        const bool hands =
            fault.trouble == ProjectTrouble::noHands || fault.trouble == ProjectTrouble::longerThanAnyGap;
        if (fault.task < 0 || (!hands && fault.trouble != ProjectTrouble::noDeadline)) {
            part.schedule.tasks.resize(project.project.tasks.size()); // nothing has a place
            part.schedule.unplaced = static_cast<int>(project.project.tasks.size());
            break;
        }
        if (hands)
            takeOut(project, draft, facts, fault, findings);
        else
            project.project.tasks[static_cast<std::size_t>(fault.task)].deadline =
                lastDeadline(project.project);
    }
    part.project = project.project;
    hurryUp(project, part.schedule);
    if (!part.schedule.fits() && !part.schedule.stopped)
        part.misfit = runup::misfit(project.project, part.schedule);
    return part;
}

std::vector<runup::Mend> mendsOf(const RunUpProject& project, const RunUpDraft& draft,
                                 const RunUpFacts& facts, const RunUpClock& clock, Day first, Day last) {
    const auto& s = facts.season.theSettings();
    std::vector<runup::Hours> hours;
    for (Day day = first; day <= last; day = day + 1)
        hours.push_back({clock.of(LocalTime{day, 0} + Minutes(s.workFrom)),
                         clock.of(LocalTime{day, 0} + Minutes(s.workTo))});
    runup::MendChoices choices;
    choices.earlierStep = 120;
    choices.helper = runup::ExtraHands{runup::resourceInHours(1, hours), 0, 100, true};
    for (std::size_t g = 0; g < draft.groups.size(); ++g)
        if (draft.pieces[g] > 1) choices.pieces.push_back({static_cast<int>(g), draft.pieces[g]});
    std::stable_sort(choices.pieces.begin(), choices.pieces.end(),
                     [](const auto& a, const auto& b) { return a.pieces > b.pieces; });
    if (choices.pieces.size() > mostPieceMends) choices.pieces.resize(mostPieceMends);
    runup::SearchLimits limits;
    limits.schedules = mendSchedules;
    limits.nodes = 2000;
    return runup::mends(project.project, runup::Aim::latest, choices, limits, facts.options.stop);
}

} // namespace withy::plan
