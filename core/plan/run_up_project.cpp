// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_project.h"

#include "core/runup/time_spans.h"

#include <algorithm>

namespace withy::plan {

namespace {

using runup::Mode;
using runup::Task;
using runup::Time;

constexpr int daysAround = 3; ///< of calendars before and after the work: what starts earlier has hours too

/// What the grower has said of a step's legs.
struct Marked {
    const model::StepMark* pin = nullptr;
    const model::StepMark* done = nullptr;
    const model::StepMark* who = nullptr;
    std::size_t pinLeg = 0;
    std::size_t doneLeg = 0;
};

Marked marksOf(const RunUpFacts& facts, const Draft& draft) {
    Marked out;
    for (std::size_t i = 0; i < draft.legs.size(); ++i) {
        const auto* mark = facts.markOf(draft.legs[i].key);
        if (!mark) continue;
        if (mark->byHelper && !out.who) out.who = mark;
        if (mark->pinned && !out.pin) {
            out.pin = mark;
            out.pinLeg = i;
        }
        if (mark->done) {
            out.done = mark;
            out.doneLeg = i;
        }
    }
    return out;
}

class Builder {
public:
    Builder(const RunUpFacts& facts, const RunUpDraft& draft, const RunUpClock& clock,
            const TakenHours& taken, Day first, Day last)
        : facts_(facts)
        , draft_(draft)
        , clock_(clock)
        , taken_(taken)
        , first_(first - daysAround)
        , last_(last + daysAround) {}

    RunUpProject build() {
        addHands();
        for (const auto& step : draft_.steps)
            addTask(step);
        for (const auto& f : draft_.follows)
            out_.project.follows.push_back(
                {static_cast<int>(f.before), static_cast<int>(f.after), f.lag.value});
        setWindows();
        waitForToday();
        return std::move(out_);
    }

private:
    [[nodiscard]] runup::Hours hoursOf(const runup::TimeSpan& span) const {
        return {clock_.of(span.from), clock_.of(span.to)};
    }

    /// A resource for each worker, then the grower's working hours, then the vehicles.
    void addHands() {
        const auto& workers = facts_.hands.workers();
        for (std::size_t w = 0; w < workers.size(); ++w) {
            auto hours = facts_.hands.hours(w, first_, last_);
            if (w == 0) {
                addHours(hours.there);
                hours.there = {{LocalTime{first_, 0}, LocalTime{last_ + 1, 0}}};
            }
            std::vector<runup::TimeSpan> holes = taken_[w];
            for (const auto& busy : hours.busy)
                holes.push_back(busy.span);
            there_.push_back(runup::without(hours.there, std::move(holes)));
        }
        for (const auto& there : there_) {
            std::vector<runup::Hours> hours;
            for (const auto& span : there)
                hours.push_back(hoursOf(span));
            out_.project.resources.push_back(runup::resourceInHours(1, hours));
        }
        workHours_ = static_cast<int>(out_.project.resources.size());
        out_.project.resources.push_back(
            runup::resourceInHours(static_cast<int>(workers.size()), growersHours_));
        if (facts_.season.vehicles.empty()) return; // not known: everyone drives their own
        van_ = static_cast<int>(out_.project.resources.size());
        out_.project.resources.push_back(
            runup::steadyResource(static_cast<int>(facts_.season.vehicles.size())));
    }

    void addHours(const std::vector<runup::TimeSpan>& there) {
        for (const auto& span : there)
            growersHours_.push_back(hoursOf(span));
    }

    [[nodiscard]] Mode modeOf(const Draft& step, const std::vector<std::size_t>& who) const {
        Mode mode;
        mode.duration = step.minutes.value;
        if (!step.sameForAll && who.size() == 1)
            mode.duration = facts_.hands.takes(who[0], step.minutes).value;
        if (who.size() == 2) mode.duration = facts_.hands.takeTogether(who[0], who[1], step.minutes).value;
        for (const auto w : who)
            mode.needs.push_back({static_cast<int>(w), 1});
        if (step.workHours && who.front() == 0) mode.needs.push_back({workHours_, 1});
        if (step.skill == Skill::drive && van_) mode.needs.push_back({*van_, 1});
        return mode;
    }

    /// There at some time in the days the step can be done on.
    [[nodiscard]] bool near(std::size_t w, const Draft& step) const {
        const LocalTime from = step.release.value_or(LocalTime{first_, 0}) - Minutes(2 * 1440);
        const LocalTime to = step.deadline.value_or(LocalTime{last_, 0});
        return std::any_of(there_[w].begin(), there_[w].end(),
                           [&](const auto& s) { return s.from < to && from < s.to; });
    }

