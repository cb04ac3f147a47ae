// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/run_up_words.h"

#include "ui/logic/format.h"
#include "ui/logic/garden_words.h"
#include "ui/logic/models/run_up_board.h"
#include "ui/logic/run_up_stretches.h"
#include "ui/logic/step_wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

using plan::RunUpStep;
using plan::StepKind;
using plan::TimedStep;

struct RunUpWordsSay {
    Q_DECLARE_TR_FUNCTIONS(RunUp)
};

bool isLost(const model::Season& season, Id<model::Booking> id) {
    const auto* booking = season.bookings.find(id);
    return !booking || booking->standing == model::Standing::lost;
}

TimedStep asTimed(const RunUpStep& step) {
    TimedStep out;
    out.kind = step.key.step;
    out.from = step.from;
    out.to = step.to;
    out.minutes = step.minutes;
    out.line = step.key.line;
    out.drop = step.key.drop;
    out.stems = step.stems;
    out.count = step.count;
    out.litres = step.litres;
    return out;
}

/// A booking's own step as one of the run-up; of several alike on one day the later ones are numbered.
RunUpStep asRunUp(const TimedStep& step, Id<model::Booking> booking, std::vector<plan::StepKey>& taken) {
    RunUpStep out;
    out.key = {step.kind, booking, step.line, step.drop, std::nullopt, 0};
    if (step.kind == StepKind::cut) out.key.day = step.from.day;
    while (std::find(taken.begin(), taken.end(), out.key) != taken.end())
        ++out.key.number;
    taken.push_back(out.key);
    out.from = step.from;
    out.to = step.to;
    out.minutes = step.minutes;
    out.earliest = step.from;
    out.latest = step.to;
    out.bookings = {booking};
    out.stems = step.stems;
    out.count = step.count;
    out.litres = step.litres;
    out.working = step.working;
    return out;
}

/// What is only set down at once is no step of its own.
bool isToldOf(const TimedStep& step) {
    return step.kind != StepKind::place || step.minutes.value > 0;
}

std::vector<RunUpStep> ownSteps(const plan::BookingPlan& own) {
    std::vector<RunUpStep> out;
    std::vector<plan::StepKey> taken;
    for (const auto& step : own.steps)
        if (isToldOf(step)) out.push_back(asRunUp(step, own.booking, taken));
    return out;
}

std::vector<RunUpStep> allSteps(const model::Season& season, const plan::Plan& plan) {
    std::vector<RunUpStep> out;
    std::map<Id<model::Booking>, std::vector<plan::StepKey>> taken;
    StepReader reader;
    reader.laid = [&](std::size_t i) { out.push_back(plan.runUp->steps[i]); };
    reader.own = [&](const plan::BookingPlan& own, const TimedStep& step) {
        out.push_back(asRunUp(step, own.booking, taken[own.booking]));
    };
    readSteps(season, plan, reader);
    return out;
}

std::vector<RunUpStep> stepsServing(const model::Season& season, const plan::Plan& plan,
                                    Id<model::Booking> booking) {
    if (isLost(season, booking)) return {};
    std::vector<RunUpStep> out;
    if (!plan.runUp || !isLaid(*plan.runUp, booking)) {
        const auto found = plan.bookings.find(booking);
        return found == plan.bookings.end() ? out : ownSteps(*found->second);
    }
    for (const auto& step : plan.runUp->steps)
        if (std::find(step.bookings.begin(), step.bookings.end(), booking) != step.bookings.end())
            out.push_back(step);
    return out;
}

Id<model::Booking> bookingOf(const RunUpStep& step) {
    if (step.key.booking) return *step.key.booking;
    return step.bookings.empty() ? Id<model::Booking>() : step.bookings.front();
}

} // namespace

