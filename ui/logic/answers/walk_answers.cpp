// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/answers/walk_answers.h"

#include "core/plan/forecast_plan.h"
#include "ui/logic/format.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

using Weight = AnswerPart::Weight;
using edits::WalkCount;

// Ten times the expectation and twenty stems more is what the forecast bounds too (patch_forecast.h).
constexpr std::int64_t farTimes = 10;
constexpr std::int64_t farLeast = 20;
constexpr int fortnight = 14; // days

struct Walk {
    Q_DECLARE_TR_FUNCTIONS(Walk)
};

std::int64_t freshLikely(const garden::PatchForecast& forecast, Day from, Day to) {
    std::int64_t sum = 0;
    for (Day d = from; d <= to; d = d + 1)
        if (const auto* on = forecast.on(d)) sum += on->supply.likely.value;
    return sum;
}

std::int64_t standingLikely(const garden::PatchForecast& forecast, Day day) {
    const auto* on = forecast.on(day);
    return on ? on->standing.likely.value : 0;
}

WalkExpectation expectationOf(const garden::PatchForecast& forecast, Day day) {
    WalkExpectation e;
    e.likely = {standingLikely(forecast, day), freshLikely(forecast, day + 1, day + 3),
                freshLikely(forecast, day + 1, day + 7)};
    e.week = *e.likely[0] + *e.likely[2];
    e.total = forecast.expected;
    for (Day d = day; d <= day + fortnight; d = d + 1) {
        const auto* on = forecast.on(d);
        if (on) e.fortnight += on->supply.hopeful.value + (d == day ? on->standing.hopeful.value : 0);
    }
    return e;
}

bool isFar(std::int64_t counted, std::int64_t expected) {
    return counted >= farTimes * std::max<std::int64_t>(expected, 1) && counted >= expected + farLeast;
}

} // namespace

WalkExpectations walkExpectations(const model::Season& season, Day day) {
    model::Season before = season;
    for (const auto& w : season.walks)
        if (day <= w.date) before.walks.erase(w.id);
    const plan::Index index(before);
    const auto garden = plan::forecastPlan(index, before, {day});
    WalkExpectations out;
    for (const auto& [patch, outlook] : garden.patches)
        if (outlook.forecast) out.emplace(patch, expectationOf(*outlook.forecast, day));
    return out;
}

bool isOutOfBloom(const WalkExpectations& expected, Id<model::Patch> patch) {
    const auto found = expected.find(patch);
    return found != expected.end() && found->second.fortnight == 0;
}

std::optional<std::int64_t> likelyThisWeek(const plan::Plan& plan, Id<model::Patch> patch, Day day) {
    if (!plan.garden) return std::nullopt;
    const auto found = plan.garden->patches.find(patch);
    if (found == plan.garden->patches.end() || !found->second.forecast) return std::nullopt;
    return expectationOf(*found->second.forecast, day).week;
}

Answer walkEntryAnswer(const model::Season& season, Day day, const WalkExpectations& expected) {
    if (season.patches.empty()) return {{Walk::tr("There is no patch to walk to yet. Add one first.")}};
    int counted = 0;
    int foretold = 0; // patches with both a count of what is ready and a forecast of it
    int withReady = 0;
    std::int64_t ready = 0;
    std::int64_t readyForetold = 0;
    std::int64_t likely = 0;
    for (const auto& patch : season.patches) {
        const auto* walk = edits::walkOf(season, patch.id, day);
        if (!walk || !(walk->readyNow || walk->withinThreeDays || walk->withinWeek)) continue;
        ++counted;
        if (!walk->readyNow) continue;
        ++withReady;
        ready += walk->readyNow->value;
        const auto e = expected.find(patch.id);
        if (e == expected.end() || !e->second.likely[0]) continue;
        ++foretold;
        readyForetold += walk->readyNow->value;
        likely += *e->second.likely[0];
    }
    const int patches = static_cast<int>(season.patches.size());
    if (counted == 0)
        return {{shortDay(day), Weight::strong},
                {Walk::tr(": nothing counted yet. Count what stands ready, even roughly; a blank is not a "
                          "nought.")}};
    Answer answer{{Walk::tr("%1 of %n patch(es)", nullptr, patches).arg(counted), Weight::strong},
                  {Walk::tr(" counted on %1: ").arg(shortDay(day))},
                  {Walk::tr("%1 ready now").arg(whole(ready)), Weight::strong}};
    if (foretold == 0 || likely == 0)
        answer.push_back({QStringLiteral(".")});
    else if (foretold == withReady)
        answer.push_back({Walk::tr(", where %1 were expected.").arg(whole(likely))});
    else
        answer.push_back({Walk::tr("; %1 of them in %n patch(es) with a forecast, where %2 were expected.",
                                   nullptr, foretold)
                              .arg(whole(readyForetold), whole(likely))});
    return answer;
}

QString walkOutOfDays(const model::Season& season, const plan::Plan& plan, Day day,
                      const WalkExpectations& expected) {
    QStringList all;
    for (const auto& patch : season.patches) {
        const auto e = expected.find(patch.id);
        const auto* walk = edits::walkOf(season, patch.id, day);
        const auto stand = walk && walk->readyNow ? walk->readyNow->value : 0;
        if (stand == 0 || e == expected.end() || e->second.week > 0) continue;
        if (likelyThisWeek(plan, patch.id, day).value_or(0) > 0) continue;
        const QString label = text(patch.label), count = whole(stand);
        if (patch.lastCut && *patch.lastCut < day)
            all << Walk::tr("%1: %2 ready, past its usual last cut %3. If it goes on, move that date.")
                       .arg(label, count, shortDay(*patch.lastCut));
        else if (patch.firstCut && day < *patch.firstCut)
            all << Walk::tr("%1: %2 ready, before its usual first cut %3. If it has begun, move that date.")
                       .arg(label, count, shortDay(*patch.firstCut));
        else
            all << Walk::tr("%1: %2 ready, where none were expected.").arg(label, count);
    }
    return all.join(QLatin1Char('\n'));
}

QString countCaution(const model::Walk& walk, WalkCount count, const WalkExpectation& expected) {
    const auto stems = edits::countOf(walk, count);
    if (!stems) return {};
    if (count == WalkCount::withinWeek && walk.withinThreeDays && *walk.withinThreeDays > *stems)
        return Walk::tr(
                   "%1 within the week are fewer than %2 within three days: those belong to the week, so "
                   "the larger is taken.")
            .arg(whole(stems->value), whole(walk.withinThreeDays->value));
    const auto likely = expected.likely[static_cast<std::size_t>(count)];
    if (!likely || !isFar(stems->value, *likely)) return {};
    return Walk::tr(
               "%1 is far above the %2 expected. It is kept as typed, and moves the forecast only so far. "
               "A digit too many?")
        .arg(whole(stems->value), whole(*likely));
}

QString walkDayRefusal(const model::Season& season, Day day) {
    const auto& s = season.theSettings();
    if (s.firstDay <= day && day <= s.lastDay) return {};
    return Walk::tr("%1 is outside the season, %2 to %3. Give a day within it, or move the season's ends.")
        .arg(longDay(day), longDay(s.firstDay), longDay(s.lastDay));
}

QString walkDayCaution(Day day, std::optional<Day> today) {
    if (today && *today < day) return Walk::tr("%1 has not come yet. Is the day right?").arg(shortDay(day));
    return {};
}

QString changeWords(const QString& patch, std::int64_t before, std::int64_t now) {
    return Walk::tr("%1: %2 likely this week, %3 before.").arg(patch, whole(now), whole(before));
}

} // namespace withy::ui
