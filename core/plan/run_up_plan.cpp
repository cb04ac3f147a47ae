// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_plan.h"

#include "core/base/working_lines.h"
#include "core/plan/run_up_project.h"

#include <algorithm>

namespace withy::plan {

namespace {

using runup::Time;

constexpr std::size_t mostInPart = 5; ///< bookings laid together: more would take too long to lay well
constexpr int mostMended = 3;         ///< parts that do not fit and get mends, the first in time
constexpr int mendDaysAround = 3;

struct Span {
    const BookingPlan* plan;
    Day first;
    Day last;
};

std::vector<Span> spansOf(const RunUpFacts& facts) {
    std::vector<Span> out;
    for (const auto& [id, plan] : facts.plan.bookings) {
        const auto* booking = facts.season.bookings.find(id);
        if (!booking || stillToDo(*booking) == StillToDo::nothing || plan->lines.empty()) continue;
        const Day last = plan->driveStart.day;
        const Day first = plan->steps.empty() ? last : plan->steps.front().from.day;
        out.push_back({plan.get(), std::min(first, last), last});
    }
    std::stable_sort(out.begin(), out.end(), [](const Span& a, const Span& b) {
        return std::tie(a.plan->driveStart, a.plan->booking) < std::tie(b.plan->driveStart, b.plan->booking);
    });
    return out;
}

/// Bookings whose days touch, in order of leaving.
std::vector<std::vector<const BookingPlan*>> bookingsInParts(const RunUpFacts& facts) {
    std::vector<std::vector<const BookingPlan*>> parts;
    Day last;
    for (const auto& span : spansOf(facts)) {
        if (parts.empty() || last < span.first || parts.back().size() >= mostInPart) {
            parts.emplace_back();
            last = span.last;
        }
        parts.back().push_back(span.plan);
        last = std::max(last, span.last);
    }
    return parts;
}

/// Lays the parts one after the other and gathers what they come to.
class Layer {
public:
    Layer(RunUpFacts& facts, const RunUpPlan* before) : facts_(facts), before_(before) {
        taken_.resize(facts.hands.workers().size());
    }

    RunUpPlan run() {
        for (const auto& bookings : bookingsInParts(facts_)) {
            if (facts_.options.stop.stop_requested()) break;
            layPart(bookings);
        }
        inOrderOfTime();
        addPeople();
        findInSeason(facts_, out_, out_.findings);
        return std::move(out_);
    }

private:
    void layPart(const std::vector<const BookingPlan*>& bookings) {
        RunUpDraft draft;
        for (const auto* plan : bookings)
            draftBooking(facts_, *plan, draft);
        if (draft.steps.empty()) return;
        draftRounds(facts_, taken_, draft);
        const auto [first, last] = daysOf(draft);
        const RunUpClock clock(zone(), first);
        auto project = projectOf(facts_, draft, clock, taken_, first, last);
        out_.findings.insert(out_.findings.end(), draft.findings.begin(), draft.findings.end());
        std::shared_ptr<const RunUpPart> same;
        auto part = laid(project, draft, facts_, out_.findings, before_ ? before_->parts : none_, same);
        const bool over = !part.schedule.fits();
        const bool mend = over && mended_ < mostMended;
        if (over) ++mended_;
        if (mend && !part.mended) {
            part.mends = mendsOf(project, draft, facts_, clock, first - mendDaysAround, last + 1);
            part.mended = true;
            same.reset();
        }
        findInPart(project, draft, facts_, part, out_.findings);
        addSteps(project, draft, part, clock);
        if (over) addOver(draft, part, clock, mend);
        take(project, part, clock);
        judge(part);
        out_.parts.push_back(same ? same : std::make_shared<const RunUpPart>(std::move(part)));
    }

    [[nodiscard]] Zone zone() const {
        return Zone::fromPosix(facts_.season.theSettings().zoneRule).value_or(Zone::utc());
    }

    static std::pair<Day, Day> daysOf(const RunUpDraft& draft) {
        std::optional<Day> first, last;
        for (const auto& step : draft.steps) {
            if (step.release) first = first ? std::min(*first, step.release->day) : step.release->day;
            const auto end = step.deadline ? step.deadline : step.release;
            if (end) last = last ? std::max(*last, end->day) : end->day;
        }
        return {first.value_or(Day{}), last.value_or(first.value_or(Day{}))};
    }

    struct Laid {
        LocalTime from;
        LocalTime to;
    };

