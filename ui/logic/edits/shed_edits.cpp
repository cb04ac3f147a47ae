// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/shed_edits.h"

#include "core/model/schema.h"

#include <algorithm>

namespace withy::ui::edits {

using model::TableKind;

Edit noteReturn(const Season& season, Id<model::Booking> booking, Id<model::Container> container,
                const CountedHome& counted) {
    model::Return record;
    record.id = season.returns.nextId();
    record.booking = booking;
    record.container = container;
    for (const auto& r : season.returns)
        if (r.booking == booking && r.container == container) record = r;
    record.out = counted.out;
    record.back = counted.back;
    record.broken = counted.broken;
    return Edit("shed.return", {model::nameOf(season, TableKind::containers, container.value),
                                model::nameOf(season, TableKind::bookings, booking.value)})
        .put(record);
}

std::optional<Edit> writeRibbonBack(const Season& season, const plan::RibbonDay& day, LocalTime now) {
    Edit edit("shed.ribbon", {day.day.iso()});
    bool cut = false;
    for (const auto& plan : day.ribbons)
        for (const auto& bar : plan->bars) {
            const auto* there = season.ribbonLengths.find(bar.from.id);
            if (bar.cuts.empty() || !there) continue;
            cut = true;
            auto record = *there;
            for (const auto& pieces : bar.cuts)
                record.length -= pieces.each * pieces.count;
            if (bar.keep && record.length.value > 0)
                edit.put(record);
            else
                edit.erase(record.id);
        }
    if (!cut) return std::nullopt;
    std::int64_t next = season.stepMarks.nextId().value;
    for (const auto booking : day.bookings) {
        model::StepMark mark;
        mark.id = Id<model::StepMark>(next++);
        mark.step = model::StepKind::cutRibbon;
        mark.booking = booking;
        mark.number = plan::writtenBackNumber;
        mark.done = now;
        edit.put(mark);
    }
    return edit;
}

const plan::RibbonDay* ribbonDayOf(const plan::ShedPlan* shed, Id<model::Booking> booking) {
    if (!shed) return nullptr;
    for (const auto& day : shed->ribbon)
        if (std::find(day->bookings.begin(), day->bookings.end(), booking) != day->bookings.end())
            return day.get();
    return nullptr;
}

} // namespace withy::ui::edits
