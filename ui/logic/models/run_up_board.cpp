// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/run_up_board.h"

#include "core/garden/heat.h"
#include "core/plan/day_heat.h"
#include "core/runup/busy_spans.h"
#include "core/runup/time_spans.h"
#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/run_up_stretches.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

using plan::RunUpStep;
using plan::StepKind;
using runup::TimeSpan;

struct RunUpBoardSay {
    Q_DECLARE_TR_FUNCTIONS(RunUpBoard)
};

class BoardMaker {
public:
    BoardMaker(const model::Season& season, const plan::Plan& plan, std::optional<Id<model::Booking>> only,
               std::optional<Day> today)
        : season_(season), plan_(plan), only_(only), today_(today) {}

    /// The same as on the week board on paper.
    void giveLetters(Day monday) {
        lettered_ = bookingsOfBoard(season_, plan_, monday);
        letters_ = bookingLetters(season_, lettered_);
    }

    Board board(const std::vector<Day>& days) {
        Board out;
        out.heatLimit = season_.theSettings().heatLimitCelsius;
        out.units = season_.theSettings().units;
        for (const Day day : days)
            out.days.push_back(dayOf(day));
        setHours(out);
        for (const auto id : lettered_)
            if (const auto found = letters_.find(id); found != letters_.end())
                if (const auto* booking = season_.bookings.find(id))
                    out.key.emplace_back(found->second, text(booking->title));
        return out;
    }

    [[nodiscard]] std::vector<Day> daysOfWork() const {
        std::set<Day> days;
        for (const auto& s : steps()) {
            if (!serves(s) || isThread(s)) continue;
            for (Day d = s.from.day; d <= s.to.day && LocalTime{d, 0} < s.to + Minutes(1); d = d + 1)
                days.insert(d);
        }
        if (const auto* b = only_ ? season_.bookings.find(*only_) : nullptr; b && !days.empty())
            days.insert(b->eventStart.day);
        return {days.begin(), days.end()};
    }

private:
    [[nodiscard]] const std::vector<RunUpStep>& steps() const {
        static const std::vector<RunUpStep> none;
        return plan_.runUp ? plan_.runUp->steps : none;
    }

    static bool isThread(const RunUpStep& s) {
        return s.key.step == StepKind::drink || s.key.step == StepKind::restCool;
    }

    [[nodiscard]] bool serves(const RunUpStep& s) const {
        return !only_ || std::find(s.bookings.begin(), s.bookings.end(), *only_) != s.bookings.end();
    }

    [[nodiscard]] QString letterOf(const RunUpStep& s) const {
        if (only_ || s.bookings.size() != 1) return {};
        const auto found = letters_.find(s.bookings.front());
        return found == letters_.end() ? QString() : found->second;
    }

    BoardDay dayOf(Day day) {
        BoardDay out;
        out.day = day;
        out.title = longDay(day).section(QLatin1Char(' '), 0, 2);
        out.brief = shortDay(day).section(QLatin1Char(' '), 0, 1);
        out.isToday = today_ == day;
        setSky(out);
        setRest(out);
        setOver(out);
        const auto hours = peopleOn(day);
        for (const auto& person : hours)
            addLane(out, person);
        if (plan_.runUp) out.work = workBetween(work_, day, day); // as everywhere else it is told
        addNobody(out);
        addThreads(out);
        addGuests(out);
        return out;
    }

    void setSky(BoardDay& out) const {
        if (!plan_.days) return;
        const auto& place = plan_.days->on(out.day);
        const auto& g = place.garden;
        out.dawn = g.civilDawn;
        out.dusk = g.civilDusk;
        out.sunrise = g.heat.sunrise;
        out.sunset = g.heat.sunset;
        out.darkAllDay = g.twilight == garden::TwilightStatus::darkAllDay;
        if (!place.basis) return;
        for (int q = 0; q <= 96; ++q) {
            const auto celsius = garden::temperatureAt(g.heat, q / 4.0);
            if (!celsius.ok()) return out.heat.clear();
            out.heat.push_back(*celsius);
        }
    }

    void setRest(BoardDay& out) const {
        QStringList words;
        const auto* b = only_ ? season_.bookings.find(*only_) : nullptr;
        if (b) {
            const int ahead = b->eventStart.day - out.day;
            if (ahead == 0)
                words << RunUpBoardSay::tr("the day itself");
            else if (ahead > 0)
                words << RunUpBoardSay::tr("%n day(s) before", nullptr, ahead);
            else
                words << RunUpBoardSay::tr("%n day(s) after", nullptr, -ahead);
        }
        if (!out.heat.empty()) words << warmestWords(out, season_);
        out.rest = words.join(QStringLiteral(" · "));
    }

    void setOver(BoardDay& out) const {
        if (!plan_.runUp) return;
        for (const auto& over : plan_.runUp->over)
            if (over.day == out.day)
                out.over = RunUpBoardSay::tr("%1 too much").arg(workWords(toldWork(over.minutes)));
    }