    void addSteps(const RunUpProject& project, const RunUpDraft& draft, const RunUpPart& part,
                  const RunUpClock& clock) {
        spans_.assign(draft.steps.size(), {});
        firstStep_.clear();
        const auto roundsBefore = out_.rounds.size();
        for (const auto& round : draft.rounds)
            out_.rounds.push_back(round.round);
        std::map<std::pair<Day, std::int64_t>, std::size_t> roundAt;
        for (std::size_t r = 0; r < draft.rounds.size(); ++r) {
            const auto& key = draft.steps[draft.rounds[r].cut].legs.front().key;
            roundAt[{*key.day, key.number}] = roundsBefore + r;
        }
        const auto roundOf = [&](const StepKey& key) -> std::optional<std::size_t> {
            if (!key.day) return std::nullopt;
            const auto found = roundAt.find({*key.day, key.number});
            return found == roundAt.end() ? std::nullopt : std::optional(found->second);
        };
        for (std::size_t t = 0; t < draft.steps.size(); ++t) {
            firstStep_.push_back(out_.steps.size());
            addLegs(t, project, draft.steps[t], part.schedule.tasks[t], clock, roundOf);
        }
        for (std::size_t r = 0; r < draft.rounds.size(); ++r) {
            auto& round = out_.rounds[roundsBefore + r];
            round.from = spans_[draft.rounds[r].cut].from;
            round.to = spans_[draft.rounds[r].cut].to;
            round.celsius = facts_.warmest(round.from, round.to);
        }
        for (const auto& thread : draft.threads)
            addThread(thread, roundOf);
    }

    template <class RoundOf>
    void addLegs(std::size_t t, const RunUpProject& project, const Draft& draft, const runup::Placed& placed,
                 const RunUpClock& clock, const RoundOf& roundOf) {
        const bool found = placed.mode >= 0;
        const bool several = draft.legs.size() > 1;
        const Time start = found ? placed.start : project.latest[t] - draft.minutes.value;
        const Time end = found ? placed.end : project.latest[t];
        spans_[t] = {clock.at(start), clock.at(end)};
        for (std::size_t i = 0; i < draft.legs.size(); ++i) {
            RunUpStep step = draft.legs[i];
            const Time from = start + draft.offsets[i].value;
            step.from = clock.at(from);
            step.to = several ? clock.at(from + step.minutes.value) : spans_[t].to;
            step.earliest = clock.at(std::clamp(project.earliest[t], start - Time{60} * 1440, end) +
                                     draft.offsets[i].value);
            step.latest = several ? clock.at(project.latest[t] - draft.minutes.value +
                                             draft.offsets[i].value + step.minutes.value)
                                  : clock.at(std::min(project.latest[t], end + Time{60} * 1440));
            step.splittable = draft.splittable;
            step.placed = found && !project.nobody[t];
            step.round = roundOf(step.key);
            setMark(step);
            if (step.placed) setWho(project, t, placed.mode, draft, step);
            out_.steps.push_back(std::move(step));
        }
    }

    void setMark(RunUpStep& step) const {
        const auto* mark = facts_.markOf(step.key);
        if (!mark) return;
        step.mark = mark->id;
        step.pinned = mark->pinned.has_value();
        step.done = mark->done;
        step.took = mark->minutes;
        if (mark->byHelper) step.who = {{mark->helper}};
    }

    void setWho(const RunUpProject& project, std::size_t t, int mode, const Draft& draft,
                RunUpStep& step) const {
        const auto& who = project.who[t][static_cast<std::size_t>(mode)];
        step.who.clear();
        for (const auto w : who)
            step.who.push_back(facts_.hands.workers()[w]);
        if (draft.sameForAll || who.size() != 1) return;
        const auto takes = facts_.hands.takes(who.front(), step.minutes);
        if (takes == step.minutes) return;
        step.working.push_back(lineOf(withy::Step::times, "learner", learnersPercent / 100.0, Unit::none,
                                      Basis::commonPractice, "no source"));
        step.working.push_back(lineOf(withy::Step::result, "minutes", takes.value, Unit::minutes));
        step.minutes = takes;
    }

    template <class RoundOf>
    void addThread(const DraftThread& thread, const RoundOf& roundOf) {
        RunUpStep step = thread.step;
        std::optional<LocalTime> from, to;
        for (const auto t : thread.from)
            from = from ? std::max(*from, spans_[t].to) : spans_[t].to;
        for (const auto t : thread.to)
            to = to ? std::min(*to, spans_[t].from) : spans_[t].from;
        if (!from || !to || *to <= *from) return;
        step.from = step.earliest = *from;
        step.to = step.latest = *to;
        step.round = roundOf(step.key);
        setMark(step);
        out_.steps.push_back(std::move(step));
    }

    /// What the part does with the hands, for those after it.
    void take(const RunUpProject& project, const RunUpPart& part, const RunUpClock& clock) {
        for (std::size_t t = 0; t < project.project.tasks.size(); ++t) {
            const auto& placed = part.schedule.tasks[t];
            if (placed.mode < 0 || project.done[t]) continue;
            for (const auto& h : workedHours(project.project, static_cast<int>(t), placed))
                for (const auto w : project.who[t][static_cast<std::size_t>(placed.mode)])
                    taken_[w].push_back({clock.at(h.from), clock.at(h.to)});
        }
    }

    void judge(const RunUpPart& part) {
        allProved_ = allProved_ && part.schedule.proved && part.schedule.fits();
        out_.withinPercent = std::max(out_.withinPercent, part.schedule.withinPercent());
    }

