// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/week_steps.h"

#include "core/garden/sun.h"
#include "core/runup/busy_spans.h"
#include "ui/logic/edits/run_up_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/step_wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>

namespace withy::ui {

namespace {

struct Week {
    Q_DECLARE_TR_FUNCTIONS(WeekSteps)
};

QString hourWords(double hours) {
    return clockOf(static_cast<int>(std::lround(hours * 60)));
}

std::size_t dayIndex(Day day, Day monday) {
    const int ahead = day - monday;
    return ahead < 0 || ahead > 6 ? 7 : static_cast<std::size_t>(ahead);
}

WeekStep ownStepOf(const model::Season& season, const plan::BookingPlan& plan, const plan::TimedStep& s) {
    WeekStep step;
    step.from = s.from;
    step.to = s.to;
    step.nobody = needsNobody(s);
    step.minutes = step.nobody ? Minutes{} : s.minutes;
    step.words = stepTitle(season, plan, s);
    step.detail = stepDetail(season, s);
    step.bookings = {plan.booking};
    step.bookingName = bookingWords(season, step.bookings);
    step.booking = plan.booking;
    return step;
}

WeekStep weekStepOf(const model::Season& season, const plan::RunUpPlan& runUp, std::size_t i) {
    const auto& s = runUp.steps[i];
    WeekStep step;
    step.from = s.from;
    step.to = s.to;
    step.nobody = needsNobody(s);
    step.minutes = step.nobody ? Minutes{} : s.minutes;
    step.words = stepTitle(season, s);
    step.detail = stepDetail(season, s);
    step.bookingName = bookingWords(season, s.bookings);
    step.bookings = s.bookings;
    if (!s.bookings.empty()) step.booking = s.bookings.front();
    step.key = s.key;
    step.step = i;
    step.who = whoWords(season, s);
    // As the grower has said it by now: the plan may not have heard yet.
    const auto* mark = edits::markOf(season, s.key);
    step.done = mark ? mark->done : std::nullopt;
    step.took = mark ? mark->minutes : std::nullopt;
    step.kept = mark && mark->pinned;
    step.placed = s.placed;
    return step;
}

void addSteps(const model::Season& season, const plan::Plan& plan, Day monday, std::vector<WeekDay>& days) {
    const auto add = [&](std::size_t at, WeekStep step) {
        days[at].work += step.minutes;
        days[at].steps.push_back(std::move(step));
    };
    StepReader reader;
    reader.laid = [&](std::size_t i) {
        const auto at = dayIndex(plan.runUp->steps[i].from.day, monday);
        if (at < 7) add(at, weekStepOf(season, *plan.runUp, i));
    };
    reader.own = [&](const plan::BookingPlan& own, const plan::TimedStep& step) {
        const auto at = dayIndex(step.from.day, monday);
        if (at < 7) add(at, ownStepOf(season, own, step));
    };
    readSteps(season, plan, reader);
}

void addBusy(const model::Season& season, Day monday, std::vector<WeekDay>& days) {
    for (const auto& span : runup::growersBusySpans(season, monday, monday + 6)) {
        WeekStep step;
        step.from = std::max(span.span.from, LocalTime{monday, 0}); // it may have begun the week before
        const auto at = dayIndex(step.from.day, monday);
        if (at > 6) continue;
        step.to = span.span.to;
        step.words = text(span.label);
        step.nobody = true;
        for (const auto& b : season.busyHours) {
            const int since = span.span.from.day - b.from.day;
            const bool thatDay = b.repeats == model::Repeat::never    ? since == 0
                                 : b.repeats == model::Repeat::weekly ? since % 7 == 0
                                                                      : since >= 0;
            if (!b.helper && b.label == span.label && b.from.minute == span.span.from.minute && thatDay)
                step.busy = b.id;
        }
        days[at].steps.push_back(std::move(step));
    }
}

} // namespace

Day weekOf(Day day) {
    return day - (day.weekday() - 1);
}

QString sunWords(const model::Settings& settings, Day day) {
    const auto zone = Zone::fromPosix(settings.zoneRule);
    const auto sun = garden::sunOn(day, {settings.latitude, settings.longitude});
    if (!zone || !sun.ok()) return {};
    if (sun->status == garden::SunStatus::allDay) return Week::tr("the sun does not set");
    if (sun->status == garden::SunStatus::allNight) return Week::tr("the sun does not rise");
    if (!sun->rise || !sun->set) return {};
    return Week::tr("sun up %1, down %2")
        .arg(hourWords(garden::clockHours(*zone, day, *sun->rise)),
             hourWords(garden::clockHours(*zone, day, *sun->set)));
}

QString workWords(Minutes work) {
    const auto hours = work.value / 60;
    const auto minutes = work.value % 60;
    if (hours == 0) return Week::tr("%1 min").arg(minutes);
    return minutes == 0 ? Week::tr("%1 h").arg(hours)
                        : Week::tr("%1 h %2").arg(hours).arg(minutes, 2, 10, QLatin1Char('0'));
}

Minutes toldWork(Minutes work) {
    return work.value > 0 ? std::max(Minutes(5), Minutes((work.value + 2) / 5 * 5)) : work;
}

std::map<Day, Minutes> workByDay(const model::Season& season, const plan::Plan& plan) {
    std::map<Day, Minutes> days;
    const auto add = [&](const auto& step) {
        if (!needsNobody(step)) days[step.from.day] += step.minutes;
    };
    StepReader reader;
    reader.laid = [&](std::size_t i) { add(plan.runUp->steps[i]); };
    reader.own = [&](const plan::BookingPlan&, const plan::TimedStep& step) { add(step); };
    readSteps(season, plan, reader);
    for (auto& [day, work] : days)
        work = toldWork(work);
    return days;
}

Minutes workBetween(const std::map<Day, Minutes>& days, Day first, Day last) {
    Minutes all;
    for (auto day = days.lower_bound(first); day != days.end() && day->first <= last; ++day)
        all += day->second;
    return all;
}

std::vector<WeekDay> stepsOfWeek(const model::Season& season, const plan::Plan& plan, Day monday) {
    std::vector<WeekDay> days(7);
    for (int i = 0; i < 7; ++i) {
        auto& day = days[static_cast<std::size_t>(i)];
        day.day = monday + i;
        day.sun = sunWords(season.theSettings(), day.day);
    }
    addSteps(season, plan, monday, days);
    addBusy(season, monday, days);
    for (auto& day : days)
        day.work = toldWork(day.work);
    for (auto& day : days)
        std::stable_sort(day.steps.begin(), day.steps.end(),
                         [](const WeekStep& a, const WeekStep& b) { return a.from < b.from; });
    return days;
}

Day nextWeekWithWork(const model::Season& season, const plan::Plan& plan, std::optional<Day> from) {
    const auto& s = season.theSettings();
    const Day monday = weekOf(std::clamp(from.value_or(s.firstDay), s.firstDay, s.lastDay));
    std::optional<Day> next;
    const auto read = [&](Day day) {
        if (day >= monday && (!next || day < *next)) next = day;
    };
    StepReader reader;
    reader.laid = [&](std::size_t i) { read(plan.runUp->steps[i].from.day); };
    reader.own = [&](const plan::BookingPlan&, const plan::TimedStep& step) { read(step.from.day); };
    readSteps(season, plan, reader);
    return next ? weekOf(*next) : monday;
}

std::vector<WeekDay> stepsOfBooking(const model::Season& season, const plan::Plan& plan,
                                    Id<model::Booking> booking) {
    std::map<Day, WeekDay> days;
    for (std::size_t i = 0; plan.runUp && i < plan.runUp->steps.size(); ++i) {
        const auto& s = plan.runUp->steps[i];
        if (std::find(s.bookings.begin(), s.bookings.end(), booking) == s.bookings.end()) continue;
        auto& day = days[s.from.day];
        day.steps.push_back(weekStepOf(season, *plan.runUp, i));
        day.work += day.steps.back().minutes;
    }
    std::vector<WeekDay> out;
    for (auto& [at, day] : days) {
        day.work = toldWork(day.work);
        day.day = at;
        day.sun = sunWords(season.theSettings(), at);
        out.push_back(std::move(day));
    }
    return out;
}

LocalTime tickTime(LocalTime plannedEnd, std::optional<LocalTime> now) {
    return now ? std::min(plannedEnd, *now) : plannedEnd;
}

} // namespace withy::ui
