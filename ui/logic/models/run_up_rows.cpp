// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/run_up_rows.h"

#include "ui/logic/step_wording.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace withy::ui {

namespace {

using plan::StepKind;
using plan::TimedStep;

class RunUp {
    Q_DECLARE_TR_FUNCTIONS(RunUpPage)

public:
    RunUp(const model::Season& season, const plan::BookingPlan& plan) : season_(season), plan_(plan) {}

    [[nodiscard]] Sheet sheet() const {
        std::map<Day, std::vector<Timed>> byDay;
        for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
            const auto& step = plan_.steps[i];
            if (step.kind == StepKind::place && step.minutes.value == 0) continue;
            if (needsNobody(step) && step.to <= step.from) continue;
            byDay[step.from.day].push_back({step.from, stepRow(step, i)});
        }
        if (const auto* booking = season_.bookings.find(plan_.booking))
            byDay[booking->eventStart.day].push_back({booking->eventStart, guestRow(*booking)});
        for (std::size_t i = 0; i < plan_.busy.size(); ++i) {
            const auto day = byDay.find(plan_.busy[i].span.from.day);
            if (day != byDay.end()) day->second.push_back({plan_.busy[i].span.from, busyRow(i)});
        }
        Sheet out;
        out.firstTitle = tr("Step");
        out.columns = {{tr("From"), true, false, true},
                       {tr("To"), true, false, true},
                       {tr("How many"), true, true},
                       {tr("Minutes"), true, false}};
        for (auto& [day, rows] : byDay)
            addDay(day, rows, out);
        return out;
    }

    static Answer answer(const plan::BookingPlan& plan, const std::vector<ListedFinding>& findings) {
        if (plan.lines.empty()) return {{tr("Nothing to make yet, so there is nothing to do."), {}}};
        const auto tooLong = std::find_if(findings.begin(), findings.end(), [](const auto& f) {
            return f.finding.code == plan::FindingCode::dayTooLong;
        });
        Answer out;
        if (tooLong != findings.end())
            out.push_back({tr("It does not fit. "), AnswerPart::Weight::asks});
        else
            out.push_back({tr("It fits. "), {}});
        out.push_back({tr("Make up from "), {}});
        out.push_back({at(plan.makeUpStart), AnswerPart::Weight::strong});
        out.push_back({tr(", all made by "), {}});
        out.push_back(
            {plan.makeUpEnd.day == plan.makeUpStart.day ? clock(plan.makeUpEnd) : at(plan.makeUpEnd),
             AnswerPart::Weight::strong});
        out.push_back({tr(". Leave on %1.").arg(at(plan.driveStart)), {}});
        if (tooLong != findings.end())
            out.push_back({QStringLiteral(" ") + sentence(tooLong->finding), AnswerPart::Weight::asks});
        return out;
    }

private:
    struct Timed {
        LocalTime from;
        SheetRow row;
    };

    static QString dayWords(Day day, Day main) {
        const int ahead = day - main;
        if (ahead == 0) return tr("the day of making");
        return ahead < 0 ? tr("%n day(s) before making", nullptr, -ahead)
                         : tr("%n day(s) after making", nullptr, ahead);
    }

    /// "24 pieces", "133 stems", "3 trays"; empty when there is nothing to count.
    static QString howMany(const TimedStep& s) {
        const int n = static_cast<int>(s.count);
        if (n == 0) return {};
        switch (s.kind) {
        case StepKind::cut:
        case StepKind::strip:
        case StepKind::drink:
            return tr("%n stem(s)", nullptr, n);
        case StepKind::load:
            return tr("%n tray(s)", nullptr, n);
        case StepKind::washContainers:
        case StepKind::fillWater:
            return tr("%n container(s)", nullptr, n);
        default:
            return tr("%n piece(s)", nullptr, n);
        }
    }

    static QString at(LocalTime t) { return tr("%1 at %2").arg(shortDay(t.day), clock(t)); }

    void addDay(Day day, std::vector<Timed>& rows, Sheet& out) const {
        std::stable_sort(rows.begin(), rows.end(),
                         [](const Timed& a, const Timed& b) { return a.from < b.from; });
        SheetRow head;
        head.key = text(day.iso());
        head.look = RowLook::dayHead;
        head.name = longDay(day).section(QLatin1Char(' '), 0, 2);
        head.rest = dayWords(day, plan_.makeUpStart.day);
        out.rows.push_back(std::move(head));
        for (auto& timed : rows)
            out.rows.push_back(std::move(timed.row));
    }

    [[nodiscard]] static QString until(LocalTime from, LocalTime to) {
        return to.day == from.day
                   ? clock(to)
                   : tr("%1 %2").arg(shortDay(to.day).section(QLatin1Char(' '), 0, 0), clock(to));
    }

