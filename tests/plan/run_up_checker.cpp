// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plan/run_up_season.h"

#include <algorithm>
#include <map>

/// Shares no code with the planner but the records and the words of run_up_plan.h.
namespace withy::plan::tests {

namespace {

class RunUpCheck {
public:
    RunUpCheck(const model::Season& season, const RunUpPlan& plan) : season_(season), plan_(plan) {}

    std::vector<std::string> run() {
        for (const auto& step : plan_.steps) {
            shape(step);
            if (mustKeepHours(step)) hours(step);
        }
        twoAtOnce();
        order();
        marks();
        return complaints_;
    }

private:
    void say(const RunUpStep& step, const std::string& what) {
        complaints_.push_back(std::string(model::wordOf(step.key.step)) + " " + step.from.iso() + " to " +
                              step.to.iso() + ": " + what);
    }

    static bool mustKeepHours(const RunUpStep& step) {
        return step.placed && !step.pinned && !step.done && !step.who.empty();
    }

    void shape(const RunUpStep& step) {
        if (step.to < step.from) say(step, "ends before it begins");
        const bool nobody = step.key.step == StepKind::drink || step.key.step == StepKind::restCool;
        if (nobody && !step.who.empty()) say(step, "needs nobody");
        if (!nobody && step.placed && !step.done && step.who.empty()) say(step, "has nobody");
        if (step.bookings.empty()) say(step, "serves nobody");
    }

    [[nodiscard]] const WorkerHours* hoursOf(const Worker& worker) const {
        for (const auto& p : plan_.people)
            if (p.worker == worker) return &p;
        return nullptr;
    }

    [[nodiscard]] static bool inside(const std::vector<runup::TimeSpan>& there, LocalTime t) {
        return std::any_of(there.begin(), there.end(),
                           [&](const auto& s) { return s.from <= t && t < s.to; });
    }

    [[nodiscard]] bool busy(const WorkerHours& hours, LocalTime t) const {
        return std::any_of(hours.busy.begin(), hours.busy.end(),
                           [&](const auto& b) { return b.span.from <= t && t < b.span.to; });
    }

    /// Work that the flowers and the road ask for is done at any hour, by the grower.
    [[nodiscard]] static bool atAnyHour(StepKind kind) {
        switch (kind) {
        case StepKind::washContainers:
        case StepKind::cutRibbon:
        case StepKind::fillWater:
        case StepKind::tieRibbon:
        case StepKind::sort:
        case StepKind::make:
        case StepKind::washBack:
            return false;
        default:
            return true;
        }
    }

    [[nodiscard]] bool free(const RunUpStep& step, const Worker& worker, LocalTime t) const {
        const auto* hours = hoursOf(worker);
        if (!hours || busy(*hours, t)) return false;
        return (!worker.helper && atAnyHour(step.key.step)) || inside(hours->there, t);
    }

    [[nodiscard]] bool allFree(const RunUpStep& step, LocalTime t) const {
        return std::all_of(step.who.begin(), step.who.end(),
                           [&](const Worker& w) { return free(step, w, t); });
    }

    /// A step that may be split lies idle while another, begun and ended within it, has its hands.
    [[nodiscard]] bool idleFor(const RunUpStep& step, LocalTime t) const {
        return std::any_of(plan_.steps.begin(), plan_.steps.end(), [&](const RunUpStep& o) {
            const bool within = step.from <= o.from && o.to <= step.to && o.to - o.from < step.to - step.from;
            return within && &o != &step && o.from <= t && t < o.to && o.placed && !o.done &&
                   sharesHands(step, o);
        });
    }

    [[nodiscard]] static bool sharesHands(const RunUpStep& a, const RunUpStep& b) {
        return std::any_of(a.who.begin(), a.who.end(), [&](const Worker& w) {
            return std::find(b.who.begin(), b.who.end(), w) != b.who.end();
        });
    }

    [[nodiscard]] bool works(const RunUpStep& step, LocalTime t) const {
        return allFree(step, t) && !(step.splittable && idleFor(step, t));
    }

