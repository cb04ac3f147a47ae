// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/return_words.h"

#include "ui/logic/edits/shed_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/shed/ribbon_scene.h"
#include "ui/logic/shed/shelf_rows.h"
#include "ui/logic/workbench.h"

#include <QCoreApplication>
#include <QTime>

namespace withy::ui {

namespace {

struct ReturnWordsSay {
    Q_DECLARE_TR_FUNCTIONS(Returns)
};

void sayReturn(ReturnFacts& f) {
    if (!f.back) {
        f.said = f.broken.value_or(0) > 0
                     ? ReturnWordsSay::tr("%1 broken; the others are not counted yet").arg(whole(*f.broken))
                     : ReturnWordsSay::tr("not counted home yet");
        return;
    }
    const auto missing = f.out - *f.back - f.broken.value_or(0);
    f.home = missing <= 0;
    f.said = ReturnWordsSay::tr("%1 home").arg(whole(*f.back));
    if (f.broken.value_or(0) > 0) f.said += ReturnWordsSay::tr(", %1 broken").arg(whole(*f.broken));
    if (missing > 0) f.said += ReturnWordsSay::tr(", %1 not come back").arg(whole(missing));
}

/// "Moss, 15 mm: end 0.80 m, 0.44 m goes back; reel 9.00 m, nothing left".
QString leftOf(const model::Season& season, const plan::RibbonCutPlan& plan) {
    QStringList words;
    for (const auto& bar : plan.bars)
        if (!bar.cuts.empty())
            words << ReturnWordsSay::tr("%1, %2").arg(barWords(bar, season), leftWords(bar, season));
    if (words.isEmpty()) return {};
    return ReturnWordsSay::tr("%1: %2").arg(itemName(season, {model::TableKind::ribbons, plan.ribbon.value}),
                                            words.join(QStringLiteral("; ")));
}

} // namespace

RibbonBack ribbonBack(const model::Season& season, const plan::ShedPlan* shed, Id<model::Booking> booking) {
    RibbonBack back;
    if (plan::ribbonIsWrittenBack(season, booking)) {
        back.state = RibbonBack::State::done;
        back.words = ReturnWordsSay::tr("Its ribbon is written back already.");
        return back;
    }
    const auto* day = edits::ribbonDayOf(shed, booking);
    if (!day) return back;
    if (shed->ribbon.front().get() != day) {
        back.state = RibbonBack::State::waits;
        back.words = ReturnWordsSay::tr("The ribbon cut on %1 is written back first, under Shed.")
                         .arg(shortDay(shed->ribbon.front()->day));
        return back;
    }
    for (const auto& plan : day->ribbons)
        if (const QString words = leftOf(season, *plan); !words.isEmpty()) back.lines << words;
    if (back.lines.isEmpty()) return back;
    back.state = RibbonBack::State::offered;
    back.day = day->day;
    back.words = ReturnWordsSay::tr("Cut as planned on %1, this goes back to the stock:")
                     .arg(ribbonDayWords(season, *day));
    return back;
}

QString writeRibbonBack(Workbench& bench, Day seen, bool& written) {
    written = false;
    bench.waitForPlan();
    const auto& shed = bench.plan().shed;
    if (!shed || shed->ribbon.empty() || shed->ribbon.front()->day != seen) return {};
    const auto& day = *shed->ribbon.front();
    // Between a press and its plan a second one changes nothing: who is marked has had it.
    for (const auto id : day.bookings)
        if (plan::ribbonIsWrittenBack(bench.season(), id)) return {};
    const auto clock = QTime::currentTime();
    const LocalTime now{bench.today().value_or(seen), clock.hour() * 60 + clock.minute()};
    const auto edit = edits::writeRibbonBack(bench.season(), day, now);
    if (!edit) return {};
    const QString sentence = bench.apply(*edit);
    written = sentence.isEmpty();
    return sentence;
}

QString ribbonIsBackWords() {
    return ReturnWordsSay::tr("Written back: the reels and ends are as the cutting leaves them.");
}

std::vector<ReturnFacts> returnFacts(const model::Season& season, const plan::BookingPlan& plan,
                                     std::optional<Day> today) {
    std::vector<ReturnFacts> out;
    const auto* booking = season.bookings.find(plan.booking);
    if (!booking || booking->standing == model::Standing::lost) return out;
    const bool gone =
        (today && *today >= plan.makeUpStart.day && booking->standing >= model::Standing::booked) ||
        booking->standing >= model::Standing::made;
    for (const auto& need : plan.kit.containers) {
        const auto* c = season.containers.find(need.container);
        if (!c || !c->returnable) continue;
        const model::Return* record = nullptr;
        for (const auto& r : season.returns)
            if (r.booking == plan.booking && r.container == need.container) record = &r;
        if (!gone && !record) continue;
        ReturnFacts f;
        f.container = need.container;
        f.out = record && record->out > 0 ? record->out : shed::wholeUnits(need.total.needed);
        if (record) {
            f.back = record->back;
            f.broken = record->broken;
        }
        f.name = ReturnWordsSay::tr("%1 %2 went out").arg(whole(f.out), text(c->name));
        sayReturn(f);
        f.asks = !f.home && today && *today > booking->eventEnd.day;
        out.push_back(std::move(f));
    }
    return out;
}

} // namespace withy::ui