    [[nodiscard]] SheetRow stepRow(const TimedStep& step, std::size_t i) const {
        SheetRow row;
        row.key = QStringLiteral("step%1").arg(i);
        row.name = stepTitle(season_, plan_, step);
        const bool nobody = needsNobody(step);
        row.look = nobody ? RowLook::waiting : RowLook::step;
        row.under = step.kind == StepKind::make || step.kind == StepKind::strip ? QString()
                                                                                : stepDetail(season_, step);
        if (step.minutes.value > 0 && row.under == tr("About %1 minutes.").arg(step.minutes.value))
            row.under.clear(); // the minutes have a column of their own here
        row.cells = {{clock(step.from), SheetCell::Tone::strong},
                     {until(step.from, step.to), SheetCell::Tone::second},
                     {howMany(step), SheetCell::Tone::second}};
        if (nobody)
            row.cells.push_back({tr("needs nobody"), SheetCell::Tone::second});
        else
            row.cells.push_back(minutesCell(step, row.name));
        return row;
    }

    [[nodiscard]] SheetCell minutesCell(const TimedStep& step, const QString& title) const {
        SheetFigure f;
        f.words = whole(step.minutes.value);
        f.means = tr("minutes: %1").arg(title);
        f.working = step.working;
        if (const auto ref = behind(step)) {
            f.leadsTo = ref;
            f.leadWords = ref->table == model::TableKind::designs  ? tr("Change the minutes of the design")
                          : ref->table == model::TableKind::venues ? tr("Change the way there")
                                                                   : tr("Change how long work takes");
        }
        return {{}, {}, std::move(f)};
    }

    /// The record a step's minutes rest on.
    [[nodiscard]] std::optional<model::Ref> behind(const TimedStep& step) const {
        using model::RateKind;
        using model::TableKind;
        switch (step.kind) {
        case StepKind::make: {
            const auto* line = step.line ? season_.lines.find(*step.line) : nullptr;
            if (!line) return std::nullopt;
            return model::Ref{TableKind::designs, line->design.value};
        }
        case StepKind::drive:
        case StepKind::driveBack: {
            const auto* booking = season_.bookings.find(plan_.booking);
            if (booking && booking->venue) return model::Ref{TableKind::venues, booking->venue->value};
            return model::Ref{TableKind::bookings, plan_.booking.value};
        }
        case StepKind::cut:
            return rate(RateKind::cutHundredStems);
        case StepKind::strip:
            return rate(RateKind::stripHundredStems);
        case StepKind::washContainers:
            return rate(RateKind::washContainer);
        case StepKind::cutRibbon:
            return rate(RateKind::cutRibbon);
        case StepKind::fillWater:
            return rate(RateKind::fillWater);
        case StepKind::tieRibbon:
            return rate(RateKind::tieRibbon);
        case StepKind::sort:
            return rate(RateKind::sortPiece);
        case StepKind::pack:
            return rate(RateKind::packPiece);
        case StepKind::load:
            return rate(RateKind::loadTray);
        case StepKind::place:
            return rate(RateKind::placePiece);
        case StepKind::checkWater:
            return rate(RateKind::checkWaterPiece);
        case StepKind::handOver:
            return rate(RateKind::handOver);
        case StepKind::collect:
            return rate(RateKind::collectPiece);
        case StepKind::washBack:
            return rate(RateKind::washContainer);
        case StepKind::drink:
        case StepKind::restCool:
            break;
        }
        return std::nullopt;
    }

    /// The grower's own rate, or the settings where one can be made.
    [[nodiscard]] model::Ref rate(model::RateKind work) const {
        for (const auto& r : season_.rates)
            if (r.work == work) return {model::TableKind::rates, r.id.value};
        return {model::TableKind::settings, 1};
    }

    [[nodiscard]] SheetRow busyRow(std::size_t i) const {
        const auto& busy = plan_.busy[i];
        SheetRow row;
        row.key = QStringLiteral("busy%1").arg(i);
        row.look = RowLook::busy;
        row.name = busy.label.empty() ? tr("Busy") : text(busy.label);
        row.cells = {{clock(busy.span.from), SheetCell::Tone::strong},
                     {until(busy.span.from, busy.span.to), SheetCell::Tone::second},
                     {},
                     {tr("you are busy"), SheetCell::Tone::second}};
        return row;
    }

    [[nodiscard]] static SheetRow guestRow(const model::Booking& booking) {
        SheetRow row;
        row.key = QStringLiteral("guests");
        row.look = RowLook::fixed;
        row.name = tr("Guests");
        row.cells = {{clock(booking.eventStart), {}},
                     {until(booking.eventStart, booking.eventEnd), {}},
                     {},
                     {tr("cannot move"), {}}};
        return row;
    }

    const model::Season& season_;
    const plan::BookingPlan& plan_;
};

} // namespace

Answer runUpAnswer(const model::Season& season, const plan::BookingPlan& plan,
                   const std::vector<ListedFinding>& findings) {
    static_cast<void>(season);
    return RunUp::answer(plan, findings);
}

Sheet runUpSheet(const model::Season& season, const plan::BookingPlan& plan) {
    return RunUp(season, plan).sheet();
}

} // namespace withy::ui