    /// Not splittable: free all through. Splittable: free at its first minute, and for as many minutes as the
    /// hands need.
    void hours(const RunUpStep& step) {
        if (step.from == step.to) return;
        std::int64_t minutes = 0;
        for (LocalTime t = step.from; t < step.to; t = t + Minutes(1)) {
            const bool here = works(step, t);
            minutes += here ? 1 : 0;
            if (!here && !step.splittable) return say(step, "somebody is not there at " + t.iso());
        }
        if (!allFree(step, step.from)) say(step, "begins when somebody is not there");
        const auto least = step.minutes.value / static_cast<std::int64_t>(step.who.size());
        if (minutes < least / 2) say(step, "has too few minutes");
        if (step.who.size() == 1 && minutes != step.minutes.value)
            say(step, "has other minutes than it takes");
    }

    /// Minutes at which each pair of hands works; pins may be double.
    void twoAtOnce() {
        std::map<std::pair<Worker, LocalTime>, const RunUpStep*> at;
        for (const auto& step : plan_.steps) {
            if (!mustKeepHours(step)) continue;
            for (LocalTime t = step.from; t < step.to; t = t + Minutes(1)) {
                if (step.splittable && !works(step, t)) continue;
                for (const auto& worker : step.who) {
                    const auto [other, fresh] = at.emplace(std::pair(worker, t), &step);
                    if (fresh || other->second == &step) continue;
                    return say(step, "the same hands are at " +
                                         std::string(model::wordOf(other->second->key.step)) + " at " +
                                         t.iso());
                }
            }
        }
    }

    [[nodiscard]] static bool fixed(const RunUpStep& s) { return s.pinned || s.done || !s.placed; }

    /// `a` is over before `b` begins, for each booking, unless a hand has put both where they are.
    void before(StepKind a, StepKind b, bool sameDrop = false) {
        for (const auto& first : plan_.steps) {
            if (first.key.step != a || fixed(first) || first.key.number != 0) continue;
            for (const auto& second : plan_.steps) {
                if (second.key.step != b || fixed(second) || second.key.number != 0) continue;
                if (sameDrop && first.key.drop != second.key.drop) continue;
                if (first.key.line || (second.key.line && b == StepKind::tieRibbon)) continue;
                if (first.bookings != second.bookings) continue;
                if (second.from < first.to)
                    say(second, "begins before " + std::string(model::wordOf(a)) + " is over");
            }
        }
    }

    void order() {
        before(StepKind::washContainers, StepKind::fillWater);
        before(StepKind::cutRibbon, StepKind::tieRibbon);
        before(StepKind::fillWater, StepKind::tieRibbon);
        before(StepKind::fillWater, StepKind::make);
        before(StepKind::sort, StepKind::make);
        before(StepKind::checkWater, StepKind::pack, true);
        before(StepKind::pack, StepKind::load, true);
        before(StepKind::load, StepKind::drive, true);
        before(StepKind::drive, StepKind::place, true);
        before(StepKind::collect, StepKind::washBack);
        for (const auto& cut : plan_.steps)
            if (cut.key.step == StepKind::cut && !fixed(cut)) afterCut(cut);
    }

    /// Stripped after it is cut, shared out after it is stripped.
    void afterCut(const RunUpStep& cut) {
        for (const auto& step : plan_.steps) {
            const bool strip = step.key.step == StepKind::strip && step.round == cut.round;
            const bool served = std::find(cut.bookings.begin(), cut.bookings.end(), step.bookings.front()) !=
                                cut.bookings.end();
            const bool sort = step.key.step == StepKind::sort && served;
            if ((strip || sort) && !fixed(step) && step.from < cut.to) say(step, "begins before all is cut");
        }
    }

    /// What the grower has said of a step is said of it again.
    void marks() {
        for (const auto& mark : season_.stepMarks) {
            const StepKey key{mark.step, mark.booking, mark.line, mark.drop, mark.day, mark.number};
            for (const auto& step : plan_.steps) {
                if (step.key != key) continue;
                if (step.mark != mark.id) say(step, "has lost its mark");
                if (mark.pinned && !mark.done && step.from != *mark.pinned) say(step, "has left its pin");
                if (mark.done && step.to != *mark.done) say(step, "ends at another time than it was done");
            }
        }
    }

    const model::Season& season_;
    const RunUpPlan& plan_;
    std::vector<std::string> complaints_;
};

} // namespace

std::vector<std::string> complaintsAbout(const model::Season& season, const RunUpPlan& plan) {
    return RunUpCheck(season, plan).run();
}

} // namespace withy::plan::tests