    /// The grower, and the helpers who are there or have something to do.
    [[nodiscard]] std::vector<plan::WorkerHours> peopleOn(Day day) const {
        std::vector<plan::WorkerHours> out;
        if (!plan_.runUp) return out;
        if (plan_.runUp->people.empty()) {
            plan::WorkerHours you;
            you.busy = runup::growersBusySpans(season_, day, day);
            return {you};
        }
        for (const auto& person : plan_.runUp->people) {
            if (person.worker.helper && !season_.helpers.find(*person.worker.helper)) continue;
            const bool there = touches(person.there, day);
            const bool works = std::any_of(steps().begin(), steps().end(), [&](const RunUpStep& s) {
                return does(s, person.worker) && touches({{s.from, s.to}}, day);
            });
            if (!person.worker.helper || works || (there && !only_)) out.push_back(person);
        }
        if (!out.empty()) out.front().busy = runup::growersBusySpans(season_, day, day);
        return out;
    }

    static bool touches(const std::vector<TimeSpan>& spans, Day day) {
        return std::any_of(spans.begin(), spans.end(), [&](const TimeSpan& s) {
            return s.from < LocalTime{day + 1, 0} && LocalTime{day, 0} < s.to;
        });
    }

    static bool does(const RunUpStep& s, const plan::Worker& worker) {
        return std::find(s.who.begin(), s.who.end(), worker) != s.who.end();
    }

    static std::vector<TimeSpan> onDay(const std::vector<TimeSpan>& spans, Day day) {
        return runup::inBoth(spans, {{LocalTime{day, 0}, LocalTime{day + 1, 0}}});
    }

    void addLane(BoardDay& out, const plan::WorkerHours& person) const {
        BoardLane lane;
        lane.worker = person.worker;
        lane.name = workerName(season_, person.worker);
        lane.there = onDay(person.there, out.day);
        if (person.worker.helper && !lane.there.empty())
            lane.hours = hoursWords(lane.there.front().from, lane.there.back().to);
        std::vector<TimeSpan> busy;
        for (const auto& b : person.busy) {
            busy.push_back(b.span);
            addBusyBox(lane, b, out.day);
        }
        Minutes work;
        for (std::size_t i = 0; i < steps().size(); ++i) {
            const auto& s = steps()[i];
            if (!does(s, person.worker) || isThread(s)) continue;
            work += addStep(lane, i, onDay(workedAt(s, {&person}), out.day));
        }
        for (const auto& free : runup::without(lane.there, busy))
            out.room += free.to - free.from;
        if (!person.worker.helper && work.value > 0) lane.hours = workWords(toldWork(work));
        out.lanes.push_back(std::move(lane));
    }

    void addBusyBox(BoardLane& lane, const runup::BusySpan& busy, Day day) const {
        for (const auto& span : onDay({busy.span}, day)) {
            BoardBox box;
            box.look = BoardLook::busy;
            box.from = span.from;
            box.to = span.to;
            box.name = busy.label.empty() ? RunUpBoardSay::tr("Busy") : text(busy.label);
            box.spoken =
                RunUpBoardSay::tr("%1, busy %2").arg(box.name, hoursWords(busy.span.from, busy.span.to));
            auto* last = lane.boxes.empty() ? nullptr : &lane.boxes.back();
            if (last && span.from < last->to) { // one band of hatching with both names
                last->to = std::max(last->to, box.to);
                last->name += QStringLiteral(", ") + box.name;
                last->spoken += QStringLiteral("; ") + box.spoken;
                continue;
            }
            lane.boxes.push_back(std::move(box));
        }
    }

    Minutes addStep(BoardLane& lane, std::size_t i, const std::vector<TimeSpan>& spans) const {
        Minutes work;
        bool first = true;
        for (const auto& span : spans) {
            lane.boxes.push_back(boxOf(i, span, lane.worker, first));
            work += span.to - span.from;
            first = false;
        }
        return work;
    }

    [[nodiscard]] BoardBox boxOf(std::size_t i, const TimeSpan& span, const plan::Worker& lane,
                                 bool first) const {
        const auto& s = steps()[i];
        BoardBox box;
        box.look = isThread(s)                   ? BoardLook::thread
                   : s.key.step == StepKind::cut ? BoardLook::round
                                                 : BoardLook::step;
        box.from = toFive(span.from);
        box.to = std::max(toFive(span.to), box.from + Minutes(5));
        box.step = i;
        box.mine = serves(s);
        box.kept = s.pinned;
        box.done = s.done.has_value();
        box.outside = !s.placed || (s.from < s.earliest && !s.pinned && !s.done);
        box.spoken = spokenOf(s);
        if (!first) return box;
        box.name = shortStep(s);
        box.letter = letterOf(s);
        box.detail = detailOf(s, lane);
        return box;
    }

    [[nodiscard]] QString detailOf(const RunUpStep& s, const plan::Worker& lane) const {
        if (isThread(s)) return {};
        const auto took = s.took.value_or(s.to - s.from);
        const auto shown = s.splittable && !s.took ? minutesEach(s) : took;
        QString words = workWords(shown);
        for (const auto& other : s.who) {
            if (other == lane) continue;
            const QString name = other.helper ? workerName(season_, other) : RunUpBoardSay::tr("you");
            words = RunUpBoardSay::tr("%1 with %2").arg(words, name);
        }
        return words;
    }

