// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/run_up_words_of_step.h"

#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct StepWordsSay {
    Q_DECLARE_TR_FUNCTIONS(RunUpStep)
};

QString atDay(LocalTime t, Day day) {
    return t.day == day ? planClock(t) : StepWordsSay::tr("%1 %2").arg(shortDay(t.day), planClock(t));
}

QString stepStanding(const plan::RunUpStep& s) {
    if (s.done) return StepWordsSay::tr("Done.");
    if (!s.placed) return StepWordsSay::tr("No place was found for it.");
    if (s.pinned) return StepWordsSay::tr("Kept there by hand.");
    return {};
}

QString stepLimits(const plan::RunUpStep& s) {
    if (s.minutes.value == 0) return StepWordsSay::tr("Needs nobody.");
    QString words = StepWordsSay::tr("Not before %1, done by %2.")
                        .arg(atDay(s.earliest, s.from.day), atDay(s.latest, s.from.day));
    words += QLatin1Char(' ');
    words += s.splittable ? StepWordsSay::tr("May be laid down in between.")
                          : StepWordsSay::tr("All at a stretch.");
    return words;
}

/// The kind of work a step's minutes are counted by.
std::optional<model::RateKind> rateBehind(plan::StepKind kind) {
    using model::RateKind;
    using plan::StepKind;
    switch (kind) {
    case StepKind::washContainers:
    case StepKind::washBack:
        return RateKind::washContainer;
    case StepKind::cutRibbon:
        return RateKind::cutRibbon;
    case StepKind::fillWater:
        return RateKind::fillWater;
    case StepKind::tieRibbon:
        return RateKind::tieRibbon;
    case StepKind::cut:
        return RateKind::cutHundredStems;
    case StepKind::strip:
        return RateKind::stripHundredStems;
    case StepKind::sort:
        return RateKind::sortPiece;
    case StepKind::checkWater:
        return RateKind::checkWaterPiece;
    case StepKind::pack:
        return RateKind::packPiece;
    case StepKind::load:
        return RateKind::loadTray;
    case StepKind::place:
        return RateKind::placePiece;
    case StepKind::handOver:
        return RateKind::handOver;
    case StepKind::collect:
        return RateKind::collectPiece;
    case StepKind::make:
    case StepKind::drive:
    case StepKind::driveBack:
    case StepKind::drink:
    case StepKind::restCool:
        break;
    }
    return std::nullopt;
}

/// The record a step's minutes rest on: the grower's own rate, or the settings where one can be made.
std::optional<model::Ref> recordBehind(const model::Season& season, const plan::RunUpStep& s) {
    using model::TableKind;
    if (const auto work = rateBehind(s.key.step)) {
        for (const auto& r : season.rates)
            if (r.work == *work) return model::Ref{TableKind::rates, r.id.value};
        return model::Ref{TableKind::settings, 1};
    }
    const auto* line = s.key.line ? season.lines.find(*s.key.line) : nullptr;
    if (s.key.step == plan::StepKind::make)
        return line ? std::optional(model::Ref{TableKind::designs, line->design.value}) : std::nullopt;
    const auto* booking = s.key.booking ? season.bookings.find(*s.key.booking) : nullptr;
    if (!booking) return std::nullopt;
    if (booking->venue) return model::Ref{TableKind::venues, booking->venue->value};
    return model::Ref{TableKind::bookings, booking->id.value};
}

} // namespace

SheetFigure stepFigure(const model::Season& season, const plan::RunUpStep& s) {
    SheetFigure f;
    f.words = whole(s.minutes.value);
    f.means = StepWordsSay::tr("minutes: %1").arg(stepTitle(season, s));
    f.working = s.working;
    f.leadsTo = recordBehind(season, s);
    if (!f.leadsTo) return f;
    f.leadWords =
        f.leadsTo->table == model::TableKind::designs  ? StepWordsSay::tr("Change the minutes of the design")
        : f.leadsTo->table == model::TableKind::venues ? StepWordsSay::tr("Change the way there")
                                                       : StepWordsSay::tr("Change how long work takes");
    return f;
}

StepWords stepWordsOf(const model::Season& season, const plan::RunUpStep& s) {
    StepWords out;
    out.title = stepTitle(season, s);
    QStringList parts{shortDay(s.from.day), planHours(s.from, s.to), whoWords(season, s)};
    parts.removeAll(QString());
    out.when = parts.join(QStringLiteral(", "));
    if (s.took)
        out.when = StepWordsSay::tr("%1. Took %2.").arg(out.when, workWords(*s.took));
    else if (s.minutes.value > 0)
        out.when = StepWordsSay::tr("%1. %2 of work.").arg(out.when, workWords(s.minutes));
    const QString standing = stepStanding(s);
    out.limits = standing.isEmpty() ? stepLimits(s) : standing + QLatin1Char(' ') + stepLimits(s);
    return out;
}

StepWords noStepWords() {
    return {
        StepWordsSay::tr("No step chosen"),
        StepWordsSay::tr("Press a step, or go to it with the arrow keys up and down."),
        StepWordsSay::tr("Drag it, or move it with the arrow keys left and right, and it stays there. Space "
                         "ticks it off.")};
}

std::vector<WhoChoice> whoChoices(const model::Season& season) {
    std::vector<WhoChoice> out{{std::nullopt, StepWordsSay::tr("Whoever can")},
                               {plan::Worker{}, StepWordsSay::tr("You")}};
    for (const auto& helper : season.helpers)
        out.push_back({plan::Worker{helper.id}, text(helper.name)});
    return out;
}

} // namespace withy::ui
