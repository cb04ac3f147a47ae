// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/day_heat.h"
#include "core/runup/busy_spans.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/papers/cutting_hours.h"
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
using BoardKind = papers::BoardItem::Kind;

class WeekBoardMaker {
    Q_DECLARE_TR_FUNCTIONS(WeekBoard)

public:
    explicit WeekBoardMaker(const PaperOrder& order)
        : order_(order), season_(order.season), monday_(weekOfPaper(order)), heat_(order.season) {
        for (auto& step : runUpSteps(season_, order.plan)) {
            const auto worked = workedAt(order.plan.runUp.get(), step);
            for (std::size_t i = 0; i < worked.size() && isOnBoard(step.key.step); ++i)
                if (inWeek(worked[i].from.day)) shownSteps_.push_back({step, worked[i], i > 0});
            if (inWeek(step.from.day)) steps_.push_back(std::move(step));
        }
        letter();
    }

    papers::Document document() {
        papers::Document d;
        d.landscape = true;
        d.name = season_.theSettings().placeName.empty() ? season_.theSettings().seasonName
                                                         : season_.theSettings().placeName;
        d.key = utf8(tr("%1 to %2").arg(shortDay(monday_), shortDay(monday_ + 6)));
        d.facts = facts();
        papers::KeyRow key;
        for (const auto& id : shown_)
            if (const auto* booking = season_.bookings.find(id))
                key.items.push_back({utf8(letters_.at(id)), booking->title});
        if (!key.items.empty()) d.body.push_back(Block{std::move(key), true});
        papers::Lanes lanes;
        for (int i = 0; i < 7; ++i)
            lanes.lanes.push_back(laneOf(monday_ + i));
        d.body.push_back(Block{std::move(lanes)});
        d.footWhat = utf8(tr("Black cannot move, hatched is busy. The small steps are on the prep sheets"));
        return d;
    }

private:
    struct Timed {
        LocalTime from;
        papers::BoardItem item;
    };

    /// A step where it is worked at; one laid down over busy hours or a night is there again afterwards.
    struct Shown {
        RunUpStep step;
        runup::TimeSpan span;
        bool again = false;
    };

    [[nodiscard]] bool inWeek(Day day) const { return day >= monday_ && day < monday_ + 7; }

    void letter() {
        shown_ = bookingsOfBoard(season_, order_.plan, monday_);
        letters_ = bookingLetters(season_, shown_);
    }

    [[nodiscard]] Minutes workOn(Day day) const {
        Minutes sum;
        for (const auto& step : steps_)
            if (step.from.day == day && !needsNobody(step)) sum += step.minutes;
        return toldWork(sum);
    }

    /// Something begun on a day before.
    [[nodiscard]] bool goesOn(Day day) const {
        return std::any_of(shownSteps_.begin(), shownSteps_.end(),
                           [&](const Shown& s) { return s.again && s.span.from.day == day; });
    }

    /// "1 h 16" is one word.
    static QString close(Minutes work) { return workWords(work).replace(QLatin1Char(' '), QChar::Nbsp); }

    [[nodiscard]] std::vector<papers::Text> facts() const {
        std::vector<papers::Text> out;
        Minutes all;
        Day full = monday_;
        for (int i = 0; i < 7; ++i) {
            all += workOn(monday_ + i);
            if (workOn(monday_ + i) > workOn(full)) full = monday_ + i;
        }
        if (all.value == 0 && shownSteps_.empty()) return {plain(utf8(tr("Nothing to do this week.")))};
        if (all.value > 0) {
            out.push_back(strong(utf8(close(all))) + plain(utf8(tr(" of work"))));
            out.push_back(plain(utf8(tr("fullest day: "))) +
                          strong(utf8(tr("%1, %2").arg(shortDay(full), close(workOn(full))))));
        }
        const QString over = tooMuchWords(stepsOfWeek(season_, order_.plan, monday_), season_, order_.plan);
        if (!over.isEmpty()) out.push_back(strong(utf8(over)));
        return out;
    }

    [[nodiscard]] std::vector<Block> laneOf(Day day) {
        std::vector<Block> out;
        const Minutes work = workOn(day);
        out.push_back(Block{papers::BoardHead{utf8(shortDay(day)), utf8(dayNote(day, work)), false}});
        std::vector<Timed> items;
        addEvents(day, items);
        addSteps(day, items);
        addBusy(day, items);
        std::stable_sort(items.begin(), items.end(),
                         [](const auto& a, const auto& b) { return a.from < b.from; });
        for (auto& timed : items)
            out.push_back(Block{std::move(timed.item)});
        if (const QString rest = smallSteps(day); !rest.isEmpty())
            out.push_back(Block{papers::BoardItem{BoardKind::note, "", "", utf8(rest), ""}});
        return out;
    }

