// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/papers/papers.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using plan::StepKind;
using plan::TimedStep;

class Steps {
    Q_DECLARE_TR_FUNCTIONS(PrepSheet)

public:
    Steps(const model::Season& season, const plan::BookingPlan& plan, Day mainDay)
        : season_(season), plan_(plan), day_(mainDay) {}

    std::vector<papers::Block> blocks() {
        for (const auto& step : plan_.steps) {
            if (step.kind == StepKind::place && step.minutes.value == 0) continue;
            enter(step.from);
            add(papers::TimedTask{
                step.from.clock(), utf8(title(step)), papers::plain(utf8(detail(step))), who(step),
                step.kind == StepKind::make ? static_cast<int>(std::min<std::int64_t>(step.count, 200)) : 0});
        }
        return std::move(out_);
    }

private:
    /// Busy hours that lie before this time, and a head when the day is a new one.
    void enter(LocalTime at) {
        if (!begun_ || current_ != at.day) {
            busyUntil(LocalTime{at.day, 0}, begun_);
            if (at.day != day_ || begun_)
                add(papers::SectionHead{utf8(dayWords(at.day)), papers::plain(utf8(shortDay(at.day)))});
            current_ = at.day;
            begun_ = true;
            while (nextBusy_ < plan_.busy.size() && plan_.busy[nextBusy_].span.to <= LocalTime{at.day, 0})
                ++nextBusy_;
        }
        busyUntil(at, true);
    }

    void busyUntil(LocalTime at, bool show) {
        for (; nextBusy_ < plan_.busy.size() && plan_.busy[nextBusy_].span.from <= at; ++nextBusy_) {
            const auto& b = plan_.busy[nextBusy_];
            if (show && begun_ && b.span.from.day == current_)
                add(papers::BusyBand{utf8(tr("%1 to %2").arg(clock(b.span.from), clock(b.span.to))),
                                     b.label});
        }
    }

    [[nodiscard]] QString dayWords(Day day) const {
        const int ahead = day - day_;
        if (ahead == 0) return tr("The day of making");
        if (ahead == -1) return tr("The day before that");
        if (ahead == 1) return tr("The day after");
        return ahead < 0 ? tr("%n day(s) earlier", nullptr, -ahead) : tr("%n day(s) later", nullptr, ahead);
    }

    static std::string who(const TimedStep& step) {
        const bool nobody = step.kind == StepKind::drink || step.kind == StepKind::restCool;
        return nobody ? "–" : std::string(" ");
    }

    [[nodiscard]] QString lineName(const TimedStep& step) const {
        const auto* line = step.line ? season_.lines.find(*step.line) : nullptr;
        return line ? text(season_.designs.find(line->design)->name) : QString();
    }

    [[nodiscard]] QString cutWords(const TimedStep& step) const {
        QStringList all;
        for (const auto& [plant, stems] : step.stems)
            all << tr("%1 %2").arg(whole(stems.value), text(season_.plants.find(plant)->name));
        return all.join(QStringLiteral("; "));
    }

    [[nodiscard]] QString dropPlace(const TimedStep& step) const {
        const auto* drop = step.drop ? season_.drops.find(*step.drop) : nullptr;
        if (drop) return text(drop->place);
        const auto* venue = venueOf();
        return venue ? text(venue->name) : tr("the venue");
    }

    [[nodiscard]] const model::Venue* venueOf() const {
        const auto* b = season_.bookings.find(plan_.booking);
        return b->venue ? season_.venues.find(*b->venue) : nullptr;
    }

    [[nodiscard]] QString title(const TimedStep& s) const {
        const QString n = whole(s.count);
        switch (s.kind) {
        case StepKind::cut:
            return tr("Cut %1 stems").arg(n);
        case StepKind::strip:
            return tr("Strip and stand deep");
        case StepKind::drink:
            return tr("Leave to drink");
        case StepKind::washContainers:
            return tr("Containers out, wiped: %1").arg(n);
        case StepKind::fillWater:
            return tr("Water into all %1").arg(n);
        case StepKind::tieRibbon:
            return tr("Ribbon on all %1").arg(n);
        case StepKind::sort:
            return tr("Count, sort, share out");
        case StepKind::make:
            return tr("Make up %1 x %2").arg(n, lineName(s));
        case StepKind::restCool:
            return tr("All to the cool floor");
        case StepKind::checkWater:
            return tr("Check water, top up");
        case StepKind::pack:
            return tr("Pack %1 pieces").arg(n);
        case StepKind::load:
            return tr("Load the van");
        case StepKind::drive:
            return tr("Leave for %1").arg(dropPlace(s));
        case StepKind::place:
            return tr("Place at %1").arg(dropPlace(s));
        }
        return {};
    }

    [[nodiscard]] QString detail(const TimedStep& s) const {
        switch (s.kind) {
        case StepKind::cut:
            return cutWords(s);
        case StepKind::strip:
            return tr("No leaf under water. About %1 minutes.").arg(s.minutes.value);
        case StepKind::drink:
            return tr("Until %1. Cool, dark, deep water.").arg(clock(s.to));
        case StepKind::fillWater:
            return tr("%1 litres in all, to the mark on the jug.").arg(litres(s.litres));
        case StepKind::tieRibbon:
            return tr("All of them before the first stem goes in.");
        case StepKind::sort:
            return tr("Set the odd ones apart.");
        case StepKind::make:
            return tr("About %1 minutes. Tick each.").arg(s.minutes.value);
        case StepKind::restCool:
            return tr("%1 °C or less. Door shut, lights out.").arg(season_.theSettings().storeCelsius);
        case StepKind::load:
            return tr("Last drop in first. Nothing able to shift.");
        case StepKind::drive:
            return tr("There by %1.").arg(clock(s.to));
        default:
            return s.minutes.value > 0 ? tr("About %1 minutes.").arg(s.minutes.value) : QString();
        }
    }

    template <class B>
    void add(B block) {
        out_.push_back(papers::Block{std::move(block)});
    }

    const model::Season& season_;
    const plan::BookingPlan& plan_;
    Day day_;
    Day current_;
    bool begun_ = false;
    std::size_t nextBusy_ = 0;
    std::vector<papers::Block> out_;
};

} // namespace

Day prepDay(const plan::BookingPlan& plan) {
    return plan.makeUpStart.day;
}

std::vector<papers::Block> prepSteps(const model::Season& season, const plan::BookingPlan& plan,
                                     Day mainDay) {
    return Steps(season, plan, mainDay).blocks();
}

} // namespace withy::ui
