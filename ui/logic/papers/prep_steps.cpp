// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/busy_spans.h"
#include "ui/logic/format.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using plan::RunUpStep;
using plan::StepKind;

class Steps {
    Q_DECLARE_TR_FUNCTIONS(PrepSheet)

public:
    Steps(const PaperOrder& order, Day mainDay)
        : order_(order)
        , season_(order.season)
        , plan_(*order.plan.bookings.at(*order.booking))
        , times_(order.plan, *order.booking)
        , cover_(coverOf(order.plan, *order.booking))
        , day_(mainDay) {
        for (auto& step : runUpSteps(season_, order.plan, plan_.booking))
            if (isBeforeTheRoad(step.key.step)) steps_.push_back(std::move(step));
        if (!steps_.empty())
            busy_ = runup::growersBusySpans(season_, steps_.front().from.day, steps_.back().to.day);
    }

    std::vector<papers::Block> blocks() {
        for (const auto& step : steps_) {
            enter(step.from);
            add(task(step));
        }
        for (auto& block : stemsBesideRounds(season_, times_, cover_, steps_))
            out_.push_back(std::move(block));
        return std::move(out_);
    }

private:
    /// What happens away from home has a sheet of its own.
    static bool isBeforeTheRoad(StepKind kind) {
        using enum StepKind;
        return kind != place && kind != handOver && kind != driveBack && kind != collect && kind != washBack;
    }

    [[nodiscard]] papers::TimedTask task(const RunUpStep& step) const {
        QString title = stepTitle(season_, step);
        QString detail = stepDetail(season_, step);
        if (saysOnlyMinutes(step)) { // beside the title, so that the row is one line high
            if (step.minutes.value > 0) title = tr("%1, %2 min").arg(title).arg(step.minutes.value);
            detail.clear();
        }
        if (step.key.step == StepKind::cut)
            if (const QString from = whereFrom(step); !from.isEmpty())
                detail = from; // which names the plants too
        if (step.bookings.size() > 1)
            detail += (detail.isEmpty() ? QString() : QStringLiteral(" ")) +
                      tr("Together for %1.").arg(bookingWords(season_, step.bookings));
        // One piece has the step's own box to tick.
        const auto ticks = step.key.step == StepKind::make && step.count > 1 ? step.count : 0;
        const QString who = whoWords(season_, step);
        return {utf8(planClock(step.from)), utf8(title), papers::plain(utf8(detail)),
                who.isEmpty() ? " " : utf8(who), static_cast<int>(std::min<std::int64_t>(ticks, 200))};
    }

    [[nodiscard]] QString whereFrom(const RunUpStep& step) const {
        if (step.round && order_.plan.runUp)
            return roundFrom(season_, order_.plan.runUp->rounds[*step.round]);
        return cutFrom(season_, times_, cover_, steps_, step);
    }

    static bool saysOnlyMinutes(const RunUpStep& step) {
        const auto kind = step.key.step;
        return kind == StepKind::washContainers || kind == StepKind::cutRibbon ||
               kind == StepKind::checkWater || kind == StepKind::pack;
    }

    /// Busy hours that lie before this time, and a head when the day is a new one.
    void enter(LocalTime at) {
        if (!begun_ || current_ != at.day) {
            busyUntil(LocalTime{at.day, 0}, begun_);
            if (at.day != day_ || begun_)
                add(papers::SectionHead{utf8(dayWords(at.day)), papers::plain(utf8(shortDay(at.day)))});
            current_ = at.day;
            begun_ = true;
            while (nextBusy_ < busy_.size() && busy_[nextBusy_].span.to <= LocalTime{at.day, 0})
                ++nextBusy_;
        }
        busyUntil(at, true);
    }

    void busyUntil(LocalTime at, bool show) {
        for (; nextBusy_ < busy_.size() && busy_[nextBusy_].span.from <= at; ++nextBusy_) {
            const auto& b = busy_[nextBusy_];
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
        return ahead < 0 ? tr("%n day(s) before making", nullptr, -ahead)
                         : tr("%n day(s) after making", nullptr, ahead);
    }

    template <class B>
    void add(B block) {
        out_.push_back(papers::Block{std::move(block)});
    }

    const PaperOrder& order_;
    const model::Season& season_;
    const plan::BookingPlan& plan_;
    CutTimes times_;
    const plan::BookingCover* cover_;
    std::vector<RunUpStep> steps_;
    std::vector<runup::BusySpan> busy_;
    Day day_;
    Day current_;
    bool begun_ = false;
    std::size_t nextBusy_ = 0;
    std::vector<papers::Block> out_;
};

} // namespace

std::vector<papers::Block> prepSteps(const PaperOrder& order, Day mainDay) {
    return Steps(order, mainDay).blocks();
}

} // namespace withy::ui