    [[nodiscard]] QString spokenOf(const RunUpStep& s) const {
        QStringList words{stepTitle(season_, s), planHours(s.from, s.to)};
        if (!isThread(s)) words << whoWords(season_, s);
        if (!only_) words << bookingWords(season_, s.bookings);
        if (!s.placed) words << RunUpBoardSay::tr("has no place");
        if (s.pinned) words << RunUpBoardSay::tr("kept there");
        if (s.done) words << RunUpBoardSay::tr("done");
        words.removeAll(QString());
        return words.join(QStringLiteral(", "));
    }

    void addNobody(BoardDay& out) const {
        BoardLane lane;
        lane.nobody = true;
        lane.name = RunUpBoardSay::tr("Nobody");
        lane.hours = RunUpBoardSay::tr("no place found");
        for (std::size_t i = 0; i < steps().size(); ++i) {
            const auto& s = steps()[i];
            if (!s.who.empty() || isThread(s) || s.done) continue;
            addStep(lane, i, onDay({{s.from, s.to}}, out.day));
        }
        if (!lane.boxes.empty()) out.lanes.push_back(std::move(lane));
    }

    /// In the grower's lane, under the steps.
    void addThreads(BoardDay& out) const {
        if (out.lanes.empty()) return;
        std::vector<BoardBox> threads;
        for (std::size_t i = 0; i < steps().size(); ++i) {
            const auto& s = steps()[i];
            if (!isThread(s) || !serves(s)) continue;
            for (const auto& span : onDay({{s.from, s.to}}, out.day)) {
                const auto box = boxOf(i, span, {}, true);
                auto* last = threads.empty() ? nullptr : &threads.back();
                if (!only_ && last && box.from <= last->to) // in the week one thread says it
                    last->to = std::max(last->to, box.to);
                else
                    threads.push_back(box);
            }
        }
        auto& boxes = out.lanes.front().boxes;
        const auto at = std::find_if(boxes.begin(), boxes.end(),
                                     [](const BoardBox& b) { return b.look != BoardLook::busy; });
        boxes.insert(at, threads.begin(), threads.end());
    }

    void addGuests(BoardDay& out) const {
        if (out.lanes.empty()) return;
        for (const auto& b : season_.bookings) {
            const bool shown = only_ ? b.id == *only_ : b.standing != model::Standing::lost;
            if (!shown || plan_.bookings.find(b.id) == plan_.bookings.end()) continue;
            for (const auto& span : onDay({{b.eventStart, b.eventEnd}}, out.day)) {
                BoardBox box;
                box.look = BoardLook::fixed;
                box.from = span.from;
                box.to = span.to;
                box.name = only_ ? RunUpBoardSay::tr("Guests") : text(b.title);
                box.detail = hoursWords(b.eventStart, b.eventEnd);
                box.spoken = RunUpBoardSay::tr("%1, guests %2").arg(text(b.title), box.detail);
                out.lanes.front().boxes.push_back(std::move(box));
            }
        }
    }

    /// Whole hours that hold all there is, the usual day at least.
    static void setHours(Board& out) {
        for (const auto& day : out.days) {
            for (const auto& lane : day.lanes) {
                for (const auto& box : lane.boxes) {
                    if (box.look == BoardLook::thread || box.look == BoardLook::busy) continue;
                    const auto from = (box.from - LocalTime{day.day, 0}).value;
                    const auto to = (box.to - LocalTime{day.day, 0}).value;
                    out.firstHour = std::clamp(static_cast<int>(from / 60), 0, out.firstHour);
                    const auto last = static_cast<int>((to + 59) / 60);
                    if (box.look != BoardLook::fixed)
                        out.lastHour = std::clamp(last, out.lastHour, 24);
                    else
                        out.lastHour =
                            std::clamp(std::min(last, static_cast<int>(from / 60) + 2), out.lastHour, 24);
                }
            }
        }
    }

    const model::Season& season_;
    const plan::Plan& plan_;
    std::map<Day, Minutes> work_ = workByDay(season_, plan_);
    std::optional<Id<model::Booking>> only_;
    std::optional<Day> today_;
    std::vector<Id<model::Booking>> lettered_;
    std::map<Id<model::Booking>, QString> letters_;
};

} // namespace

Board bookingBoard(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking,
                   std::optional<Day> today) {
    BoardMaker maker(season, plan, booking, today);
    return maker.board(maker.daysOfWork());
}

Board weekBoard(const model::Season& season, const plan::Plan& plan, Day monday, std::optional<Day> today) {
    std::vector<Day> days;
    for (int i = 0; i < 7; ++i)
        days.push_back(monday + i);
    BoardMaker maker(season, plan, std::nullopt, today);
    maker.giveLetters(monday);
    return maker.board(days);
}

} // namespace withy::ui
