// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/water_view.h"

#include "core/plan/best_plant.h"
#include "core/plan/grown_on.h"
#include "core/plan/run_up_plan.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/colour_view.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/work_hours.h"

#include <QCoreApplication>

#include <cmath>
#include <memory>
#include <tuple>

namespace withy::ui {

namespace {

struct WaterViewSay {
    Q_DECLARE_TR_FUNCTIONS(WaterCurve)
};

QString moment(LocalTime at) {
    return WaterViewSay::tr("%1, %2").arg(shortDay(at.day), planBy(at));
}

QString hoursWords(double hours) {
    return WaterViewSay::tr("%n hour(s)", nullptr, static_cast<int>(std::lround(hours)));
}

struct Use {
    const model::Booking* booking = nullptr;
    std::shared_ptr<const plan::BookingPlan> plan; ///< with the times of the run-up
};

/// The booking's plan with the hours in which the run-up makes the design and drives: once the work is laid
/// into time, the flowers stand from then on, not from when the booking alone would have them made.
std::shared_ptr<const plan::BookingPlan> asLaid(const model::Season& season, const plan::Plan& plan,
                                                std::shared_ptr<const plan::BookingPlan> own,
                                                Id<model::Design> design) {
    const auto hours = workHours(season, plan, own->booking, design);
    auto laid = std::make_shared<plan::BookingPlan>(*own);
    laid->makeUpStart = hours.makeUpStart;
    laid->makeUpEnd = hours.makeUpEnd;
    laid->driveStart = hours.driveStart;
    for (auto& step : laid->steps)
        if (step.kind == plan::StepKind::drive && hours.driveEnd)
            std::tie(step.from, step.to) = std::pair(hours.driveStart, *hours.driveEnd);
    return laid;
}

Use nextUse(const model::Season& season, const plan::Plan& plan, Id<model::Design> design,
            std::optional<Day> today) {
    const auto id = nextBookingOf(season, design, today);
    const auto found = id ? plan.bookings.find(*id) : plan.bookings.end();
    if (found == plan.bookings.end() || !found->second) return {};
    return {season.bookings.find(*id),
            plan.runUp ? asLaid(season, plan, found->second, design) : found->second};
}

/// Whom it is for, and how long it stands.
QString standsWords(const plan::PieceWater& w, const model::Booking* booking, Units units) {
    double hours = 0;
    for (const auto& phase : w.phases)
        hours += phase.hours;
    if (booking)
        return w.standing // to when it must still look well, which may be long after the guests have gone
                   ? WaterViewSay::tr("Stands %1, from the make-up to %2, for %3.")
                         .arg(hoursWords(hours), moment(w.standing->to), text(booking->title))
                   : WaterViewSay::tr("Stands %1, for %2.").arg(hoursWords(hours), text(booking->title));
    return WaterViewSay::tr("No booking takes it yet: shown for two days at %1.")
        .arg(temperatureWords(w.phases.front().celsius, units));
}

void sayLevel(WaterView& view, const plan::PieceWater& w, const model::Booking* booking, Units units) {
    const auto& c = w.course;
    const auto when = [](const std::optional<LocalTime>& at, double hours) {
        return at ? WaterViewSay::tr("by %1").arg(moment(*at))
                  : WaterViewSay::tr("after %1").arg(hoursWords(hours));
    };
    if (c.topUpAfter && booking && w.topUpAt && booking->eventEnd < *w.topUpAt)
        view.head =
            WaterViewSay::tr("Check and top up before you leave, by %1").arg(moment(booking->eventEnd));
    else if (c.topUpAfter)
        view.head = *c.topUpAfter <= 0
                        ? WaterViewSay::tr("Fill it higher: too little stands over the stem ends")
                        : WaterViewSay::tr("Check and top up %1").arg(when(w.topUpAt, *c.topUpAfter));
    else
        view.head = WaterViewSay::tr("The water lasts to the end");
    if (c.endIsDry && c.dryAfter) {
        view.warns = true;
        const auto dry = w.dryAt && w.standing ? w.standing->to - *w.dryAt : Minutes(0);
        view.sentences << (dry.value > 0
                               ? WaterViewSay::tr(
                                     "Left alone, the stem ends stand dry from %1, for the last %2.")
                                     .arg(moment(*w.dryAt), workWords(dry))
                               : WaterViewSay::tr("Left alone, the stem ends stand dry after %1.")
                                     .arg(hoursWords(*c.dryAfter)));
    } else if (!c.curve.empty()) {
        const QString over = lengthWords(c.curve.back().level - w.stemEnds, units);
        view.sentences << WaterViewSay::tr("%1 still stand over the stem ends then.").arg(over);
    }
}

void sayLitres(WaterView& view, const plan::PieceWater& w, Units units) {
    if (w.course.toCarry.value <= 0) return;
    const double l = static_cast<double>(w.course.toCarry.value) / 1000;
    const QString amount = l < 1 ? millilitresWords(l * 1000, units) : litresWords(l, units);
    view.litres = w.pieces > 1 ? WaterViewSay::tr("%1 for %2").arg(amount, whole(w.pieces)) : amount;
}

QString phaseName(std::size_t i) {
    switch (i) {
    case 0:
        return WaterViewSay::tr("bench");
    case 1:
        return WaterViewSay::tr("cool rest");
    case 2:
        return WaterViewSay::tr("van");
    default:
        return WaterViewSay::tr("venue");
    }
}

void drawCourse(WaterView& view, const plan::PieceWater& w) {
    view.curve = w.course.curve;
    view.depth = w.depth;
    view.stemEnds = w.stemEnds;
    view.topUp = w.course.topUpAfter;
    view.dry = w.course.dryAfter;
    for (const auto& phase : w.phases) {
        if (view.hours > 0) view.turns.push_back(view.hours);
        view.hours += phase.hours;
    }
    if (!w.standing) return;
    view.from = moment(w.standing->from);
    view.to = moment(w.standing->to);
    if (w.phases.size() == 4) {
        for (std::size_t i = 0; i < 4; ++i)
            view.phases << phaseName(i);
    }
}

} // namespace

WaterView waterView(const model::Season& season, const plan::Plan& plan, Id<model::Design> design,
                    std::optional<Day> today) {
    WaterView view;
    const auto use = nextUse(season, plan, design, today);
    const auto w = plan::pieceWater(season, design, use.booking, use.plan.get());
    if (!w) return view;
    drawCourse(view, *w);
    sayLevel(view, *w, w->booking ? use.booking : nullptr, season);
    sayLitres(view, *w, season);
    view.sentences << standsWords(*w, w->booking ? use.booking : nullptr, season);
    if (w->course.unknownDrinkers > 0)
        view.sentences << WaterViewSay::tr(
            "%n plant(s) (has|have) no figure for what a stem drinks, so it falls "
            "faster in truth.",
            nullptr, w->course.unknownDrinkers);
    view.working = w->course.working;
    view.means = WaterViewSay::tr("Water from %1 down to %2; the stem ends at %3")
                     .arg(lengthWords(view.curve.front().level, season),
                          lengthWords(view.curve.back().level, season), lengthWords(view.stemEnds, season));
    view.units = season.theSettings().units;
    return view;
}

std::vector<designs::WaterPhase> nextStanding(const model::Season& season, const plan::Plan& plan,
                                              Id<model::Design> design, std::optional<Day> today) {
    const auto use = nextUse(season, plan, design, today);
    if (!use.booking) return {};
    const auto time = plan::standingTime(season, *use.booking, *use.plan);
    return time ? time->phases : std::vector<designs::WaterPhase>{};
}

QString growingOnWords(const model::Season& season, const plan::Plan& plan, Id<model::Design> design,
                       std::optional<Day> today) {
    const auto use = nextUse(season, plan, design, today);
    const auto time = use.booking ? plan::standingTime(season, *use.booking, *use.plan) : std::nullopt;
    if (!time) return {};
    QStringList words;
    for (const auto* slot : edits::slotsOf(season, design)) {
        const auto* plant = plan::bestPlant(season, slot->id);
        const auto grown = plant ? std::lround(plan::grownOn(*plant, time->phases)) : 0;
        if (grown > 0)
            words << WaterViewSay::tr("%1 grows on: %2 taller by %3, for %4.")
                         .arg(text(plant->name), lengthWords(static_cast<double>(grown), season),
                              moment(time->to), text(use.booking->title));
    }
    words.removeDuplicates();
    return words.join(QLatin1Char(' '));
}

} // namespace withy::ui
