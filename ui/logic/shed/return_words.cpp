// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/return_words.h"

#include "ui/logic/format.h"

#include <QCoreApplication>

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

} // namespace

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
