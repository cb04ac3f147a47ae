// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/run_up_rows.h"

#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using plan::StepKind;
using Weight = AnswerPart::Weight;

class RunUpRowsSay {
    Q_DECLARE_TR_FUNCTIONS(RunUpPage)

public:
    RunUpRowsSay(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking)
        : season_(season), plan_(plan), booking_(booking) {}

    [[nodiscard]] Answer answer() const {
        const auto found = plan_.bookings.find(booking_);
        if (found == plan_.bookings.end() || found->second->lines.empty())
            return {{tr("Nothing to make yet, so there is nothing to do.")}};
        if (!plan_.runUp) return {{tr("The work is being laid out.")}};
        const auto make = spanOf(StepKind::make);
        const auto drive = spanOf(StepKind::drive);
        if (!make && !drive) return {{tr("All of it is done and delivered.")}};
        const auto* over = overOf();
        Answer out;
        if (over)
            out = overWords(*over);
        else
            out.push_back(
                {plan_.runUp->proved ? tr("It fits, and no shorter way was found. ") : tr("It fits. ")});
        if (make) addMaking(*make, out);
        if (drive) out.push_back({tr(" Leave on %1.").arg(at(drive->first))});
        addLate(out);
        return out;
    }

    static QString mend(const model::Season& season, const plan::RunUpMend& m) {
        const auto* booking = m.booking ? season.bookings.find(*m.booking) : nullptr;
        switch (m.kind) {
        case plan::RunUpMendKind::startEarlier:
            return m.fits ? tr("Beginning %1 earlier does it.").arg(workWords(m.earlier)) : QString();
        case plan::RunUpMendKind::oneMoreHelper:
            return m.fits ? tr("One more pair of hands does it.")
                          : tr("One more pair of hands is not enough.");
        case plan::RunUpMendKind::fewerPieces:
            if (!m.fits || !booking) return {};
            return tr("%n piece(s) for %1 would fit.", nullptr, static_cast<int>(m.pieces.value))
                .arg(text(booking->title));
        }
        return {};
    }

private:
    using Span = std::pair<LocalTime, LocalTime>;

    static QString at(LocalTime t) { return tr("%1 at %2").arg(shortDay(t.day), planClock(t)); }

    /// From the first of this kind to the last; fetching back does not count as driving.
    [[nodiscard]] std::optional<Span> spanOf(StepKind kind) const {
        std::optional<Span> out;
        for (const auto& s : plan_.runUp->steps) {
            const bool mine = std::find(s.bookings.begin(), s.bookings.end(), booking_) != s.bookings.end();
            if (s.key.step != kind || !mine || s.key.number != 0) continue;
            if (!out) out = Span{s.from, s.to};
            out->second = std::max(out->second, s.to);
        }
        return out;
    }

    [[nodiscard]] const plan::RunUpOver* overOf() const {
        for (const auto& over : plan_.runUp->over)
            if (std::find(over.bookings.begin(), over.bookings.end(), booking_) != over.bookings.end())
                return &over;
        return nullptr;
    }

    static void addMaking(const Span& make, Answer& out) {
        out.push_back({tr("Make up from ")});
        out.push_back({at(make.first), Weight::strong});
        out.push_back({tr(", all made by ")});
        out.push_back(
            {make.second.day == make.first.day ? planClock(make.second) : at(make.second), Weight::strong});
        out.push_back({QStringLiteral(".")});
    }

    /// Cutting waits for the cool, and that may be after the working day; the day that runs longest is told.
    void addLate(Answer& out) const {
        const std::int64_t end = season_.theSettings().workTo;
        const plan::RunUpStep* latest = nullptr;
        std::int64_t most = 0;
        for (const auto& s : plan_.runUp->steps) {
            const bool mine = std::find(s.bookings.begin(), s.bookings.end(), booking_) != s.bookings.end();
            const bool waits = s.key.step == StepKind::cut || s.key.step == StepKind::strip;
            if (!mine || !waits || s.done) continue;
            const auto past = s.to.minutesSinceEpoch() - LocalTime{s.from.day, 0}.minutesSinceEpoch() - end;
            if (past > most) {
                most = past;
                latest = &s;
            }
        }
        if (!latest) return;
        if (latest->from.day < latest->to.day) {
            out.push_back(
                {tr(" Cutting and stripping run through the night, until %1.").arg(at(latest->to))});
            return;
        }
        out.push_back({tr(" Cutting and stripping run until %1, %2 after your working day, for the cool.")
                           .arg(at(latest->to), workWords(Minutes(most)))});
    }

    [[nodiscard]] Answer overWords(const plan::RunUpOver& over) const {
        Answer out{{tr("It does not fit: "), Weight::asks},
                   {tr("%1 has %2 too much. ").arg(shortDay(over.day), workWords(toldWork(over.minutes))),
                    Weight::asks}};
        for (const auto& m : over.mends) {
            const QString words = mend(season_, m);
            if (!words.isEmpty()) out.push_back({words + QLatin1Char(' ')});
        }
        return out;
    }

    const model::Season& season_;
    const plan::Plan& plan_;
    Id<model::Booking> booking_;
};

} // namespace

Answer runUpAnswer(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking) {
    return RunUpRowsSay(season, plan, booking).answer();
}

QString mendWords(const model::Season& season, const plan::RunUpMend& mend) {
    return RunUpRowsSay::mend(season, mend);
}

} // namespace withy::ui