void readSteps(const model::Season& season, const plan::Plan& plan, const StepReader& reader) {
    std::set<Id<model::Booking>> together;
    for (std::size_t i = 0; plan.runUp && i < plan.runUp->steps.size(); ++i) {
        const auto& served = plan.runUp->steps[i].bookings;
        together.insert(served.begin(), served.end());
        if (reader.laid &&
            std::any_of(served.begin(), served.end(), [&](auto id) { return !isLost(season, id); }))
            reader.laid(i);
    }
    for (const auto& [id, own] : plan.bookings) {
        if (!reader.own || together.contains(id) || isLost(season, id)) continue;
        for (const auto& step : own->steps)
            if (isToldOf(step)) reader.own(*own, step);
    }
}

bool isLaid(const plan::RunUpPlan& runUp, Id<model::Booking> booking) {
    return std::any_of(runUp.steps.begin(), runUp.steps.end(), [&](const auto& step) {
        const auto kind = step.key.step;
        return kind != StepKind::collect && kind != StepKind::driveBack && kind != StepKind::washBack &&
               kind != StepKind::drive &&
               std::find(step.bookings.begin(), step.bookings.end(), booking) != step.bookings.end();
    });
}

std::vector<RunUpStep> runUpSteps(const model::Season& season, const plan::Plan& plan,
                                  std::optional<Id<model::Booking>> booking) {
    auto out = booking ? stepsServing(season, plan, *booking) : allSteps(season, plan);
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.from < b.from; });
    return out;
}

std::vector<std::size_t> runUpRounds(const plan::Plan& plan, std::optional<Id<model::Booking>> booking) {
    std::vector<std::size_t> out;
    if (!plan.runUp) return out;
    const auto& rounds = plan.runUp->rounds;
    for (std::size_t i = 0; i < rounds.size(); ++i) {
        const auto& served = rounds[i].bookings;
        if (!booking || std::find(served.begin(), served.end(), *booking) != served.end()) out.push_back(i);
    }
    return out;
}

const RunUpStep* stepOfRound(const plan::RunUpPlan& runUp, std::size_t round) {
    for (const auto& step : runUp.steps)
        if (step.round == round && step.key.step == StepKind::cut) return &step;
    return nullptr;
}

QString stepTitle(const model::Season& season, const RunUpStep& step) {
    return stepTitle(season, bookingOf(step), asTimed(step));
}

QString stepDetail(const model::Season& season, const RunUpStep& step) {
    return stepDetail(season, asTimed(step));
}

bool needsNobody(const RunUpStep& step) {
    return step.key.step == StepKind::drink || step.key.step == StepKind::restCool;
}

QString goesOnWords(const QString& title) {
    return RunUpWordsSay::tr("%1, goes on").arg(title);
}

QString workerName(const model::Season& season, const plan::Worker& worker) {
    if (!worker.helper) return RunUpWordsSay::tr("You");
    const auto* helper = season.helpers.find(*worker.helper);
    return helper ? text(helper->name) : QString();
}

QString whoWords(const model::Season& season, const RunUpStep& step) {
    if (needsNobody(step)) return QStringLiteral("–");
    QStringList names;
    for (const auto& worker : step.who)
        names << workerName(season, worker);
    names.removeAll(QString());
    return names.join(QStringLiteral(", "));
}

QString bookingWords(const model::Season& season, const std::vector<Id<model::Booking>>& bookings) {
    QStringList titles;
    for (const auto id : bookings)
        if (const auto* booking = season.bookings.find(id)) titles << text(booking->title);
    if (titles.size() == 2) return RunUpWordsSay::tr("%1 and %2").arg(titles[0], titles[1]);
    if (titles.size() > 2)
        return RunUpWordsSay::tr("%n booking(s)", nullptr, static_cast<int>(titles.size()));
    return titles.join(QString());
}

