// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/design_words.h"

#include <QCoreApplication>

#include <cmath>

namespace withy::ui {

namespace {

struct DesignFiguresSay {
    Q_DECLARE_TR_FUNCTIONS(Designs)
};

using model::Tier;

/// Cut lengths by tier, the longest leading.
void addCutLengths(std::vector<DesignFigure>& out, const model::Season& season,
                   const plan::DesignPlan& plan) {
    std::optional<designs::CutLength> by[3];
    for (const auto& sp : plan.slots) {
        const auto* slot = season.slots.find(sp.slot);
        if (slot && sp.cutLength && slot->count.value > 0)
            by[static_cast<std::size_t>(slot->tier)] = sp.cutLength;
    }
    DesignFigure f;
    QStringList others;
    for (const auto tier : {Tier::tall, Tier::middle, Tier::low}) {
        const auto& cut = by[static_cast<std::size_t>(tier)];
        if (!cut) continue;
        if (!f.figure.isEmpty()) {
            others << DesignFiguresSay::tr("%1 %2").arg(
                tierWords(tier), lengthFigure(static_cast<double>(cut->length.value), season));
            continue;
        }
        f.figure = lengthWords(cut->length, season);
        f.working = cut->working;
        f.note = DesignFiguresSay::tr("%1 tier").arg(tierWords(tier));
    }
    if (f.figure.isEmpty()) return;
    if (!others.isEmpty())
        f.note =
            DesignFiguresSay::tr("%1. The rest: %2").arg(f.note, others.join(DesignFiguresSay::tr(", ")));
    f.label = DesignFiguresSay::tr("Cut length");
    f.means = DesignFiguresSay::tr("to cut a stem of the tallest tier to");
    f.leadsTo = model::Ref{model::TableKind::designs, plan.design.value};
    f.leadWords = DesignFiguresSay::tr("Change the heights");
    out.push_back(f);
}

void addWater(std::vector<DesignFigure>& out, const model::Season& season, const model::Design& d,
              const plan::DesignPlan& plan) {
    if (!plan.water) return;
    const auto* c = d.container ? season.containers.find(*d.container) : nullptr;
    out.push_back({DesignFiguresSay::tr("Water"),
                   millilitresWords(static_cast<double>(plan.water->water.value), season),
                   c ? DesignFiguresSay::tr("into the %1, with the stems in").arg(text(c->name)) : QString(),
                   DesignFiguresSay::tr("of water for a piece"), plan.water->working,
                   c ? std::optional(model::Ref{model::TableKind::containers, c->id.value}) : std::nullopt,
                   DesignFiguresSay::tr("Look at the container")});
}

QString finishWords(const model::Design& d) {
    const QString wraps = DesignFiguresSay::tr("%n wrap(s)", nullptr, static_cast<int>(d.wraps));
    switch (d.finish) {
    case model::RibbonFinish::none:
        return {};
    case model::RibbonFinish::plain:
        return wraps;
    case model::RibbonFinish::knot:
        return DesignFiguresSay::tr("%1, a knot and two tails").arg(wraps);
    case model::RibbonFinish::bow:
        return DesignFiguresSay::tr("%1, a bow and two tails").arg(wraps);
    }
    return {};
}

void addRibbon(std::vector<DesignFigure>& out, const model::Season& season, const model::Design& d,
               const plan::DesignPlan& plan) {
    if (!plan.ribbon) return;
    out.push_back({DesignFiguresSay::tr("Ribbon"), lengthWords(plan.ribbon->length, season), finishWords(d),
                   DesignFiguresSay::tr("of ribbon for a piece"), plan.ribbon->working,
                   d.ribbonMix ? std::optional(model::Ref{model::TableKind::ribbonMixes, d.ribbonMix->value})
                               : std::nullopt,
                   DesignFiguresSay::tr("Look at the ribbon mix")});
}

void addNeck(std::vector<DesignFigure>& out, const plan::DesignPlan& plan) {
    if (!plan.neck) return;
    out.push_back({DesignFiguresSay::tr("Neck filled"),
                   DesignFiguresSay::tr("%1 %").arg(std::lround(plan.neck->share * 100)),
                   QString(),
                   DesignFiguresSay::tr("of the neck is stems"),
                   plan.neck->working,
                   std::nullopt,
                   {}});
}

void addWeight(std::vector<DesignFigure>& out, const model::Season& season, const plan::DesignPlan& plan) {
    if (!plan.weight) return;
    const double kg = static_cast<double>(plan.weight->total.value) / 1000;
    out.push_back({DesignFiguresSay::tr("Weight"),
                   weightWords(kg, season, 2),
                   plan.weight->containerUnknown
                       ? DesignFiguresSay::tr("and the empty container, which was not weighed")
                       : QString(),
                   DesignFiguresSay::tr("a piece weighs"),
                   plan.weight->working,
                   std::nullopt,
                   {}});
}

void addMinutes(std::vector<DesignFigure>& out, const model::Design& d, const plan::DesignPlan& plan) {
    QString note;
    if (!d.minutes)
        note = DesignFiguresSay::tr("common practice, not yet yours");
    else if (d.minutesBasis == Basis::lastSeasons)
        note = DesignFiguresSay::tr("from your last bookings");
    out.push_back({DesignFiguresSay::tr("Making"),
                   DesignFiguresSay::tr("%1 min").arg(QString::number(plan.minutes.value, 'g', 4)), note,
                   DesignFiguresSay::tr("to make one"), plan.minutes.working,
                   model::Ref{model::TableKind::designs, plan.design.value},
                   DesignFiguresSay::tr("Change the minutes")});
}

} // namespace

DesignFigure stemsFigure(const model::Season& season, Id<model::Design> design) {
    DesignFigure f;
    const auto stems = stemsOf(season, design);
    f.label = DesignFiguresSay::tr("Stems");
    f.figure = whole(stems);
    f.means = DesignFiguresSay::tr("stems a piece");
    for (const auto* slot : edits::slotsOf(season, design)) {
        WorkingLine line;
        line.what = "stems";
        line.value = static_cast<double>(slot->count.value);
        line.unit = Unit::stems;
        line.step = f.working.empty() ? Step::given : Step::plus;
        line.basis = Basis::mine;
        line.subject = slot->label;
        f.working.push_back(line);
    }
    WorkingLine sum;
    sum.what = "stems a piece";
    sum.value = static_cast<double>(stems);
    sum.unit = Unit::stems;
    sum.step = Step::result;
    f.working.push_back(sum);
    return f;
}

std::vector<DesignFigure> designFigures(const model::Season& season, const plan::Plan& plan,
                                        Id<model::Design> id) {
    std::vector<DesignFigure> out;
    const auto found = plan.designs.find(id);
    const auto* d = season.designs.find(id);
    if (!d || found == plan.designs.end() || !found->second) return out;
    const auto& p = *found->second;
    addCutLengths(out, season, p);
    addWater(out, season, *d, p);
    addRibbon(out, season, *d, p);
    addNeck(out, p);
    addWeight(out, season, p);
    addMinutes(out, *d, p);
    return out;
}

} // namespace withy::ui
