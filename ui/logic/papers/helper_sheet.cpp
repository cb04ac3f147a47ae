// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/index.h"
#include "core/runup/busy_spans.h"
#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/papers/paper_cautions.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/run_up_stretches.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using papers::Block;
using papers::plain;
using papers::strong;
using plan::RunUpStep;
using plan::StepKind;

class HelperSheetMaker {
    Q_DECLARE_TR_FUNCTIONS(HelperSheet)

public:
    HelperSheetMaker(const PaperOrder& order, Day monday, const model::Helper& helper)
        : order_(order), season_(order.season), monday_(monday), helper_(helper) {
        for (auto& step : runUpSteps(season_, order.plan)) {
            if (!isHers(step)) continue;
            const auto worked = workedAt(order.plan.runUp.get(), step);
            if (std::none_of(worked.begin(), worked.end(), [&](const auto& w) { return inWeek(w.from.day); }))
                continue;
            for (std::size_t i = 0; i < worked.size(); ++i)
                if (inWeek(worked[i].from.day)) worked_.push_back({steps_.size(), worked[i], i > 0});
            steps_.push_back(std::move(step));
        }
        std::stable_sort(worked_.begin(), worked_.end(),
                         [](const auto& a, const auto& b) { return a.span.from < b.span.from; });
        for (const auto& step : steps_)
            for (const auto id : step.bookings)
                if (std::find(bookings_.begin(), bookings_.end(), id) == bookings_.end())
                    bookings_.push_back(id);
        for (const auto& hours : season_.helperHours)
            if (hours.helper == helper.id && inWeek(hours.from.day)) hours_.push_back(&hours);
        std::stable_sort(hours_.begin(), hours_.end(),
                         [](const auto* a, const auto* b) { return a->from < b->from; });
    }

    [[nodiscard]] bool any() const { return !steps_.empty() || !hours_.empty(); }

    papers::Document document() {
        papers::Document d;
        d.name = helper_.name;
        const auto days = daysOfWork();
        d.key = utf8(days.size() == 1 ? shortDay(days.front()) : shortDay(monday_));
        if (days.size() != 1) d.keyNote = utf8(tr("the week from that Monday"));
        d.facts = facts();
        for (const Day day : days)
            addDay(day, d.body);
        if (steps_.empty())
            d.body.push_back(Block{papers::Paragraph{
                plain(utf8(tr("Nothing is planned for these hours yet. Ask on the day what comes next.")))}});
        d.body.push_back(Block{cautions()});
        d.last.push_back(Block{askWhom()});
        if (wants(order_, PaperKind::helperSheet, PaperPart::writeHere)) d.last.push_back(Block{writeHere()});
        d.footWhat = utf8(tr("%1. If in doubt, ask first").arg(text(helper_.name)));
        return d;
    }

private:
    /// A stretch of a step, in the order of time; `again` after busy hours or a night.
    struct Worked {
        std::size_t step = 0;
        runup::TimeSpan span;
        bool again = false;
    };

    [[nodiscard]] bool inWeek(Day day) const { return day >= monday_ && day < monday_ + 7; }

    [[nodiscard]] bool isHers(const RunUpStep& step) const {
        return std::any_of(step.who.begin(), step.who.end(),
                           [&](const auto& w) { return w.helper == helper_.id; });
    }

    [[nodiscard]] std::vector<Day> daysOfWork() const {
        std::vector<Day> days;
        for (const auto& worked : worked_)
            days.push_back(worked.span.from.day);
        for (const auto* hours : hours_)
            days.push_back(hours->from.day);
        std::sort(days.begin(), days.end());
        days.erase(std::unique(days.begin(), days.end()), days.end());
        return days;
    }

    [[nodiscard]] std::vector<papers::Text> facts() const {
        std::vector<papers::Text> out;
        Minutes there, work;
        if (bookings_.size() == 1)
            out.push_back(plain(utf8(tr("for "))) + strong(utf8(bookingWords(season_, bookings_))));
        for (const auto* hours : hours_)
            there += hours->to - hours->from;
        for (const auto& step : steps_)
            if (inWeek(step.from.day)) work += minutesEach(step); // as the week's board counts it
        if (there.value > 0) out.push_back(plain(utf8(tr("here "))) + strong(utf8(workWords(there))));
        if (work.value > 0) out.push_back(plain(utf8(tr("work "))) + strong(utf8(workWords(work))));
        QStringList can;
        if (helper_.canCut) can << tr("cut");
        if (helper_.canCondition) can << tr("condition");
        if (helper_.canMake) can << tr("make");
        if (helper_.canDrive) can << tr("drive");
        if (!can.isEmpty()) out.push_back(plain(utf8(tr("can %1").arg(can.join(QStringLiteral(", "))))));
        return out;
    }

    void addDay(Day day, std::vector<Block>& body) const {
        QStringList note{shortDay(day)};
        for (const auto* hours : hours_)
            if (hours->from.day == day) note << tr("here %1").arg(hoursWords(hours->from, hours->to));
        const bool any = std::any_of(worked_.begin(), worked_.end(),
                                     [&](const auto& worked) { return worked.span.from.day == day; });
        if (!any && !steps_.empty()) note << tr("nothing planned yet");
        body.push_back(Block{papers::SectionHead{utf8(longDay(day).section(QLatin1Char(' '), 0, 0)),
                                                 plain(utf8(note.join(QStringLiteral(", "))))}});
        const auto busy = runup::busySpansOf(season_, helper_.id, day, day);
        std::size_t next = 0;
        const auto busyUntil = [&](LocalTime at) {
            for (; next < busy.size() && busy[next].span.from <= at; ++next)
                if (isInHours(busy[next].span))
                    body.push_back(Block{papers::BusyBand{
                        utf8(hoursWords(busy[next].span.from, busy[next].span.to)), busy[next].label}});
        };
        for (const auto& worked : worked_) {
            if (worked.span.from.day != day) continue;
            busyUntil(worked.span.from);
            body.push_back(Block{task(worked)});
        }
        busyUntil(LocalTime{day, 1439});
    }