QString roundFrom(const model::Season& season, const plan::RunUpRound& round) {
    QStringList parts;
    for (const auto& row : round.patches) {
        const auto* plant = season.plants.find(row.plant);
        const auto* patch = row.patch ? season.patches.find(*row.patch) : nullptr;
        const QString what =
            RunUpWordsSay::tr("%1 %2").arg(whole(row.stems.value), plant ? text(plant->name) : QString());
        parts << (patch ? RunUpWordsSay::tr("patch %1, %2: %3")
                              .arg(walkingPlace(season, patch->id), text(patch->label), what)
                        : what);
    }
    return parts.isEmpty() ? QString() : RunUpWordsSay::tr("From %1.").arg(parts.join(QStringLiteral("; ")));
}

QString hoursWords(LocalTime from, LocalTime to) {
    if (to.day == from.day) return RunUpWordsSay::tr("%1 to %2").arg(clock(from), clock(to));
    return RunUpWordsSay::tr("%1 to %2 %3")
        .arg(clock(from), shortDay(to.day).section(QLatin1Char(' '), 0, 0), clock(to));
}

QString planClock(LocalTime time) {
    constexpr int lastFive = 23 * 60 + 55;
    const LocalTime told = toFive(time);
    return clock(told.day == time.day ? told : LocalTime{time.day, lastFive}); // beside its own day's name
}

QString planBy(LocalTime time) {
    return clock(LocalTime::fromMinutes(time.minutesSinceEpoch() / 5 * 5));
}

QString planHours(LocalTime from, LocalTime to) {
    if (to.day == from.day) return RunUpWordsSay::tr("%1 to %2").arg(planClock(from), planClock(to));
    return RunUpWordsSay::tr("%1 to %2 %3")
        .arg(planClock(from), shortDay(to.day).section(QLatin1Char(' '), 0, 0), planClock(to));
}

std::vector<Id<model::Booking>> bookingsOfBoard(const model::Season& season, const plan::Plan& plan,
                                                Day monday) {
    std::vector<Id<model::Booking>> out;
    const auto isInWeek = [&](Day day) { return monday <= day && day < monday + 7; };
    const auto add = [&](Id<model::Booking> id) {
        if (std::find(out.begin(), out.end(), id) == out.end()) out.push_back(id);
    };
    for (const auto& booking : season.bookings)
        if (booking.standing != model::Standing::lost && isInWeek(booking.eventStart.day)) add(booking.id);
    const auto goesOn = [&](const plan::RunUpStep& step) {
        if (step.from.day >= monday || step.to.day < monday) return false;
        const auto worked = workedAt(plan.runUp.get(), step);
        return std::any_of(worked.begin(), worked.end(),
                           [&](const auto& span) { return isInWeek(span.from.day); });
    };
    for (const auto& step : runUpSteps(season, plan))
        if (isInWeek(step.from.day) || goesOn(step))
            for (const auto id : step.bookings)
                add(id);
    std::stable_sort(out.begin(), out.end(), [&](auto a, auto b) {
        const auto* left = season.bookings.find(a);
        const auto* right = season.bookings.find(b);
        return left && right && left->eventStart < right->eventStart;
    });
    return out;
}

std::map<Id<model::Booking>, QString> bookingLetters(const model::Season& season,
                                                     const std::vector<Id<model::Booking>>& bookings) {
    std::map<Id<model::Booking>, QString> out;
    for (const auto id : bookings) {
        if (out.contains(id)) continue;
        const auto* booking = season.bookings.find(id);
        QString candidates = (booking ? text(booking->title) : QString()).toUpper();
        candidates += QStringLiteral("ABCDEFGHIJKLMNOPQRSTUVWXYZ");
        for (const QChar c : candidates) {
            const bool taken =
                std::any_of(out.begin(), out.end(), [&](const auto& l) { return l.second == QString(c); });
            if (!c.isLetter() || taken) continue;
            out[id] = QString(c);
            break;
        }
        if (!out.contains(id)) out[id] = QString::number(out.size()); // a week of more than the alphabet
    }
    return out;
}

} // namespace withy::ui