    void addOver(const RunUpDraft& draft, const RunUpPart& part, const RunUpClock& clock, bool mend) {
        RunUpOver over;
        const auto& misfit = part.misfit;
        const auto task = static_cast<std::size_t>(std::max(0, misfit.task));
        over.proved = misfit.proved;
        over.day = spans_[task].to.day;
        over.minutes = Minutes(part.schedule.worst);
        if (misfit.task >= 0 && part.schedule.tasks[task].mode < 0) over.minutes = draft.steps[task].minutes;
        Minutes all;
        for (const auto& step : draft.steps)
            all += step.minutes;
        const auto known = [&](const std::optional<runup::Overload>& o) {
            return o && o->over() > 0 && o->over() <= all.value; // more than all of it says nothing
        };
        if (known(misfit.day)) {
            over.day = clock.at(misfit.day->from + 720).day;
            over.minutes = Minutes(misfit.day->over());
        } else if (known(misfit.tightest)) {
            over.minutes = Minutes(misfit.tightest->over());
        }
        if (misfit.task >= 0) over.step = firstStep_[task];
        for (std::size_t t = 0; t < draft.steps.size(); ++t) {
            const auto& placed = part.schedule.tasks[t];
            if (placed.outside == 0 && placed.mode >= 0) continue;
            const auto booking = draft.groups[static_cast<std::size_t>(draft.steps[t].group)];
            if (std::find(over.bookings.begin(), over.bookings.end(), booking) == over.bookings.end())
                over.bookings.push_back(booking);
        }
        std::sort(over.bookings.begin(), over.bookings.end());
        if (mend) addMends(draft, part, over);
        out_.over.push_back(std::move(over));
    }

    static void addMends(const RunUpDraft& draft, const RunUpPart& part, RunUpOver& over) {
        for (const auto& m : part.mends) {
            RunUpMend mend;
            mend.fits = m.fits;
            mend.earlier = Minutes(m.earlier);
            mend.pieces = Pieces(m.pieces);
            mend.left = Minutes(m.outside);
            if (m.kind == runup::MendKind::startEarlier) mend.kind = RunUpMendKind::startEarlier;
            if (m.kind == runup::MendKind::oneMoreHelper) mend.kind = RunUpMendKind::oneMoreHelper;
            if (m.kind == runup::MendKind::fewerPieces) {
                mend.kind = RunUpMendKind::fewerPieces;
                mend.booking = draft.groups[static_cast<std::size_t>(m.group)];
            }
            over.mends.push_back(mend);
        }
    }

    /// Steps and rounds by time; what points at them follows.
    void inOrderOfTime() {
        const auto rounds = orderOf(out_.rounds, [](const RunUpRound& r) { return std::tie(r.from, r.to); });
        const auto steps =
            orderOf(out_.steps, [](const RunUpStep& s) { return std::tie(s.from, s.to, s.key); });
        for (auto& step : out_.steps)
            if (step.round) step.round = rounds[*step.round];
        for (auto& over : out_.over)
            if (over.step) over.step = steps[*over.step];
        std::stable_sort(out_.over.begin(), out_.over.end(),
                         [](const RunUpOver& a, const RunUpOver& b) { return a.day < b.day; });
        for (const auto& over : out_.over) {
            model::Ref place;
            if (!over.bookings.empty()) place = {model::TableKind::bookings, over.bookings.front().value};
            out_.findings.push_back({FindingCode::workTooMuch,
                                     Severity::warning,
                                     place,
                                     {over.day.iso()},
                                     {static_cast<double>(over.minutes.value)}});
        }
        out_.proved = allProved_;
        if (out_.proved) out_.withinPercent = 0;
    }

    /// Sorts and tells where each has gone.
    template <class Rows, class KeyOf>
    static std::vector<std::size_t> orderOf(Rows& rows, KeyOf keyOf) {
        std::vector<std::size_t> order(rows.size()), places(rows.size());
        for (std::size_t i = 0; i < order.size(); ++i)
            order[i] = i;
        std::stable_sort(order.begin(), order.end(),
                         [&](auto a, auto b) { return keyOf(rows[a]) < keyOf(rows[b]); });
        Rows sorted;
        for (std::size_t i = 0; i < order.size(); ++i) {
            places[order[i]] = i;
            sorted.push_back(std::move(rows[order[i]]));
        }
        rows = std::move(sorted);
        return places;
    }

    void addPeople() {
        if (out_.steps.empty()) return;
        Day first = out_.steps.front().from.day, last = first;
        for (const auto& step : out_.steps)
            last = std::max(last, step.to.day);
        for (std::size_t w = 0; w < facts_.hands.workers().size(); ++w)
            out_.people.push_back(facts_.hands.hours(w, first, last));
    }

    RunUpFacts& facts_;
    const RunUpPlan* before_;
    const std::vector<std::shared_ptr<const RunUpPart>> none_;
    RunUpPlan out_;
    TakenHours taken_;
    std::vector<Laid> spans_;            ///< of the part's drafts
    std::vector<std::size_t> firstStep_; ///< of the part's drafts, in out_.steps before they are sorted
    int mended_ = 0;
    bool allProved_ = true;
};

} // namespace

RunUpPlan runUpPlan(const model::Season& season, const Plan& plan, const RunUpOptions& options,
                    const RunUpPlan* before) {
    RunUpFacts facts(season, plan, options);
    return Layer(facts, before).run();
}

} // namespace withy::plan
