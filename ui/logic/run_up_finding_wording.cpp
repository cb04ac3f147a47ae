// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/run_up_finding_wording.h"

#include "ui/logic/finding_parts.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <cmath>

namespace withy::ui {

namespace {

class RunUpFindingWordingSay : FindingParts {
    Q_DECLARE_TR_FUNCTIONS(Finding)

public:
    using FindingParts::FindingParts;

    static QString work(plan::StepKind kind) {
        using plan::StepKind;
        switch (kind) {
        case StepKind::washContainers:
            return tr("Washing containers");
        case StepKind::cutRibbon:
            return tr("Cutting ribbon");
        case StepKind::fillWater:
            return tr("Filling with water");
        case StepKind::tieRibbon:
            return tr("Tying ribbon");
        case StepKind::cut:
            return tr("Cutting");
        case StepKind::strip:
            return tr("Stripping");
        case StepKind::drink:
            return tr("Drinking");
        case StepKind::sort:
            return tr("Sorting");
        case StepKind::make:
            return tr("Making up");
        case StepKind::restCool:
            return tr("Resting cool");
        case StepKind::checkWater:
            return tr("Checking the water");
        case StepKind::pack:
            return tr("Packing");
        case StepKind::load:
            return tr("Loading");
        case StepKind::drive:
            return tr("The drive");
        case StepKind::place:
            return tr("Placing");
        case StepKind::handOver:
            return tr("Handing over");
        case StepKind::driveBack:
            return tr("The way home");
        case StepKind::collect:
            return tr("Collecting back");
        case StepKind::washBack:
            return tr("Washing what came back");
        }
        return {};
    }

    [[nodiscard]] QString hands() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::busyCoversDays:
            return tr("Busy hours leave you not one free hour from %1 to %2. Shorten them, or give a helper "
                      "hours on those days.")
                .arg(day(0), day(1));
        case FindingCode::helperWithoutHours:
            return tr("%1 has no hours, so no step is given to them. Write down when they are there.")
                .arg(subject(0));
        case FindingCode::nobodyForStep:
            return tr("%1 for %2: whoever can do it is never there. Free some hours, or let a helper do it.")
                .arg(step(0), subject(1));
        case FindingCode::stepLongerThanGap:
            return tr("%1 for %2 takes %3 at a stretch, and the longest free stretch is %4. Free more hours "
                      "in one go, or ask a helper.")
                .arg(step(0), subject(1), minutes(0), minutes(1));
        case FindingCode::workTooMuch:
            return tr("%1 has %2 too many. Start earlier, ask a helper, or make fewer pieces.")
                .arg(day(0), minutes(0));
        case FindingCode::coolStoreFull:
            return tr("On %1 the cool store would hold %2 buckets and has room for %3. Cut later, or find "
                      "another cool corner.")
                .arg(day(0), figure(0), figure(1));
        default:
            return road();
        }
    }

private:
    [[nodiscard]] QString road() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::dropBeforeVenueOpens:
            return tr("%1: the drop is before %2 opens at %3. Make it later, or ask to be let in.")
                .arg(subject(0), subject(1), clockOf(count()));
        case FindingCode::collectAfterVenueCloses:
            return tr("%1: fetched after all must be out of %2, at %3. Fetch earlier, or ask them to keep "
                      "it.")
                .arg(subject(0), subject(1), clockOf(count()));
        case FindingCode::dropsAtOneTime:
            return tr("%1 and %2 want somebody at the same time: one is out by %3. Move one of them, or let "
                      "a helper drive.")
                .arg(subject(0), subject(1), minutes(0));
        case FindingCode::workInTheNight:
            return tr("%1 is at %2, in the night. Agree another hour if you can.").arg(subject(0), time(1));
        case FindingCode::clocksChange:
            return number(0) < 0
                       ? tr("The clocks go forward on %1: the night is %2 shorter, and the steps allow for "
                            "it.")
                             .arg(day(0), minutes(0))
                       : tr("The clocks go back on %1: the night is %2 longer, and the steps allow for it.")
                             .arg(day(0), minutes(0));
        default:
            return pins();
        }
    }

    [[nodiscard]] QString pins() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::pinInBusyHours:
            return tr("%1 is kept at %2, when whoever does it is not there. Let it go, or free the hours.")
                .arg(step(0), time(1));
        case FindingCode::pinsAtOneTime:
            return tr("%1 is kept at %2, and %3 needs the same hands then. Let one of them go.")
                .arg(step(0), time(1), step(2).toLower());
        case FindingCode::pinOutOfOrder:
            return tr("%1 is kept at %2, before %3 is over. Move it later, or let it go.")
                .arg(step(0), time(1), step(2).toLower());
        case FindingCode::pinOutsideWindow:
            return tr("%1 is kept at %2, which is too early or too late for the flowers. Let it go, or move "
                      "it.")
                .arg(step(0), time(1));
        default:
            return {};
        }
    }

    /// A step's work, from its word in the model.
    [[nodiscard]] QString step(std::size_t i) const {
        const auto kind =
            i < f_.subjects.size() ? model::fromWord<plan::StepKind>(f_.subjects[i]) : std::nullopt;
        return kind ? work(*kind) : subject(i);
    }

    [[nodiscard]] QString time(std::size_t i) const {
        const auto at = i < f_.subjects.size() ? LocalTime::parse(f_.subjects[i]) : std::nullopt;
        return at ? tr("%1, %2").arg(shortDay(at->day), planClock(*at)) : subject(i);
    }

    [[nodiscard]] QString figure(std::size_t i) const { return whole(std::llround(number(i))); }

    /// "40 minutes", "2 h 15 min".
    [[nodiscard]] QString minutes(std::size_t i) const {
        const auto all = static_cast<int>(std::llround(std::abs(number(i))));
        if (all < 120) return tr("%n minute(s)", nullptr, all);
        return all % 60 == 0 ? tr("%1 h").arg(all / 60) : tr("%1 h %2 min").arg(all / 60).arg(all % 60);
    }
};

} // namespace

QString runUpSentence(const plan::Finding& finding, Units units) {
    return RunUpFindingWordingSay(finding, units).hands();
}

QString workWord(plan::StepKind kind) {
    return RunUpFindingWordingSay::work(kind);
}

} // namespace withy::ui