    [[nodiscard]] QString dayNote(Day day, Minutes work) {
        const QString warm = tooWarmFrom(heat_.on(day), season_.theSettings().heatLimitCelsius, std::nullopt);
        if (work.value == 0) {
            const QString rest = goesOn(day) ? tr("goes on") : tr("nothing to do");
            return warm.isEmpty() ? rest : tr("warm from %1").arg(warm);
        }
        const QString hours = close(work);
        return warm.isEmpty() ? hours : tr("%1, warm %2").arg(hours, warm);
    }

    [[nodiscard]] std::string markOf(const std::vector<Id<model::Booking>>& ids) const {
        const auto found = ids.size() == 1 ? letters_.find(ids.front()) : letters_.end();
        return found == letters_.end() ? std::string() : utf8(found->second);
    }

    void addEvents(Day day, std::vector<Timed>& items) const {
        for (const auto& booking : season_.bookings) {
            if (booking.standing == model::Standing::lost || booking.eventStart.day != day) continue;
            const auto* venue = booking.venue ? season_.venues.find(*booking.venue) : nullptr;
            items.push_back({booking.eventStart,
                             {BoardKind::fixed, utf8(timesOf(booking.eventStart, booking.eventEnd)),
                              markOf({booking.id}), booking.title, venue ? venue->name : std::string()}});
        }
    }

    [[nodiscard]] static QString timesOf(LocalTime from, LocalTime to) {
        return to <= from ? clock(from) : QStringLiteral("%1–%2").arg(clock(from), clock(to));
    }

    /// Of what was worked out.
    [[nodiscard]] static QString planTimesOf(const runup::TimeSpan& span) {
        const QString from = planClock(span.from), to = planClock(span.to);
        return from == to ? from : QStringLiteral("%1–%2").arg(from, to);
    }

    /// What a board in the shed is looked at for; the rest is small and on the prep sheet.
    static bool isOnBoard(StepKind kind) {
        using enum StepKind;
        return kind == cut || kind == make || kind == drive || kind == collect;
    }

    void addSteps(Day day, std::vector<Timed>& items) const {
        for (const auto& [step, span, again] : shownSteps_) {
            if (span.from.day != day) continue;
            const bool round = step.key.step == StepKind::cut;
            const QString title = stepTitle(season_, step);
            const QString who = whoWords(season_, step);
            QStringList detail;
            if (step.bookings.size() > 1) detail << lettersOf(step.bookings);
            if (!who.isEmpty()) detail << who;
            items.push_back(
                {span.from,
                 {round ? BoardKind::round : BoardKind::step, utf8(planTimesOf(span)), markOf(step.bookings),
                  utf8(again ? goesOnWords(title) : title), utf8(detail.join(QStringLiteral(", ")))}});
        }
    }

    [[nodiscard]] QString lettersOf(const std::vector<Id<model::Booking>>& ids) const {
        QStringList out;
        for (const auto id : ids)
            if (const auto found = letters_.find(id); found != letters_.end()) out << found->second;
        return tr("for %1").arg(out.join(QStringLiteral(", ")));
    }

    void addBusy(Day day, std::vector<Timed>& items) const {
        const auto add = [&](const std::optional<Id<model::Helper>>& helper, const QString& whose) {
            for (const auto& busy : runup::busySpansOf(season_, helper, day, day)) {
                if (busy.span.from.day != day) continue;
                const QString label = busy.label.empty() ? tr("busy") : text(busy.label);
                items.push_back({busy.span.from,
                                 {BoardKind::busy, utf8(timesOf(busy.span.from, busy.span.to)), "",
                                  utf8(whose.isEmpty() ? label : tr("%1: %2").arg(whose, label)), ""}});
            }
        };
        add(std::nullopt, {});
        for (const auto& helper : season_.helpers)
            add(helper.id, text(helper.name));
    }

    /// "and 9 small steps, 3 h 20".
    [[nodiscard]] QString smallSteps(Day day) const {
        int count = 0;
        Minutes sum;
        for (const auto& step : steps_) {
            if (step.from.day != day || isOnBoard(step.key.step) || needsNobody(step)) continue;
            ++count;
            sum += step.minutes;
        }
        return count == 0 ? QString()
                          : tr("and %n small step(s), %1", nullptr, count).arg(close(toldWork(sum)));
    }

    const PaperOrder& order_;
    const model::Season& season_;
    Day monday_;
    plan::PlaceDays heat_;
    std::vector<RunUpStep> steps_; ///< that begin in the week
    std::vector<Shown> shownSteps_;
    std::vector<Id<model::Booking>> shown_;
    std::map<Id<model::Booking>, QString> letters_;
};

} // namespace

papers::Document weekBoard(const PaperOrder& order) {
    return WeekBoardMaker(order).document();
}

} // namespace withy::ui