    /// What keeps them elsewhere when they are not here anyway says nothing.
    [[nodiscard]] bool isInHours(const runup::TimeSpan& span) const {
        return std::any_of(hours_.begin(), hours_.end(),
                           [&](const auto* hours) { return span.from < hours->to && hours->from < span.to; });
    }

    [[nodiscard]] papers::TimedTask task(const Worked& worked) const {
        const auto& step = steps_[worked.step];
        papers::TimedTask out;
        out.time = utf8(planClock(worked.span.from));
        out.beside = true;
        const QString title = stepTitle(season_, step);
        out.title = utf8(worked.again ? goesOnWords(title) : title);
        QStringList detail;
        if (!worked.again) detail << stepDetail(season_, step); // said where it begins
        if (step.round && order_.plan.runUp)
            detail << roundFrom(season_, order_.plan.runUp->rounds[*step.round]);
        if (bookings_.size() > 1) detail << bookingWords(season_, step.bookings);
        detail.removeAll(QString());
        out.detail = plain(utf8(detail.join(QStringLiteral(" "))));
        out.who = utf8(withWhom(step));
        return out;
    }

    [[nodiscard]] QString withWhom(const RunUpStep& step) const {
        QStringList names;
        for (const auto& worker : step.who)
            if (worker.helper != helper_.id)
                names << (worker.helper ? workerName(season_, worker) : tr("the grower"));
        names.removeAll(QString());
        return names.isEmpty() ? tr("alone") : tr("with %1").arg(names.join(QStringLiteral(", ")));
    }

    [[nodiscard]] bool does(std::initializer_list<StepKind> kinds) const {
        return std::any_of(steps_.begin(), steps_.end(), [&](const auto& step) {
            return std::find(kinds.begin(), kinds.end(), step.key.step) != kinds.end();
        });
    }

    [[nodiscard]] std::vector<Id<model::Plant>> plantsTouched() const {
        std::vector<Id<model::Plant>> out;
        for (const auto& step : steps_)
            for (const auto booking : step.bookings) {
                const auto found = order_.plan.bookings.find(booking);
                if (found == order_.plan.bookings.end()) continue;
                const auto plants = plantsOf(*found->second);
                out.insert(out.end(), plants.begin(), plants.end());
            }
        return out;
    }

    [[nodiscard]] papers::Cautions cautions() const {
        using enum StepKind;
        papers::Cautions out;
        out.title = utf8(tr("Take care"));
        const auto plants = plantCautions(season_, plantsTouched());
        if (does({cut, strip, sort, make})) addPlants(plants, out);
        if (does({cut, strip, make}))
            out.items.push_back(
                {utf8(tr("Blades")), utf8(tr("cut away from the hand; closed when carried."))});
        if (does({drive, driveBack, collect, load})) addDriving(out);
        addLifting(season_, out);
        if (!helper_.note.empty()) out.items.push_back({utf8(tr("Agreed with you:")), helper_.note});
        return out;
    }

    static papers::WriteHere askWhom() {
        return {utf8(tr("Whom to ask")), {{utf8(tr("name")), 0}, {utf8(tr("telephone")), 60}}};
    }

    static papers::WriteHere writeHere() {
        return {
            utf8(tr("Write here,\ntype in later")),
            {{utf8(tr("from")), 22}, {utf8(tr("to")), 22}, {utf8(tr("what took longer than thought")), 0}}};
    }

    const PaperOrder& order_;
    const model::Season& season_;
    Day monday_;
    const model::Helper& helper_;
    std::vector<RunUpStep> steps_;
    std::vector<Worked> worked_;
    std::vector<const model::HelperHours*> hours_;
    std::vector<Id<model::Booking>> bookings_; ///< that the steps are for
};

struct HelperSheetSay {
    Q_DECLARE_TR_FUNCTIONS(HelperSheet)
};

} // namespace

Day weekOfPaper(const PaperOrder& order) {
    if (order.day) return weekOf(*order.day);
    const auto* booking = order.booking ? order.season.bookings.find(*order.booking) : nullptr;
    return weekOf(booking ? booking->eventStart.day : order.season.theSettings().firstDay);
}

papers::Document helperSheets(const PaperOrder& order) {
    const Day monday = weekOfPaper(order);
    std::vector<papers::Document> sheets;
    for (const auto& helper : order.season.helpers) {
        HelperSheetMaker maker(order, monday, helper);
        if (maker.any()) sheets.push_back(maker.document());
    }
    if (!sheets.empty()) {
        papers::Document first = std::move(sheets.front());
        first.sheets.assign(std::make_move_iterator(sheets.begin() + 1),
                            std::make_move_iterator(sheets.end()));
        return first;
    }
    papers::Document d;
    d.name = utf8(HelperSheetSay::tr("Helpers"));
    d.key = utf8(shortDay(monday));
    d.keyNote = utf8(HelperSheetSay::tr("the week from that Monday"));
    d.body.push_back(Block{papers::Paragraph{plain(utf8(HelperSheetSay::tr(
        "No helper is here this week. Give a helper hours in the diary and say what they can do, and the "
        "run-up shares the work out.")))}});
    return d;
}

} // namespace withy::ui
