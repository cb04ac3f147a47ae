// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/step_wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using plan::StepKind;
using plan::TimedStep;

class Steps {
    Q_DECLARE_TR_FUNCTIONS(PrepSheet)

public:
    Steps(const model::Season& season, const plan::BookingPlan& plan, Day mainDay,
          const plan::BookingCover* cover)
        : season_(season), plan_(plan), cover_(cover), day_(mainDay) {}

    std::vector<papers::Block> blocks() {
        for (const auto& step : plan_.steps) {
            if (step.kind == StepKind::place && step.minutes.value == 0) continue;
            enter(step.from);
            add(task(step));
        }
        for (auto& block : stemsBesideRounds(season_, plan_, cover_))
            out_.push_back(std::move(block));
        return std::move(out_);
    }

private:
    [[nodiscard]] papers::TimedTask task(const TimedStep& step) const {
        QString title = stepTitle(season_, plan_, step);
        QString detail = stepDetail(season_, step);
        if (saysOnlyMinutes(step)) { // beside the title, so that the row is one line high
            if (step.minutes.value > 0) title = tr("%1, %2 min").arg(title).arg(step.minutes.value);
            detail.clear();
        }
        if (step.kind == StepKind::cut)
            if (const QString from = cutFrom(season_, plan_, cover_, step); !from.isEmpty())
                detail += QStringLiteral(". ") + from;
        // One piece has the step's own box to tick.
        const auto ticks = step.kind == StepKind::make && step.count > 1 ? step.count : 0;
        return {step.from.clock(), utf8(title), papers::plain(utf8(detail)), needsNobody(step) ? "–" : " ",
                static_cast<int>(std::min<std::int64_t>(ticks, 200))};
    }

    static bool saysOnlyMinutes(const TimedStep& step) {
        return step.kind == StepKind::washContainers || step.kind == StepKind::checkWater ||
               step.kind == StepKind::pack || step.kind == StepKind::place;
    }

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

    template <class B>
    void add(B block) {
        out_.push_back(papers::Block{std::move(block)});
    }

    const model::Season& season_;
    const plan::BookingPlan& plan_;
    const plan::BookingCover* cover_;
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

std::vector<papers::Block> prepSteps(const model::Season& season, const plan::BookingPlan& plan, Day mainDay,
                                     const plan::BookingCover* cover) {
    return Steps(season, plan, mainDay, cover).blocks();
}

} // namespace withy::ui
