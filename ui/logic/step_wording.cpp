// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/step_wording.h"

#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

using plan::StepKind;
using plan::TimedStep;

class StepWordingSay {
    Q_DECLARE_TR_FUNCTIONS(PrepSheet)

public:
    explicit StepWordingSay(const model::Season& season, Id<model::Booking> booking = {})
        : season_(season), booking_(booking) {}

    [[nodiscard]] QString title(const TimedStep& s) const {
        const QString n = whole(s.count);
        switch (s.kind) {
        case StepKind::cut:
            return tr("Cut %1 stem(s)", nullptr, static_cast<int>(s.count)).arg(n);
        case StepKind::strip:
            return tr("Strip and stand deep");
        case StepKind::drink:
            return tr("Leave to drink");
        case StepKind::washContainers:
            return tr("Containers out, wiped: %1").arg(n);
        case StepKind::cutRibbon:
            return tr("Ribbon cut for %1").arg(n);
        case StepKind::fillWater:
            return tr("Water into all %1").arg(n);
        case StepKind::tieRibbon:
            return tr("Ribbon on all %1").arg(n);
        case StepKind::sort:
            return tr("Count, sort, share out");
        case StepKind::make:
            return tr("Make up %1 × %2").arg(n, lineName(s));
        case StepKind::restCool:
            return tr("All to the cool store");
        case StepKind::checkWater:
            return tr("Check water, top up");
        case StepKind::pack:
            return tr("Pack %1 piece(s)", nullptr, static_cast<int>(s.count)).arg(n);
        case StepKind::load:
            return tr("Load the van");
        case StepKind::drive:
            return tr("Leave for %1").arg(dropPlace(s));
        case StepKind::place:
            return tr("Place at %1").arg(dropPlace(s));
        case StepKind::handOver:
            return tr("Hand over at %1").arg(dropPlace(s));
        case StepKind::driveBack:
            return tr("Home from %1").arg(dropPlace(s));
        case StepKind::collect:
            return tr("Collect back from %1").arg(dropPlace(s));
        case StepKind::washBack:
            return tr("Wash what came back");
        }
        return {};
    }

    [[nodiscard]] QString detail(const TimedStep& s) const {
        switch (s.kind) {
        case StepKind::cut:
            return cutWords(s);
        case StepKind::strip:
            return tr("No leaf under water. About %n minute(s).", nullptr, static_cast<int>(s.minutes.value));
        case StepKind::drink:
            return tr("Until %1. Cool, dark, deep water.").arg(planClock(s.to));
        case StepKind::fillWater:
            return tr("%1 in all, to the mark on the jug.").arg(litresWords(s.litres, season_));
        case StepKind::tieRibbon:
            return tr("All of them before the first stem goes in.");
        case StepKind::sort:
            return tr("Set the odd ones apart.");
        case StepKind::make:
            return tr("About %n minute(s). Tick each.", nullptr, static_cast<int>(s.minutes.value));
        case StepKind::restCool:
            return tr("%1 or less. Door shut, lights out.")
                .arg(temperatureWords(season_.theSettings().storeCelsius, season_));
        case StepKind::load:
            return tr("Last drop in first. Nothing able to shift.");
        case StepKind::drive:
            return tr("There by %1.").arg(planClock(s.to));
        default:
            return s.minutes.value > 0 ? tr("About %n minute(s).", nullptr, static_cast<int>(s.minutes.value))
                                       : QString();
        }
    }

private:
    [[nodiscard]] QString lineName(const TimedStep& step) const {
        const auto* line = step.line ? season_.lines.find(*step.line) : nullptr;
        const auto* design = line ? season_.designs.find(line->design) : nullptr;
        return design ? text(design->name) : QString();
    }

    [[nodiscard]] QString cutWords(const TimedStep& step) const {
        QStringList all;
        for (const auto& [id, stems] : step.stems) {
            if (const auto* plant = season_.plants.find(id))
                all << tr("%1 %2").arg(whole(stems.value), text(plant->name));
        }
        return all.join(QStringLiteral("; "));
    }

    [[nodiscard]] QString dropPlace(const TimedStep& step) const {
        const auto* drop = step.drop ? season_.drops.find(*step.drop) : nullptr;
        if (drop) return text(drop->place);
        const auto* venue = venueOf();
        return venue ? text(venue->name) : tr("the venue");
    }

    [[nodiscard]] const model::Venue* venueOf() const {
        const auto* b = season_.bookings.find(booking_);
        return b && b->venue ? season_.venues.find(*b->venue) : nullptr;
    }

    const model::Season& season_;
    Id<model::Booking> booking_;
};

} // namespace

QString stepTitle(const model::Season& season, const plan::BookingPlan& plan, const TimedStep& step) {
    return StepWordingSay(season, plan.booking).title(step);
}

QString stepTitle(const model::Season& season, Id<model::Booking> booking, const TimedStep& step) {
    return StepWordingSay(season, booking).title(step);
}

QString stepDetail(const model::Season& season, const TimedStep& step) {
    return StepWordingSay(season).detail(step);
}

bool needsNobody(const TimedStep& step) {
    return step.kind == StepKind::drink || step.kind == StepKind::restCool;
}

} // namespace withy::ui