    [[nodiscard]] std::vector<std::vector<std::size_t>> waysFor(const Draft& step,
                                                                const Marked& marked) const {
        if (marked.who) {
            const auto one = facts_.hands.find({marked.who->helper});
            if (one) return {{*one}};
        }
        std::vector<std::size_t> able;
        for (std::size_t w = 0; w < facts_.hands.workers().size(); ++w)
            if (facts_.hands.can(w, step.skill) && (w == 0 || near(w, step))) able.push_back(w);
        std::vector<std::vector<std::size_t>> ways;
        for (const auto w : able)
            ways.push_back({w});
        for (const auto w : able)
            if (step.together && w > 0) ways.push_back({0, w});
        return ways;
    }

    void addTask(const Draft& step) {
        const auto marked = marksOf(facts_, step);
        auto ways = waysFor(step, marked);
        Task task;
        task.splittable = step.splittable;
        task.group = step.group;
        task.releaseMoves = step.releaseMoves;
        task.byPiece = step.byPiece;
        task.release = step.release ? clock_.of(*step.release) : runup::always;
        task.deadline = step.deadline ? clock_.of(*step.deadline) : runup::never;
        for (const auto& who : ways)
            task.modes.push_back(modeOf(step, who));
        bool done = false;
        if (marked.done)
            done = tickOff(step, marked, task, ways);
        else if (marked.pin)
            task.pin = pinOf(step, marked, task, ways);
        out_.project.tasks.push_back(std::move(task));
        out_.who.push_back(std::move(ways));
        out_.done.push_back(done);
        out_.nobody.push_back(false);
        out_.hurry.push_back(step.hurry ? std::optional(clock_.of(*step.hurry)) : std::nullopt);
    }

    /// What is done stays where it was done and takes nobody's time any more.
    bool tickOff(const Draft& step, const Marked& marked, Task& task,
                 std::vector<std::vector<std::size_t>>& ways) const {
        const auto& leg = step.legs[marked.doneLeg];
        const Minutes took = marked.done->minutes.value_or(leg.minutes);
        const Time start = clock_.of(*marked.done->done) - took.value - step.offsets[marked.doneLeg].value;
        const bool onlyOnTheWay = leg.key.step == StepKind::drive && step.legs.size() > 1;
        if (onlyOnTheWay) {
            task.pin = runup::Pin{start, 0};
            return false;
        }
        const Time length = step.legs.size() > 1 ? step.minutes.value : took.value;
        if (ways.empty()) ways = {{}};
        ways.resize(1);
        task.modes = {{length, {}}};
        task.splittable = false;
        task.pin = runup::Pin{start, 0};
        return true;
    }

    /// By the first who is there then; the grower when nobody is.
    [[nodiscard]] runup::Pin pinOf(const Draft& step, const Marked& marked, const Task& task,
                                   const std::vector<std::vector<std::size_t>>& ways) const {
        runup::Pin pin{clock_.of(*marked.pin->pinned) - step.offsets[marked.pinLeg].value, 0};
        for (std::size_t m = 0; m < ways.size(); ++m) {
            const LocalTime from = clock_.at(pin.start);
            const LocalTime to = clock_.at(pin.start + (step.splittable ? 1 : task.modes[m].duration));
            const bool free = std::all_of(ways[m].begin(), ways[m].end(), [&](std::size_t w) {
                return std::any_of(there_[w].begin(), there_[w].end(),
                                   [&](const auto& s) { return s.from <= from && to <= s.to; });
            });
            if (!free) continue;
            pin.mode = static_cast<int>(m);
            break;
        }
        return pin;
    }

    [[nodiscard]] Time shortest(int t) const {
        Time least = runup::never;
        for (const auto& mode : out_.project.tasks[static_cast<std::size_t>(t)].modes)
            least = std::min(least, mode.duration);
        return least == runup::never ? 0 : least;
    }

    /// By what waits for what alone, calendars left out.
    void setWindows() {
        const auto& p = out_.project;
        out_.earliest.clear();
        out_.latest.clear();
        for (const auto& t : p.tasks) {
            out_.earliest.push_back(t.pin ? t.pin->start : t.release);
            out_.latest.push_back(t.deadline);
        }
        for (bool moved = true; moved;) { // as often as the longest chain is long
            moved = false;
            for (const auto& f : p.follows) {
                const auto b = static_cast<std::size_t>(f.before), a = static_cast<std::size_t>(f.after);
                const Time start = out_.earliest[b] + shortest(f.before) + f.lag;
                const Time end =
                    (p.tasks[a].pin ? p.tasks[a].pin->start : out_.latest[a] - shortest(f.after)) - f.lag;
                if (!p.tasks[a].pin && out_.earliest[b] > runup::always && start > out_.earliest[a]) {
                    out_.earliest[a] = start;
                    moved = true;
                }
                if (end < out_.latest[b] && (p.tasks[a].pin || out_.latest[a] < runup::never)) {
                    out_.latest[b] = end;
                    moved = true;
                }
            }
        }
    }

    /// What can still be done today or later is not laid before it; what should have been done stays.
    void waitForToday() {
        if (!facts_.options.today) return;
        const Time today = clock_.of({*facts_.options.today, 0});
        for (std::size_t t = 0; t < out_.project.tasks.size(); ++t) {
            auto& task = out_.project.tasks[t];
            if (!draft_.steps[t].waitsForToday || task.pin || task.release >= today) continue;
            if (out_.latest[t] - shortest(static_cast<int>(t)) < today) continue;
            task.release = today;
            task.releaseMoves = false;
            out_.earliest[t] = std::max(out_.earliest[t], today);
        }
    }

    const RunUpFacts& facts_;
    const RunUpDraft& draft_;
    const RunUpClock& clock_;
    const TakenHours& taken_;
    Day first_;
    Day last_;
    RunUpProject out_;
    std::vector<std::vector<runup::TimeSpan>> there_; ///< by worker, free
    std::vector<runup::Hours> growersHours_;
    int workHours_ = 0;
    std::optional<int> van_;
};

} // namespace

RunUpClock::RunUpClock(Zone zone, Day first)
    : zone_(std::move(zone)), origin_(zone_.instantNear({first, 0}).seconds / 60) {}

Time RunUpClock::of(LocalTime t) const {
    return zone_.instantNear(t).seconds / 60 - origin_;
}

LocalTime RunUpClock::at(Time t) const {
    return zone_.local(Instant{(t + origin_) * 60});
}

RunUpProject projectOf(const RunUpFacts& facts, const RunUpDraft& draft, const RunUpClock& clock,
                       const TakenHours& taken, Day first, Day last) {
    return Builder(facts, draft, clock, taken, first, last).build();
}

std::vector<Time> inOneRow(const runup::Project& project) {
    std::vector<Time> row;
    const auto put = [&](auto... values) { (row.push_back(static_cast<Time>(values)), ...); };
    for (const auto& r : project.resources) {
        put(r.units, r.changes.size());
        for (const auto& c : r.changes)
            put(c.at, c.units);
    }
    put(project.tasks.size());
    for (const auto& t : project.tasks) {
        put(t.release, t.deadline, t.splittable, t.group, t.releaseMoves, t.byPiece, t.pin.has_value(),
            t.pin ? t.pin->start : 0, t.pin ? t.pin->mode : 0, t.modes.size());
        for (const auto& m : t.modes) {
            put(m.duration, m.needs.size());
            for (const auto& n : m.needs)
                put(n.resource, n.units);
        }
    }
    for (const auto& f : project.follows)
        put(f.before, f.after, f.lag);
    return row;
}

std::vector<runup::Hours> workedHours(const runup::Project& project, int number,
                                      const runup::Placed& placed) {
    const auto& task = project.tasks[static_cast<std::size_t>(number)];
    if (placed.mode < 0) return {};
    if (!task.splittable) return {{placed.start, placed.end}};
    std::vector<runup::TimeSpan> open{
        {LocalTime::fromMinutes(placed.start), LocalTime::fromMinutes(placed.end)}};
    for (const auto& need : task.modes[static_cast<std::size_t>(placed.mode)].needs) {
        const auto& resource = project.resources[static_cast<std::size_t>(need.resource)];
        std::vector<runup::TimeSpan> there;
        int units = resource.units;
        Time since = placed.start;
        for (const auto& change : resource.changes) {
            const Time at = std::clamp(change.at, placed.start, placed.end);
            if (units >= need.units && since < at)
                there.push_back({LocalTime::fromMinutes(since), LocalTime::fromMinutes(at)});
            since = at;
            units = change.units;
        }
        if (units >= need.units && since < placed.end)
            there.push_back({LocalTime::fromMinutes(since), LocalTime::fromMinutes(placed.end)});
        open = runup::inBoth(std::move(open), std::move(there));
    }
    std::vector<runup::Hours> out;
    for (const auto& span : open)
        out.push_back({span.from.minutesSinceEpoch(), span.to.minutesSinceEpoch()});
    return out;
}

} // namespace withy::plan
